package jackwork.app.core;

import jackwork.app.history.History;
import jackwork.app.history.KeptTexts;
import jackwork.app.history.Saving;
import jackwork.app.history.Turn;
import jackwork.app.wire.BadRequestException;
import jackwork.app.wire.Json;
import jackwork.app.wire.Report;
import jackwork.app.wire.Requests;
import jackwork.app.wire.SavedException;
import jackwork.app.wire.StaleException;
import jackwork.app.wire.TooLongException;
import jackwork.app.wire.UnknownDesignException;
import jackwork.app.wire.VersionView;
import jackwork.check.Questions;
import jackwork.check.Subject;
import jackwork.design.Design;
import jackwork.design.DesignException;
import jackwork.design.DesignFiles;
import jackwork.design.DesignReader;
import jackwork.drawing.PictureException;
import jackwork.parts.Assembler;
import jackwork.parts.Part;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * Changes designs from the page: every change is tried whole first, then saved at once, touching only what it must, and
 * answered with what was worked out for the trial; every change can be taken back. What was decided on files that have
 * changed since is refused, never written over them. Nothing is computed while anything is locked.
 */
public final class Editor {

    private final Workbench workbench;
    private final Trials trials;
    private final Histories histories;
    private final LastShown last = new LastShown();
    /** Saved states that glimpses start from; while something is dragged they are asked for many times a second. */
    private final Once<String, Drawn> drawn;

    private record Drawn(Design design, DesignFiles files, Map<Path, String> texts, Map<String, Part> parts) {}

    public Editor(Workbench workbench) {
        this.workbench = workbench;
        this.trials = new Trials(workbench);
        this.histories = new Histories(workbench);
        this.drawn = new Once<>(2, workbench.longest());
    }

    /**
     * A design's drawing, report and what can be changed.
     *
     * @throws UnknownDesignException when the workshop has no such design
     * @throws DesignException when its files cannot be used as they are
     */
    public String viewJson(String id) {
        finish(id);
        Shown shown = last.still(id)
                .map(known -> known.sharedWith(workbench.sharing(
                        id, DesignFiles.of(known.check().design()).figure())))
                .orElseGet(() -> workbench.shown(id));
        last.keep(id, shown);
        DesignFiles files = DesignFiles.of(shown.check().design());
        return histories.with(id, history -> {
            try {
                history.see(files.texts());
            } catch (UncheckedIOException e) {
                // A folder that cannot be written to can still be looked at.
            }
            return answer(shown, history);
        });
    }

    /** The state of a design's files. */
    public String versionJson(String id) {
        finish(id);
        return Json.compact(new VersionView(last.still(id)
                .map(known -> known.view().version())
                .orElseGet(() -> files(id).version())));
    }

    /**
     * How a design stands whose files may be no design any more, since they were changed elsewhere: what is wrong, what
     * can be taken back, and how it could be shown last.
     *
     * @throws UnknownDesignException when the workshop has no such design
     */
    public String standingJson(String id) {
        workbench.require(id);
        String problem = problem(id);
        try {
            DesignFiles files = files(id);
            Map<Path, String> outside = last.changed(id);
            return histories.with(id, history -> {
                if (outside.isEmpty()) {
                    history.see(files.texts());
                }
                String label = outside.isEmpty() ? history.undoLabel().orElse(null) : History.OUTSIDE;
                return Json.compact(new Standing(files.version(), problem, label, last.view(id)));
            });
        } catch (DesignException | UncheckedIOException e) {
            return Json.compact(new Standing("", problem, null, last.view(id)));
        }
    }

    /** Why a design cannot be shown; empty where it can be. */
    private String problem(String id) {
        try {
            workbench.shown(id);
            return "";
        } catch (TooLongException | CancellationException e) {
            throw e;
        } catch (RuntimeException e) {
            return Trials.isMakers(e) ? String.valueOf(e.getMessage()) : "this is our fault, not yours (" + e + ")";
        }
    }

    /**
     * Saves a change.
     *
     * @param body an {@link Edit}
     * @throws StaleException when the files have changed since it was decided
     * @throws DesignException when a design could not be shown any more; nothing is saved then
     */
    public String editJson(String id, String body) {
        Edit edit = Requests.read(body, Edit.class);
        Design design = design(id);
        DesignFiles files = DesignFiles.of(design);
        requireFresh(files, edit.base());
        Map<Path, String> before = files.texts();
        Map<Path, String> after = Splices.apply(design, files, before, edit.steps());
        return save(id, edit.label(), files, edit.base(), before, after);
    }

    /**
     * Saves other texts of a design's files, its drawing among them.
     *
     * @param base version of the files that they were made from
     * @param before of the same files
     * @throws StaleException when the files have changed since
     * @throws DesignException when a design could not be shown any more; nothing is saved then
     */
    public void replace(String id, String base, String label, Map<Path, String> before, Map<Path, String> after) {
        DesignFiles files = DesignFiles.of(design(id));
        requireFresh(files, base);
        save(id, label, files, base, before, after);
    }

    private String save(
            String id,
            String label,
            DesignFiles files,
            String base,
            Map<Path, String> before,
            Map<Path, String> after) {
        Map<Path, String> changed = new LinkedHashMap<>();
        Map<Path, String> old = new LinkedHashMap<>();
        after.forEach((path, text) -> {
            String was = before.getOrDefault(path, "");
            if (!was.equals(text)) {
                changed.put(path, text);
                old.put(path, was);
            }
        });
        if (changed.isEmpty()) {
            return viewJson(id);
        }
        Shown next = trials.of(id, changed);
        Trials.Tried others = trials.othersAsGood(id, changed);
        write(id, files, base, others, history -> {
            requireUnchanged(old);
            history.see(before);
            history.did(label, old, changed);
            Saving.all(changed, () -> history.write(old, changed));
        });
        return saved(id, next, before, changed);
    }

    /** When it is this program's turn, and all is still as it was when it was tried. */
    private void write(String id, DesignFiles files, String base, Trials.Tried others, Consumer<History> how) {
        histories.with(id, history -> {
            Turn.take(workbench.folder(), () -> {
                requireFresh(files, base);
                others.requireFresh();
                how.accept(history);
            });
            return base;
        });
    }

    /** Takes the last change back; {@code base} as with an edit. */
    public String undoJson(String id, String body) {
        workbench.require(id);
        Map<Path, String> outside = last.changed(id);
        return outside.isEmpty() || problem(id).isEmpty()
                ? move(id, body, History::undo)
                : undoOutside(id, Requests.read(body, VersionView.class).version(), outside);
    }

    /** Makes the change again that was taken back last. */
    public String redoJson(String id, String body) {
        return move(id, body, History::redo);
    }

    private String move(String id, String body, Function<History, Optional<History.Move>> way) {
        String base = Requests.read(body, VersionView.class).version();
        DesignFiles files = files(id);
        requireFresh(files, base);
        Map<Path, String> now = files.texts();
        Optional<History.Move> found = histories.with(id, history -> {
            history.see(now);
            return way.apply(history);
        });
        if (found.isEmpty()) {
            return viewJson(id);
        }
        History.Move move = found.get();
        Shown next = trials.of(id, move.texts());
        Trials.Tried others = trials.others(id, move.texts());
        write(id, files, base, others, history -> moved(history, move));
        return saved(id, next, now, move.texts());
    }

    private static void moved(History history, History.Move move) {
        Map<Path, String> old = new LinkedHashMap<>();
        move.texts().keySet().forEach(path -> old.put(path, KeptTexts.read(path)));
        Saving.all(move.texts(), () -> {
            history.write(old, move.texts());
            history.moved(move);
        });
    }

    /**
     * Takes a change back that was made outside and after which the design cannot be shown: to the state that was shown
     * last, whether its history knew of those files before or not.
     */
    private String undoOutside(String id, String base, Map<Path, String> outside) {
        DesignFiles files = files(id);
        requireFresh(files, base);
        Map<Path, String> here = LastShown.texts(outside.keySet());
        Shown next = trials.of(id, outside);
        Trials.Tried others = trials.others(id, outside);
        write(id, files, base, others, history -> {
            requireUnchanged(here);
            history.did(History.OUTSIDE, outside, here);
            history.undo().ifPresent(move -> moved(history, move));
        });
        return saved(id, next, here, outside);
    }

    /** The answer to what was saved just now: worked out before, and never taken for a failure to save. */
    private String saved(String id, Shown next, Map<Path, String> before, Map<Path, String> changed) {
        try {
            last.keep(id, next);
            Map<Path, String> after = new LinkedHashMap<>(before);
            after.putAll(changed);
            return histories.with(id, history -> {
                try {
                    history.see(after);
                } catch (UncheckedIOException e) {
                    // Saved, and not noted: the next look notes it.
                }
                return answer(next, history);
            });
        } catch (RuntimeException e) {
            throw new SavedException(e);
        }
    }

    private static String answer(Shown shown, History history) {
        return shown.json(
                history.undoLabel().orElse(null),
                history.redoLabel().orElse(null),
                history.told().orElse(null));
    }

    /** The picture on a part, as its PNG. */
    public byte[] picture(String id, String part) {
        try {
            return ScenePictures.bytes(Assembler.assemble(workbench.design(id)), part);
        } catch (PictureException e) {
            throw new BadRequestException(String.valueOf(e.getMessage()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What a change would do, without saving anything: what can be told within some milliseconds. */
    public String glimpseJson(String id, String body) {
        Edit edit = Requests.read(body, Edit.class);
        Drawn from = drawn.of(id + " " + edit.base(), () -> drawn(id, edit.base()));
        Map<Path, String> texts = Splices.apply(from.design(), from.files(), from.texts(), edit.steps());
        Subject subject = Subject.asNumbered(DesignReader.readLike(from.design(), texts));
        Scene scene = SceneMaker.of(subject.assembly(), part -> {
            Part saved = from.parts().get(part.name());
            return saved == null || !SceneMaker.looksAlike(saved, part);
        });
        return Json.compact(new Glimpse(
                scene,
                ReportMaker.motion(subject.assembly(), subject.stroke()),
                Questions.askQuickly(subject).stream().map(Report.Finding::of).toList()));
    }

    private Drawn drawn(String id, String version) {
        Design design = design(id);
        DesignFiles files = DesignFiles.of(design);
        requireFresh(files, version);
        Map<String, Part> parts = new LinkedHashMap<>();
        Assembler.assemble(design).parts().forEach(part -> parts.put(part.name(), part));
        return new Drawn(design, files, files.texts(), parts);
    }

    /** A change of several files that was broken off is brought to its end first: half of it may be no design. */
    private Design design(String id) {
        finish(id);
        return workbench.design(id);
    }

    private void finish(String id) {
        workbench.require(id);
        histories.with(id, history -> {
            history.finish();
            return id;
        });
    }

    /** The files of a design; where they are none any more, those that it was made of when it could be shown last. */
    private DesignFiles files(String id) {
        try {
            return DesignFiles.of(design(id));
        } catch (DesignException e) {
            return last.files(id).orElseThrow(() -> e);
        }
    }

    /** Another program may have had its turn while the change was tried. */
    private static void requireUnchanged(Map<Path, String> texts) {
        texts.forEach((path, text) -> {
            if (!KeptTexts.read(path).equals(text)) {
                throw new StaleException();
            }
        });
    }

    private static void requireFresh(DesignFiles files, String base) {
        if (!files.version().equals(base)) {
            throw new StaleException();
        }
    }
}

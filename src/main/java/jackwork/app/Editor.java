package jackwork.app;

import jackwork.check.Questions;
import jackwork.check.Subject;
import jackwork.design.Design;
import jackwork.design.DesignFiles;
import jackwork.design.DesignReader;
import jackwork.drawing.PictureException;
import jackwork.parts.Assembler;
import jackwork.parts.Assembly;
import jackwork.parts.Part;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Changes designs from the page: every change is tried first, then saved at once, touching only what it must; every
 * change can be taken back. What was decided on files that have changed since is refused, never written over them.
 */
public final class Editor {

    private final Workbench workbench;
    private final Map<String, History> histories = new HashMap<>();
    /** The last drawing that glimpses were compared with. */
    private Optional<Drawn> drawn = Optional.empty();

    private record Drawn(
            String id,
            String version,
            Design design,
            DesignFiles files,
            Map<Path, String> texts,
            Map<String, Part> parts) {}

    public Editor(Workbench workbench) {
        this.workbench = workbench;
    }

    /**
     * A design's drawing, report and what can be changed.
     *
     * @throws UnknownDesignException when the workshop has no such design
     * @throws jackwork.design.DesignException when its files cannot be used as they are
     */
    public synchronized String viewJson(String id) {
        return Json.compact(view(id));
    }

    /** The state of a design's files. */
    public String versionJson(String id) {
        return Json.compact(new VersionView(DesignFiles.of(design(id)).version()));
    }

    /**
     * Saves a change.
     *
     * @param body an {@link Edit}
     * @throws StaleException when the files have changed since it was decided
     * @throws jackwork.design.DesignException when the design could not be used any more; nothing is saved then
     */
    public synchronized String editJson(String id, String body) {
        Edit edit = Requests.read(body, Edit.class);
        Design design = design(id);
        DesignFiles files = DesignFiles.of(design);
        requireFresh(files, edit.base());
        Map<Path, String> before = files.texts();
        save(id, edit.label(), design, before, Splices.apply(design, files, before, edit.steps()));
        return Json.compact(view(id));
    }

    /**
     * Saves other texts of a design's files, its drawing among them.
     *
     * @param base version of the files that they were made from
     * @param before of the same files
     * @throws StaleException when the files have changed since
     * @throws jackwork.design.DesignException when the design could not be used any more; nothing is saved then
     */
    synchronized void replace(String id, String base, String label, Map<Path, String> before, Map<Path, String> after) {
        Design design = design(id);
        requireFresh(DesignFiles.of(design), base);
        save(id, label, design, before, after);
    }

    private void save(String id, String label, Design design, Map<Path, String> before, Map<Path, String> after) {
        Map<Path, String> changed = new LinkedHashMap<>();
        Map<Path, String> old = new LinkedHashMap<>();
        after.forEach((path, text) -> {
            String was = before.getOrDefault(path, "");
            if (!was.equals(text)) {
                changed.put(path, text);
                old.put(path, was);
            }
        });
        if (!changed.isEmpty()) {
            Subject.asNumbered(DesignReader.read(design.folder(), after)); // must still be a design
            Turn.take(workbench.folder(), () -> {
                requireUnchanged(old);
                History history = history(id);
                history.see(before);
                history.did(label, old, changed);
                history.write(old, changed);
            });
        }
    }

    /** Takes the last change back; {@code base} as with an edit. */
    public synchronized String undoJson(String id, String body) {
        return move(id, body, History::undo);
    }

    /** Makes the change again that was taken back last. */
    public synchronized String redoJson(String id, String body) {
        return move(id, body, History::redo);
    }

    private String move(String id, String body, Function<History, Optional<History.Move>> way) {
        VersionView base = Requests.read(body, VersionView.class);
        DesignFiles files = DesignFiles.of(design(id));
        requireFresh(files, base.version());
        History history = history(id);
        history.see(files.texts());
        way.apply(history).ifPresent(move -> {
            Turn.take(workbench.folder(), () -> {
                Map<Path, String> old = new LinkedHashMap<>();
                move.texts().keySet().forEach(path -> old.put(path, KeptTexts.read(path)));
                requireFresh(files, base.version());
                history.write(old, move.texts());
                history.moved(move);
            });
        });
        return Json.compact(view(id));
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
        Drawn from = drawn(id, edit.base());
        Map<Path, String> texts = Splices.apply(from.design(), from.files(), from.texts(), edit.steps());
        Subject subject = Subject.asNumbered(DesignReader.readLike(from.design(), texts));
        Scene scene = SceneMaker.of(subject.assembly(), part -> {
            Part saved = from.parts().get(part.name());
            return saved == null || !SceneMaker.looksAlike(saved, part);
        });
        return Json.compact(new Glimpse(
                scene,
                ReportMaker.motion(subject.assembly(), subject.stroke()),
                Questions.askQuickly(subject).stream().map(ReportMaker::finding).toList()));
    }

    /** The saved state that glimpses start from; while something is dragged it is asked for many times a second. */
    private synchronized Drawn drawn(String id, String version) {
        if (!drawn.filter(state -> state.id().equals(id) && state.version().equals(version))
                .isPresent()) {
            Design design = design(id);
            remember(id, design, Subject.asNumbered(design).assembly());
        }
        return drawn.orElseThrow();
    }

    private void remember(String id, Design design, Assembly assembly) {
        Map<String, Part> parts = new HashMap<>();
        assembly.parts().forEach(part -> parts.put(part.name(), part));
        DesignFiles files = DesignFiles.of(design);
        drawn = Optional.of(new Drawn(id, files.version(), design, files, files.texts(), parts));
    }

    private DesignView view(String id) {
        Design design = design(id);
        DesignFiles files = DesignFiles.of(design);
        String version = files.version();
        DesignCheck check = workbench.check(design, version);
        Scene scene = SceneMaker.of(check.subject().assembly());
        remember(id, design, check.subject().assembly());
        History history = history(id);
        try {
            history.see(files.texts());
        } catch (UncheckedIOException e) {
            // A folder that cannot be written to can still be looked at.
        }
        return new DesignView(
                id,
                version,
                scene,
                ReportMaker.of(check),
                ChangeableMaker.of(design, workbench.sharing(id, files.figure())),
                Remedies.mendable(design, check.findings()),
                history.undoLabel().orElse(null),
                history.redoLabel().orElse(null),
                history.told().orElse(null));
    }

    /** A change of several files that was broken off is brought to its end first: half of it may be no design. */
    private Design design(String id) {
        workbench.require(id);
        history(id).finish();
        return workbench.design(id);
    }

    private History history(String id) {
        return histories.computeIfAbsent(id, name -> {
            Path workshop = workbench.folder();
            return new History(
                    workshop,
                    HistoryFolder.ofDesign(workshop, name, workbench::ids),
                    () -> DesignFiles.changeable(workshop.resolve(name)));
        });
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

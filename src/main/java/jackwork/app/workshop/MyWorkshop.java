package jackwork.app.workshop;

import jackwork.app.core.Trials;
import jackwork.app.core.Workbench;
import jackwork.app.history.History;
import jackwork.app.history.HistoryFolder;
import jackwork.app.history.Saving;
import jackwork.app.history.Turn;
import jackwork.app.wire.Json;
import jackwork.app.wire.Report;
import jackwork.app.wire.Requests;
import jackwork.app.wire.SavedException;
import jackwork.app.wire.StaleException;
import jackwork.app.wire.UnknownDesignException;
import jackwork.app.wire.VersionView;
import jackwork.design.DesignException;
import jackwork.design.DesignFiles;
import jackwork.design.Inside;
import jackwork.design.WorkshopFile;
import jackwork.design.WorkshopReader;
import jackwork.make.MakeException;
import jackwork.motion.model.MechanismException;
import jackwork.parts.PartException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * The workshop's own numbers at the page: each with what it rests on, changed one at a time, saved at once, taken back
 * without end. Only what is changed changes in {@code workshop.yaml}, and only after every design that stands on it was
 * tried with the change. Nothing is computed while anything is locked.
 */
public final class MyWorkshop {

    private final Workbench workbench;
    private final Trials trials;
    private final Path file;
    /** Used by one at a time. */
    private final History history;

    public MyWorkshop(Workbench workbench) {
        this.workbench = workbench;
        this.trials = new Trials(workbench);
        this.file = workbench.folder().resolve(WorkshopReader.FILE);
        this.history = new History(
                workbench.folder(), HistoryFolder.ofWorkshop(workbench.folder()), () -> Optional.of(Set.of(file)));
    }

    /**
     * All of it.
     *
     * @throws DesignException when the file cannot be used as it is
     */
    public String viewJson() {
        String text = text();
        return view(text, sections(text));
    }

    /** The state of {@code workshop.yaml}. */
    public String versionJson() {
        return Json.compact(new VersionView(DesignFiles.nameOf(text())));
    }

    /**
     * A design's verdict as the workshop stands, and what it hangs on.
     *
     * @throws UnknownDesignException when the workshop has no such design
     */
    public String verdictJson(String id) {
        try {
            Report report = workbench.shown(id).view().report();
            return Json.compact(new VerdictView(id, report.design(), report.verdict(), report.hangsOn(), ""));
        } catch (DesignException | MechanismException | PartException | MakeException e) {
            return Json.compact(new VerdictView(id, workbench.name(id), null, null, String.valueOf(e.getMessage())));
        }
    }

    /**
     * Saves a change.
     *
     * @param body a {@link WorkshopStep}
     * @throws StaleException when the file has changed since it was decided
     * @throws DesignException when the workshop could not be read, or a design of it not be shown any more; nothing is
     *     saved then
     */
    public String editJson(String body) {
        WorkshopStep step = Requests.read(body, WorkshopStep.class);
        String before = text();
        requireFresh(before, step.base());
        String after = WorkshopSteps.apply(before, step);
        List<WorkshopView.Section> sections = sections(after);
        if (!after.equals(before)) {
            write(before, after, () -> {
                history.see(Map.of(file, before));
                history.did(step.label(), Map.of(file, before), Map.of(file, after));
                Inside.save(workbench.folder(), file, after);
            });
        }
        return saved(after, sections);
    }

    /** Takes the last change back; {@code body} is a {@link VersionView}. */
    public String undoJson(String body) {
        return move(body, History::undo);
    }

    /** Makes the change again that was taken back last. */
    public String redoJson(String body) {
        return move(body, History::redo);
    }

    private String move(String body, Function<History, Optional<History.Move>> way) {
        String before = text();
        requireFresh(before, Requests.read(body, VersionView.class).version());
        Optional<History.Move> found;
        synchronized (history) {
            history.see(Map.of(file, before));
            found = way.apply(history);
        }
        if (found.isEmpty()) {
            return view(before, sections(before));
        }
        History.Move move = found.get();
        String after = move.texts().getOrDefault(file, before);
        List<WorkshopView.Section> sections = sections(after);
        write(before, after, () -> {
            Inside.save(workbench.folder(), file, after);
            history.moved(move);
        });
        return saved(after, sections);
    }

    /** Every design that could be shown must still be: one may stand on a sheet that is to go. */
    private void write(String before, String after, Runnable how) {
        Map<Path, String> changed = Map.of(file, after);
        Trials.Tried designs = touchesDesigns(before, after) ? trials.others("", changed) : trials.othersRead(changed);
        synchronized (history) {
            Turn.take(workbench.folder(), () -> {
                requireFresh(text(), DesignFiles.nameOf(before));
                designs.requireFresh();
                Saving.all(changed, how);
            });
        }
    }

    /** Whether anything changes that designs are worked out with: names, times, money and what is on the shelf are not. */
    private static boolean touchesDesigns(String before, String after) {
        WorkshopFile then;
        try {
            then = WorkshopReader.parse(before);
        } catch (DesignException e) {
            return true;
        }
        WorkshopFile now = WorkshopReader.parse(after);
        WorkshopFile other = new WorkshopFile(
                now.format(),
                now.name(),
                now.currency(),
                then.laser(),
                then.sheets(),
                then.rods(),
                then.cords(),
                then.fits(),
                then.friction(),
                then.finger(),
                then.printer(),
                then.handling(),
                now.have(),
                now.paper(),
                now.maker(),
                now.contact(),
                now.times(),
                now.pay());
        return !other.equals(now);
    }

    private String text() {
        return WorkshopReader.text(workbench.folder());
    }

    private static void requireFresh(String text, String base) {
        if (!DesignFiles.nameOf(text).equals(base)) {
            throw new StaleException();
        }
    }

    private static List<WorkshopView.Section> sections(String text) {
        return WorkshopViewMaker.of(text);
    }

    /** The answer to what was saved just now, never taken for a failure to save. */
    private String saved(String text, List<WorkshopView.Section> sections) {
        try {
            return view(text, sections);
        } catch (RuntimeException e) {
            throw new SavedException(e);
        }
    }

    private String view(String text, List<WorkshopView.Section> sections) {
        WorkshopFile read = WorkshopReader.parse(text);
        synchronized (history) {
            try {
                history.see(Map.of(file, text));
            } catch (UncheckedIOException e) {
                // A folder that cannot be written to can still be looked at.
            }
            return Json.compact(new WorkshopView(
                    DesignFiles.nameOf(text),
                    read.name(),
                    read.currency(),
                    sections,
                    history.undoLabel().orElse(null),
                    history.redoLabel().orElse(null),
                    history.told().orElse(null)));
        }
    }
}

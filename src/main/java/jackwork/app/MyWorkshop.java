package jackwork.app;

import jackwork.design.Design;
import jackwork.design.DesignException;
import jackwork.design.DesignFiles;
import jackwork.design.DesignReader;
import jackwork.design.Inside;
import jackwork.design.WorkshopReader;
import jackwork.make.MakeException;
import jackwork.motion.MechanismException;
import jackwork.parts.PartException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * The workshop's own numbers at the page: each with what it rests on, changed one at a time, saved at once, taken back
 * without end. Only what is changed changes in {@code workshop.yaml}.
 */
public final class MyWorkshop {

    private final Workbench workbench;
    private final Path file;
    private final History history;

    public MyWorkshop(Workbench workbench) {
        this.workbench = workbench;
        this.file = workbench.folder().resolve(WorkshopReader.FILE);
        this.history = new History(
                workbench.folder(), HistoryFolder.ofWorkshop(workbench.folder()), () -> Optional.of(Set.of(file)));
    }

    /**
     * All of it.
     *
     * @throws DesignException when the file cannot be used as it is
     */
    public synchronized String viewJson() {
        return view(text());
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
            Design design = workbench.design(id);
            Report report = ReportMaker.of(
                    workbench.check(design, DesignFiles.of(design).version()));
            return Json.compact(new VerdictView(id, design.name(), report.verdict(), report.hangsOn(), ""));
        } catch (DesignException | MechanismException | PartException | MakeException e) {
            return Json.compact(new VerdictView(id, workbench.name(id), null, null, String.valueOf(e.getMessage())));
        }
    }

    /**
     * Saves a change.
     *
     * @param body a {@link WorkshopStep}
     * @throws StaleException when the file has changed since it was decided
     * @throws DesignException when the workshop, or a design of it, could not be read any more; nothing is saved then
     */
    public synchronized String editJson(String body) {
        WorkshopStep step = Requests.read(body, WorkshopStep.class);
        String before = text();
        requireFresh(before, step.base());
        String after = WorkshopSteps.apply(before, step);
        if (!after.equals(before)) {
            requireDesigns(before, after);
            Turn.take(workbench.folder(), () -> {
                requireFresh(text(), step.base());
                history.see(Map.of(file, before));
                history.did(step.label(), Map.of(file, before), Map.of(file, after));
                Inside.save(workbench.folder(), file, after);
            });
        }
        return view(after);
    }

    /** Takes the last change back; {@code body} is a {@link VersionView}. */
    public synchronized String undoJson(String body) {
        return move(body, History::undo);
    }

    /** Makes the change again that was taken back last. */
    public synchronized String redoJson(String body) {
        return move(body, History::redo);
    }

    private String move(String body, Function<History, Optional<History.Move>> way) {
        String before = text();
        requireFresh(before, Requests.read(body, VersionView.class).version());
        history.see(Map.of(file, before));
        way.apply(history).ifPresent(move -> {
            Turn.take(workbench.folder(), () -> {
                requireFresh(text(), DesignFiles.nameOf(before));
                move.texts().forEach((path, text) -> Inside.save(workbench.folder(), path, text));
                history.moved(move);
            });
        });
        return view(text());
    }

    /** Every design that could be read must still be: one may stand on a sheet that is to go. */
    private void requireDesigns(String before, String after) {
        for (String id : workbench.ids()) {
            Path folder = workbench.folder().resolve(id);
            if (reads(folder, before)) {
                try {
                    DesignReader.read(folder, Map.of(file, after));
                } catch (DesignException e) {
                    throw DesignException.of(
                            WorkshopReader.FILE,
                            "left as it was: " + workbench.name(id) + " could not be read any more. " + e.getMessage());
                }
            }
        }
    }

    private boolean reads(Path folder, String text) {
        try {
            DesignReader.read(folder, Map.of(file, text));
            return true;
        } catch (DesignException e) {
            return false;
        }
    }

    private String text() {
        return WorkshopReader.text(workbench.folder());
    }

    private static void requireFresh(String text, String base) {
        if (!DesignFiles.nameOf(text).equals(base)) {
            throw new StaleException();
        }
    }

    private String view(String text) {
        try {
            history.see(Map.of(file, text));
        } catch (UncheckedIOException e) {
            // A folder that cannot be written to can still be looked at.
        }
        return Json.compact(new WorkshopView(
                DesignFiles.nameOf(text),
                WorkshopReader.parse(text).name(),
                WorkshopReader.parse(text).currency(),
                WorkshopViewMaker.of(text),
                history.undoLabel().orElse(null),
                history.redoLabel().orElse(null),
                history.told().orElse(null)));
    }
}

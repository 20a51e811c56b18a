package jackwork.app.core;

import jackwork.app.history.History;
import jackwork.app.history.HistoryFolder;
import jackwork.design.DesignFiles;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/** The histories of a workshop's designs, each used by one at a time; no design waits for another's. */
final class Histories {

    private final Workbench workbench;
    private final Map<String, History> all = new ConcurrentHashMap<>();

    Histories(Workbench workbench) {
        this.workbench = workbench;
    }

    /** For looking and writing alone: nothing is computed meanwhile. */
    <T> T with(String design, Function<History, T> use) {
        History history = all.computeIfAbsent(design, this::history);
        synchronized (history) {
            return use.apply(history);
        }
    }

    private History history(String design) {
        Path workshop = workbench.folder();
        return new History(
                workshop,
                HistoryFolder.ofDesign(workshop, design, workbench::ids),
                () -> DesignFiles.changeable(workshop.resolve(design)));
    }
}

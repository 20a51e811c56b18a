package jackwork.app;

import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/** The histories of a workshop's designs, each used by one at a time; no design waits for another's. */
final class Histories {

    private final Path workshop;
    private final Map<String, History> all = new ConcurrentHashMap<>();

    Histories(Path workshop) {
        this.workshop = workshop;
    }

    /** For looking and writing alone: nothing is computed meanwhile. */
    <T> T with(String design, Function<History, T> use) {
        History history = all.computeIfAbsent(design, id -> new History(workshop, id));
        synchronized (history) {
            return use.apply(history);
        }
    }
}

package jackwork.app.core;

import jackwork.design.DesignException;
import jackwork.design.DesignFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/** Each design as it could be shown last, with the texts of its files: what a slip of the pen elsewhere is taken back to. */
final class LastShown {

    private final Map<String, State> states = new ConcurrentHashMap<>();

    private record State(DesignFiles files, List<Path> places, Shown shown, Map<Path, String> texts) {

        boolean still() {
            // Asked for anew: another workshop's file may stand nearer by now.
            DesignFiles now = DesignFiles.of(shown.check().design());
            return now.places().equals(places)
                    && now.version().equals(shown.view().version());
        }
    }

    /** Unless its files have changed again since it was worked out. */
    void keep(String id, Shown shown) {
        State known = states.get(id);
        String version = shown.view().version();
        if (known != null && known.shown().view().version().equals(version)) {
            return;
        }
        DesignFiles files = DesignFiles.of(shown.check().design());
        try {
            Map<Path, String> texts = texts(files.all());
            if (files.version(texts).equals(version)) {
                states.put(id, new State(files, files.places(), shown, texts));
            }
        } catch (DesignException e) {
            // Changed again already; the next look tells.
        }
    }

    /** The state itself, where all files are as they were then: it need not even be read. */
    Optional<Shown> still(String id) {
        return Optional.ofNullable(states.get(id)).filter(State::still).map(State::shown);
    }

    Optional<DesignFiles> files(String id) {
        return Optional.ofNullable(states.get(id)).map(State::files);
    }

    @Nullable
    DesignView view(String id) {
        State state = states.get(id);
        return state == null ? null : state.shown().view();
    }

    /**
     * The texts that were others when it was shown last, as they were then.
     *
     * @throws DesignException when one is gone, or no text any more
     */
    Map<Path, String> changed(String id) {
        State state = states.get(id);
        Map<Path, String> changed = new LinkedHashMap<>();
        if (state != null) {
            Map<Path, String> now = texts(state.texts().keySet());
            state.texts().forEach((path, text) -> {
                if (!text.equals(now.get(path))) {
                    changed.put(path, text);
                }
            });
        }
        return changed;
    }

    /** Those of a design's own YAML files and drawings; the workshop's file has a history of its own. */
    static Map<Path, String> texts(Iterable<Path> paths) {
        Map<Path, String> texts = new LinkedHashMap<>();
        for (Path path : paths) {
            String name = String.valueOf(path.getFileName());
            if (name.endsWith(".svg") || (name.endsWith(".yaml") && !name.equals("workshop.yaml"))) {
                try {
                    texts.put(path, Files.readString(path));
                } catch (IOException e) {
                    throw DesignException.of(
                            path.toString(),
                            "cannot be read as a text (" + e.getMessage() + "); put it back as it was");
                }
            }
        }
        return texts;
    }
}

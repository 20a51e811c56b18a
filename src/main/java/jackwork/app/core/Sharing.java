package jackwork.app.core;

import jackwork.design.DesignException;
import jackwork.design.DesignReader;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** Which designs stand on one figure file; each {@code design.yaml} is parsed again only when it is another text. */
final class Sharing {

    private final Path workshop;
    private final Map<String, Named> known = new ConcurrentHashMap<>();

    /** @param figure empty where the text cannot be read */
    private record Named(String text, Optional<Path> figure, String name) {}

    Sharing(Path workshop) {
        this.workshop = workshop;
    }

    /** Names of those designs whose figure is that file. */
    List<String> of(List<String> ids, Path figure) {
        return ids.stream()
                .map(this::named)
                .filter(named -> named.figure().filter(figure::equals).isPresent())
                .map(Named::name)
                .toList();
    }

    private Named named(String id) {
        Path folder = workshop.resolve(id);
        String text;
        try {
            text = DesignReader.text(folder);
        } catch (DesignException e) {
            return new Named("", Optional.empty(), id);
        }
        Named last = known.get(id);
        if (last == null || !last.text().equals(text)) {
            last = new Named(text, DesignReader.figureOf(folder), name(id, text));
            known.put(id, last);
        }
        return Objects.requireNonNull(last);
    }

    private static String name(String id, String text) {
        try {
            return DesignReader.parse(text).name();
        } catch (DesignException e) {
            return id + " (cannot be read)";
        }
    }
}

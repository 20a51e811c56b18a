package jackwork.design;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.Node;

/** One YAML file as a tree with marks, and the complaints about it. Hostile until bound. */
final class YamlFile {

    private static final int MOST_BYTES = 1 << 20;

    private final String name;
    private final Node root;
    /** Nodes that another file's {@code change} put here. */
    private final IdentityHashMap<Node, YamlFile> lent = new IdentityHashMap<>();
    /** Where each value stands: dotted path of keys and indices. */
    private final Map<String, Node> places = new HashMap<>();

    private final List<Problem> problems;

    private YamlFile(String name, Node root, List<Problem> problems) {
        this.name = name;
        this.root = root;
        this.problems = problems;
    }

    /** @param problems collects what is wrong with this and other files of the same design */
    static YamlFile read(Path path, List<Problem> problems) {
        String name = path.getFileName().toString();
        return parse(name, text(path, name), problems);
    }

    /** The same from text that is in hand. */
    static YamlFile parse(String name, String text, List<Problem> problems) {
        LoadSettings settings = LoadSettings.builder()
                .setLabel(name)
                .setCodePointLimit(MOST_BYTES)
                .setMaxAliasesForCollections(50)
                .setAllowRecursiveKeys(false)
                .build();
        try {
            Optional<Node> root = new Compose(settings).composeString(text);
            return new YamlFile(
                    name,
                    root.orElseThrow(() -> DesignException.of(name, "is empty; expected keys and values")),
                    problems);
        } catch (MarkedYamlEngineException e) {
            Mark mark = e.getProblemMark().orElse(null);
            int line = mark == null ? 0 : mark.getLine() + 1;
            int column = mark == null ? 0 : mark.getColumn() + 1;
            throw new DesignException(
                    List.of(
                            new Problem(
                                    name,
                                    line,
                                    column,
                                    "not YAML: " + e.getProblem()
                                            + "; expected `key: value`, lists in [ ] and entries in { }, each closed, with spaces and no tabs"
                                            + " before a key; put words that hold : or # in quotes, and look at the line before as well")));
        } catch (YamlEngineException e) {
            throw DesignException.of(
                    name,
                    "not YAML that can be read: " + e.getMessage()
                            + "; save it as plain UTF-8 text, without control characters");
        } catch (StackOverflowError e) {
            throw DesignException.of(name, "is nested far too deeply");
        }
    }

    static String text(Path path, String name) {
        try {
            if (!Files.isRegularFile(path)) {
                throw DesignException.of(path.toString(), "no such file");
            }
            if (Files.size(path) > MOST_BYTES) {
                throw DesignException.of(name, "is larger than 1 MiB; a design file is a few kilobytes");
            }
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(Files.readAllBytes(path)))
                    .toString();
        } catch (CharacterCodingException e) {
            throw DesignException.of(name, "is not UTF-8 text");
        } catch (IOException e) {
            throw DesignException.of(path.toString(), "cannot be read: " + e.getMessage());
        }
    }

    String name() {
        return name;
    }

    /** How many complaints there are by now, about this and the other files of the design. */
    int problems() {
        return problems.size();
    }

    Node root() {
        return root;
    }

    void place(String path, Node node) {
        places.put(path, node);
    }

    void lend(Node node, YamlFile from) {
        lent.put(node, from);
    }

    void problem(Node node, String message) {
        problems.add(told(node, message));
    }

    /** One complaint alone, that nothing else is told beside. */
    DesignException refused(Node node, String message) {
        return new DesignException(List.of(told(node, message)));
    }

    private Problem told(Node node, String message) {
        YamlFile owner = lent.getOrDefault(node, this);
        Mark mark = node.getStartMark().orElse(null);
        int line = mark == null ? 0 : mark.getLine() + 1;
        int column = mark == null ? 0 : mark.getColumn() + 1;
        return new Problem(owner.name, line, column, message);
    }

    /** About the value at a dotted path, or the nearest value above it. */
    void problem(String path, String message) {
        String at = path;
        while (!places.containsKey(at) && at.contains(".")) {
            at = at.substring(0, at.lastIndexOf('.'));
        }
        problem(places.getOrDefault(at, root), message);
    }

    /** Stops here when anything was wrong so far. */
    static void requireNone(List<Problem> problems) {
        if (!problems.isEmpty()) {
            throw new DesignException(new ArrayList<>(problems));
        }
    }
}

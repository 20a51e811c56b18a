package jackwork.design;

import jackwork.stock.Uncertain;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.CollectionNode;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * Puts a measured value into the text of {@code workshop.yaml} and touches nothing else: comments and order stay byte for
 * byte. What comes out is read again; when any other value changed with it, nothing is returned.
 */
public final class WorkshopEdit {

    private final String text;
    private final Node root;
    private final List<Splice> splices = new ArrayList<>();

    private record Splice(int from, int to, String words) {}

    private WorkshopEdit(String text) {
        this.text = text;
        this.root = YamlFile.parse(WorkshopReader.FILE, text, new ArrayList<>()).root();
    }

    /**
     * @param path of a number that the file has: {@code laser.kerf}
     * @throws DesignException when it has none there, or it cannot be changed without changing others
     */
    public static String with(String text, String path, Uncertain value) {
        WorkshopEdit edit = new WorkshopEdit(text);
        Node node = edit.root;
        for (String word : path.split("\\.", -1)) {
            node = child(node, word);
            if (node == null) {
                throw DesignException.of(WorkshopReader.FILE, "has no " + path + " to put a measured value in");
            }
        }
        edit.put(node, path, value);
        String after = edit.spliced();
        YamlCheck.onlyChanged(text, after, path, value);
        return after;
    }

    /** Friction of two surfaces: in place of what the file has for them, in either order, else as a new entry. */
    public static String withFriction(String text, String a, String b, Uncertain value) {
        WorkshopEdit edit = new WorkshopEdit(text);
        Node list = child(edit.root, "friction");
        int at = list == null ? -1 : pair(list, a, b);
        if (at >= 0) {
            return with(text, "friction." + at + ".coefficient", value);
        }
        String entry = "{between: [" + quoted(a) + ", " + quoted(b) + "], coefficient: " + words(value) + "}";
        String end = edit.lineEnd();
        if (list == null) {
            String close = text.isEmpty() || text.endsWith("\n") ? "" : end;
            String after = text + close + end + "friction:" + end + "  - " + entry + end;
            YamlCheck.onlyAdded(text, after, a, b, value);
            return after;
        }
        if (!(list instanceof SequenceNode sequence)) {
            throw DesignException.of(WorkshopReader.FILE, "friction is no list");
        }
        edit.requireAlone(sequence, "friction");
        if (sequence.getFlowStyle() == FlowStyle.FLOW) {
            int close = edit.to(sequence) - 1;
            edit.splices.add(new Splice(close, close, (sequence.getValue().isEmpty() ? "" : ", ") + entry));
        } else {
            // Before the first: what stands behind an entry, a comment say, is its own.
            int first = edit.from(sequence);
            int column = sequence.getStartMark().orElseThrow().getColumn();
            edit.splices.add(new Splice(first, first, "- " + entry + end + " ".repeat(column)));
        }
        String after = edit.spliced();
        YamlCheck.onlyAdded(text, after, a, b, value);
        return after;
    }

    private void put(Node node, String path, Uncertain value) {
        requireAlone(node, path);
        if (node instanceof ScalarNode) {
            splices.add(new Splice(from(node), to(node), words(value)));
            return;
        }
        if (!(node instanceof MappingNode mapping)) {
            throw DesignException.of(WorkshopReader.FILE, path + " is no number");
        }
        Map<String, String> missing = new LinkedHashMap<>(fields(value));
        for (NodeTuple tuple : mapping.getValue()) {
            String key = tuple.getKeyNode() instanceof ScalarNode scalar ? scalar.getValue() : "";
            String words = missing.remove(key);
            if (words != null) {
                requireAlone(tuple.getValueNode(), path + "." + key);
                splices.add(new Splice(from(tuple.getValueNode()), to(tuple.getValueNode()), words));
            }
        }
        missing.forEach((key, words) -> add(mapping, key + ": " + words));
    }

    private void add(MappingNode mapping, String entry) {
        if (mapping.getFlowStyle() == FlowStyle.FLOW) {
            int close = to(mapping) - 1;
            splices.add(new Splice(close, close, ", " + entry));
        } else {
            Node first = mapping.getValue().get(0).getKeyNode();
            int column = first.getStartMark().orElseThrow().getColumn();
            splices.add(new Splice(from(first), from(first), entry + lineEnd() + " ".repeat(column)));
        }
    }

    /** An anchor may stand for this place elsewhere, and blocks of text end where no one can tell. */
    private void requireAlone(Node node, String path) {
        boolean block = node instanceof ScalarNode scalar
                && (scalar.getScalarStyle() == ScalarStyle.LITERAL || scalar.getScalarStyle() == ScalarStyle.FOLDED);
        boolean strange = node instanceof CollectionNode<?> collection
                && collection.getFlowStyle() == FlowStyle.BLOCK
                && collection.getValue().isEmpty();
        if (node.getAnchor().isPresent() || block || strange) {
            Mark mark = node.getStartMark().orElseThrow();
            throw new DesignException(List.of(new Problem(
                    WorkshopReader.FILE,
                    mark.getLine() + 1,
                    mark.getColumn() + 1,
                    path + " is written with " + (block ? "a block of text" : "an anchor or an alias")
                            + ", which only you can change; write the value out, or put this in yourself")));
        }
    }

    private String spliced() {
        StringBuilder out = new StringBuilder(text);
        List<Splice> last = new ArrayList<>(splices);
        // From the end, so that places before stay; of several at one place the last first, so that it ends up last.
        Collections.reverse(last);
        last.sort((p, q) -> Integer.compare(q.from(), p.from()));
        for (Splice splice : last) {
            out.replace(splice.from(), splice.to(), splice.words());
        }
        return out.toString();
    }

    private static Map<String, String> fields(Uncertain value) {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("value", DesignEdit.words(value.value()));
        fields.put("low", DesignEdit.words(value.low()));
        fields.put("high", DesignEdit.words(value.high()));
        fields.put("basis", value.basis().name().toLowerCase(java.util.Locale.ROOT));
        fields.put("source", "\"" + value.source().replace("\\", "\\\\").replace("\"", "\\\"") + "\"");
        return fields;
    }

    /** As an entry is written. */
    public static String words(Uncertain value) {
        List<String> parts = new ArrayList<>();
        fields(value).forEach((key, words) -> parts.add(key + ": " + words));
        return "{" + String.join(", ", parts) + "}";
    }

    private static String quoted(String word) {
        return word.matches("[a-z][a-z0-9-]*")
                ? word
                : "\"" + word.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }

    private static int pair(Node list, String a, String b) {
        if (list instanceof SequenceNode sequence) {
            for (int i = 0; i < sequence.getValue().size(); i++) {
                Node between = child(sequence.getValue().get(i), "between");
                if (between instanceof SequenceNode two && two.getValue().size() == 2) {
                    String one = scalar(two.getValue().get(0));
                    String other = scalar(two.getValue().get(1));
                    if ((one.equals(a) && other.equals(b)) || (one.equals(b) && other.equals(a))) {
                        return i;
                    }
                }
            }
        }
        return -1;
    }

    private static String scalar(Node node) {
        return node instanceof ScalarNode scalar ? scalar.getValue() : "";
    }

    private static @Nullable Node child(Node node, String word) {
        if (node instanceof MappingNode mapping) {
            Optional<NodeTuple> found = mapping.getValue().stream()
                    .filter(tuple -> scalar(tuple.getKeyNode()).equals(word))
                    .findFirst();
            return found.map(NodeTuple::getValueNode).orElse(null);
        }
        if (node instanceof SequenceNode sequence && word.matches("\\d{1,4}")) {
            int index = Integer.parseInt(word);
            return index < sequence.getValue().size() ? sequence.getValue().get(index) : null;
        }
        return null;
    }

    private String lineEnd() {
        return text.contains("\r\n") ? "\r\n" : "\n";
    }

    private int from(Node node) {
        return index(node.getStartMark().orElseThrow());
    }

    private int to(Node node) {
        return index(node.getEndMark().orElseThrow());
    }

    /** Marks count code points. */
    private int index(Mark mark) {
        return text.offsetByCodePoints(0, mark.getIndex());
    }
}

package jackwork.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
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
import org.snakeyaml.engine.v2.nodes.Tag;

/**
 * Splices single values of a YAML text in and out; every other character stays, comments and order with them. What was
 * spliced is read again and must be what was meant, else nothing is changed and the reason is told.
 *
 * <p>A path is a list of words: keys of mappings, numbers (from 0) of sequences.
 */
public final class YamlEdit {

    private final String name;
    private final String text;
    private final Node root;

    private YamlEdit(String name, String text) {
        this.name = name;
        this.text = text;
        this.root = YamlFile.parse(name, text, new ArrayList<>()).root();
    }

    /**
     * Puts a value where there may be one already. A key that is not there is added to its mapping, at the end; so is a
     * mapping of the first rank that it belongs into. In a sequence, the number after the last adds to it.
     *
     * @param name of the file, for what is told
     * @param value as it is written: {@code 12.5}, {@code [3, 4]}, {@code {on: body, mass: 5}}
     * @throws DesignException when the text cannot be spliced there
     */
    public static String set(String name, String text, List<String> path, String value) {
        YamlEdit edit = new YamlEdit(name, text);
        return edit.verified(path, value, edit.put(path, value));
    }

    /**
     * Takes a value out, with its key; a mapping of the first rank that would be left with nothing goes with it.
     *
     * @throws DesignException when there is no such value, or the text cannot be spliced there
     */
    public static String remove(String name, String text, List<String> path) {
        YamlEdit edit = new YamlEdit(name, text);
        return edit.verified(path, null, edit.take(path));
    }

    static String renameKey(String name, String text, List<String> path, String key) {
        if (!path.isEmpty()) {
            throw new UnsupportedOperationException(name + text + key);
        }
        return text;
    }

    static boolean has(String name, String text, List<String> path) {
        return valueAt(name, text, path) != null;
    }

    /** What stands at a path, as plain values; null when nothing does. */
    static @Nullable Object valueAt(String name, String text, List<String> path) {
        Node node = new YamlEdit(name, text).root;
        for (String word : path) {
            Node next = child(node, word);
            if (next == null) {
                return null;
            }
            node = next;
        }
        return YamlValues.of(node);
    }

    /** All that a text says, as plain values. */
    static Object values(String name, String text) {
        return YamlValues.of(new YamlEdit(name, text).root);
    }

    private String put(List<String> path, String value) {
        Node parent = parent(path, value);
        if (parent == null) {
            String key = path.get(0);
            String end = text.isEmpty() || text.endsWith("\n") ? "" : newline();
            return text + end + newline() + key + ":" + newline() + "  " + path.get(1) + ": " + value + newline();
        }
        Node old = child(parent, last(path));
        if (old != null) {
            checkPlain(old, path);
            return old.getTag().equals(Tag.NULL) && start(old) == end(old)
                    ? text.substring(0, start(old)) + " " + value + text.substring(end(old))
                    : text.substring(0, start(old)) + value + text.substring(end(old));
        }
        checkPlain(parent, path);
        return add(parent, parent instanceof SequenceNode ? value : last(path) + ": " + value, path);
    }

    /** Where the path's last word belongs; null when its mapping of the first rank is not there yet. */
    private @Nullable Node parent(List<String> path, String value) {
        Node node = root;
        for (int i = 0; i < path.size() - 1; i++) {
            Node next = child(node, path.get(i));
            if (next == null && i == 0 && path.size() == 2 && root instanceof MappingNode mapping && isBlock(mapping)) {
                return null;
            }
            if (next == null) {
                throw refused(path, "there is no \"" + path.get(i) + "\" to put " + value + " into");
            }
            node = next;
        }
        return node;
    }

    private String add(Node parent, String entry, List<String> path) {
        if (parent instanceof ScalarNode scalar && scalar.getTag().equals(Tag.NULL)) {
            int at = endOfLine(start(parent));
            return text.substring(0, at) + newline() + "  " + entry + text.substring(at);
        }
        if (!(parent instanceof CollectionNode<?> collection)) {
            throw refused(path, "a single value stands there, nothing can be added to it");
        }
        if (!isBlock(collection)) {
            int close = end(parent) - 1;
            List<Node> values = values(parent);
            int at = values.isEmpty() ? close : end(values.get(values.size() - 1));
            return text.substring(0, at) + (values.isEmpty() ? "" : ", ") + entry + text.substring(at);
        }
        List<Node> values = values(parent);
        Node lastValue = values.get(values.size() - 1);
        int at = endOfLine(endOfContent(lastValue));
        String dash = parent instanceof SequenceNode ? "- " : "";
        String indent = " ".repeat(parent.getStartMark().orElseThrow().getColumn());
        return text.substring(0, at) + newline() + indent + dash + entry + text.substring(at);
    }

    private String take(List<String> path) {
        Node parent = root;
        for (String word : path.subList(0, path.size() - 1)) {
            parent = Objects.requireNonNullElse(child(parent, word), root);
        }
        Node old = child(parent, last(path));
        if (old == null) {
            throw refused(path, "it is not there");
        }
        checkPlain(old, path);
        checkPlain(parent, path);
        if (isBlock((CollectionNode<?>) parent)) {
            boolean empties = values(parent).size() == 1 && path.size() == 2;
            List<String> whole = empties ? path.subList(0, 1) : path;
            Node first = empties ? parent : old;
            int from = startOfLine(start(key(empties ? root : parent, last(whole), first)));
            int to = Math.min(
                    text.length(), endOfLine(endOfContent(first)) + newline().length());
            return text.substring(0, from) + text.substring(to);
        }
        return takeFromFlow(parent, old, path);
    }

    private String takeFromFlow(Node parent, Node old, List<String> path) {
        List<Node> values = values(parent);
        int number = values.indexOf(old);
        int from = start(key(parent, last(path), old));
        int to = end(old);
        if (number < values.size() - 1) {
            while (to < text.length() && text.charAt(to) != ',') {
                to++;
            }
            to++;
            while (to < text.length() && text.charAt(to) == ' ') {
                to++;
            }
        } else if (number > 0) {
            from = end(values.get(number - 1));
        }
        if (text.substring(from, to)
                .replace(text.substring(start(old), end(old)), "")
                .contains("#")) {
            throw refused(path, "a comment stands between it and its neighbour; take it out in an editor");
        }
        return text.substring(0, from) + text.substring(to);
    }

    /** What was spliced must read as the old text with that one change. */
    private String verified(List<String> path, @Nullable String value, String spliced) {
        if (value != null && value.lines().count() != 1) {
            throw refused(path, "its new value must be written on one line");
        }
        Object meant = value == null
                ? YamlValues.without(YamlValues.of(root), path)
                : YamlValues.with(YamlValues.of(root), path, read(value));
        Object read;
        try {
            read = read(spliced);
        } catch (DesignException e) {
            read = "";
        }
        if (!Objects.equals(meant, read)) {
            throw refused(path, "it is written in a way that cannot be changed from here; change it in an editor");
        }
        return spliced;
    }

    private Object read(String yaml) {
        return YamlValues.of(YamlFile.parse(name, yaml, new ArrayList<>()).root());
    }

    private static @Nullable Node child(Node node, String word) {
        if (node instanceof MappingNode mapping) {
            return mapping.getValue().stream()
                    .filter(tuple -> YamlValues.key(tuple).equals(word))
                    .map(NodeTuple::getValueNode)
                    .findFirst()
                    .orElse(null);
        }
        if (node instanceof SequenceNode sequence && word.matches("\\d{1,4}")) {
            int number = Integer.parseInt(word);
            return number < sequence.getValue().size() ? sequence.getValue().get(number) : null;
        }
        return null;
    }

    /** The key's node in a mapping, the value's own in a sequence. */
    private static Node key(Node parent, String word, Node value) {
        if (parent instanceof MappingNode mapping) {
            return mapping.getValue().stream()
                    .filter(tuple -> YamlValues.key(tuple).equals(word))
                    .map(NodeTuple::getKeyNode)
                    .findFirst()
                    .orElse(value);
        }
        return value;
    }

    private static List<Node> values(Node node) {
        if (node instanceof MappingNode mapping) {
            return mapping.getValue().stream().map(NodeTuple::getValueNode).toList();
        }
        return node instanceof SequenceNode sequence ? sequence.getValue() : List.of();
    }

    private static boolean isBlock(CollectionNode<?> node) {
        return node.getFlowStyle() == FlowStyle.BLOCK;
    }

    private static String last(List<String> path) {
        return path.get(path.size() - 1);
    }

    /** An anchored value is the value of other places too. */
    private void checkPlain(Node node, List<String> path) {
        if (node.getAnchor().isPresent() || isSharedAt(node, path)) {
            throw refused(path, "it is shared by an anchor (&) or alias (*); write it out in an editor first");
        }
    }

    /** Whether a value stands before its own key or its neighbour: then it stands elsewhere, and is an alias here. */
    private boolean isSharedAt(Node node, List<String> path) {
        Node above = root;
        for (String word : path) {
            Node next = child(above, word);
            if (next == null) {
                return false;
            }
            if (next.getAnchor().isPresent() || start(next) < start(key(above, word, next))) {
                return true;
            }
            if (next.equals(node)) {
                return false;
            }
            above = next;
        }
        return false;
    }

    /** Behind the last character that belongs to a value; a block's own mark stands behind its comments as well. */
    private int endOfContent(Node node) {
        List<Node> values = values(node);
        if (node instanceof CollectionNode<?> collection && isBlock(collection) && !values.isEmpty()) {
            return endOfContent(values.get(values.size() - 1));
        }
        int end = end(node);
        boolean folds = node instanceof ScalarNode scalar
                && (scalar.getScalarStyle() == ScalarStyle.LITERAL || scalar.getScalarStyle() == ScalarStyle.FOLDED);
        return folds ? Math.max(0, end - 1) : end;
    }

    private int startOfLine(int at) {
        return text.lastIndexOf('\n', at - 1) + 1;
    }

    /** Before the line's end. */
    private int endOfLine(int at) {
        int feed = text.indexOf('\n', at);
        int end = feed < 0 ? text.length() : feed;
        return end > at && text.charAt(end - 1) == '\r' ? end - 1 : end;
    }

    private String newline() {
        return text.contains("\r\n") ? "\r\n" : "\n";
    }

    private int start(Node node) {
        return index(node.getStartMark().orElseThrow());
    }

    private int end(Node node) {
        return index(node.getEndMark().orElseThrow());
    }

    /** Marks count code points. */
    private int index(Mark mark) {
        return text.offsetByCodePoints(0, mark.getIndex());
    }

    private DesignException refused(List<String> path, String reason) {
        return DesignException.of(name, "\"" + String.join(".", path) + "\" is left as it is: " + reason);
    }
}

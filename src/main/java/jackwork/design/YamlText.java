package jackwork.design;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
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

/** A YAML text with its tree: where values and lines begin and end. All places are indices into the text. */
final class YamlText {

    private final String text;
    private final Node root;
    /** Marks count code points; where each of them begins. */
    private final int[] begins;

    /** @throws DesignException when it is not YAML */
    YamlText(String name, String text) {
        this.text = text;
        this.root = YamlFile.parse(name, text, new ArrayList<>()).root();
        this.begins = IntStream.rangeClosed(0, text.length())
                .filter(at -> at == 0 || at == text.length() || !isInside(at))
                .toArray();
    }

    private boolean isInside(int at) {
        return Character.isLowSurrogate(text.charAt(at)) && Character.isHighSurrogate(text.charAt(at - 1));
    }

    Node root() {
        return root;
    }

    /** What stands at a path; null when nothing does. */
    @Nullable
    Node at(List<String> path) {
        Node node = root;
        for (String word : path) {
            Node next = child(node, word);
            if (next == null) {
                return null;
            }
            node = next;
        }
        return node;
    }

    /** The key, or the item, at whose place a value stands; null when none does. */
    @Nullable
    Node head(List<String> path) {
        Node above = at(path.subList(0, path.size() - 1));
        int number = above == null ? -1 : number(above, path.get(path.size() - 1));
        return above == null || number < 0 ? null : heads(above).get(number);
    }

    static @Nullable Node child(Node node, String word) {
        int number = number(node, word);
        return number < 0 ? null : items(node).get(number);
    }

    /** Which entry of a collection goes by a word, counted from 0; -1 when none does. */
    static int number(Node node, String word) {
        if (node instanceof MappingNode mapping) {
            return mapping.getValue().stream().map(YamlValues::key).toList().indexOf(word);
        }
        int number = node instanceof SequenceNode && word.matches("\\d{1,4}") ? Integer.parseInt(word) : -1;
        return number < items(node).size() ? number : -1;
    }

    /** Keys of a mapping, values of a sequence: what its entries begin with. */
    static List<Node> heads(Node node) {
        return node instanceof MappingNode mapping
                ? mapping.getValue().stream().map(NodeTuple::getKeyNode).toList()
                : items(node);
    }

    static List<Node> items(Node node) {
        if (node instanceof MappingNode mapping) {
            return mapping.getValue().stream().map(NodeTuple::getValueNode).toList();
        }
        return node instanceof SequenceNode sequence ? sequence.getValue() : List.of();
    }

    static boolean isBlock(Node node) {
        return node instanceof CollectionNode<?> collection && collection.getFlowStyle() == FlowStyle.BLOCK;
    }

    /** Text over several lines, of which no one can tell from the marks where it ends. */
    static boolean isBlockOfText(Node node) {
        return node instanceof ScalarNode scalar
                && (scalar.getScalarStyle() == ScalarStyle.LITERAL || scalar.getScalarStyle() == ScalarStyle.FOLDED);
    }

    int start(Node node) {
        return begins[node.getStartMark().orElseThrow().getIndex()];
    }

    int end(Node node) {
        return begins[node.getEndMark().orElseThrow().getIndex()];
    }

    static int column(Node node) {
        return node.getStartMark().map(Mark::getColumn).orElseThrow();
    }

    /** Where an entry of a collection begins: at its key, or at its dash. */
    int entryStart(Node collection, int number) {
        int head = start(heads(collection).get(number));
        return collection instanceof SequenceNode && isBlock(collection) ? text.lastIndexOf('-', head - 1) : head;
    }

    /** Behind the last letter that belongs to a value; a block's own mark stands behind its comments as well. */
    int contentEnd(Node node) {
        List<Node> values = items(node);
        if (isBlock(node) && !values.isEmpty()) {
            Node head = heads(node).get(values.size() - 1);
            Node value = values.get(values.size() - 1);
            // A value that stands before its key stands elsewhere; here is an alias, on the key's line.
            return start(value) < start(head) ? end(head) : contentEnd(value);
        }
        return isBlockOfText(node) ? endOfBlock(node) : end(node);
    }

    /** Without the empty lines below it, unless they are meant ({@code |+}). */
    private int endOfBlock(Node node) {
        int end = end(node) - 1;
        boolean keeps = text.substring(start(node), lineEnd(start(node))).matches("[|>]\\d?\\+.*");
        while (!keeps && end > start(node) && Character.isWhitespace(text.charAt(end - 1))) {
            end--;
        }
        return end;
    }

    /** Whether comments stand between a value's first letter and its last. */
    boolean hasComment(Node node) {
        BitSet words = new BitSet(text.length());
        collectWords(node, words, Collections.newSetFromMap(new IdentityHashMap<>()));
        int end = contentEnd(node);
        for (int at = text.indexOf('#', start(node)); at >= 0 && at < end; at = text.indexOf('#', at + 1)) {
            if (!words.get(at)) {
                return true;
            }
        }
        return false;
    }

    private void collectWords(Node node, BitSet words, Set<Node> seen) {
        if (!seen.add(node)) {
            return;
        }
        if (node instanceof ScalarNode) {
            int first = isBlockOfText(node) ? nextLine(start(node)) : start(node);
            words.set(first, Math.max(first, end(node)));
        }
        heads(node).forEach(head -> collectWords(head, words, seen));
        items(node).forEach(value -> collectWords(value, words, seen));
    }

    int lineStart(int at) {
        return text.lastIndexOf('\n', at - 1) + 1;
    }

    /** Before the line's end. */
    int lineEnd(int at) {
        int feed = text.indexOf('\n', at);
        int end = feed < 0 ? text.length() : feed;
        return end > at && text.charAt(end - 1) == '\r' ? end - 1 : end;
    }

    int nextLine(int at) {
        int feed = text.indexOf('\n', at);
        return feed < 0 ? text.length() : feed + 1;
    }

    /** How the line ends that a place is on; the last one as the others do. */
    String newline(int at) {
        int end = lineEnd(at);
        int next = nextLine(at);
        if (end < next) {
            return text.substring(end, next);
        }
        return text.contains("\r\n") ? "\r\n" : "\n";
    }

    boolean isBlank(int from, int to) {
        return text.substring(from, to).isBlank();
    }

    /** The text with other words in place of some. */
    String with(int from, int to, String words) {
        return text.substring(0, from) + words + text.substring(to);
    }
}

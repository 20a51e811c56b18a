package jackwork.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** Puts numbers into the text of a design's {@code change}, and touches nothing else: comments stay. */
public final class DesignEdit {

    private DesignEdit() {}

    /** @param numbers by their path, {@code box.lever.throw} */
    public static String with(String text, Map<String, Double> numbers) {
        String now = text;
        for (Map.Entry<String, Double> number : numbers.entrySet()) {
            now = with(now, number.getKey(), words(number.getValue()));
        }
        return now;
    }

    /** The same with words: {@code box.parts.hub-far.printed}. */
    public static String withWords(String text, Map<String, String> words) {
        String now = text;
        for (Map.Entry<String, String> word : words.entrySet()) {
            now = with(now, word.getKey(), word.getValue());
        }
        return now;
    }

    /** As it is written: no more places than can be cut. */
    public static String words(double value) {
        String words = String.format(Locale.ROOT, "%.3f", value);
        return words.replaceAll("0+$", "").replaceAll("\\.$", "");
    }

    private static String with(String text, String path, String value) {
        List<Problem> problems = new ArrayList<>();
        Node root = YamlFile.parse(DesignReader.FILE, text, problems).root();
        MappingNode change = change(root);
        if (change == null) {
            String end = text.isEmpty() || text.endsWith("\n") ? "" : "\n";
            return text + end + "\nchange:\n  " + path + ": " + value + "\n";
        }
        for (NodeTuple tuple : change.getValue()) {
            if (tuple.getKeyNode() instanceof ScalarNode key && key.getValue().equals(path)) {
                int from = index(text, tuple.getValueNode().getStartMark().orElseThrow());
                int to = index(text, tuple.getValueNode().getEndMark().orElseThrow());
                return text.substring(0, from) + value + text.substring(to);
            }
        }
        if (change.getFlowStyle() == FlowStyle.FLOW) {
            int close = index(text, change.getEndMark().orElseThrow()) - 1;
            String comma = change.getValue().isEmpty() ? "" : ", ";
            return text.substring(0, close) + comma + path + ": " + value + text.substring(close);
        }
        // Before the first entry: what stands behind an entry, a comment say, is its own.
        int first =
                index(text, change.getValue().get(0).getKeyNode().getStartMark().orElseThrow());
        int column = change.getValue()
                .get(0)
                .getKeyNode()
                .getStartMark()
                .orElseThrow()
                .getColumn();
        return text.substring(0, first) + path + ": " + value + "\n" + " ".repeat(column) + text.substring(first);
    }

    private static @Nullable MappingNode change(Node root) {
        if (root instanceof MappingNode mapping) {
            for (NodeTuple tuple : mapping.getValue()) {
                if (tuple.getKeyNode() instanceof ScalarNode key
                        && key.getValue().equals("change")
                        && tuple.getValueNode() instanceof MappingNode change) {
                    return change;
                }
            }
        }
        return null;
    }

    /** Marks count code points. */
    private static int index(String text, Mark mark) {
        return text.offsetByCodePoints(0, mark.getIndex());
    }
}

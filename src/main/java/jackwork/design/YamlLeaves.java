package jackwork.design;

import java.util.LinkedHashMap;
import java.util.Map;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** A tree's scalars by their dotted paths, as written; empty collections as such. */
final class YamlLeaves {

    private static final int MOST = 50_000;
    private static final int DEEPEST = 40;

    private final String file;
    private final Map<String, String> leaves = new LinkedHashMap<>();

    private YamlLeaves(String file) {
        this.file = file;
    }

    /** @throws DesignException when it unfolds without end */
    static Map<String, String> of(YamlFile file) {
        YamlLeaves all = new YamlLeaves(file.name());
        all.collect("", file.root(), 0);
        return all.leaves;
    }

    private void collect(String path, Node node, int depth) {
        if (depth > DEEPEST || leaves.size() > MOST) {
            throw DesignException.of(file, "unfolds to far more values than a design has; remove its aliases");
        }
        String below = path.isEmpty() ? "" : path + ".";
        if (node instanceof MappingNode mapping && !mapping.getValue().isEmpty()) {
            for (NodeTuple tuple : mapping.getValue()) {
                String key = tuple.getKeyNode() instanceof ScalarNode scalar ? scalar.getValue() : "?";
                collect(below + key, tuple.getValueNode(), depth + 1);
            }
        } else if (node instanceof SequenceNode sequence && !sequence.getValue().isEmpty()) {
            for (int i = 0; i < sequence.getValue().size(); i++) {
                collect(below + i, sequence.getValue().get(i), depth + 1);
            }
        } else if (node instanceof ScalarNode scalar) {
            leaves.put(path, scalar.getValue());
        } else {
            leaves.put(path, node instanceof SequenceNode ? "[]" : "{}");
        }
    }
}

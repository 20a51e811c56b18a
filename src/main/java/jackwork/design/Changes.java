package jackwork.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * Puts a design's {@code change} into the trees of its box and figure before they are bound:
 * {@code figure.weights.tail.count: 1}. The value may be anything that the place takes; a key that
 * the place knows but the file leaves out may be added, which binding then judges.
 */
final class Changes {

    private final YamlFile design;

    private Changes(YamlFile design) {
        this.design = design;
    }

    /** @param targets the trees by the first word of a path: {@code box}, {@code figure} */
    static void apply(YamlFile design, Map<String, YamlFile> targets) {
        if (!(design.root() instanceof MappingNode root)) {
            return;
        }
        for (NodeTuple tuple : root.getValue()) {
            if (tuple.getKeyNode() instanceof ScalarNode key
                    && key.getValue().equals("change")
                    && tuple.getValueNode() instanceof MappingNode changes) {
                new Changes(design).applyAll(changes, targets);
            }
        }
    }

    private void applyAll(MappingNode changes, Map<String, YamlFile> targets) {
        for (NodeTuple change : changes.getValue()) {
            if (change.getKeyNode() instanceof ScalarNode key) {
                String[] words = key.getValue().split("\\.", -1);
                YamlFile target = targets.get(words[0]);
                if (target == null || words.length < 2) {
                    design.problem(
                            key,
                            "read \"" + key.getValue()
                                    + "\", expected a path that begins with figure. or box."
                                    + NearestWord.hint(words[0], targets.keySet()));
                } else {
                    put(key, words, target, change.getValueNode());
                }
            }
        }
    }

    private void put(ScalarNode key, String[] words, YamlFile target, Node value) {
        Node node = target.root();
        for (int i = 1; i < words.length; i++) {
            boolean last = i == words.length - 1;
            Node next = last ? replace(target, node, words[i], value) : child(node, words[i]);
            if (next == null) {
                design.problem(
                        key,
                        "read \"" + key.getValue() + "\": " + target.name() + " has no \"" + words[i] + "\" there"
                                + NearestWord.hint(words[i], names(node)));
                return;
            }
            node = next;
        }
        lend(target, value);
    }

    private void lend(YamlFile target, Node value) {
        target.lend(value, design);
        if (value instanceof SequenceNode sequence) {
            sequence.getValue().forEach(item -> lend(target, item));
        } else if (value instanceof MappingNode mapping) {
            mapping.getValue().forEach(tuple -> {
                target.lend(tuple.getKeyNode(), design);
                lend(target, tuple.getValueNode());
            });
        }
    }

    private static @Nullable Node child(Node node, String word) {
        if (node instanceof MappingNode mapping) {
            return mapping.getValue().stream()
                    .filter(tuple -> isKey(tuple, word))
                    .map(NodeTuple::getValueNode)
                    .findFirst()
                    .orElse(null);
        }
        if (node instanceof SequenceNode sequence) {
            int index = index(word, sequence);
            return index < 0 ? null : sequence.getValue().get(index);
        }
        return null;
    }

    /** Replaces a value, or adds a key to a mapping; null when there is no such place. */
    private @Nullable Node replace(YamlFile target, Node node, String word, Node value) {
        if (node instanceof MappingNode mapping) {
            List<NodeTuple> tuples = mapping.getValue();
            for (int i = 0; i < tuples.size(); i++) {
                if (isKey(tuples.get(i), word)) {
                    tuples.set(i, new NodeTuple(tuples.get(i).getKeyNode(), value));
                    return value;
                }
            }
            if (tuples.isEmpty()) {
                return null;
            }
            NodeTuple first = tuples.get(0);
            ScalarNode model = (ScalarNode) first.getKeyNode();
            ScalarNode key = new ScalarNode(
                    model.getTag(), true, word, model.getScalarStyle(), value.getStartMark(), value.getEndMark());
            target.lend(key, design);
            tuples.add(new NodeTuple(key, value));
            return value;
        }
        if (node instanceof SequenceNode sequence) {
            int index = index(word, sequence);
            if (index >= 0) {
                sequence.getValue().set(index, value);
                return value;
            }
        }
        return null;
    }

    private static boolean isKey(NodeTuple tuple, String word) {
        return tuple.getKeyNode() instanceof ScalarNode scalar
                && scalar.getValue().equals(word);
    }

    private static int index(String word, SequenceNode sequence) {
        if (!word.matches("\\d{1,4}")) {
            return -1;
        }
        int index = Integer.parseInt(word);
        return index < sequence.getValue().size() ? index : -1;
    }

    private static List<String> names(Node node) {
        List<String> names = new ArrayList<>();
        if (node instanceof MappingNode mapping) {
            for (NodeTuple tuple : mapping.getValue()) {
                if (tuple.getKeyNode() instanceof ScalarNode scalar) {
                    names.add(scalar.getValue());
                }
            }
        }
        return names;
    }
}

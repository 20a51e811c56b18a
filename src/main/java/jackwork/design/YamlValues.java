package jackwork.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** What a YAML tree says, without how it is written; and what it would say after one change. */
final class YamlValues {

    private YamlValues() {}

    /** Values as plain lists and maps; single values keep their kind, so that 1 and "1" differ. */
    static Object of(Node node) {
        if (node instanceof MappingNode mapping) {
            Map<Object, Object> map = new LinkedHashMap<>();
            mapping.getValue().forEach(tuple -> map.put(key(tuple), of(tuple.getValueNode())));
            return map;
        }
        if (node instanceof SequenceNode sequence) {
            return new ArrayList<>(
                    sequence.getValue().stream().map(YamlValues::of).toList());
        }
        return node.getTag() + " " + ((ScalarNode) node).getValue();
    }

    @SuppressWarnings("unchecked")
    static Object with(Object tree, List<String> path, Object value) {
        if (path.isEmpty()) {
            return value;
        }
        String word = path.get(0);
        List<String> rest = path.subList(1, path.size());
        if (tree instanceof List<?> list) {
            List<Object> items = (List<Object>) list;
            int number = Integer.parseInt(word);
            if (number == items.size()) {
                items.add(value);
            } else {
                items.set(number, with(items.get(number), rest, value));
            }
            return items;
        }
        Map<Object, Object> map = tree instanceof Map<?, ?> known ? (Map<Object, Object>) known : new LinkedHashMap<>();
        map.put(word, with(Objects.requireNonNullElseGet(map.get(word), LinkedHashMap::new), rest, value));
        return map;
    }

    @SuppressWarnings("unchecked")
    static Object without(Object tree, List<String> path) {
        String word = path.get(0);
        if (path.size() > 1) {
            Object inner = tree instanceof List<?> list
                    ? list.get(Integer.parseInt(word))
                    : Objects.requireNonNull(((Map<Object, Object>) tree).get(word));
            without(inner, path.subList(1, path.size()));
            if (path.size() == 2 && inner instanceof Map<?, ?> left && left.isEmpty()) {
                ((Map<Object, Object>) tree).remove(word);
            }
        } else if (tree instanceof List<?> list) {
            list.remove(Integer.parseInt(word));
        } else {
            ((Map<Object, Object>) tree).remove(word);
        }
        return tree;
    }

    static String key(NodeTuple tuple) {
        return tuple.getKeyNode() instanceof ScalarNode scalar ? scalar.getValue() : "";
    }
}

package jackwork.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** What a YAML tree says, without how it is written; and what it would say after one change. */
final class YamlValues {

    private static final int MOST = 50_000;
    private static final int DEEPEST = 40;

    private final String file;
    private int values;

    private YamlValues(String file) {
        this.file = file;
    }

    /**
     * Values as plain lists and maps, in their order; single values keep their kind, so that 1 and "1" differ.
     *
     * @param file its name, for what is told
     * @throws DesignException when it unfolds without end
     */
    static Object of(String file, Node node) {
        return new YamlValues(file).unfold(node, 0);
    }

    private Object unfold(Node node, int depth) {
        if (depth > DEEPEST || ++values > MOST) {
            throw DesignException.of(file, "unfolds to far more values than a design has; remove its aliases");
        }
        if (node instanceof MappingNode mapping) {
            Map<Object, Object> map = new LinkedHashMap<>();
            for (NodeTuple tuple : mapping.getValue()) {
                String key = key(tuple);
                map.put(
                        key == null ? unfold(tuple.getKeyNode(), depth + 1) : key,
                        unfold(tuple.getValueNode(), depth + 1));
            }
            return map;
        }
        if (node instanceof SequenceNode sequence) {
            List<Object> list = new ArrayList<>();
            sequence.getValue().forEach(value -> list.add(unfold(value, depth + 1)));
            return list;
        }
        return node.getTag() + " " + ((ScalarNode) node).getValue();
    }

    /** Whether two trees say the same in the same order. */
    static boolean same(Object one, Object other) {
        if (one instanceof Map<?, ?> map && other instanceof Map<?, ?> second) {
            return same(new ArrayList<>(map.keySet()), new ArrayList<>(second.keySet()))
                    && same(new ArrayList<>(map.values()), new ArrayList<>(second.values()));
        }
        if (one instanceof List<?> list && other instanceof List<?> second && list.size() == second.size()) {
            for (int i = 0; i < list.size(); i++) {
                if (!same(list.get(i), second.get(i))) {
                    return false;
                }
            }
            return true;
        }
        return one.equals(other);
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

    /** Without a value; a mapping of the first rank that would be left with nothing goes with it. */
    static Object without(Object tree, List<String> path) {
        Object above = at(tree, path.subList(0, path.size() - 1));
        String word = path.get(path.size() - 1);
        if (above instanceof List<?> list) {
            list.remove(Integer.parseInt(word));
        } else {
            ((Map<?, ?>) above).remove(word);
        }
        if (path.size() == 2 && above instanceof Map<?, ?> left && left.isEmpty() && tree instanceof Map<?, ?> map) {
            map.remove(path.get(0));
        }
        return tree;
    }

    /** With another name for one key, in its place among the others. */
    @SuppressWarnings("unchecked")
    static Object renamed(Object tree, List<String> path, String key) {
        Map<Object, Object> map = (Map<Object, Object>) at(tree, path.subList(0, path.size() - 1));
        Map<Object, Object> before = new LinkedHashMap<>(map);
        map.clear();
        before.forEach((name, value) -> map.put(name.equals(path.get(path.size() - 1)) ? key : name, value));
        return tree;
    }

    private static Object at(Object tree, List<String> path) {
        Object value = tree;
        for (String word : path) {
            value = value instanceof List<?> list
                    ? list.get(Integer.parseInt(word))
                    : Objects.requireNonNull(((Map<?, ?>) value).get(word));
        }
        return value;
    }

    /** A key's word; null for a key that is a list or a mapping. */
    static @Nullable String key(NodeTuple tuple) {
        return tuple.getKeyNode() instanceof ScalarNode scalar ? scalar.getValue() : null;
    }
}

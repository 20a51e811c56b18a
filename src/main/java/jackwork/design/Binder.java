package jackwork.design;

import jackwork.geometry.Point;
import jackwork.stock.Basis;
import jackwork.stock.Uncertain;
import java.lang.reflect.AnnotatedParameterizedType;
import java.lang.reflect.AnnotatedType;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/**
 * Turns a YAML tree into the records of this room. What cannot be bound is noted with its place and
 * comes back as null or empty, so that one reading names every fault of a file.
 */
final class Binder {

    /** A tree that unfolds to more values than this is an alias bomb. */
    private static final int MOST_VALUES = 50_000;

    private static final int DEEPEST = 40;
    /** A bare number's interval, as a share of it, where the file says nothing better. */
    private static final double USUAL_SPREAD = 0.1;

    private static final Map<String, Basis> BASES =
            Map.of("measured", Basis.MEASURED, "published", Basis.PUBLISHED, "guess", Basis.GUESS);

    private final YamlFile file;
    private int values;

    Binder(YamlFile file) {
        this.file = file;
    }

    /** @return null when anything at all in this record could not be bound */
    <T extends Record> @Nullable T bind(Class<T> type) {
        return type.cast(record(file.root(), type, "", 0));
    }

    /** The key of a component: its name in hyphened words, unless {@link Key} says otherwise. */
    static String key(RecordComponent component) {
        Key key = component.getAnnotation(Key.class);
        return key != null
                ? key.value()
                : component.getName().replaceAll("([A-Z])", "-$1").toLowerCase(java.util.Locale.ROOT);
    }

    static boolean optional(RecordComponent component) {
        Class<?> type = component.getType();
        return component.getAnnotatedType().isAnnotationPresent(Nullable.class)
                || type == List.class
                || type == Map.class;
    }

    private @Nullable Object value(Node node, AnnotatedType annotated, String unit, String path, int depth) {
        file.place(path, node);
        if (++values > MOST_VALUES || depth > DEEPEST) {
            throw DesignException.of(file.name(), "unfolds to far more values than a design has; remove its aliases");
        }
        Type type = annotated.getType();
        if (type instanceof ParameterizedType generic && annotated instanceof AnnotatedParameterizedType inner) {
            AnnotatedType[] arguments = inner.getAnnotatedActualTypeArguments();
            return generic.getRawType() == List.class
                    ? list(node, arguments[0], unit, path, depth)
                    : map(node, arguments[1], unit, path, depth);
        }
        Class<?> plain = (Class<?>) type;
        if (plain == Place.class) {
            return place(node);
        }
        if (plain == Uncertain.class) {
            return uncertain(node, unit);
        }
        if (plain == Object.class) {
            return loose(node);
        }
        if (plain.isRecord()) {
            return record(node, plain, path, depth);
        }
        return scalar(node, plain, unit);
    }

    private @Nullable Object scalar(Node node, Class<?> type, String unit) {
        if (!(node instanceof ScalarNode scalar)) {
            return fault(
                    node,
                    "expected " + (type == String.class ? "a word" : Numbers.expected(unit)) + ", read " + kind(node));
        }
        String text = scalar.getValue();
        if (type == String.class) {
            return text;
        }
        if (type == int.class || type == Integer.class) {
            try {
                return Integer.valueOf(text.strip());
            } catch (NumberFormatException e) {
                return fault(node, "read \"" + text + "\", expected a whole number");
            }
        }
        if (type == Boolean.class) {
            return text.equals("true") || text.equals("false")
                    ? Boolean.valueOf(text)
                    : fault(node, "read \"" + text + "\", expected true or false");
        }
        Optional<Double> number = Numbers.read(text, unit);
        return number.isPresent()
                ? number.get()
                : fault(node, "read \"" + text + "\", expected " + Numbers.expected(unit));
    }

    private List<Object> list(Node node, AnnotatedType element, String unit, String path, int depth) {
        if (!(node instanceof SequenceNode sequence)) {
            fault(node, "expected a list in [ ], read " + kind(node));
            return List.of();
        }
        List<Object> list = new ArrayList<>();
        for (int i = 0; i < sequence.getValue().size(); i++) {
            Object value = value(sequence.getValue().get(i), element, unit, path + "." + i, depth + 1);
            if (value != null) {
                list.add(value);
            }
        }
        return Collections.unmodifiableList(list);
    }

    private Map<String, Object> map(Node node, AnnotatedType element, String unit, String path, int depth) {
        Map<String, Object> map = new LinkedHashMap<>();
        entries(node).forEach((key, child) -> {
            Object value = value(child, element, unit, path.isEmpty() ? key : path + "." + key, depth + 1);
            if (value != null) {
                map.put(key, value);
            }
        });
        return Collections.unmodifiableMap(map);
    }

    /** Keys and values of a mapping in order; anything else, and keys written twice, are noted. */
    private Map<String, Node> entries(Node node) {
        Map<String, Node> entries = new LinkedHashMap<>();
        if (!(node instanceof MappingNode mapping)) {
            fault(node, "expected keys and values, read " + kind(node));
            return entries;
        }
        for (NodeTuple tuple : mapping.getValue()) {
            Node keyNode = tuple.getKeyNode();
            if (!(keyNode instanceof ScalarNode scalar)) {
                fault(keyNode, "a key must be a word, read " + kind(keyNode));
            } else if (scalar.getValue().equals("<<")) {
                fault(keyNode, "merge keys (<<) are not read here; write the values out");
            } else if (entries.put(scalar.getValue(), tuple.getValueNode()) != null) {
                fault(keyNode, "read \"" + scalar.getValue() + "\" a second time; keep one of the two");
            }
        }
        return entries;
    }

    private @Nullable Object record(Node node, Class<?> type, String path, int depth) {
        Map<String, Node> entries = entries(node);
        RecordComponent[] components = type.getRecordComponents();
        List<String> known = new ArrayList<>();
        for (RecordComponent component : components) {
            known.add(key(component));
        }
        reportUnknown(node, entries, known);
        Object[] arguments = new Object[components.length];
        boolean whole = node instanceof MappingNode;
        for (int i = 0; i < components.length; i++) {
            String key = known.get(i);
            Node child = entries.get(key);
            if (child != null && !isNull(child)) {
                Unit unit = components[i].getAnnotation(Unit.class);
                String at = path.isEmpty() ? key : path + "." + key;
                arguments[i] = value(
                        child, components[i].getAnnotatedType(), unit == null ? "1" : unit.value(), at, depth + 1);
                whole &= arguments[i] != null;
            } else if (components[i].getType() == List.class) {
                arguments[i] = List.of();
            } else if (components[i].getType() == Map.class) {
                arguments[i] = Map.of();
            } else if (!optional(components[i])) {
                if (node instanceof MappingNode) {
                    fault(node, "the key \"" + key + "\" is missing here");
                }
                whole = false;
            }
        }
        return whole ? create(type, components, arguments) : null;
    }

    private void reportUnknown(Node node, Map<String, Node> entries, List<String> known) {
        if (node instanceof MappingNode mapping) {
            for (NodeTuple tuple : mapping.getValue()) {
                if (tuple.getKeyNode() instanceof ScalarNode key
                        && entries.containsKey(key.getValue())
                        && !known.contains(key.getValue())) {
                    fault(
                            key,
                            "read the key \"" + key.getValue() + "\", which is not known here"
                                    + NearestWord.hint(key.getValue(), known));
                }
            }
        }
    }

    private static Object create(Class<?> type, RecordComponent[] components, Object[] arguments) {
        try {
            Class<?>[] types = new Class<?>[components.length];
            for (int i = 0; i < types.length; i++) {
                types[i] = components[i].getType();
            }
            Constructor<?> constructor = type.getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return constructor.newInstance(arguments);
        } catch (InvocationTargetException e) {
            throw new IllegalStateException(type + " refused what was read", e.getCause());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(type + " cannot be made", e);
        }
    }

    private @Nullable Place place(Node node) {
        if (node instanceof ScalarNode scalar) {
            return new Place.Drawn(scalar.getValue());
        }
        if (node instanceof SequenceNode sequence && sequence.getValue().size() == 2) {
            Object x = scalar(sequence.getValue().get(0), double.class, "mm");
            Object y = scalar(sequence.getValue().get(1), double.class, "mm");
            return x == null || y == null ? null : new Place.At(new Point((Double) x, (Double) y));
        }
        fault(node, "expected the id of a circle in the drawing, or [right, up] in mm; read " + kind(node));
        return null;
    }

    private @Nullable Uncertain uncertain(Node node, String unit) {
        if (node instanceof ScalarNode) {
            Object number = scalar(node, double.class, unit);
            if (number == null) {
                return null;
            }
            double value = (Double) number;
            double spread = Math.abs(value) * USUAL_SPREAD;
            return new Uncertain(value, value - spread, value + spread, unit, Basis.GUESS, "");
        }
        Map<String, Node> entries = entries(node);
        List<String> known = List.of("value", "low", "high", "basis", "source");
        reportUnknown(node, entries, known);
        Node valueNode = entries.get("value");
        if (valueNode == null) {
            fault(node, "the key \"value\" is missing here");
            return null;
        }
        Object value = scalar(valueNode, double.class, unit);
        Object low = scalar(entries.getOrDefault("low", valueNode), double.class, unit);
        Object high = scalar(entries.getOrDefault("high", valueNode), double.class, unit);
        Basis basis = basis(entries.get("basis"));
        if (value == null || low == null || high == null || basis == null) {
            return null;
        }
        if ((Double) low > (Double) value || (Double) value > (Double) high) {
            fault(node, "value " + value + " must lie between low " + low + " and high " + high);
            return null;
        }
        String source = entries.get("source") instanceof ScalarNode text ? text.getValue() : "";
        return new Uncertain((Double) value, (Double) low, (Double) high, unit, basis, source);
    }

    private @Nullable Basis basis(@Nullable Node node) {
        if (node == null) {
            return Basis.GUESS;
        }
        String read = node instanceof ScalarNode scalar ? scalar.getValue() : "";
        Basis basis = BASES.get(read);
        if (basis == null) {
            fault(node, "expected measured, published or guess; read " + kind(node));
        }
        return basis;
    }

    /** A value whose type depends on the place it is meant for. */
    private static Object loose(Node node) {
        if (node instanceof ScalarNode scalar) {
            return scalar.getValue();
        }
        if (node instanceof SequenceNode sequence) {
            return sequence.getValue().stream().map(Binder::loose).toList();
        }
        return kind(node);
    }

    private static boolean isNull(Node node) {
        return node instanceof ScalarNode scalar && scalar.getTag().equals(Tag.NULL);
    }

    private @Nullable Object fault(Node node, String message) {
        file.problem(node, message);
        return null;
    }

    private static String kind(Node node) {
        if (node instanceof ScalarNode scalar) {
            return "\"" + scalar.getValue() + "\"";
        }
        return node instanceof SequenceNode ? "a list" : "keys and values";
    }
}

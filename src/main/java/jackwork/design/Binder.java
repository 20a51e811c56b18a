package jackwork.design;

import jackwork.geometry.Point;
import jackwork.stock.Basis;
import jackwork.stock.Uncertain;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
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
 * comes back as null or empty, so that one reading names every fault of a file. For a number beyond its bounds the bound stands
 * in, and for a word that is none the first that there is: nothing is made of a file with a complaint, and its names can be held
 * against each other all the same.
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
    /** Whether something was left out that others may name. */
    private boolean dropped;

    Binder(YamlFile file) {
        this.file = file;
    }

    /** @return null when anything at all in this record could not be bound */
    <T extends Record> @Nullable T bind(Class<T> type) {
        return type.cast(record(file.root(), type, "", 0));
    }

    /** Whether all that may be named was bound: else what names it would be told to be wrong. */
    boolean namesAreWhole() {
        return !dropped;
    }

    private @Nullable Object value(Node node, Type type, Word word, String path, int depth) {
        file.place(path, node);
        if (++values > MOST_VALUES || depth > DEEPEST) {
            throw DesignException.of(file.name(), "unfolds to far more values than a design has; remove its aliases");
        }
        if (type instanceof ParameterizedType generic) {
            Type[] arguments = generic.getActualTypeArguments();
            return generic.getRawType() == List.class
                    ? list(node, arguments[0], word, path, depth)
                    : map(node, arguments[1], word, path, depth);
        }
        Class<?> plain = (Class<?>) type;
        if (plain == Place.class) {
            return place(node);
        }
        if (plain == Uncertain.class) {
            return uncertain(node, word);
        }
        if (plain == Object.class) {
            return loose(node);
        }
        if (plain.isRecord()) {
            return record(node, plain, path, depth);
        }
        return scalar(node, plain, word);
    }

    private @Nullable Object scalar(Node node, Class<?> type, Word word) {
        String unit = word.unit();
        if (!(node instanceof ScalarNode scalar)) {
            return fault(
                    node,
                    "expected " + (type == String.class ? "a word" : Numbers.expected(unit)) + ", read " + kind(node));
        }
        String text = scalar.getValue();
        if (type == String.class) {
            return text(node, text, word);
        }
        if (type == int.class || type == Integer.class) {
            try {
                return (int) within(node, Integer.valueOf(text.strip()), word);
            } catch (NumberFormatException e) {
                return fault(node, "read \"" + text + "\", expected a whole number");
            }
        }
        if (type == Boolean.class) {
            return text.equals("true") || text.equals("false")
                    ? Boolean.valueOf(text)
                    : fault(node, "read \"" + text + "\", expected true or false");
        }
        return number(node, text, word);
    }

    private @Nullable Object text(Node node, String text, Word word) {
        List<String> choices = word.choices();
        if (ToldWords.hasObeyed(text)) {
            return fault(node, ToldWords.complaint(text));
        }
        if (text.isBlank() && !word.mayBeBlank()) {
            return fault(node, "read nothing, expected a word");
        }
        if (choices.isEmpty() || choices.contains(text)) {
            return text;
        }
        fault(node, "read \"" + text + "\", expected " + either(choices) + NearestWord.hint(text, choices));
        return choices.get(0);
    }

    /** {@code A4, A3 or Letter}. */
    private static String either(List<String> words) {
        int last = words.size() - 1;
        return last < 1 ? String.join("", words) : String.join(", ", words.subList(0, last)) + " or " + words.get(last);
    }

    private @Nullable Object number(Node node, String text, Word word) {
        Optional<Double> number = Numbers.read(text, word.unit());
        if (number.isEmpty()) {
            fault(node, "read \"" + text + "\", expected " + Numbers.expected(word.unit()));
            return Range.of(word).map(Range::least).orElse(0.0);
        }
        return within(node, number.get(), word);
    }

    /** The number, if it is one that can be; else that is noted, and the bound stands for it. */
    private double within(Node node, double number, Word word) {
        Optional<Range> range = Range.of(word);
        if (range.isPresent() && !range.get().holds(number)) {
            fault(node, range.get().refusal(number));
            return Math.min(range.get().most(), Math.max(range.get().least(), number));
        }
        return number;
    }

    private List<Object> list(Node node, Type element, Word word, String path, int depth) {
        if (!(node instanceof SequenceNode sequence)) {
            fault(node, "expected a list in [ ], read " + kind(node));
            return List.of();
        }
        List<Object> list = new ArrayList<>();
        for (int i = 0; i < sequence.getValue().size(); i++) {
            Object value = value(sequence.getValue().get(i), element, word, path + "." + i, depth + 1);
            if (value != null) {
                list.add(value);
            } else {
                dropped = true;
            }
        }
        return Collections.unmodifiableList(list);
    }

    private Map<String, Object> map(Node node, Type element, Word word, String path, int depth) {
        Map<String, Object> map = new LinkedHashMap<>();
        entries(node).forEach((key, child) -> {
            Object value = value(child, element, word, path.isEmpty() ? key : path + "." + key, depth + 1);
            if (value != null) {
                map.put(key, value);
            } else {
                dropped = true;
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
            } else if (ToldWords.hasObeyed(scalar.getValue())) {
                fault(keyNode, ToldWords.complaint(scalar.getValue()));
            } else if (entries.put(scalar.getValue(), tuple.getValueNode()) != null) {
                fault(keyNode, "read \"" + scalar.getValue() + "\" a second time; keep one of the two");
            }
        }
        return entries;
    }

    private @Nullable Object record(Node node, Class<?> type, String path, int depth) {
        Map<String, Node> entries = entries(node);
        reportUnknown(node, entries, Vocabulary.keys(type), Vocabulary.formerKeys(type));
        return node instanceof MappingNode ? filled(node, entries, type, path, depth) : null;
    }

    /** A record from the entries of a mapping that may hold the words of others too. */
    private @Nullable Object filled(Node node, Map<String, Node> entries, Class<?> type, String path, int depth) {
        List<Word> words = Vocabulary.of(type);
        Object[] arguments = new Object[words.size()];
        boolean whole = true;
        for (int i = 0; i < arguments.length; i++) {
            Word word = words.get(i);
            arguments[i] = word.isInline()
                    ? word.isMap()
                            ? joints(entries, word, path, depth)
                            : filled(node, entries, word.leaf(), path, depth)
                    : argument(node, entries.get(word.key()), word, below(path, word.key()), depth);
            Node child = word.isInline() ? null : entries.get(word.key());
            boolean absent = child == null || isNull(child);
            whole &= arguments[i] != null || (absent && word.optional());
        }
        dropped |= !whole;
        return whole ? create(type, arguments) : null;
    }

    private @Nullable Object argument(Node node, @Nullable Node child, Word word, String path, int depth) {
        if (child != null && !isNull(child)) {
            return value(child, word.type(), word, path, depth + 1);
        }
        if (word.isList()) {
            return List.of();
        }
        if (word.isMap()) {
            return Map.of();
        }
        if (!word.optional() && child != null) {
            // Told where the nothing stands: a design's change may have put it into another file.
            fault(child, "read nothing for \"" + word.key() + "\", which cannot be left out; write what it is to be");
        } else if (!word.optional()) {
            fault(node, "the key \"" + word.key() + "\" is missing here");
        }
        return null;
    }

    /** The sections of the registry's joints that are there. */
    private Map<String, Map<String, Object>> joints(Map<String, Node> entries, Word word, String path, int depth) {
        Map<String, Map<String, Object>> joints = new LinkedHashMap<>();
        for (JointKind<?> kind : JointKinds.all()) {
            Node section = entries.get(kind.section());
            if (section != null && !isNull(section)) {
                String at = below(path, kind.section());
                file.place(at, section);
                joints.put(kind.section(), map(section, kind.entry(), word, at, depth + 1));
            }
        }
        return Collections.unmodifiableMap(joints);
    }

    private static String below(String path, String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    /** @param former what became of keys that were known once */
    private void reportUnknown(Node node, Map<String, Node> entries, List<String> known, Map<String, String> former) {
        if (node instanceof MappingNode mapping) {
            for (NodeTuple tuple : mapping.getValue()) {
                if (tuple.getKeyNode() instanceof ScalarNode key
                        && entries.containsKey(key.getValue())
                        && !known.contains(key.getValue())) {
                    String now = former.get(key.getValue());
                    fault(
                            key,
                            "read the key \"" + key.getValue() + "\", which is not known here"
                                    + (now == null
                                            ? NearestWord.hint(key.getValue(), known)
                                            : "; it " + now + ": take this line out"));
                }
            }
        }
    }

    private static Object create(Class<?> type, Object[] arguments) {
        try {
            Class<?>[] types = Vocabulary.of(type).stream()
                    .map(word -> word.component().getType())
                    .toArray(Class<?>[]::new);
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
            Double x = coordinate(sequence.getValue().get(0));
            Double y = coordinate(sequence.getValue().get(1));
            return x == null || y == null ? null : new Place.At(new Point(x, y));
        }
        fault(node, "expected the id of a circle in the drawing, or [right, up] in mm; read " + kind(node));
        return null;
    }

    private @Nullable Double coordinate(Node node) {
        String text = node instanceof ScalarNode scalar ? scalar.getValue() : "";
        Optional<Double> number = Numbers.read(text, "mm");
        if (number.isEmpty()) {
            fault(node, "read " + kind(node) + ", expected " + Numbers.expected("mm"));
        } else if (!Range.OF_PLACES.holds(number.get())) {
            fault(node, Range.OF_PLACES.refusal(number.get()));
            return 0.0;
        } else {
            return number.get();
        }
        return null;
    }

    private @Nullable Uncertain uncertain(Node node, Word word) {
        if (node instanceof ScalarNode) {
            Object number = scalar(node, double.class, word);
            if (number == null) {
                return null;
            }
            double value = (Double) number;
            double spread = Math.abs(value) * USUAL_SPREAD;
            return new Uncertain(value, value - spread, value + spread, word.unit(), Basis.GUESS, "");
        }
        Map<String, Node> entries = entries(node);
        reportUnknown(node, entries, List.of("value", "low", "high", "basis", "source"), Map.of());
        Node valueNode = entries.get("value");
        if (valueNode == null) {
            fault(node, "the key \"value\" is missing here");
            return null;
        }
        int before = file.problems();
        Object value = scalar(valueNode, double.class, word);
        Object low = scalar(entries.getOrDefault("low", valueNode), double.class, word);
        Object high = scalar(entries.getOrDefault("high", valueNode), double.class, word);
        Basis basis = basis(entries.get("basis"));
        if (value == null || low == null || high == null) {
            return null;
        }
        if (file.problems() > before) {
            return Uncertain.exact((Double) value, word.unit(), "");
        }
        if ((Double) low > (Double) value || (Double) value > (Double) high) {
            fault(node, "value " + value + " must lie between low " + low + " and high " + high);
            return Uncertain.exact((Double) value, word.unit(), "");
        }
        IntervalWidth spread = IntervalWidth.of(word, (Double) value);
        if (!spread.holds((Double) low, (Double) high)) {
            fault(node, spread.refusal((Double) value, (Double) low, (Double) high, word.unit()));
            return Uncertain.exact((Double) value, word.unit(), "");
        }
        String source = entries.get("source") instanceof ScalarNode text ? text.getValue() : "";
        return new Uncertain((Double) value, (Double) low, (Double) high, word.unit(), basis, source);
    }

    private Basis basis(@Nullable Node node) {
        if (node == null) {
            return Basis.GUESS;
        }
        String read = node instanceof ScalarNode scalar ? scalar.getValue() : "";
        Basis basis = BASES.get(read);
        if (basis == null) {
            fault(node, "expected measured, published or guess; read " + kind(node));
            return Basis.GUESS;
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

package jackwork.app.wire;

import jackwork.check.Finding;
import jackwork.check.Topic;
import jackwork.geometry.Point;
import jackwork.stock.Basis;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * JSON as Jackwork writes it, from records: same input, same bytes. Components keep their order and names, numbers are
 * rounded far below what matters ({@link Places}), what is not finite is null, and enums are lower-case words.
 */
public final class Json {

    private static final int USUAL_PLACES = 6;
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build();

    private Json() {}

    public static JsonMapper mapper() {
        return MAPPER;
    }

    public static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    public static ArrayNode array() {
        return JsonNodeFactory.instance.arrayNode();
    }

    public static String compact(Record value) {
        return MAPPER.writeValueAsString(node(value, USUAL_PLACES));
    }

    /** For a reader whose numbers are binary: decimal amounts as text, with all their places. */
    public static String withAmountsAsText(Record value) {
        return MAPPER.writeValueAsString(withAmountsAsText(node(value, USUAL_PLACES)));
    }

    private static JsonNode withAmountsAsText(JsonNode node) {
        if (node.isBigDecimal()) {
            return JsonNodeFactory.instance.stringNode(node.decimalValue().toPlainString());
        } else if (node instanceof ObjectNode object) {
            List.copyOf(object.propertyNames()).forEach(name -> object.set(name, withAmountsAsText(object.get(name))));
        } else if (node instanceof ArrayNode array) {
            for (int i = 0; i < array.size(); i++) {
                array.set(i, withAmountsAsText(array.get(i)));
            }
        }
        return node;
    }

    public static String compact(ObjectNode node) {
        return MAPPER.writeValueAsString(node);
    }

    public static String pretty(Record value) {
        return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(node(value, USUAL_PLACES)) + "\n";
    }

    public static String pretty(ObjectNode node) {
        return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(node) + "\n";
    }

    private static JsonNode node(@Nullable Object value, int places) {
        JsonNodeFactory nodes = JsonNodeFactory.instance;
        if (value == null) {
            return nodes.nullNode();
        } else if (value instanceof JsonNode node) {
            return node;
        } else if (value instanceof Double number) {
            return Double.isFinite(number) ? nodes.numberNode(rounded(number, places)) : nodes.nullNode();
        } else if (value instanceof Integer number) {
            return nodes.numberNode(number);
        } else if (value instanceof Long number) {
            return nodes.numberNode(number);
        } else if (value instanceof Boolean truth) {
            return nodes.booleanNode(truth);
        } else if (value instanceof BigDecimal amount) {
            return nodes.numberNode(amount);
        } else if (value instanceof Basis basis) {
            return nodes.stringNode(basis.words());
        } else if (value instanceof Enum<?> word) {
            return nodes.stringNode(word(word));
        } else if (value instanceof Collection<?> list) {
            ArrayNode array = nodes.arrayNode();
            list.forEach(item -> array.add(node(item, places)));
            return array;
        } else if (value instanceof Map<?, ?> map) {
            ObjectNode object = nodes.objectNode();
            map.forEach((key, item) -> object.set(String.valueOf(key), node(item, places)));
            return object;
        } else if (value instanceof Finding finding) {
            return record(Report.Finding.of(finding), places);
        } else if (value instanceof Record record) {
            return record(record, places);
        }
        return nodes.stringNode(value.toString());
    }

    private static JsonNode record(Record record, int places) {
        RecordComponent[] components = Shapes.of(record.getClass());
        if (record.getClass().isAnnotationPresent(Tuple.class)) {
            ArrayNode array = array();
            for (RecordComponent component : components) {
                array.add(node(value(record, component), places(component, places)));
            }
            return array;
        }
        ObjectNode object = object();
        for (RecordComponent component : components) {
            object.set(component.getName(), node(value(record, component), places(component, places)));
        }
        return object;
    }

    /** A component's own places hold for all that is in it, where that says nothing else. */
    private static int places(RecordComponent component, int above) {
        Places own = component.getAnnotation(Places.class);
        return own == null ? above : own.value();
    }

    private static @Nullable Object value(Record record, RecordComponent component) {
        try {
            return component.getAccessor().invoke(record);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException(record.getClass() + " hides its " + component.getName(), e);
        }
    }

    /** An enum's constant as it is written. */
    public static String word(Enum<?> constant) {
        return constant instanceof Topic topic ? topic.word() : constant.name().toLowerCase(Locale.ROOT);
    }

    /** The components of each kind of record, looked up once, open to this room. */
    private static final class Shapes extends ClassValue<RecordComponent[]> {

        private static final Shapes KNOWN = new Shapes();

        static RecordComponent[] of(Class<?> type) {
            return KNOWN.get(type);
        }

        @Override
        protected RecordComponent[] computeValue(Class<?> type) {
            RecordComponent[] components = type.getRecordComponents();
            for (RecordComponent component : components) {
                component.getAccessor().setAccessible(true);
            }
            return components;
        }
    }

    /** Rounded to a place far below what matters, so that files stay readable. */
    public static void put(ObjectNode node, String name, @Nullable Double value, int decimals) {
        node.set(name, node(value, decimals));
    }

    public static void add(ArrayNode array, double value, int decimals) {
        array.add(node(value, decimals));
    }

    public static ArrayNode point(Point point) {
        ArrayNode pair = array();
        add(pair, point.x(), 4);
        add(pair, point.y(), 4);
        return pair;
    }

    public static ArrayNode ring(List<Point> points) {
        ArrayNode ring = array();
        points.forEach(p -> ring.add(point(p)));
        return ring;
    }

    private static double rounded(double value, int decimals) {
        double scale = Math.pow(10, decimals);
        double rounded = Math.rint(value * scale) / scale;
        return rounded == 0 ? 0 : rounded;
    }
}

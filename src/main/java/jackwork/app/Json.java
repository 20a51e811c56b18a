package jackwork.app;

import jackwork.geometry.Point;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** JSON as Jackwork writes it: same input, same bytes; what is not a finite number is null. */
final class Json {

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build();

    private Json() {}

    static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    static ArrayNode array() {
        return JsonNodeFactory.instance.arrayNode();
    }

    static String compact(ObjectNode node) {
        return MAPPER.writeValueAsString(node);
    }

    static String pretty(ObjectNode node) {
        return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(node) + "\n";
    }

    /** Rounded to a place far below what matters, so that files stay readable. */
    static void put(ObjectNode node, String name, @Nullable Double value, int decimals) {
        if (value == null || !Double.isFinite(value)) {
            node.putNull(name);
        } else {
            node.put(name, rounded(value, decimals));
        }
    }

    static void add(ArrayNode array, double value, int decimals) {
        if (Double.isFinite(value)) {
            array.add(rounded(value, decimals));
        } else {
            array.addNull();
        }
    }

    static ArrayNode point(Point point) {
        ArrayNode pair = array();
        add(pair, point.x(), 4);
        add(pair, point.y(), 4);
        return pair;
    }

    static ArrayNode ring(List<Point> points) {
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

package jackwork.app;

import jackwork.check.Finding;
import jackwork.price.PriceReport;
import jackwork.price.Stage;
import jackwork.stock.Basis;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The report of {@code price --json}, from its records: their names in their order, amounts as they are shown. */
final class PriceJson {

    private static final int PLACES = 6;

    private PriceJson() {}

    static ObjectNode of(PriceReport report) {
        return record(report);
    }

    private static JsonNode node(@Nullable Object value) {
        JsonNodeFactory nodes = JsonNodeFactory.instance;
        if (value == null) {
            return nodes.nullNode();
        } else if (value instanceof BigDecimal amount) {
            return nodes.numberNode(amount);
        } else if (value instanceof Double number) {
            ObjectNode holder = nodes.objectNode();
            Json.put(holder, "number", number, PLACES);
            return holder.get("number");
        } else if (value instanceof Integer number) {
            return nodes.numberNode(number);
        } else if (value instanceof Boolean truth) {
            return nodes.booleanNode(truth);
        } else if (value instanceof Stage stage) {
            return nodes.stringNode(stage.word());
        } else if (value instanceof Basis basis) {
            return nodes.stringNode(basis.words());
        } else if (value instanceof Collection<?> list) {
            ArrayNode array = nodes.arrayNode();
            list.forEach(item -> array.add(node(item)));
            return array;
        } else if (value instanceof Map<?, ?> map) {
            ObjectNode object = nodes.objectNode();
            map.forEach((key, item) -> object.set(String.valueOf(key), node(item)));
            return object;
        } else if (value instanceof Finding finding) {
            return Json.tree(ReportMaker.finding(finding));
        } else if (value instanceof Record record) {
            return record(record);
        }
        return nodes.stringNode(value.toString());
    }

    private static ObjectNode record(Record record) {
        ObjectNode object = Json.object();
        for (RecordComponent component : record.getClass().getRecordComponents()) {
            object.set(component.getName(), node(value(record, component)));
        }
        return object;
    }

    private static @Nullable Object value(Record record, RecordComponent component) {
        try {
            return component.getAccessor().invoke(record);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException(record.getClass() + " hides its " + component.getName(), e);
        }
    }
}

package jackwork.design;

import jackwork.stock.Uncertain;
import java.io.IOException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The JSON Schemas of the files makers write, from the vocabulary. Run {@link #main} to renew docs/schema. */
final class SchemaFiles {

    static final Map<String, Class<? extends Record>> ROOTS = Vocabulary.FILES;

    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private static final String INTERVAL = "Interval";

    private final Map<String, ObjectNode> definitions = new TreeMap<>();

    private SchemaFiles() {}

    /** Writes docs/schema anew. */
    public static void main(String[] arguments) throws IOException {
        for (String name : ROOTS.keySet()) {
            Files.writeString(path(name), text(name));
        }
    }

    static Path path(String name) {
        return Path.of("docs", "schema", name + ".schema.json");
    }

    static String text(String name) {
        SchemaFiles files = new SchemaFiles();
        ObjectNode root = MAPPER.createObjectNode();
        root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        root.setAll(files.record(ROOTS.get(name)));
        ObjectNode defs = root.putObject("$defs");
        files.definitions.forEach(defs::set);
        return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
    }

    /** Unknown keys are errors, in records; a map's keys are the maker's own names. */
    private ObjectNode record(Class<?> type) {
        ObjectNode node = MAPPER.createObjectNode();
        node.put("type", "object");
        About about = type.getAnnotation(About.class);
        if (about != null) {
            node.put("description", about.value());
        }
        ObjectNode properties = node.putObject("properties");
        ArrayNode required = MAPPER.createArrayNode();
        for (Word word : Vocabulary.flat(type)) {
            ObjectNode property = value(word.type(), word);
            describe(property, word);
            properties.set(word.key(), property);
            if (!word.optional()) {
                required.add(word.key());
            }
        }
        if (!required.isEmpty()) {
            node.set("required", required);
        }
        node.put("additionalProperties", false);
        return node;
    }

    private static void describe(ObjectNode property, Word word) {
        StringBuilder text = new StringBuilder(word.about());
        if (!word.unit().equals("1")) {
            text.append(text.isEmpty() ? "" : " ").append("Unit: ").append(word.unit());
            text.append(word.unit().equals("mm") ? " (inches: 0.5 in)." : ".");
        }
        Range.of(word)
                .ifPresent(range -> text.append(" ")
                        .append(Range.plain(range.least()))
                        .append(" to ")
                        .append(Range.plain(range.most()))
                        .append(": ")
                        .append(range.why())
                        .append("."));
        if (!text.isEmpty()) {
            property.put("description", text.toString().strip());
        }
    }

    private ObjectNode value(Type type, Word word) {
        ObjectNode node = MAPPER.createObjectNode();
        if (type instanceof ParameterizedType generic) {
            Type[] arguments = generic.getActualTypeArguments();
            boolean list = generic.getRawType() == java.util.List.class;
            node.put("type", list ? "array" : "object");
            node.set(list ? "items" : "additionalProperties", value(arguments[arguments.length - 1], word));
            return node;
        }
        Class<?> plain = (Class<?>) type;
        if (Vocabulary.isBound(plain)) {
            String name = plain.getSimpleName();
            if (!definitions.containsKey(name)) {
                definitions.put(name, MAPPER.createObjectNode()); // a record that holds itself would never end
                definitions.put(name, record(plain));
            }
            return node.put("$ref", "#/$defs/" + name);
        }
        if (plain == Place.class) {
            return place();
        }
        if (plain == Uncertain.class) {
            return uncertain(word);
        }
        if (word.isNumber()) {
            return number(word);
        }
        if (plain == Boolean.class) {
            return node.put("type", "boolean");
        }
        if (plain == String.class) {
            if (!word.choices().isEmpty()) {
                word.choices().forEach(node.putArray("enum")::add);
                return node;
            }
            return node.put("type", "string");
        }
        return node;
    }

    /** A number, or words of a number with its unit; the reader decides which units may stand there. */
    private static ObjectNode number(Word word) {
        ObjectNode node = MAPPER.createObjectNode();
        ArrayNode any = node.putArray("anyOf");
        ObjectNode bare = any.addObject().put("type", word.isWhole() ? "integer" : "number");
        Range.of(word).ifPresent(range -> bare.put("minimum", range.least()).put("maximum", range.most()));
        any.addObject().put("type", "string").put("pattern", "^\\s*[+-]?[0-9.]");
        return node;
    }

    private static ObjectNode place() {
        ObjectNode node = MAPPER.createObjectNode();
        node.put("description", "The id of a circle in the drawing, or [right, up] in mm.");
        ArrayNode any = node.putArray("anyOf");
        any.addObject().put("type", "string");
        ObjectNode pair =
                any.addObject().put("type", "array").put("minItems", 2).put("maxItems", 2);
        ArrayNode item = pair.putObject("items").putArray("anyOf");
        item.addObject()
                .put("type", "number")
                .put("minimum", Range.OF_PLACES.least())
                .put("maximum", Range.OF_PLACES.most());
        item.addObject().put("type", "string").put("pattern", "^\\s*[+-]?[0-9.]");
        return node;
    }

    private ObjectNode uncertain(Word word) {
        definitions.computeIfAbsent(INTERVAL, k -> interval());
        ObjectNode node = number(word);
        ((ArrayNode) node.get("anyOf")).addObject().put("$ref", "#/$defs/" + INTERVAL);
        return node;
    }

    private static ObjectNode interval() {
        ObjectNode whole = MAPPER.createObjectNode();
        whole.put("type", "object");
        whole.put("description", "A number with its interval and what it rests on.");
        whole.putArray("required").add("value");
        whole.put("additionalProperties", false);
        ObjectNode properties = whole.putObject("properties");
        for (String key : java.util.List.of("value", "low", "high")) {
            ArrayNode any = properties.putObject(key).putArray("anyOf");
            any.addObject().put("type", "number");
            any.addObject().put("type", "string").put("pattern", "^\\s*[+-]?[0-9.]");
        }
        properties
                .putObject("basis")
                .putArray("enum")
                .add("measured")
                .add("published")
                .add("guess");
        properties.putObject("source").put("type", "string");
        return whole;
    }
}

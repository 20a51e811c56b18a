package jackwork.design;

import com.github.victools.jsonschema.generator.CustomDefinition;
import com.github.victools.jsonschema.generator.FieldScope;
import com.github.victools.jsonschema.generator.Option;
import com.github.victools.jsonschema.generator.OptionPreset;
import com.github.victools.jsonschema.generator.SchemaGenerator;
import com.github.victools.jsonschema.generator.SchemaGeneratorConfigBuilder;
import com.github.victools.jsonschema.generator.SchemaVersion;
import jackwork.stock.Uncertain;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The JSON Schemas of the files makers write, from the records that read them. Run {@link #main} to renew docs/schema. */
final class SchemaFiles {

    static final Map<String, Class<? extends Record>> ROOTS = Map.of(
            "workshop", WorkshopFile.class,
            "box", BoxFile.class,
            "figure", FigureFile.class,
            "design", DesignFile.class);

    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    /** A number, or words of a number with its unit; the reader decides which units may stand there. */
    private static final String NUMBER =
            "{\"anyOf\":[{\"type\":\"number\"},{\"type\":\"string\",\"pattern\":\"^\\\\s*[+-]?[0-9.]\"}]}";

    private static final String PLACE =
            "{\"description\":\"The id of a circle in the drawing, or [right, up] in mm.\",\"anyOf\":[{\"type\":\"string\"},"
                    + "{\"type\":\"array\",\"minItems\":2,\"maxItems\":2,\"items\":" + NUMBER + "}]}";

    private static final String UNCERTAIN =
            "{\"description\":\"A number, or a number with its interval and what it rests on.\",\"anyOf\":["
                    + "{\"type\":\"number\"},{\"type\":\"string\"},{\"type\":\"object\",\"required\":[\"value\"],"
                    + "\"additionalProperties\":false,\"properties\":{\"value\":" + NUMBER + ",\"low\":" + NUMBER
                    + ",\"high\":"
                    + NUMBER
                    + ",\"basis\":{\"enum\":[\"measured\",\"published\",\"guess\"]},\"source\":{\"type\":\"string\"}}}]}";

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
        SchemaGeneratorConfigBuilder builder = new SchemaGeneratorConfigBuilder(
                        SchemaVersion.DRAFT_2020_12, OptionPreset.PLAIN_JSON)
                .with(Option.MAP_VALUES_AS_ADDITIONAL_PROPERTIES)
                .without(Option.NONSTATIC_NONVOID_NONGETTER_METHODS, Option.VOID_METHODS);
        builder.forFields()
                .withPropertyNameOverrideResolver(field -> Binder.key(component(field)))
                .withRequiredCheck(field -> !Binder.optional(component(field)))
                .withDescriptionResolver(SchemaFiles::description);
        // Unknown keys are errors, in records; a map's keys are the maker's own names.
        builder.forTypesInGeneral()
                .withAdditionalPropertiesResolver((scope, context) -> {
                    Class<?> erased = scope.getType().getErasedType();
                    if (erased.isRecord() && erased != Uncertain.class) {
                        return context.getGeneratorConfig().createObjectNode().booleanNode(false);
                    }
                    return scope.getType().isInstanceOf(Map.class)
                            ? context.createStandardDefinitionReference(scope.getTypeParameterFor(Map.class, 1), null)
                            : null;
                })
                .withDescriptionResolver(scope -> {
                    About about = scope.getType().getErasedType().getAnnotation(About.class);
                    return about == null ? null : about.value();
                })
                .withCustomDefinitionProvider((type, context) -> {
                    Class<?> erased = type.getErasedType();
                    String custom = erased == Place.class
                            ? PLACE
                            : erased == Uncertain.class
                                    ? UNCERTAIN
                                    : erased == double.class || erased == Double.class
                                            ? NUMBER
                                            : erased == Object.class ? "{}" : null;
                    return custom == null
                            ? null
                            : new CustomDefinition(
                                    (tools.jackson.databind.node.ObjectNode) MAPPER.readTree(custom),
                                    erased == Uncertain.class
                                            ? CustomDefinition.DefinitionType.STANDARD
                                            : CustomDefinition.DefinitionType.INLINE,
                                    CustomDefinition.AttributeInclusion.YES);
                });
        JsonNode schema = new SchemaGenerator(builder.build()).generateSchema(ROOTS.get(name));
        return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(schema) + "\n";
    }

    private static RecordComponent component(FieldScope field) {
        return Arrays.stream(field.getDeclaringType().getErasedType().getRecordComponents())
                .filter(component -> component.getName().equals(field.getDeclaredName()))
                .findFirst()
                .orElseThrow();
    }

    private static String description(FieldScope field) {
        Unit unit = component(field).getAnnotation(Unit.class);
        About about = component(field).getAnnotation(About.class);
        String text = about == null ? "" : about.value();
        if (unit != null && !unit.value().equals("1")) {
            text = (text.isEmpty() ? "" : text + " ") + "Unit: " + unit.value()
                    + (unit.value().equals("mm") ? " (inches: 0.5 in)." : ".");
        }
        return text.isEmpty() ? null : text;
    }
}

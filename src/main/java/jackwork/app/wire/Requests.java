package jackwork.app.wire;

import java.util.Arrays;
import java.util.stream.Collectors;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.json.JsonMapper;

/** Reads what the page sends; anything else than the record that is meant is refused. */
public final class Requests {

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(MapperFeature.ACCEPT_CASE_INSENSITIVE_ENUMS)
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
            .build();

    private Requests() {}

    /** Whether a list in it has nothing where an entry belongs. */
    private static boolean hasGaps(JsonNode node) {
        for (JsonNode inner : node) {
            if ((inner.isNull() && node.isArray()) || hasGaps(inner)) {
                return true;
            }
        }
        return false;
    }

    /** @throws BadRequestException when it is not such a record */
    public static <T extends Record> T read(String json, Class<T> type) {
        try {
            T read = MAPPER.readValue(json, type);
            if (read != null && !hasGaps(MAPPER.readTree(json))) {
                return read;
            }
        } catch (JacksonException e) {
            // Told below: the parser's own words help nobody.
        }
        String expected = Arrays.stream(type.getRecordComponents())
                .map(component -> component.getName())
                .collect(Collectors.joining(", "));
        throw new BadRequestException("what was sent cannot be read; expected JSON with " + expected);
    }
}

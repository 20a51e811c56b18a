package jackwork.app.core;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jackwork.app.wire.BadRequestException;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;

/** What is sent typed stands in the file as it was meant; read back by a YAML reader that is not ours. */
@Tag("quick")
class FlowTextTest {

    private static final JsonMapper JSON = JsonMapper.builder().build();
    /** Letters that mean something to YAML, line ends of all kinds, letters beyond the first plane. */
    private static final String LETTERS =
            "ab1 :,#{}[]\"'\\\n\r\t&*!|>%@`?-~=<./äßж\u0085\u2028\u2029\ufeff\u0000\u007f\u00a0";

    private static final long SEED = 19;
    private static final int TRIED = 20_000;

    private static JsonNode json(String text) {
        return JSON.readTree(text);
    }

    private static Object read(String yaml) {
        return new Load(LoadSettings.builder().build()).loadFromString("section:\n  entry: " + yaml + "\n");
    }

    private static Object standing(Object value) {
        return Map.of("section", Map.of("entry", value));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "12.5 | 12.5",
                "12.0 | 12",
                "-3 | -3",
                "\"0.5 in\" | 0.5 in",
                "\"1/8 in\" | 1/8 in",
                "\"38 %\" | 38 %",
                "\"birch-4\" | birch-4",
                "true | true",
                "[1.5, 2] | [1.5, 2]",
                "[\"body\", \"wing\"] | [body, wing]",
                "{\"on\": \"body\", \"at\": [1, 2], \"mass\": \"5\"} | {on: body, at: [1, 2], mass: 5}",
                "\"yes\" | \"yes\"",
                "\"#204080\" | \"#204080\"",
            })
    void valuesAreWrittenAsFilesWriteThem(String sent, String written) {
        assertThat(FlowText.of(json(sent))).isEqualTo(written);
    }

    @Test
    void placesAreWrittenInTheFramesOfTheirFile() {
        String written =
                FlowText.of(json("{\"from\": {\"part\": \"a\", \"at\": [10, 20]}}"), at -> "[" + at.x() / 10 + "]");
        assertThat(written).isEqualTo("{from: {part: a, at: [1.0]}}");
    }

    /** Whatever the letters, one string comes back, the very one, and nothing stands beside it. */
    @Test
    void wordsOfAnyLettersStayOneValue() {
        Random random = new Random(SEED);
        for (int i = 0; i < TRIED; i++) {
            StringBuilder words = new StringBuilder();
            for (int n = random.nextInt(12); n >= 0; n--) {
                words.append(
                        random.nextInt(20) == 0 ? "\ud83d\ude00" : LETTERS.charAt(random.nextInt(LETTERS.length())));
            }
            String sent = words.toString();
            if (sent.matches("[+-]?[0-9]+([.][0-9]+)?(/[0-9]+)?")) {
                continue; // A number as typed is a number.
            }
            String written = FlowText.of(JsonNodeFactory.instance.stringNode(sent));
            assertThat(read(written)).as(written).isEqualTo(standing(sent));
            assertThat(read("{a: " + written + ", b: [" + written + "]}"))
                    .as(written)
                    .isEqualTo(standing(Map.of("a", sent, "b", List.of(sent))));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "null",
                "{\"a b\": 1}",
                "{\"a: 1, b\": 1}",
                "{\"\": 1}",
                "{\"A\": 1}",
                "1e300",
                "[1, -1e12]",
                "\"\\ud800\"",
                "\"a\\udc00b\""
            })
    void whatNoFileMaySayIsRefused(String sent) {
        assertThatThrownBy(() -> FlowText.of(json(sent))).isInstanceOf(BadRequestException.class);
    }
}

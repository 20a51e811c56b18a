package jackwork.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
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

/** Whatever is written reads as what was meant, wherever it stands. */
@Tag("quick")
class YamlWordsTest {

    private static final List<String> PIECES = List.of(
            "a",
            "Z",
            "ä",
            "7",
            " ",
            "  ",
            "-",
            ":",
            ": ",
            " #",
            "#",
            "'",
            "\"",
            "\\",
            "\n",
            "\r\n",
            "\t",
            "\0",
            "\u0007",
            "\u007f",
            "\u0085",
            "\u00a0",
            "\u00ad",
            "\u2028",
            "\u2029",
            "\ufeff",
            "\ufffe",
            "\ud83d",
            "\ude00",
            "𝄞",
            "😀",
            "漢",
            "e\u0301",
            "[",
            "]",
            "{",
            "}",
            ",",
            "&",
            "*",
            "!",
            "|",
            ">",
            "%",
            "@",
            "`",
            "?",
            "~",
            "<<",
            "=",
            "---",
            "...",
            ".",
            "/",
            "../",
            "_",
            "true",
            "Null",
            "no",
            "0x1F",
            "1e3",
            ".inf",
            ".NaN",
            "2024-05-01",
            "12:30",
            "- ",
            "? ");

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "true",
                "False",
                "NULL",
                "null",
                "~",
                "yes",
                "No",
                "on",
                "OFF",
                "y",
                "N",
                "12",
                "-3.5",
                "+1",
                "1e3",
                "0x1F",
                "0o17",
                ".5",
                ".inf",
                "-.Inf",
                ".NaN",
                "2024-05-01",
                "12:30:45",
                "a: b",
                "a:",
                "a #b",
                "#a",
                "- a",
                "-a",
                "? a",
                "?",
                "!a",
                "&a",
                "*a",
                "%a",
                "@a",
                "`a",
                "|",
                ">",
                "'a'",
                "\"a\"",
                "[a]",
                "{a}",
                "a, b",
                "a]",
                " a",
                "a ",
                "a  b",
                "a\nb",
                "a\tb",
                "\0",
                "\u0085",
                "\u2028",
                "\ufeff",
                "<<",
                "=",
                "---",
                "...",
                "𝄞",
                "a😀",
                "\ud83d",
                "e\u0301"
            })
    void whatYamlReadsOtherwiseStandsInQuotes(String text) {
        assertThat(YamlWords.quoted(text)).startsWith("\"").endsWith("\"").hasLineCount(1);
        assertThat(readEverywhere(YamlWords.quoted(text))).containsOnly(text);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "hip",
                "birch-3",
                "A4",
                "My heron",
                "box.lever.throw",
                "../marsh-box/box.yaml",
                "Öl auf Holz",
                "nod"
            })
    void plainWordsStandBare(String text) {
        assertThat(YamlWords.quoted(text)).isEqualTo(text);
        assertThat(readEverywhere(text)).containsOnly(text);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {"a \"test\" piece | \"a \\\"test\\\" piece\"", "a, b | \"a, b\"", "ä😀 | \"ä😀\""})
    void inQuotesWhatCanBeSeenStaysAsItIs(String text, String written) {
        assertThat(YamlWords.quoted(text)).isEqualTo(written);
    }

    @Test
    void tenThousandTextsReadAsThemselves() {
        Random random = new Random(20_260);
        int bare = 0;
        for (int i = 0; i < 10_000; i++) {
            StringBuilder made = new StringBuilder();
            int length = random.nextInt(1 + i % 12);
            for (int k = 0; k < length; k++) {
                made.append(
                        random.nextInt(5) == 0
                                ? Character.toString(random.nextInt(Character.MAX_CODE_POINT + 1))
                                : PIECES.get(random.nextInt(random.nextBoolean() ? 6 : PIECES.size())));
            }
            String text = made.toString();
            String written = YamlWords.quoted(text);
            assertThat(readEverywhere(written)).as("%d: %s", i, written).containsOnly(text);
            bare += written.startsWith("\"") ? 0 : 1;
        }
        assertThat(bare).isBetween(500, 5000);
    }

    /** Read by the library's own loader: alone, in a block and between brackets, as a key and as a value. */
    private static List<Object> readEverywhere(String written) {
        List<Object> read = new ArrayList<>();
        read.add(load(written + "\n"));
        load("k: " + written + " # said\nl: 1\n", Map.class)
                .forEach((key, value) -> read.add(key.equals("k") ? value : read.get(0)));
        read.add(load(written + ": 1\n", Map.class).keySet().iterator().next());
        read.addAll(load("[" + written + ", " + written + "]", List.class));
        Map<?, ?> flow = load("{" + written + ": " + written + "}", Map.class);
        flow.forEach((key, value) -> read.addAll(List.of(key, value)));
        assertThat(read).hasSize(8);
        return read;
    }

    private static <T> T load(String yaml, Class<T> kind) {
        return kind.cast(load(yaml));
    }

    private static Object load(String yaml) {
        return new Load(LoadSettings.builder().build()).loadFromString(yaml);
    }
}

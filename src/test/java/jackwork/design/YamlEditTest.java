package jackwork.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Only the characters that must change do; what cannot be spliced safely is refused. */
class YamlEditTest {

    private static final String NOTHING = "-";

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                // A value that is there; what stands behind it on the line stays.
                "a:\\n  b: 1   # one\\n  c: 2\\n | a.b | 7 | a:\\n  b: 7   # one\\n  c: 2\\n",
                "a: {b: 1, c: [3, 4]} # ä𝄞\\n | a.c | [5, 6] | a: {b: 1, c: [5, 6]} # ä𝄞\\n",
                "# 𝄞\\na: [x, y]\\n | a.1 | z | # 𝄞\\na: [x, z]\\n",
                "a:\\n  - x # first\\n  - y\\n | a.0 | z | a:\\n  - z # first\\n  - y\\n",
                "a: 'it''s' # said\\n | a | 2 | a: 2 # said\\n",
                "a:\\nb: 1\\n | a | 2 | a: 2\\nb: 1\\n",
                // A key that is not there yet.
                "a:\\n  b: {x: 1} # one\\n\\n# about c\\nc: 2\\n | a.d | {x: 2} | a:\\n  b: {x: 1} # one\\n  d: {x: 2}\\n\\n# about c\\nc: 2\\n",
                "a:\\n  b:\\n    x: 1\\nc: 2 | a.d | 3 | a:\\n  b:\\n    x: 1\\n  d: 3\\nc: 2",
                "a: {}\\nc: 2 | a.d | 3 | a: {d: 3}\\nc: 2",
                "a:\\nc: 2 | a.d | 3 | a:\\n  d: 3\\nc: 2",
                "c: 2 | a.d | 3 | c: 2\\n\\na:\\n  d: 3\\n",
                "a:\\n  - x # first\\nc: 2 | a.1 | y | a:\\n  - x # first\\n  - y\\nc: 2",
                "a: [x]\\n | a.1 | y | a: [x, y]\\n",
                "a:\\r\\n  b: 1\\r\\nc: 2\\r\\n | a.d | 3 | a:\\r\\n  b: 1\\r\\n  d: 3\\r\\nc: 2\\r\\n",
                // Out with it.
                "a:\\n  # about b\\n  b: 1 # one\\n  c: 2\\n | a.b | - | a:\\n  # about b\\n  c: 2\\n",
                "a:\\n  b:\\n    x: 1\\n    y: [1,\\n      2] # two\\n  c: 2\\n | a.b | - | a:\\n  c: 2\\n",
                "a: {b: 1, c: 2, d: 3} # all\\n | a.b | - | a: {c: 2, d: 3} # all\\n",
                "a: {b: 1, c: 2, d: 3} # all\\n | a.d | - | a: {b: 1, c: 2} # all\\n",
                "a: [x, y, z]\\n | a.1 | - | a: [x, z]\\n",
                "a:\\n  - [x, y] # both\\n  - [z]\\n | a.1 | - | a:\\n  - [x, y] # both\\n",
                "n: 1\\n\\na:\\n  b: 1\\nc: 2\\n | a.b | - | n: 1\\n\\nc: 2\\n",
                "n: 1\\na:\\n  b: 1 | a.b | - | n: 1\\n"
            })
    void onlyWhatMust(String before, String path, String value, String after) {
        List<String> words = List.of(path.strip().split("\\."));
        String now = value.strip().equals(NOTHING)
                ? YamlEdit.remove("x.yaml", lines(before), words)
                : YamlEdit.set("x.yaml", lines(before), words, value.strip());
        assertThat(now).isEqualTo(lines(after));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "a: &k {b: 1}\\nc: *k\\n | a.b | 2 | anchor",
                "a: &k {b: 1}\\nc: *k\\n | c.b | 2 | anchor",
                "a: &k 1\\nc: *k\\n | c | 2 | anchor",
                "a: 1\\n | a.b.c | 2 | no \\\"b\\\"",
                "a: 1\\n | a.b | 2 | nothing can be added",
                "a: 1\\n | a | \"2\\nb: 3\" | one line",
                "a: {b: 1}\\n | a.b | \"2 # c\" | left as it is",
                "a: {b: 1, # one\\n  c: 2}\\n | a.c | - | comment",
                "a: 1\\n | b | - | not there"
            })
    void refusedWithTheReason(String before, String path, String value, String reason) {
        List<String> words = List.of(path.strip().split("\\."));
        assertThatThrownBy(() -> {
                    if (value.strip().equals(NOTHING)) {
                        YamlEdit.remove("x.yaml", lines(before), words);
                    } else {
                        YamlEdit.set("x.yaml", lines(before), words, lines(value));
                    }
                })
                .isInstanceOf(DesignException.class)
                .hasMessageContaining(reason.strip().replace("\\\"", "\""));
    }

    @Test
    void whatWasPutInComesOutAgainByteForByte() {
        String text = lines("# top\\na:\\n  b: {x: 1} # one\\n  c: {x: 2}\\n# end\\n");
        String with = YamlEdit.set("x.yaml", text, List.of("a", "d"), "{x: 3}");
        assertThat(YamlEdit.remove("x.yaml", with, List.of("a", "d"))).isEqualTo(text);
        String section = YamlEdit.set("x.yaml", text, List.of("change", "box.lever.throw"), "9");
        assertThat(section).startsWith(text);
    }

    private static String lines(String written) {
        String bare = written.startsWith("\"") ? written.substring(1, written.length() - 1) : written;
        return bare.strip().replace("\\n", "\n").replace("\\r", "\r");
    }
}

package jackwork.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Only the characters that must change do; what cannot be spliced safely is refused. */
@Tag("quick")
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
                "n: 1\\na:\\n  b: 1 | a.b | - | n: 1\\n",
                // Comments and empty lines around stay.
                "n: 1\\na: # all\\n  # about b\\n  b: 1 # one\\n# end\\n | a.b | - | n: 1\\n  # about b\\n# end\\n",
                "n: 1\\na: >\\n  text\\n\\n# about b\\nb: 2\\n | a | - | n: 1\\n\\n# about b\\nb: 2\\n",
                "n: 1\\na:\\n  b: 1\\n# end\\n | a | 7 | n: 1\\na: 7\\n# end\\n",
                "a: # all\\n- x\\n- y # last\\nb: 1\\n | a | [z] | a: [z] # all\\nb: 1\\n",
                "a:\\n  b: 1\\n  # end of a\\nc: 2\\n | a.d | 3 | a:\\n  b: 1\\n  d: 3\\n  # end of a\\nc: 2\\n",
                "a: 1\\nb: 2\\r\\n  # c\\n | a | - | b: 2\\r\\n  # c\\n",
                "a: 1\\n# c\\nb: 2\\r\\n | a | - | # c\\nb: 2\\r\\n",
                // What is left with nothing.
                "n: 1\\na: {b: 1} # one\\n | a.b | - | n: 1\\n",
                "a:\\n  b: # said\\n    # about c\\n    c: 1\\n  d: 2\\n | a.b.c | - | a:\\n  b: {} # said\\n    # about c\\n  d: 2\\n",
                "a:\\n  - [x, y] # both\\nb: 1\\n | a.0 | - | a: []\\nb: 1\\n",
                "a: {b: {c: 1}}\\n | a.b.c | - | a: {b: {}}\\n",
                // Nothing where something could be; words that must be quoted; entries that begin on a dash.
                "a:\\n  b: # said\\n  c: 1\\n | a.b.d | 3 | a:\\n  b: # said\\n    d: 3\\n  c: 1\\n",
                "a: null\\n | a.d | 3 | a: {d: 3}\\n",
                "a: 1\\n | no | 3 | a: 1\\n\"no\": 3\\n",
                "a:\\n  - b: 1 # one\\n    c: 2 # two\\n | a.0.b | - | a:\\n  - c: 2 # two\\n"
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
                "a: 1\\n | b | - | not there",
                "b: 1\\n | a.b | - | not there",
                "a: [x]\\n | a.b | 2 | only number 1",
                "a: [x]\\n | a.3 | 2 | only number 1",
                "a: >\\n  text\\n | a | 2 | x.yaml:1:4: \\\"a\\\" is left as it is: a block of text",
                "n: 1\\na: &k {b: 1}\\n | a.b | 2 | x.yaml:2:4: \\\"a.b\\\" is left as it is: it is shared by an anchor",
                "a: [1, # one\\n  2]\\n | a | 2 | comment stands within",
                "a:\\n  b: 1 # one\\n  c: 2\\n | a | 2 | comment stands within",
                "a:\\n  b: 1\\n | a.b | - | all that the file says"
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

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "a:\\n  # about b\\n  b: 1 # b: one\\n  c: 2\\n | a.b | d | a:\\n  # about b\\n  d: 1 # b: one\\n  c: 2\\n",
                "a: {b: 1, c: {b: 2}}\\r\\n | a.c | d-2 | a: {b: 1, d-2: {b: 2}}\\r\\n",
                "a: {b: 1, c: {b: 2}} # ä𝄞 | a.c.b | no | a: {b: 1, c: {\"no\": 2}} # ä𝄞",
                "a: {\"b\":1}\\n | a.b | d | a: {\"d\":1}\\n",
                "- 'a': 1\\n  c: 2\\n | 0.a | d e | - \"d e\": 1\\n  c: 2\\n",
                "? a\\n: 1\\n | a | b | ? b\\n: 1\\n",
                "a: &k 1\\nb: *k\\n | b | c | a: &k 1\\nc: *k\\n",
                "a:\\n  b: 1\\n | a.b | x: #y | a:\\n  \"x: #y\": 1\\n"
            })
    void aKeyGetsAnotherNameInItsPlace(String before, String path, String key, String after) {
        assertThat(YamlEdit.renameKey("x.yaml", lines(before), List.of(path.split("\\.")), key))
                .isEqualTo(lines(after));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "a: {b: 1, c: 2}\\n | a.b | c | already",
                "a: {b: 1, 'c': 2}\\n | a.b | c | already",
                "a: {b: 1}\\n | a.b | b | already",
                "a: &k {b: 1}\\nc: *k\\n | a.b | d | x.yaml:1:4",
                "a: &k {b: 1}\\nc: *k\\n | c.b | d | anchor",
                "&k a: 1\\nb: *k\\n | a | d | anchor",
                "a: &k 1\\n*k : 2\\n | 1 | d | anchor",
                "? [a, b]\\n: 1\\n | a | d | Non scalar key",
                "a: [x]\\n | a.0 | d | in a list",
                "a: 1\\n | b | d | not there",
                "a: 1\\n | a.b | d | not there",
                "a: 1\\na: 2\\n | a | d | left as it is"
            })
    void aKeyThatIsSharedOrTakenKeepsItsName(String before, String path, String key, String reason) {
        assertThatThrownBy(() -> YamlEdit.renameKey("x.yaml", lines(before), List.of(path.split("\\.")), key))
                .isInstanceOf(DesignException.class)
                .hasMessageContaining(reason);
    }

    /** What unfolds without end is refused before anything is done with it. */
    @Test
    void anAliasBombIsRefused() {
        StringBuilder bomb = new StringBuilder("n: 1\na0: &a0 [x, x]\n");
        for (int i = 1; i <= 24; i++) {
            bomb.append("a%d: &a%d [*a%d, *a%d]\n".formatted(i, i, i - 1, i - 1));
        }
        String text = bomb.toString();
        assertThatThrownBy(() -> YamlEdit.set("x.yaml", text, List.of("n"), "2"))
                .isInstanceOf(DesignException.class)
                .hasMessageContaining("remove its aliases");
        assertThatThrownBy(() -> YamlEdit.set("x.yaml", "n: 1\na: &a [*a]\n", List.of("n"), "2"))
                .isInstanceOf(DesignException.class)
                .hasMessageContaining("remove its aliases");
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

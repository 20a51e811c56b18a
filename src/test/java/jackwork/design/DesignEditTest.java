package jackwork.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A number put into a design's text: that and nothing else changes. */
@Tag("quick")
class DesignEditTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "name: A # ä𝄞\\n | name: A # ä𝄞\\n\\nchange:\\n  box.x: 2.5\\n",
                "name: A | name: A\\n\\nchange:\\n  box.x: 2.5\\n",
                "change:\\n  box.x: 7  # as measured\\n  box.y: 1\\n | change:\\n  box.x: 2.5  # as measured\\n  box.y: 1\\n",
                "change:\\n    box.y: 1 # why\\n | change:\\n    box.y: 1 # why\\n    box.x: 2.5\\n",
                "change: {box.y: 1}\\nname: B\\n | change: {box.y: 1, box.x: 2.5}\\nname: B\\n",
                "change: {}\\n | change: {box.x: 2.5}\\n"
            })
    void onlyThatNumber(String before, String after) {
        assertThat(DesignEdit.with(lines(before), Map.of("box.x", 2.5))).isEqualTo(lines(after));
    }

    private static String lines(String written) {
        return written.strip().replace("\\n", "\n");
    }
}

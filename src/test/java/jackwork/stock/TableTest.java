package jackwork.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Our own tables are read as strictly as a maker's. */
@Tag("quick")
class TableTest {

    /** Any text is one cell, over several lines as well, and each row knows the line on which it stands. */
    @Test
    void whateverIsWrittenIsRead() {
        Random random = new Random(4180);
        String[] scraps = {"a", ",", "\"", "\r\n", "\n", " ", "0.5", "ä", "𝄞", ""};
        for (int i = 0; i < 2000; i++) {
            StringBuilder file = new StringBuilder("name,source\n");
            List<String> sources = new ArrayList<>();
            List<Integer> lines = new ArrayList<>();
            int line = 2;
            for (int row = random.nextInt(4); row >= 0; row--) {
                if (random.nextInt(3) == 0) {
                    file.append('\n');
                    line++;
                }
                StringBuilder source = new StringBuilder();
                for (int k = random.nextInt(6); k > 0; k--) {
                    source.append(scraps[random.nextInt(scraps.length)]);
                }
                sources.add(source.toString());
                lines.add(line);
                file.append("row")
                        .append(row)
                        .append(",\"")
                        .append(source.toString().replace("\"", "\"\""));
                file.append("\"\r\n");
                line += 1 + (int) source.chars().filter(c -> c == '\n').count();
            }
            Table table = Table.parse("any.csv", file.toString());
            assertThat(table.rows()).extracting(row -> row.text("source")).isEqualTo(sources);
            assertThat(table.rows()).extracting(Table.Row::line).isEqualTo(lines);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "name,source;oak,a 5\" board      | any.csv:2:8: read a quote within a field",
                "name,source;oak,\"never ended    | any.csv:2:5: this quote is never closed",
                "name,source;oak,\"a\" board      | any.csv:2:8: read \" \", expected a comma",
                "name,source;;oak                 | any.csv:3: 1 fields where the head has 2",
                ";                                | has no head"
            })
    void isHeldToOneForm(String lines, String said) {
        assertThatThrownBy(() -> Table.parse("any.csv", lines.replace(';', '\n')))
                .hasMessageContaining(said);
    }
}

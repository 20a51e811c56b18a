package jackwork.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jackwork.stock.Basis;
import jackwork.stock.Uncertain;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Every value of a workshop's file is found, and any of them can be written without touching another. */
class WorkshopValuesTest {

    private static final String TEXT = WorkshopReader.text(Path.of("demo"));

    private static Map<String, WorkshopValues.Value> values(String text) {
        return WorkshopValues.of(WorkshopReader.parse(text)).stream()
                .collect(Collectors.toMap(WorkshopValues.Value::path, value -> value));
    }

    @Test
    void whateverTheFileSaysIsAmongThem() {
        Set<String> found = values(TEXT).keySet();
        Set<String> leaves = YamlLeaves.of(YamlFile.parse("workshop.yaml", TEXT, new java.util.ArrayList<>()))
                .keySet();
        assertThat(leaves)
                .filteredOn(leaf -> !leaf.equals("format") && !leaf.startsWith("times.") && !leaf.equals("friction"))
                .filteredOn(leaf -> !leaf.startsWith("pay.") || leaf.startsWith("pay.bands."))
                .isNotEmpty()
                .allSatisfy(leaf -> assertThat(found)
                        .anySatisfy(path -> assertThat(leaf)
                                .satisfiesAnyOf(
                                        l -> assertThat(l).isEqualTo(path),
                                        l -> assertThat(l).startsWith(path + "."))));
    }

    @Test
    void whatIsNotSaidIsGuessedAndSaysSo() {
        Map<String, WorkshopValues.Value> values = values(TEXT);
        assertThat(values.get("laser.speeds.cut").written()).isFalse();
        assertThat(values.get("laser.speeds.cut").number()).isNotNull();
        assertThat(values.get("handling.tilt").unit()).isEqualTo("deg");
        assertThat(values.get("printer.bed").words()).isEqualTo("180, 180, 180");
        assertThat(values.get("fits.push").written()).isFalse();
        assertThat(values.get("laser.kerf").written()).isTrue();
        assertThat(values.get("laser.kerf").about()).isEqualTo("Width of the cut.");
    }

    @Test
    void everyValueIsExplained() {
        assertThat(WorkshopValues.of(WorkshopReader.parse(TEXT)))
                .filteredOn(value -> value.about().isEmpty())
                .extracting(WorkshopValues.Value::path)
                .allMatch(path -> path.startsWith("pay.bands."));
    }

    /** Written alone, also where the mappings around it are not there yet; all the rest reads as before. */
    @Test
    void everyNumberCanBeWritten() {
        for (WorkshopValues.Value value : WorkshopValues.of(WorkshopReader.parse(TEXT))) {
            Uncertain number = value.number();
            if (number == null || value.path().startsWith("friction.")) {
                continue;
            }
            Uncertain other = new Uncertain(
                    Math.round(1000 * number.value() + 1) / 1000.0,
                    number.low(),
                    Math.round(1000 * number.high() + 1) / 1000.0,
                    number.unit(),
                    Basis.MEASURED,
                    "a \"test\"");
            String after = WorkshopSplice.number(TEXT, value.path(), other);
            Map<String, WorkshopValues.Value> now = values(after);
            assertThat(now.get(value.path()).number()).isEqualTo(other);
            Map<String, WorkshopValues.Value> before = values(TEXT);
            now.remove(value.path());
            before.remove(value.path());
            assertThat(now).isEqualTo(before);
            assertThat(comments(after)).isEqualTo(comments(TEXT));
        }
    }

    private static List<String> comments(String text) {
        return text.lines()
                .filter(line -> line.contains("#"))
                .map(line -> line.substring(line.indexOf('#')))
                .toList();
    }

    @Test
    void mappingsThatAreMissingAreMadeAroundAValue() {
        String bare = TEXT.substring(0, TEXT.indexOf("# What it costs"));
        Uncertain share = new Uncertain(95, 90, 99, "%", Basis.MEASURED, "counted");
        String after = WorkshopSplice.number(bare, "pay.yields.cut", share);
        assertThat(after).startsWith(bare).contains("pay:\n  yields: {cut: {value: 95");
        assertThat(WorkshopReader.parse(after).payOrNothing().yields().cut()).isEqualTo(share);
        String sized =
                WorkshopSplice.value(bare, "sheets.poplar-4", "{kind: poplar-ply, thickness: 4, size: [600, 400]}");
        assertThat(WorkshopReader.parse(sized).sheets()).containsKey("poplar-4");
        assertThat(WorkshopSplice.remove(sized, "sheets.poplar-4")).isEqualTo(bare);
    }

    @Test
    void whatIsTypedWrongIsToldAndNothingComesOfIt() {
        assertThat(WorkshopSplice.typed("mm", "1/8 in", "3 mm", "3.3", Basis.GUESS, "")
                        .value())
                .isEqualTo(3.175);
        assertThatThrownBy(() -> WorkshopSplice.typed("mm", "three", "1", "2", Basis.GUESS, ""))
                .hasMessageContaining("read \"three\", expected a number of mm");
        assertThatThrownBy(() -> WorkshopSplice.typed("mm", "3", "3.1", "4", Basis.GUESS, ""))
                .hasMessageContaining("must lie between");
        assertThatThrownBy(() -> WorkshopSplice.value(TEXT, "sheets.x.y.z", "5"))
                .isInstanceOf(DesignException.class);
        assertThatThrownBy(() -> WorkshopSplice.value(TEXT, "paper", "A7")).hasMessageContaining("expected A4");
    }
}

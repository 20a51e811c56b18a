package jackwork.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jackwork.stock.Basis;
import jackwork.stock.Uncertain;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A measured value put into the workshop's text: that and nothing else changes. */
@Tag("quick")
class WorkshopSpliceTest {

    private static final Uncertain READ =
            new Uncertain(0.1532, 0.1449, 0.1615, "mm", Basis.MEASURED, "a \"test\" piece");
    private static final String WRITTEN =
            "{value: 0.153, low: 0.145, high: 0.162, basis: measured, source: \"a \\\"test\\\" piece\"}";

    private static String demo() throws IOException {
        return Files.readString(Path.of("demo/workshop.yaml"));
    }

    @Test
    void numbersOfAFlowMapping() throws IOException {
        String before = demo();
        String after = WorkshopSplice.measured(before, "laser.kerf", READ);
        assertThat(after)
                .isEqualTo(before.replaceFirst(
                        "kerf: \\{[^}]*}", java.util.regex.Matcher.quoteReplacement("kerf: " + WRITTEN)));
        assertThat(WorkshopReader.parse(after).laser().kerf().basis()).isEqualTo(Basis.MEASURED);
    }

    @Test
    void aBareNumberWithUnitAndComment() throws IOException {
        String before = demo().replaceFirst("kerf: \\{[^}]*}", "kerf: 0.16 mm   # ä𝄞 guessed");
        assertThat(WorkshopSplice.measured(before, "laser.kerf", READ)).isEqualTo(before.replace("0.16 mm", WRITTEN));
    }

    @Test
    void aBlockMappingKeepsItsComments() throws IOException {
        String before = demo().replaceFirst(
                        "kerf: \\{[^}]*}", "kerf:\r\n    # of March\r\n    value: 0.2 # here\r\n    basis: guess\r\n");
        String after = WorkshopSplice.measured(before, "laser.kerf", READ);
        assertThat(after)
                .isEqualTo(before.replace(
                        "    value: 0.2 # here\r\n    basis: guess",
                        "    value: 0.153 # here\r\n    basis: measured\r\n"
                                + "    low: 0.145\r\n    high: 0.162\r\n    source: \"a \\\"test\\\" piece\""));
    }

    @Test
    void frictionAnewAndAgain() throws IOException {
        String once = WorkshopSplice.friction(demo(), "coin", "wood", READ);
        assertThat(once)
                .isEqualTo(demo().replace(
                                "friction: []", "friction: [{between: [coin, wood], coefficient: " + WRITTEN + "}]"));
        Uncertain other = new Uncertain(0.25, 0.2, 0.3, "1", Basis.MEASURED, "again");
        String twice = WorkshopSplice.friction(once, "wood", "coin", other);
        assertThat(WorkshopReader.parse(twice).friction()).hasSize(1);
        assertThat(twice).contains("value: 0.25, low: 0.2, high: 0.3");
        String block = demo().replace(
                        "friction: []", "friction:\n  # ours\n  - {between: [bamboo, wood], coefficient: 0.3} # dry\n");
        assertThat(WorkshopSplice.friction(block, "coin", "wood", READ))
                .isEqualTo(block.replace(
                        "0.3} # dry\n", "0.3} # dry\n  - {between: [coin, wood], coefficient: " + WRITTEN + "}\n"));
        String none = demo().replaceFirst("(?m)^friction:.*\n", "");
        assertThat(WorkshopSplice.friction(none, "coin", "wood", READ))
                .isEqualTo(none + "friction: [{between: [coin, wood], coefficient: " + WRITTEN + "}]\n");
    }

    @Test
    void whatStandsForMoreThanOnePlaceIsRefused() throws IOException {
        String shared =
                demo().replaceFirst("kerf: \\{[^}]*}", "kerf: &k {value: 0.16}").replace("margin: 5", "margin: 5 # *k");
        assertThatThrownBy(() -> WorkshopSplice.measured(shared, "laser.kerf", READ))
                .hasMessageContaining("anchor");
        String within = demo().replaceFirst("birch-3:\n", "birch-3: &b\n")
                .replaceFirst("(?s)  birch-2:\n.*?\n\n", "  birch-2: *b\n\n");
        assertThat(WorkshopReader.parse(within).sheets()).hasSize(2);
        assertThatThrownBy(() -> WorkshopSplice.measured(within, "sheets.birch-3.thickness", READ))
                .hasMessageContaining("without changing other values");
    }

    @Test
    void whatCannotBeUsedIsRefused() throws IOException {
        Uncertain wide = new Uncertain(0.1, -0.2, 0.4, "mm", Basis.MEASURED, "two pieces");
        String text = demo();
        assertThatThrownBy(() -> WorkshopSplice.measured(text, "laser.kerf", wide))
                .hasMessageContaining("expected 0 to 1 mm");
        assertThatThrownBy(() -> WorkshopSplice.measured(text, "laser.curf", READ))
                .hasMessageContaining("laser.curf");
    }

    @Test
    void aFileIsReplacedWhole(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("a.yaml"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("b.yaml"), file);
        WholeFile.write(link, "new ä");
        assertThat(file).hasContent("new ä");
        assertThat(link).isSymbolicLink();
        try (var files = Files.list(folder)) {
            assertThat(files).hasSize(2);
        }
    }
}

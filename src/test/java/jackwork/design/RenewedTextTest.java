package jackwork.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Texts of format 1 as those of today: the number, and without the keys that went; every other letter stays. */
@Tag("quick")
class RenewedTextTest {

    private static final int CASES = 400;

    private static String box(String bucket) {
        return "format: 1\nname: A\ncoin-works:\n" + bucket + "  kicker: k\n";
    }

    private static RenewedText renewed(FileKind kind, String text) {
        return RenewedText.of(kind, "some.yaml", text);
    }

    @Test
    void inBlocks() {
        RenewedText now = renewed(
                FileKind.BOX,
                box("  bucket:\n    tip: 9   # wide\n    bearing: 9.8\n    # why\n    clearance: 0.20\n"));
        assertThat(now.text())
                .isEqualTo("format: 2\nname: A\ncoin-works:\n  bucket:\n    tip: 9   # wide\n    # why\n  kicker: k\n");
        assertThat(now.gone()).extracting(RenewedText.Gone::line).containsExactly(6, 8);
        assertThat(now.gone()).extracting(RenewedText.Gone::key).containsExactly("bucket.bearing", "bucket.clearance");
        assertThat(now.gone()).extracting(RenewedText.Gone::value).containsExactly("9.8", "0.20");
    }

    @Test
    void inBraces() {
        assertThat(renewed(FileKind.BOX, box("  bucket: {clearance: 0.3, tip: 9, \"bearing\": {value: 4}}\n"))
                        .text())
                .contains("  bucket: {tip: 9}\n");
        // Comments between the entries stay where they are.
        assertThat(renewed(
                                FileKind.BOX,
                                box(
                                        "  bucket: {tip: 9, # far\n    clearance: 0.3, # near\n    bearing: 4 # last\n  }\n"))
                        .text())
                .contains("  bucket: {tip: 9, # far\n    # near\n     # last\n  }\n");
    }

    @Test
    void inChanges() {
        String before = "format: 1\nname: A\nbox: b\nfigure: f\nchange:\n";
        assertThat(renewed(FileKind.DESIGN, before + "  box.coin-works.bucket.clearance: 0.3\n")
                        .text())
                .isEqualTo("format: 2\nname: A\nbox: b\nfigure: f\n");
        assertThat(renewed(
                                FileKind.DESIGN,
                                before + "  box.coin-works.bucket: {tip: 3, clearance: 0.3}\n  figure.a.b: 1\n")
                        .text())
                .isEqualTo(before.replace("format: 1", "format: 2")
                        + "  box.coin-works.bucket: {tip: 3}\n  figure.a.b: 1\n");
        assertThat(renewed(FileKind.DESIGN, before + "  box.coin-works: {bucket: {tip: 3, bearing: 4}}\n")
                        .gone())
                .singleElement()
                .satisfies(gone -> assertThat(gone.key()).isEqualTo("bucket.bearing"));
        // The same words elsewhere are other things.
        assertThat(renewed(FileKind.DESIGN, before + "  figure.weights.clearance.mass: 4\n")
                        .gone())
                .isEmpty();
    }

    @Test
    void aNameIsNoKey() {
        String text = "format: 1\nparts:\n  clearance: {stock: a, layer: 1}\npins:\n  bearing: {parts: [clearance]}\n";
        assertThat(renewed(FileKind.FIGURE, text).text()).isEqualTo(text.replace("format: 1", "format: 2"));
    }

    @Test
    void whatCannotBeChangedFromHereIsRefusedWithItsPlace() {
        assertThatThrownBy(() -> renewed(FileKind.BOX, box("  bucket: &b {tip: 9, clearance: 0.3}\n")))
                .isInstanceOf(DesignException.class)
                .hasMessageContaining("some.yaml:4:")
                .hasMessageContaining("shared by an anchor");
        assertThatThrownBy(() -> renewed(FileKind.BOX, "format: 1\n  - no\n yaml: ["))
                .isInstanceOf(DesignException.class);
    }

    /** Texts of random entries, comments, blank lines, quotes and line ends; the same without what goes is what is expected. */
    @Test
    void randomTexts() {
        Random random = new Random(20261130);
        for (int i = 0; i < CASES; i++) {
            String end = random.nextBoolean() ? "\n" : "\r\n";
            List<String> old = new ArrayList<>();
            List<String> now = new ArrayList<>();
            both(old, now, random.nextInt(4) == 0 ? "\uFEFF# first" : "# first");
            String quote = random.nextInt(3) == 0 ? "\"" : "";
            String behind = random.nextBoolean() ? "   # the number" : "";
            String key = quote + "format" + quote + (random.nextBoolean() ? ": " : ":   ");
            boolean early = random.nextBoolean();
            if (early) {
                old.add(key + "1" + behind);
                now.add(key + "2" + behind);
            }
            both(old, now, "coin-works:");
            both(old, now, "  bucket:");
            List<String> lines =
                    new ArrayList<>(List.of("tip: 9", "\"heel\": a", "lip: [3, 4]  # here", "# alone", ""));
            boolean clearance = random.nextInt(4) > 0;
            boolean bearing = random.nextInt(4) > 0;
            if (clearance) {
                lines.add(random.nextBoolean() ? "clearance: 0.20" : "'clearance' : 0.3 mm   # goes");
            }
            if (bearing) {
                lines.add(random.nextBoolean() ? "bearing: {value: 9.8, basis: guess}" : "bearing:  1/4 in");
            }
            Collections.shuffle(lines, random);
            for (String line : lines) {
                String indented = line.isEmpty() ? "" : "    " + line;
                old.add(indented);
                if (!line.matches("'?(clearance|bearing).*")) {
                    now.add(indented);
                }
            }
            both(old, now, "  kicker: k # kick");
            both(old, now, "parts: {clearance: {stock: a}, bearing: {stock: b}}");
            if (!early) {
                old.add(key + "1" + behind);
                now.add(key + "2" + behind);
            }
            String last = random.nextBoolean() ? end : "";
            String text = String.join(end, old) + last;
            RenewedText renewed = renewed(FileKind.BOX, text);
            assertThat(renewed.text()).as(text).isEqualTo(String.join(end, now) + last);
            assertThat(renewed.gone()).as(text).hasSize((clearance ? 1 : 0) + (bearing ? 1 : 0));
            for (RenewedText.Gone gone : renewed.gone()) {
                Matcher word = Pattern.compile("bucket\\.(.*)").matcher(gone.key());
                assertThat(word.matches()).isTrue();
                assertThat(old.get(gone.line() - 1)).contains(word.group(1));
                assertThat(old.get(gone.line() - 1)).contains(gone.value());
            }
        }
    }

    private static void both(List<String> old, List<String> now, String line) {
        old.add(line);
        now.add(line);
    }
}

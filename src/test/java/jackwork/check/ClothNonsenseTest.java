package jackwork.check;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.check.Nonsense.Verdict;
import jackwork.design.DesignReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The lamplighter's cape, of other lengths, tied elsewhere, or of another outline. */
class ClothNonsenseTest {

    private static final Path DEMO = Path.of("demo").toAbsolutePath().normalize();
    /** Between its two places at most, over the stroke, mm. */
    private static final double FARTHEST = 53.9;

    private static Verdict spans(String... changes) throws IOException {
        return Nonsense.ask(new ClothSpans(), () -> Nonsense.changed("lamplighter", changes));
    }

    private static Verdict cut(String outline, String path) throws IOException {
        Path drawing = DEMO.resolve("lamplighter/figure.svg");
        Path design = DEMO.resolve("lamplighter/design.yaml");
        return Nonsense.ask(
                new ClothCut(),
                () -> Subject.asNumbered(DesignReader.read(
                        DEMO.resolve("lamplighter"),
                        Map.of(
                                drawing,
                                Files.readString(drawing)
                                        .replace("</svg>", "<path id=\"rag\" d=\"" + path + "\"/></svg>"),
                                design,
                                Files.readString(design) + "\nchange:\n  figure.cloths.cape.outline: " + outline
                                        + "\n"))));
    }

    @Test
    void theDemosCapeIsSensible() throws IOException {
        assertThat(spans("box.lever.throw: 14")).isEqualTo(Verdict.PASSES);
        assertThat(Nonsense.ask(new ClothCut(), () -> Nonsense.changed("lamplighter", "box.lever.throw: 14")))
                .isEqualTo(Verdict.PASSES);
    }

    @Test
    void aClothIsAsLongAsItsWayAsks() throws IOException {
        Random random = new Random(5);
        int[] seen = new int[3];
        for (int i = 0; i < 16; i++) {
            double length = FARTHEST * (0.5 + 9 * random.nextDouble());
            if (Math.abs(length / FARTHEST - 3) < 0.02 || Math.abs(length / FARTHEST - 6) < 0.02) {
                continue; // the greatest distance is known to three figures
            }
            Verdict expected = length < FARTHEST || length > 6 * FARTHEST
                    ? Verdict.FAILS
                    : length > 3 * FARTHEST ? Verdict.DOUBTFUL : Verdict.PASSES;
            assertThat(spans(String.format(Locale.ROOT, "figure.cloths.cape.length: %.1f", length)))
                    .as(length + " mm")
                    .isEqualTo(expected);
            seen[expected.ordinal()]++;
        }
        assertThat(seen).doesNotContain(0);
    }

    @Test
    void aClothReachesFromOnePlaceToAnother() throws IOException {
        assertThat(spans("figure.cloths.cape.to: {part: coat, at: cape-back}")).isEqualTo(Verdict.FAILS);
        assertThat(spans("figure.cloths.cape.from: {part: arm, at: cuff}")).isEqualTo(Verdict.FAILS);
        // Both at the arm's own pivot: it turns there and goes nowhere.
        assertThat(spans(
                        "figure.cloths.cape.from: {part: coat, at: shoulder}",
                        "figure.cloths.cape.to: {part: arm, at: shoulder}"))
                .isEqualTo(Verdict.FAILS);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "rag | M60,60 h0.5 v40 h-0.5 Z | FAILS",
                "rag | M60,60 h3 v40 h-3 Z | DOUBTFUL",
                "rag | M60,60 h1700 v40 h-1700 Z | FAILS",
                "rag | M60,60 h30 v40 h-30 Z | PASSES",
                // Of wood already.
                "coat | M60,60 h30 v40 h-30 Z | DOUBTFUL"
            })
    void anOutlineIsOneOfCloth(String outline, String path, Verdict verdict) throws IOException {
        assertThat(cut(outline, path)).isEqualTo(verdict);
    }
}

package jackwork.make;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.check.Finding;
import jackwork.check.Questions;
import jackwork.check.Status;
import jackwork.check.Subject;
import jackwork.check.Topic;
import jackwork.design.Design;
import jackwork.design.DesignException;
import jackwork.design.DesignReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A case that cannot be cut is one finding with its place; all else is told beside it, and nothing is packed. */
class CaseBreaksTest {

    private static Design heron(String... changes) throws IOException {
        Path folder = Path.of("demo/heron");
        return DesignReader.read(
                folder,
                Files.readString(folder.resolve(DesignReader.FILE)) + "\nchange:\n  " + String.join("\n  ", changes)
                        + "\n");
    }

    private static Finding bars(List<Finding> findings) {
        List<Finding> bars = findings.stream()
                .filter(finding -> finding.topic() == Topic.CASE_BARS)
                .toList();
        assertThat(bars).hasSize(1);
        return bars.get(0);
    }

    @ParameterizedTest
    @CsvSource({"left, 0.6, case-left", "left, -3, case-right", "width, 140, case-right", "width, 148, case-right"})
    void isOneFindingWithItsKey(String key, String value, String panel) throws IOException {
        Design design = heron("box.case." + key + ": " + value);
        Subject subject = Subject.of(design);
        Finding broken = bars(MakeQuestions.ask(design, subject));
        assertThat(broken.status()).isEqualTo(Status.FAIL);
        assertThat(broken.why().toString())
                .contains("box.yaml: ")
                .contains("case." + key)
                .contains(panel);
        // What else there is to say does not wait for it.
        assertThat(Questions.ask(subject)).hasSizeGreaterThan(40);
        Assertions.assertThatThrownBy(() -> Makings.of(design))
                .isInstanceOf(CaseException.class)
                .hasMessageContaining("box.yaml: ")
                .hasMessageContaining("case." + key);
    }

    /** Two feet that meet are one. */
    @ParameterizedTest
    @CsvSource({"depth, 30", "depth, 20", "width, 30"})
    void aNarrowWallHasItsFeetAllAlong(String key, String value) throws IOException {
        Design design = heron("box.case." + key + ": " + value);
        assertThat(bars(MakeQuestions.ask(design, Subject.asNumbered(design)))
                        .why()
                        .toString())
                .doesNotContain("feet");
    }

    @Test
    void whateverItsNumbersAreTheReportIsTold() throws IOException {
        Random random = new Random(1215);
        int broken = 0;
        int whole = 0;
        for (int i = 0; i < 60; i++) {
            String[] changes = {
                "box.case.left: " + number(random, -0.6, 40),
                "box.case.floor: " + number(random, -14, 40),
                "box.case.width: " + number(random, 151.2, 140),
                "box.case.height: " + number(random, 114.6, 100),
                "box.case.depth: " + number(random, 62, 60),
                "box.case.feet: " + number(random, 3, 40),
                "box.case.tab: " + number(random, 14, 60),
                "box.case.joined: " + (random.nextBoolean() ? "glue" : "screws")
            };
            Design design;
            try {
                design = heron(changes);
            } catch (DesignException e) {
                continue; // beyond the bounds of a number
            }
            Finding bars = bars(MakeQuestions.ask(design, Subject.asNumbered(design)));
            if (bars.why().toString().contains("does not stay one piece")) {
                assertThat(bars.status()).isEqualTo(Status.FAIL);
                assertThat(bars.why().toString()).contains("box.yaml: case.");
                broken++;
            } else {
                whole++;
            }
        }
        assertThat(broken).isGreaterThan(5);
        assertThat(whole).isGreaterThan(5);
    }

    /** As it is, or anywhere about it. */
    private static String number(Random random, double usual, double around) {
        double value = random.nextInt(3) > 0 ? usual : usual + around * (2 * random.nextDouble() - 1);
        return String.format(Locale.ROOT, "%.3f", value);
    }
}

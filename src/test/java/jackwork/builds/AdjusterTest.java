package jackwork.builds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jackwork.DemoCopy;
import jackwork.app.core.DesignCheck;
import jackwork.check.Subject;
import jackwork.design.DesignException;
import jackwork.design.DesignReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is set at the bench: read, refused, and counted as the same design drawn otherwise would be. */
@Tag("quick")
class AdjusterTest {

    private static final int BUILDS = 40;
    private static final long SEED = 3;

    @TempDir
    private Path hut;

    private Path heron;
    /** The design without what is set at the bench. */
    private String text = "";

    @BeforeEach
    void copy() throws IOException {
        DemoCopy.at(hut);
        heron = hut.resolve("heron");
        String whole = Files.readString(heron.resolve("design.yaml"));
        text = whole.substring(0, whole.indexOf("# Set at the bench"));
    }

    private void write(String rest) throws IOException {
        Files.writeString(heron.resolve("design.yaml"), text + rest);
    }

    private Subject heron(String rest) throws IOException {
        write(rest);
        return Subject.of(DesignReader.read(heron));
    }

    private static final String LIGHT = "change:\n  figure.weights.tail.mass: 34\n";

    private BuildReport builds(String rest) throws IOException, InterruptedException {
        return DesignCheck.builds(heron(rest), BUILDS, SEED).run(2, done -> {});
    }

    /** Each build that a turn makes pass does so when the design is drawn with that turn, and not with less of it. */
    @Test
    void aTurnDoesWhatTheDesignDrawnSoDoes() throws IOException, InterruptedException {
        BuildReport tuned = builds(LIGHT
                + "adjusters:\n  tail: {number: figure.weights.tail.mass, step: 3, down: 1, up: 4, what: washers}\n");
        assertThat(tuned.passes()).isBetween(1, BUILDS - 5);
        assertThat(tuned.worked()).isGreaterThan(tuned.passes());
        for (int steps = 1; steps <= 4; steps++) {
            BuildReport drawn = builds("change:\n  figure.weights.tail.mass: " + (34 + 3 * steps) + "\n");
            for (int i = 0; i < BUILDS; i++) {
                int set =
                        tuned.results().get(i).tuned().map(Adjuster.Turn::steps).orElse(0);
                if (set == steps) {
                    assertThat(drawn.results().get(i).passes()).as("build " + i).isTrue();
                } else if (set > steps) {
                    assertThat(drawn.results().get(i).passes()).as("build " + i).isFalse();
                }
            }
        }
    }

    @Test
    void theCardTellsEveryBuildThatFailsOnce() throws IOException, InterruptedException {
        BuildReport tuned = builds(LIGHT
                + "adjusters:\n  tail: {number: figure.weights.tail.mass, step: 3, down: 1, up: 1, what: washers}\n");
        TuningCard card = tuned.card().orElseThrow();
        int failing = BUILDS - tuned.passes() - tuned.notComputed();
        assertThat(card.lines().stream().mapToInt(TuningCard.Line::helps).sum()).isEqualTo(failing);
        assertThat(card.lines())
                .filteredOn(line -> line.set().equals("washers: 1 up, to 37.0 g"))
                .allMatch(line -> line.helps() > 0)
                .isNotEmpty();
        assertThat(tuned.words()).contains(" once they are tuned, " + tuned.passes() + " at once");
    }

    /** The draws do not hang on what can be set: at once, all is as without. */
    @Test
    void whatRunsAtOnceIsTheSame() throws IOException, InterruptedException {
        BuildReport with = builds(LIGHT
                + "adjusters:\n  tail: {number: figure.weights.tail.mass, step: 3, down: 1, up: 1, what: washers}\n");
        BuildReport without = builds(LIGHT);
        assertThat(without.card()).isEmpty();
        assertThat(with.passes()).isEqualTo(without.passes());
        for (int i = 0; i < BUILDS; i++) {
            assertThat(with.results().get(i).coins())
                    .isEqualTo(without.results().get(i).coins());
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "number: figure.weights.tale.mass, step: 3, down: 1, up: 1|did you mean \"figure.weights.tail.mass\"?",
                "number: nonsense, step: 3, down: 1, up: 1|expected a number of the box or figure",
                "number: figure.weights.tail.mass, step: 0, down: 1, up: 1|0.001",
                "number: figure.weights.tail.mass, step: 3, down: 0, up: 0|no step, down or up",
                "number: figure.weights.tail.mass, step: 3, down: 1, up: 11|10",
                "number: box.weights.counterweight.count, step: 0.5, down: 1, up: 1|counts things",
                "number: box.lever.press, step: 1, down: 1, up: 1|expected a number of the box or figure"
            })
    void whatCannotBeSetIsRefusedWithItsPlace(String entry, String expected) throws IOException {
        write("adjusters:\n  tail: {" + entry + ", what: washers}\n");
        assertThatThrownBy(() -> DesignReader.read(heron))
                .isInstanceOf(DesignException.class)
                .hasMessageContaining("design.yaml")
                .hasMessageContaining(expected);
    }

    /** A weight that is made lighter elsewhere has fewer steps down, and is no fault. */
    @Test
    void stepsBelowNothingAreNotGone() throws IOException {
        Subject subject = heron(
                "adjusters:\n  tail: {number: figure.weights.tail.mass, step: 30, down: 2, up: 1, what: washers}\n");
        assertThat(Adjuster.of(subject.design()).get(0).settings())
                .extracting(Adjuster.Setting::steps)
                .containsExactly(1, -1);
    }
}

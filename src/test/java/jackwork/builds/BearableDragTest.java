package jackwork.builds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.DemoCopy;
import jackwork.check.Finding;
import jackwork.check.PivotDrag;
import jackwork.check.Status;
import jackwork.check.Subject;
import jackwork.design.DesignReader;
import jackwork.motion.model.MechanismCompiler;
import jackwork.motion.rest.StrokeResult;
import jackwork.motion.rest.StrokeSolver;
import jackwork.parts.Assembly;
import jackwork.stock.Coin;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How much drag a design bears: that number, put into its bearings, decides whether it runs. */
@Tag("quick")
class BearableDragTest {

    private static final Subject HERON = Subject.of(DesignReader.read(Path.of("demo/heron")));

    private static boolean runs(Assembly assembly, Coin coin, double times) {
        double each = PivotDrag.expected(assembly).value();
        return BuildRun.nominal(assembly.withDrags(pin -> times * each), coin).passes();
    }

    /** Of each coin by itself; whole designs bear what their worst coin does. */
    @ParameterizedTest
    @ValueSource(strings = {"heron", "windmill", "cobbler", "lamplighter"})
    void aTenthLessRunsAndATenthMoreDoesNot(String design) {
        Subject subject = Subject.of(DesignReader.read(Path.of("demo", design)));
        Assembly assembly = subject.assembly();
        double least = Double.POSITIVE_INFINITY;
        for (Coin coin : subject.coins()) {
            BearableDrag.Found found = BearableDrag.find(assembly, List.of(coin));
            least = Math.min(least, found.times());
            assertThat(found.cause()).as(coin.code()).isPresent();
            assertThat(runs(assembly, coin, 0.9 * found.times()))
                    .as(coin.code())
                    .isTrue();
            assertThat(runs(assembly, coin, 1.1 * found.times()))
                    .as(coin.code())
                    .isFalse();
        }
        assertThat(subject.coins()).hasSize(design.equals("cobbler") ? 2 : 4);
        assertThat(BearableDrag.find(assembly, subject.coins()).times()).isCloseTo(least, within(0.05 * least));
    }

    /** By forces: with as much of it in every bearing the solved return force is all but gone. */
    @Test
    void whatForcesTellIsWhereTheReturnForceEnds() {
        Assembly assembly = HERON.assembly();
        PivotDrag.Back back = PivotDrag.back(assembly, HERON.stroke());
        double each = PivotDrag.expected(assembly).value();
        StrokeResult with = StrokeSolver.solve(
                MechanismCompiler.compile(assembly.withDrags(pin -> back.times() * each)),
                HERON.stroke().stroke().length);
        double without = Arrays.stream(HERON.stroke().returnForce()).min().orElseThrow();
        double least = Arrays.stream(with.returnForce()).min().orElseThrow();
        // Bearings that bear more by it rub more, which is not counted: the force ends before.
        assertThat(least / without).isBetween(-0.2, 0.0);
        assertThat(back.drag() * back.times()).isCloseTo(back.force(), within(1e-9));
    }

    /** A lever that turns alone: what its bearing drags is felt at its end by the law of the lever. */
    @Test
    void aBearingAloneIsFeltByTheLawOfTheLever() {
        Assembly assembly = HERON.assembly();
        PivotDrag.Back back = PivotDrag.back(assembly, HERON.stroke());
        double arm = assembly.lever().press().distance(assembly.lever().pivot());
        double least = Arrays.stream(HERON.stroke().returnForce()).min().orElseThrow() / 1e6;
        // Its way straight down is shorter than the arc: by the cosine of the steepest angle at the most.
        assertThat(back.alone().get(assembly.lever().pin())).isBetween(0.9 * least * arm, 1.02 * least * arm);
    }

    @TempDir
    private Path workshop;

    private Finding ask(String change) throws IOException {
        Path hut = workshop.resolve(change.replaceAll("[^a-z0-9]", "-"));
        DemoCopy.at(hut);
        Path design = hut.resolve("heron/design.yaml");
        Files.writeString(design, Files.readString(design) + "\nchange:\n  " + change + "\n");
        List<Finding> findings = BearableDrag.ask(Subject.of(DesignReader.read(hut.resolve("heron"))));
        assertThat(findings).hasSize(1);
        return findings.get(0);
    }

    @Test
    void lessSteelInTheTailIsDoubtfulThenFails() throws IOException {
        Finding some = ask("figure.weights.tail.mass: 38");
        assertThat(some.status()).isEqualTo(Status.DOUBTFUL);
        assertThat(some.remedy()).contains("Add weight to what brings it back");
        Finding less = ask("figure.weights.tail.mass: 28");
        assertThat(less.status()).isEqualTo(Status.FAIL);
        assertThat(less.value()).isBetween(0.3, 0.9);
    }

    @Test
    void whatDoesNotRunAtAllBearsNothing() throws IOException {
        Finding none = ask("figure.weights.tail.mass: 10");
        assertThat(none.status()).isEqualTo(Status.FAIL);
        assertThat(none.value()).isZero();
        assertThat(none.why()).contains("does not run even where nothing drags", "the lever does not come back");
    }

    @Test
    void whereNoDragIsExpectedNothingIsAsked() throws IOException {
        DemoCopy.at(workshop);
        Path file = workshop.resolve("workshop.yaml");
        Files.writeString(
                file,
                Files.readString(file)
                        + "\nhandling:\n  drag: {value: 0, low: 0, high: 0, basis: measured, source: \"ball bearings\"}\n");
        assertThat(BearableDrag.ask(Subject.of(DesignReader.read(workshop.resolve("heron")))))
                .isEmpty();
    }
}

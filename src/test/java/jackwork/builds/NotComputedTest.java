package jackwork.builds;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.check.Finding;
import jackwork.check.Status;
import jackwork.check.Subject;
import jackwork.design.DesignReader;
import jackwork.motion.coin.CycleResult;
import jackwork.motion.coin.CycleStage;
import jackwork.stock.Stray;
import jackwork.stock.Strays;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A run that is not computed says neither yes nor no, to nobody. */
class NotComputedTest {

    /**
     * A wedge whose loads grow with every round: the bounds of its pins never come to agree with them. The bucket tips a
     * little less than the demo's.
     */
    @Test
    void frictionThatDoesNotSettleIsNotUsed() {
        Path heron = Path.of("demo/heron");
        Subject subject = Subject.of(
                DesignReader.read(heron, DesignReader.text(heron) + "\nchange:\n  box.coin-works.bucket.tip: 9\n"));
        Visitor visitor = new Visitor(subject.assembly(), subject.coins());
        Stray note = Strays.catalogue().all().stream()
                .filter(stray -> stray.words().contains("folded small"))
                .findFirst()
                .orElseThrow();
        CycleResult result = visitor.puts(visitor.drop(note), visitor.drop(visitor.lightest()));
        assertThat(result.computed()).isFalse();
        assertThat(result.residual()).as("nothing else is amiss").isLessThan(1e-3);
        assertThat(result.energyFromNowhere()).isLessThan(0.02);
        Finding finding = OtherCoins.find(visitor, note.words(), true, visitor.drop(note));
        assertThat(finding.status()).isEqualTo(Status.DOUBTFUL);
        assertThat(finding.why()).contains("could not be computed");
    }

    @Test
    void nothingOfItIsKept() {
        CycleResult result = new CycleResult(
                Map.of(CycleStage.LANDS, 0.1), Map.of(CycleStage.FREES, 0.4), Map.of(), false, 0, 0, 0, 7);
        assertThat(result.times()).isEmpty();
        assertThat(result.nearest()).isEmpty();
        assertThat(result.passes()).isFalse();
    }

    @Test
    void buildsCountItAsNeither() throws InterruptedException {
        Subject subject = Subject.of(DesignReader.read(Path.of("demo/heron")));
        BuildRun run = new BuildRun(subject.assembly(), subject.coins().subList(0, 1), 10, 1);
        List<BuildResult> results = new ArrayList<>(run.run(2, done -> {}).results());
        BuildResult.Trial first = results.get(0).coins().get(0);
        results.set(
                0,
                new BuildResult(0, List.of(new BuildResult.Trial(first.coin(), Optional.empty(), false, Double.NaN))));
        BuildReport report = BuildReport.of(
                1,
                subject.coins().subList(0, 1),
                Unknowns.of(subject.assembly()),
                quantiles(10),
                List.copyOf(results),
                List.of());
        assertThat(report.passes() + report.notComputed()).isEqualTo(10);
        assertThat(report.notComputed()).isEqualTo(1);
        assertThat(report.causes()).isEmpty();
        assertThat(report.words()).contains("1 could not be computed and count as neither");
        assertThat(report.matters()).isNotEmpty().allMatch(matter -> Double.isFinite(matter.correlation()));
        assertThat(report.conditions().get(0).builds())
                .isEqualTo(report.conditions().get(0).passes());
    }

    /** Build i has every number at the same rank, the first one lowest. */
    private static double[][] quantiles(int builds) {
        double[][] quantiles = new double[builds][64];
        for (int i = 0; i < builds; i++) {
            java.util.Arrays.fill(quantiles[i], (i + 0.5) / builds);
        }
        return quantiles;
    }
}

package jackwork.builds;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.check.Subject;
import jackwork.design.DesignReader;
import jackwork.geometry.Point;
import jackwork.motion.coin.CoinCycle;
import jackwork.motion.coin.CycleResult;
import jackwork.motion.coin.CycleRig;
import jackwork.motion.coin.CycleStage;
import jackwork.stock.Coin;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A run that is not computed says neither yes nor no, to nobody. */
class NotComputedTest {

    /**
     * A wedge whose loads grow with every round: the kicker slipped down at the glue-up, and the strut's corner, which rises by
     * 0.23 mm as the bucket tips, comes up under the tooth while what the lever rests on holds that down.
     */
    @Test
    void frictionThatDoesNotSettleIsNotUsed() {
        Subject subject = Subject.of(DesignReader.read(Path.of("demo/heron")));
        Build wedged = new Build(subject.assembly());
        wedged.slips.put("kicker", new Point(0, -0.85));
        CycleRig rig = BuildTrial.rig(wedged);
        assertThat(rig.catchRoom()).isBetween(0.1, 0.2);
        for (Coin coin : subject.coins()) {
            CycleResult result = BuildTrial.cycle(wedged, rig, coin, CoinCycle.NOBODY);
            assertThat(result.computed()).isFalse();
            assertThat(result.residual()).as("nothing else is amiss").isLessThan(1e-3);
            assertThat(result.energyFromNowhere()).isLessThan(0.02);
            BuildResult.Trial trial = BuildTrial.trial(wedged, rig, coin, CoinCycle.NOBODY);
            assertThat(trial.cause()).isEmpty();
            assertThat(trial.passes()).isFalse();
        }
        BearableDrag.Found found = BearableDrag.find(times -> wedged, subject.coins());
        assertThat(found.computed()).isFalse();
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
        double[][] quantiles = new double[builds][128];
        for (int i = 0; i < builds; i++) {
            java.util.Arrays.fill(quantiles[i], (i + 0.5) / builds);
        }
        return quantiles;
    }
}

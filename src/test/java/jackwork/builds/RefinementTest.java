package jackwork.builds;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.motion.coin.CycleStage;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Builds at a hundredth of the step say the same. Only sixteen here; {@link Refinement#main} does 200. */
class RefinementTest {

    private static final double MILLISECOND = 1e-3;

    @Test
    void finerStepsSayTheSame() {
        List<Refinement.Pair> pairs = Refinement.run(16, 7);
        assertThat(pairs)
                .allSatisfy(pair -> assertThat(
                                pair.coarse().computed() && pair.fine().computed())
                        .isTrue());
        assertThat(Refinement.falling(pairs)).isBetween(1e-12, 0.1);
        assertThat(pairs).noneMatch(Refinement.Pair::flips);
        for (CycleStage stage : List.of(CycleStage.LANDS, CycleStage.FREES, CycleStage.ACTS)) {
            // A rebound more or less may take its own time: of 200, 3 are free and 4 are down by more than 1 ms apart.
            assertThat(pairs)
                    .filteredOn(pair -> Math.abs(pair.late(stage)) > MILLISECOND)
                    .hasSizeLessThan(2);
        }
    }
}

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
            // A rebound more or less, of the coin or from a stop, may take its own time: of these 16 one is free and
            // two are down
            // by 1.5 to 2.5 ms apart, all others by less than 0.6.
            assertThat(pairs)
                    .filteredOn(pair -> Math.abs(pair.late(stage)) > MILLISECOND)
                    .hasSizeLessThan(3);
            assertThat(pairs).allMatch(pair -> Math.abs(pair.late(stage)) < 3 * MILLISECOND);
        }
    }
}

package jackwork.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.design.DesignReader;
import jackwork.geometry.Point;
import jackwork.parts.Assembler;
import jackwork.parts.Assembly;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The whole cycle of the heron with a coin of 1 euro, as numbered. */
class CoinCycleTest {

    private static final Assembly HERON = Assembler.assemble(DesignReader.read(Path.of("demo/heron")));
    private static final Press PRESS = new Press(6, 150);

    private static CoinDrop drop(double mass) {
        return new CoinDrop(mass, 11.625, 0, 0, 0.35, 0.3, 0.12);
    }

    private static CycleResult run(CoinDrop drop, Press press, double step) {
        return CoinCycle.run(HERON, 0, drop, press, 0, step, (time, pose) -> {});
    }

    @Test
    void everyStageInItsOrder() {
        CycleResult result = run(drop(7.5), PRESS, CoinCycle.STEP);
        assertThat(result.passes()).isTrue();
        double before = 0;
        for (CycleStage stage : CycleStage.values()) {
            if (stage == CycleStage.THROWN) {
                continue;
            }
            assertThat(result.times().get(stage)).as(stage.name()).isGreaterThan(before);
            before = result.times().get(stage);
        }
        // Free fall from the slot to where the coin touches the floor or the lip.
        double fall = result.times().get(CycleStage.LANDS);
        double way = Mechanism.GRAVITY * fall * fall / 2;
        double start = HERON.coinWorks().slotAt().y();
        double seat =
                Math.max(HERON.coinWorks().lip().y(), HERON.coinWorks().heel().y());
        assertThat(start - way).isBetween(seat + 0.5 * 11.625, seat + 1.1 * 11.625);
    }

    @Test
    void theSameBitsTwice() {
        assertThat(run(drop(7.5), PRESS, CoinCycle.STEP)).isEqualTo(run(drop(7.5), PRESS, CoinCycle.STEP));
    }

    /**
     * Against a run at a hundredth of the step: landing and freeing within a millisecond; the lever down, after all the
     * coin's rebounds, within little more than the step at whose end it is told.
     */
    @Test
    void finerStepsSayTheSame() {
        CycleResult coarse = run(drop(7.5), PRESS, CoinCycle.STEP);
        CycleResult fine = run(drop(7.5), PRESS, CoinCycle.STEP / 100);
        assertThat(fine.passes()).isTrue();
        for (CycleStage stage : new CycleStage[] {CycleStage.LANDS, CycleStage.FREES, CycleStage.ACTS}) {
            assertThat(coarse.times().get(stage))
                    .as(stage.name())
                    .isCloseTo(fine.times().get(stage), within(stage == CycleStage.ACTS ? 2.5e-3 : 1e-3));
        }
    }

    /** A disc too light to tip the bucket leaves the lever locked. */
    @Test
    void aButtonDoesNotFree() {
        CycleResult result = run(drop(1.5), PRESS, CoinCycle.STEP);
        assertThat(result.computed()).isTrue();
        assertThat(result.firstMissed()).contains(CycleStage.FREES);
    }

    /** A finger too weak for the figure does not bring the lever down. */
    @Test
    void aFeatherDoesNotPress() {
        CycleResult result = run(drop(7.5), new Press(0.02, 150), CoinCycle.STEP);
        assertThat(result.firstMissed()).contains(CycleStage.ACTS);
    }

    /** Wherever in the slot the coin is let go, and with a table that leans. */
    @ParameterizedTest
    @ValueSource(doubles = {-1, 0, 1})
    void elsewhereInTheSlotAndOnALeaningTable(double share) {
        CoinDrop drop = new CoinDrop(7.5, 11.625, 1.8 * share, 60, 0.35, 0.3, 0.12);
        CycleResult result =
                CoinCycle.run(HERON, 0, drop, PRESS, Math.toRadians(1.5 * share), CoinCycle.STEP, (time, pose) -> {});
        assertThat(result.passes()).as("%s", result).isTrue();
    }

    @Test
    void theWatcherSeesTheCoinFallFreely() {
        double[] worst = {0};
        Point start = HERON.coinWorks().slotAt();
        CoinCycle.run(HERON, 0, drop(7.5), PRESS, 0, CoinCycle.STEP, (time, pose) -> {
            int coin = pose.length / 3 - 1;
            if (time < 0.1) {
                double y = start.y() - Mechanism.GRAVITY * time * time / 2;
                worst[0] = Math.max(worst[0], Math.abs(pose[3 * coin + 1] - y));
            }
        });
        assertThat(worst[0]).isLessThan(1e-9);
    }
}

package jackwork.motion.coin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.design.DesignReader;
import jackwork.motion.model.CoinDrop;
import jackwork.motion.time.Press;
import jackwork.parts.Assembler;
import jackwork.parts.Assembly;
import jackwork.parts.Lever;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A slow press takes longer, and that is all there is to it: how long one waits hangs on how fast it is. */
@Tag("quick")
class SlowPressTest {

    private static final Assembly HERON = Assembler.assemble(DesignReader.read(Path.of("demo/heron")));

    private static CycleResult press(double force, double speed) {
        CoinDrop drop = new CoinDrop(7.5, 11.625, 0, 0, 0.35, 0.3, 0.12);
        return CoinCycle.run(CycleRig.of(HERON, 0, 0), drop, new Press(force, speed), CoinCycle.NOBODY);
    }

    /** How long the press point takes to where the lever counts as down, straight down at a speed, s. */
    private static double wayDown(double speed) {
        Lever lever = HERON.lever();
        double before = lever.press().minus(lever.pivot()).y();
        double after = lever.press()
                .turnedAbout(lever.pivot(), 0.98 * lever.turn())
                .minus(lever.pivot())
                .y();
        return (before - after) / speed;
    }

    @ParameterizedTest
    @ValueSource(doubles = {10, 5})
    void theHeronWorks(double speed) {
        CycleResult result = press(6, speed);
        assertThat(result.passes()).as("%s", result).isTrue();
        double took = result.times().get(CycleStage.ACTS) - result.times().get(CycleStage.FREES);
        assertThat(took).isGreaterThan(1.5);
        assertThat(took).isCloseTo(CoinLimits.REACTION + wayDown(speed), within(0.01 * took));
        assertThat(result.timeLeft()).isBetween(0.5, 1.0);
    }

    /** Speeds that nobody has thought of, from that of a careful child to that of a slap. */
    @Test
    void anySpeedTakesItsTime() {
        Random random = new Random(20);
        for (int k = 0; k < 12; k++) {
            double speed = 3 * Math.pow(100, random.nextDouble());
            CycleResult result = press(6, speed);
            assertThat(result.passes()).as("%s mm/s: %s", speed, result).isTrue();
            double took = result.times().get(CycleStage.ACTS) - result.times().get(CycleStage.FREES);
            assertThat(took)
                    .as("%s mm/s", speed)
                    .isCloseTo(CoinLimits.REACTION + wayDown(speed), within(0.02 * took + 5e-3));
        }
    }

    /** A finger too weak for the figure is not called slow. */
    @Test
    void aWeakFingerStillFails() {
        CycleResult result = press(0.02, 10);
        assertThat(result.computed()).isTrue();
        assertThat(result.firstMissed()).contains(CycleStage.ACTS);
    }

    /** A press that must be held is pushed for as long as it would take: the clock does not hold it. */
    @Test
    void thePressThatMustBeHeldIsASlowOneToo() {
        CycleResult result = press(6, 10);
        double pushed = result.times().get(CycleStage.REFUSES) - result.times().get(CycleStage.LOCKS);
        assertThat(pushed).isGreaterThan(wayDown(10));
    }
}

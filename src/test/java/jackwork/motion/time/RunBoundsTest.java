package jackwork.motion.time;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.Consumer;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What a run may miss, held from both sides, so that nobody widens a bound without seeing it here. */
@Tag("quick")
class RunBoundsTest {

    private static boolean holds(Consumer<RunBounds> step, double energy) {
        RunBounds bounds = new RunBounds();
        bounds.begin(1000, 1000, 0);
        bounds.stepSettled = true;
        step.accept(bounds);
        bounds.takeStep();
        return bounds.hold(1000 + energy, 1000, 0);
    }

    @Test
    void joints() {
        assertThat(holds(bounds -> bounds.stepClosure = 0.9e-3, 0)).isTrue();
        assertThat(holds(bounds -> bounds.stepClosure = 1.1e-3, 0)).isFalse();
    }

    @Test
    void whatTouches() {
        assertThat(holds(bounds -> bounds.stepOverlap = 0.045, 0)).isTrue();
        assertThat(holds(bounds -> bounds.stepOverlap = 0.055, 0)).isFalse();
    }

    @Test
    void complementarity() {
        assertThat(holds(bounds -> bounds.stepResidual = 0.9e-3, 0)).isTrue();
        assertThat(holds(bounds -> bounds.stepResidual = 1.1e-3, 0)).isFalse();
    }

    @Test
    void friction() {
        assertThat(holds(bounds -> bounds.stepSettled = false, 0)).isFalse();
    }

    @Test
    void energy() {
        assertThat(holds(bounds -> {}, 19)).isTrue();
        assertThat(holds(bounds -> {}, 21)).isFalse();
        RunBounds standing = new RunBounds();
        standing.begin(0, 0, 10);
        standing.stepSettled = true;
        standing.takeStep();
        assertThat(standing.hold(0.19, 0, 0)).as("what only stands and rounds").isTrue();
        assertThat(standing.hold(0.21, 0, 0)).isFalse();
        // What is lost to friction and blows is no fault.
        assertThat(holds(bounds -> {}, -900)).isTrue();
    }
}

package jackwork.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.design.DesignReader;
import jackwork.parts.Assembler;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The two solvers on the same mechanism: pressed and let back slowly by a drive, the stepper needs the
 * force that the pose solver finds; what is left is inertia, which goes with the square of the speed.
 */
class StaticsDynamicsTest {

    private static final int SAMPLES = 101;
    /** Of the press point, mm/s. */
    private static final double SPEED = 5;

    private static Mechanism mechanism(String design) {
        return MechanismCompiler.compile(Assembler.assemble(DesignReader.read(Path.of("demo/" + design))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"heron"})
    void agree(String design) {
        Mechanism mechanism = mechanism(design);
        StrokeResult stroke = StrokeSolver.solve(mechanism, SAMPLES);
        double peak = 0;
        for (double force : stroke.pressForce()) {
            peak = Math.max(peak, Math.abs(force));
        }
        double slow = difference(mechanism, stroke, SPEED);
        assertThat(slow).isLessThan(0.01 * peak);
    }

    @ParameterizedTest
    @ValueSource(strings = {"heron"})
    void whatIsLeftGoesWithTheSquareOfTheSpeed(String design) {
        Mechanism mechanism = mechanism(design);
        StrokeResult stroke = StrokeSolver.solve(mechanism, SAMPLES);
        double fast = difference(mechanism, stroke, 40 * SPEED);
        double slow = difference(mechanism, stroke, 20 * SPEED);
        assertThat(fast / slow).isCloseTo(4, within(0.4));
    }

    /** Greatest difference of the finger force over both ways, µN. */
    private static double difference(Mechanism mechanism, StrokeResult stroke, double speed) {
        double way = 0;
        Rows rows = new Rows(mechanism);
        rows.at(mechanism.drawnPose());
        double arm = ForceSolver.fingerArm(rows, mechanism.drive);
        way = Math.abs(arm * mechanism.drive.turn());
        double rate = speed / way;
        double seconds = 1 / rate;
        TimeStepper stepper = new TimeStepper(mechanism, seconds / (SAMPLES - 1) / 40);
        PoseSolver poses = new PoseSolver(mechanism);
        double most = 0;
        for (int back = 0; back < 2; back++) {
            double sense = back == 0 ? 1 : -1;
            poses.moveTo(back == 0 ? 0 : 1);
            double[] velocity = poses.velocity().clone();
            for (int i = 0; i < velocity.length; i++) {
                velocity[i] *= sense * rate;
            }
            stepper.begin(poses.pose(), velocity);
            stepper.finger(Finger.drive(sense * rate));
            for (int i = 1; i < SAMPLES - 1; i++) {
                double before = stepper.fingerForce();
                // The force of a step belongs to its middle: take the mean of those on either side.
                assertThat(stepper.runTo(i * seconds / (SAMPLES - 1)))
                        .as("t %s closure %s residual %s", stepper.time(), stepper.closure(), stepper.residual())
                        .isTrue();
                before = stepper.fingerForce();
                double at = stepper.time();
                TimeStepper after = stepper;
                after.step(seconds / (SAMPLES - 1) / 40);
                double mean = 0.5 * (before + after.fingerForce());
                int sample = back == 0 ? i : SAMPLES - 1 - i;
                double expected = back == 0 ? stroke.pressForce()[sample] : stroke.returnForce()[sample];
                most = Math.max(most, Math.abs(mean - expected));
                assertThat(at).isCloseTo(i * seconds / (SAMPLES - 1), within(1e-9));
            }
        }
        return most;
    }
}

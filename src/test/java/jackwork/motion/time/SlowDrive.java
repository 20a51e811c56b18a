package jackwork.motion.time;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.motion.model.Direction;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.Rows;
import jackwork.motion.rest.PoseSolver;
import jackwork.motion.rest.StrokeResult;

/** A mechanism pressed and let back slowly in time, its finger force held against the pose solver's. */
public final class SlowDrive {

    private static final int STEPS = 40;

    private SlowDrive() {}

    /** Of the finger force over both ways, µN: greatest, and root mean square. */
    public record Differences(double most, double mean) {}

    public static Differences differences(Mechanism mechanism, StrokeResult stroke, double speed) {
        int samples = stroke.stroke().length;
        Rows rows = new Rows(mechanism);
        rows.at(mechanism.drawnPose());
        double way = Math.abs(rows.fingerArm() * mechanism.drive.turn());
        double rate = speed / way;
        double seconds = 1 / rate;
        TimeStepper stepper = new TimeStepper(mechanism, seconds / (samples - 1) / STEPS);
        PoseSolver poses = new PoseSolver(mechanism);
        double most = 0;
        double squares = 0;
        int counted = 0;
        for (Direction direction : Direction.values()) {
            boolean pressing = direction == Direction.PRESSING;
            poses.moveTo(pressing ? 0 : 1);
            double[] velocity = poses.velocity().clone();
            for (int i = 0; i < velocity.length; i++) {
                velocity[i] *= direction.sign() * rate;
            }
            stepper.begin(poses.pose(), velocity);
            stepper.finger(Finger.drive(direction.sign() * rate));
            for (int i = 1; i < samples - 1; i++) {
                assertThat(stepper.runTo(i * seconds / (samples - 1))).isTrue();
                double before = stepper.fingerForce();
                stepper.step(seconds / (samples - 1) / STEPS);
                // The force of a step belongs to its middle: the sample lies between these two.
                double force = 0.5 * (before + stepper.fingerForce());
                int sample = pressing ? i : samples - 1 - i;
                if (changesNear(stroke, sample, direction)) {
                    continue;
                }
                double expected = pressing ? stroke.pressForce()[sample] : stroke.returnForce()[sample];
                most = Math.max(most, Math.abs(force - expected));
                squares += (force - expected) * (force - expected);
                counted++;
            }
        }
        assertThat(counted).isGreaterThan(3 * samples / 2);
        return new Differences(most, Math.sqrt(squares / counted));
    }

    /** Within 1 % of the stroke of a contact change; at either end the drive starts with a jerk. */
    private static boolean changesNear(StrokeResult stroke, int sample, Direction direction) {
        double at = stroke.stroke()[sample];
        return stroke.events().stream()
                .anyMatch(event -> event.direction() == direction && Math.abs(event.stroke() - at) < 0.01);
    }
}

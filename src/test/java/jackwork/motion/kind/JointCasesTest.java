package jackwork.motion.kind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.geometry.Point;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.MechanismCompiler;
import jackwork.motion.rest.MotionEvent;
import jackwork.motion.rest.StrokeResult;
import jackwork.motion.rest.StrokeSolver;
import jackwork.motion.time.SlowDrive;
import jackwork.parts.Assembly;
import jackwork.parts.Lever;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A mechanism of every kind of joint, read from its files, solved at rest and in time, and held against a peer. */
class JointCasesTest {

    private static final int SAMPLES = 21;
    private static final double STROKES_A_SECOND = 0.5;
    /** s */
    private static final double PEER_STEP = 2e-4;

    private static JointCases cases;

    @BeforeAll
    static void copy(@TempDir Path folder) throws IOException {
        cases = new JointCases(folder);
    }

    static List<String> names() {
        return JointCases.names();
    }

    /** Both solvers on every case: forces, and that nothing is met on the way but what the case is about. */
    @ParameterizedTest
    @MethodSource("names")
    void statics(String name) {
        StrokeResult stroke = StrokeSolver.solve(cases.mechanism(name), 101);
        assertThat(stroke.reach()).isEqualTo(1);
        assertThat(stroke.closureError()).isLessThan(1e-9);
        assertThat(stroke.pressForce()).doesNotContain(Double.NaN);
        assertThat(stroke.returnForce()).doesNotContain(Double.NaN);
        assertThat(stroke.sharesLoads()).isEqualTo(name.equals("parallel-cranks"));
        Set<MotionEvent.Kind> met =
                stroke.events().stream().map(MotionEvent::kind).collect(Collectors.toSet());
        assertThat(met).isEqualTo(expected(name));
    }

    private static Set<MotionEvent.Kind> expected(String name) {
        return switch (name) {
            // The lever stands up by itself until it has the arm to lift.
            case "stop", "limit", "touch" ->
                Set.of(
                        MotionEvent.Kind.TAKES_HOLD,
                        MotionEvent.Kind.LETS_GO,
                        MotionEvent.Kind.RUNS_AHEAD,
                        MotionEvent.Kind.HANGS_UP);
            case "pawl" -> Set.of(MotionEvent.Kind.TAKES_HOLD, MotionEvent.Kind.LETS_GO);
            default -> Set.of();
        };
    }

    /** Pressed and let back at 5 mm/s in time, every case needs the force that the pose solver finds. */
    @ParameterizedTest
    @MethodSource("names")
    void agree(String name) {
        Mechanism mechanism = cases.mechanism(name);
        StrokeResult stroke = StrokeSolver.solve(mechanism, 101);
        double most = SlowDrive.differences(mechanism, stroke, 5).most();
        assertThat(most).isLessThan(1e-3 * peak(stroke.pressForce()));
    }

    private static double peak(double[] forces) {
        return Arrays.stream(forces).map(Math::abs).max().orElseThrow();
    }

    /**
     * A general physics library on the cases whose joints it has, its lever turned by a motor: the same poses, and the
     * motor's torque is the finger's force. Reach: motion and forces without friction in pins and on guides (touches
     * rub in both); its own error goes with its step and is what the bounds leave room for, most of all its pulley's.
     */
    @ParameterizedTest
    @Tag("outside")
    @ValueSource(
            strings = {
                "pin",
                "slot",
                "curved-slot",
                "ring-gear",
                "string",
                "string-through-eyelets",
                "stop",
                "limit",
                "touch",
                "rider",
                "spring",
                "torque",
                "parallel-cranks"
            })
    void thePeerMovesAlike(String name) {
        Assembly assembly = cases.smooth(name);
        Mechanism mechanism = MechanismCompiler.compile(assembly);
        StrokeResult stroke = StrokeSolver.solve(mechanism, SAMPLES);
        PeerWorld peer = new PeerWorld(assembly, STROKES_A_SECOND, PEER_STEP);
        boolean pulley = name.equals("string-through-eyelets");
        for (int i = 1; i < SAMPLES - 1; i++) {
            peer.run(1 / STROKES_A_SECOND / (SAMPLES - 1));
            double[] pose = stroke.pose()[i];
            for (int body = 0; body < mechanism.bodyCount(); body++) {
                int number = numberOf(assembly, mechanism.bodyName(body));
                Point centre = new Point(pose[3 * body], pose[3 * body + 1]);
                assertThat(peer.centre(number).distance(centre)).isLessThan(pulley ? 0.15 : 0.005);
                assertThat(peer.angle(number)).isCloseTo(pose[3 * body + 2], within(pulley ? 6e-3 : 2e-4));
            }
            if (name.equals("ring-gear")) {
                // The peer's ratio turns both gears rightly but presses both with the same moment: no gear's forces.
                continue;
            }
            Lever lever = assembly.lever();
            Point arm = lever.press().minus(lever.pivot()).turned(lever.turn() * stroke.stroke()[i]);
            double force = -1e6 * peer.motorTorque() / arm.x();
            double bound = (pulley ? 2e-3 : 5e-4) * peak(stroke.pressForce());
            assertThat(force).isCloseTo(stroke.pressForce()[i], within(bound));
        }
    }

    private static int numberOf(Assembly assembly, String body) {
        for (int i = 0; i < assembly.bodies().size(); i++) {
            if (assembly.body(i).name().equals(body)) {
                return i;
            }
        }
        throw new IllegalArgumentException(body);
    }
}

package jackwork.motion.rest;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.design.DesignReader;
import jackwork.geometry.Point;
import jackwork.motion.model.Direction;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.MechanismCompiler;
import jackwork.parts.Assembler;
import jackwork.parts.Assembly;
import jackwork.parts.Body;
import jackwork.parts.PinJoint;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The demo heron over 200 strokes: its pins stay closed, and every body is in equilibrium. Both are
 * worked out here from the assembly's own points and masses, in plain vectors, not by the solver's
 * equations.
 */
@Tag("quick")
class HeronEquilibriumTest {

    private static final double GRAVITY = 9806.65;

    private final Assembly assembly = Assembler.assemble(DesignReader.read(Path.of("demo/heron")));
    private final Mechanism mechanism = MechanismCompiler.compile(assembly);
    private final PoseSolver poses = new PoseSolver(mechanism);

    private Point now(Body body, Point drawn) {
        if (body.isGround()) {
            return drawn;
        }
        int number = mechanism.bodyNumber(body.name());
        double[] pose = poses.pose();
        return drawn.minus(body.centre())
                .turned(pose[3 * number + 2])
                .plus(new Point(pose[3 * number], pose[3 * number + 1]));
    }

    private double turning(Body body) {
        return body.isGround() ? 0 : poses.velocity()[3 * mechanism.bodyNumber(body.name()) + 2];
    }

    private boolean moves(PinJoint pin) {
        return pin.runner() != assembly.coinWorks().bucket()
                && pin.holder() != assembly.coinWorks().bucket();
    }

    @Test
    void pinsStayClosedToANanometre() {
        int seen = 0;
        for (int i = 0; i <= 200; i++) {
            assertThat(poses.moveTo(i / 200.0)).isTrue();
            for (PinJoint pin : assembly.pins()) {
                if (moves(pin)) {
                    Point onHolder = now(assembly.body(pin.holder()), pin.at());
                    Point onRunner = now(assembly.body(pin.runner()), pin.at());
                    assertThat(onHolder.distance(onRunner)).as(pin.name()).isLessThanOrEqualTo(1e-9);
                    seen++;
                }
            }
        }
        assertThat(seen).isGreaterThan(9 * 200);
    }

    @ParameterizedTest
    @EnumSource(Direction.class)
    void everyBodyIsInEquilibrium(Direction direction) {
        ForceSolver forces = new ForceSolver(mechanism);
        for (int i = 0; i <= 200; i++) {
            assertThat(poses.moveTo(i / 200.0)).isTrue();
            assertThat(forces.solve(poses, direction, 1)).isTrue();
            for (int number = 1; number < assembly.bodies().size(); number++) {
                if (number != assembly.coinWorks().bucket()) {
                    assertBalanced(number, forces, direction);
                }
            }
        }
    }

    /** Forces and moments on one body, about its centre, against the sum of their sizes. */
    private void assertBalanced(int number, ForceSolver forces, Direction direction) {
        Body body = assembly.body(number);
        Point centre = now(body, body.centre());
        Point sum = new Point(0, -body.mass() * GRAVITY);
        double size = body.mass() * GRAVITY;
        double moment = 0;
        double momentSize = 0;
        for (int p = 0; p < mechanism.pins.length; p++) {
            String name = mechanism.pins[p].name();
            PinJoint pin = assembly.pins().stream()
                    .filter(j -> j.name().equals(name))
                    .findFirst()
                    .orElseThrow();
            if (pin.holder() != number && pin.runner() != number) {
                continue;
            }
            // The solver's body A is the runner.
            double side = pin.runner() == number ? 1 : -1;
            Point force = new Point(forces.pinForceX(p), forces.pinForceY(p)).times(side);
            Point arm = now(body, pin.at()).minus(centre);
            double relative = turning(assembly.body(pin.runner())) - turning(assembly.body(pin.holder()));
            double sense = (direction == Direction.PRESSING ? 1 : -1) * Math.signum(relative);
            double friction = -side * sense * pin.friction().coefficient().value() * pin.radius() * force.length();
            sum = sum.plus(force);
            size += force.length();
            moment += arm.cross(force) + friction;
            momentSize += arm.length() * force.length() + Math.abs(friction);
        }
        if (number == assembly.lever().body()) {
            Point force = new Point(0, -forces.fingerForce());
            Point arm = now(body, assembly.lever().press()).minus(centre);
            sum = sum.plus(force);
            size += force.length();
            moment += arm.cross(force);
            momentSize += arm.length() * force.length();
        }
        assertThat(sum.length()).as("forces on " + body.name()).isLessThanOrEqualTo(1e-9 * size);
        assertThat(Math.abs(moment)).as("moments on " + body.name()).isLessThanOrEqualTo(1e-9 * momentSize);
    }

    /** Virtual work: without friction the finger's work over a small press is the rise of all weights. */
    @Test
    void fingerForceIsTheSlopeOfTheWeightsHeight() {
        ForceSolver forces = new ForceSolver(mechanism);
        double step = 1e-5;
        for (double u = 0.05; u < 1; u += 0.05) {
            poses.moveTo(u);
            assertThat(forces.solve(poses, Direction.PRESSING, 0)).isTrue();
            double force = forces.fingerForce();
            poses.moveTo(u - step);
            double energyBefore = energy();
            Point pressBefore =
                    now(assembly.body(assembly.lever().body()), assembly.lever().press());
            poses.moveTo(u + step);
            double work = force
                    * (pressBefore.y()
                            - now(
                                            assembly.body(assembly.lever().body()),
                                            assembly.lever().press())
                                    .y());
            assertThat(work).isCloseTo(energy() - energyBefore, org.assertj.core.data.Percentage.withPercentage(1e-3));
        }
    }

    private double energy() {
        double energy = 0;
        for (int number = 1; number < assembly.bodies().size(); number++) {
            if (number != assembly.coinWorks().bucket()) {
                Body body = assembly.body(number);
                energy += body.mass() * GRAVITY * now(body, body.centre()).y();
            }
        }
        return energy;
    }
}

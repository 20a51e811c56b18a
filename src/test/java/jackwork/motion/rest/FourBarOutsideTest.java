package jackwork.motion.rest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.Published;
import jackwork.geometry.Point;
import jackwork.motion.model.Direction;
import jackwork.motion.model.FourBar;
import jackwork.motion.model.Mechanism;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Norton, Design of Machinery, Example 4-1 and those that follow it with the same linkage
 * (a 40, b 120, c 80, d 100 mm, crank at 40°): values recomputed to nine figures from the book's
 * closed forms; the book's own rounded figures are quoted in the table from memory.
 *
 * <p>Reach: pins and the drive of the pose solver, its velocities and frictionless multipliers, on
 * one linkage in both branches. Says nothing of friction, slides or gravity.
 */
@Tag("outside")
@Tag("quick")
class FourBarOutsideTest {

    private static final String TABLE = "/jackwork/motion/linkages.csv";
    private static final double START = Math.toRadians(10);
    private static final double WANTED = Math.toRadians(40);
    private static final FourBar NORTON = new FourBar(40, 120, 80, 100);

    private static double published(String kind, String quantity) {
        return Published.value(TABLE, 3, kind, "", quantity);
    }

    /** The solver is started at 10° and driven to 40°, so that it has to solve. */
    private static PoseSolver drivenToForty(int side) {
        Mechanism mechanism = NORTON.drivenByCrank(START, side, WANTED - START).build();
        PoseSolver solver = new PoseSolver(mechanism);
        assertThat(solver.moveTo(1)).isTrue();
        assertThat(solver.closureError()).isLessThan(1e-9);
        return solver;
    }

    private static double couplerAngle(PoseSolver solver, int side) {
        return FourBar.angle(NORTON.crankEnd(START), NORTON.rockerEnd(START, side)) + solver.pose()[5];
    }

    private static double rockerAngle(PoseSolver solver, int side) {
        return FourBar.angle(new Point(NORTON.d, 0), NORTON.rockerEnd(START, side)) + solver.pose()[8];
    }

    @Test
    void openPosition() {
        PoseSolver solver = drivenToForty(+1);
        assertThat(Math.toDegrees(couplerAngle(solver, +1)))
                .isCloseTo(published("fourbar_position", "theta3_open"), within(1e-6));
        assertThat(Math.toDegrees(rockerAngle(solver, +1)))
                .isCloseTo(published("fourbar_position", "theta4_open"), within(1e-6));
    }

    @Test
    void crossedPosition() {
        PoseSolver solver = drivenToForty(-1);
        assertThat(Math.toDegrees(couplerAngle(solver, -1)))
                .isCloseTo(published("fourbar_position", "theta3_crossed"), within(1e-6));
        assertThat(Math.toDegrees(rockerAngle(solver, -1)))
                .isCloseTo(published("fourbar_position", "theta4_crossed"), within(1e-6));
    }

    @Test
    void transmissionAngle() {
        PoseSolver solver = drivenToForty(+1);
        double angle = Math.toDegrees(rockerAngle(solver, +1) - couplerAngle(solver, +1));
        assertThat(angle).isCloseTo(published("fourbar_transmission_angle", "mu_open_at_theta2=40"), within(1e-6));
    }

    @Test
    void velocities() {
        PoseSolver solver = drivenToForty(+1);
        // Stroke rate that turns the crank at 25 rad/s.
        double rate = 25 / (WANTED - START);
        assertThat(solver.velocity()[5] * rate).isCloseTo(published("fourbar_velocity", "omega3_open"), within(1e-6));
        assertThat(solver.velocity()[8] * rate).isCloseTo(published("fourbar_velocity", "omega4_open"), within(1e-6));
    }

    @Test
    void mechanicalAdvantageFromTheMultipliers() {
        // A moment of 1000 on the rocker, held by the finger at the crank's end (arm 40 mm, square to it at 40°).
        Point press = NORTON.crankEnd(START);
        Mechanism mechanism = NORTON.bodies(START, +1)
                .lever(0, WANTED - START, press, new Point(-Math.sin(WANTED), Math.cos(WANTED)))
                .load(2, NORTON.rockerEnd(START, +1), new Point(0, 0), -1000)
                .build();
        PoseSolver solver = new PoseSolver(mechanism);
        assertThat(solver.moveTo(1)).isTrue();
        ForceSolver forces = new ForceSolver(mechanism);
        assertThat(forces.solve(solver, Direction.PRESSING, 1)).isTrue();
        double advantage = 1000 / (forces.fingerForce() * NORTON.a);
        assertThat(advantage)
                .isCloseTo(
                        published("fourbar_mechanical_advantage", "T4/T2 = omega2/omega4 (frictionless)"),
                        within(1e-7));
    }

    /** Driven by the rocker, the limit positions of the crank-rocker are the drive's dead points. */
    @Test
    void limitPositionsAreTheRockersDeadPoints() {
        double start = Math.toRadians(90);
        double rocker = FourBar.angle(new Point(NORTON.d, 0), NORTON.rockerEnd(start, +1));
        deadPoint(start, -rocker, "theta2_extended", "theta4_extended");
        deadPoint(start, Math.PI - rocker, "theta2_folded", "theta4_folded");
    }

    private static void deadPoint(double start, double turn, String crankName, String rockerName) {
        Mechanism mechanism = NORTON.drivenByRocker(start, +1, turn).build();
        StrokeResult result = StrokeSolver.solve(mechanism, 101);
        assertThat(result.events(MotionEvent.Kind.DEAD_POINT)).hasSize(1);
        MotionEvent event = result.events(MotionEvent.Kind.DEAD_POINT).get(0);
        double rocker = FourBar.angle(new Point(NORTON.d, 0), NORTON.rockerEnd(start, +1)) + turn * event.stroke();
        assertThat(Math.toDegrees(rocker)).isCloseTo(published("fourbar_limit_positions", rockerName), within(1e-6));
        DeadPointSearch.DeadPoint found = new DeadPointSearch(mechanism)
                .find(new PoseSolver(mechanism), Direction.PRESSING)
                .orElseThrow();
        double crank = Math.toDegrees(start + found.pose()[2]);
        assertThat(crank).isCloseTo(published("fourbar_limit_positions", crankName), within(1e-4));
    }
}

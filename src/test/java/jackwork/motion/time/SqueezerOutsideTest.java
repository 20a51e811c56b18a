package jackwork.motion.time;

import static jackwork.motion.model.Mechanism.GROUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.Published;
import jackwork.geometry.Point;
import jackwork.motion.model.MechanismBuilder;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Andrews' squeezing mechanism, seven bodies and ten pins driven by a constant torque against a spring:
 * Test Set for IVP Solvers (CWI/Bari); parameters, start and reference as in the table's rows.
 *
 * <p>Reach: joints, inertia and a spring at high speed (the crank turns 2.5 times in 0.03 s); nothing rubs
 * or strikes.
 */
@Tag("outside")
@Tag("quick")
class SqueezerOutsideTest {

    private static final String TABLE = "/jackwork/motion/andrews.csv";
    private static final String[] ANGLES = {"beta", "Theta", "gamma", "Phi", "delta", "Omega", "epsilon"};

    private static double si(String name) {
        return Published.value(TABLE, 2, "parameter_SI", name);
    }

    private static double mm(String name) {
        return 1000 * si(name);
    }

    private static double start(String angle) {
        return Published.value(TABLE, 2, "initial_t0", angle);
    }

    private static Point along(double angle, double length) {
        return new Point(length, 0).turned(angle);
    }

    private static Point across(double angle, double length) {
        return new Point(0, length).turned(angle);
    }

    private static TimeStepper squeezer(double step) {
        double beta = start("beta");
        double k2 = beta + start("Theta");
        double k3 = start("gamma");
        double k5 = start("delta");
        double k4 = start("Phi") + k5;
        double k7 = start("epsilon");
        double k6 = start("Omega") + k7;
        Point a = new Point(mm("xa"), mm("ya"));
        Point b = new Point(mm("xb"), mm("yb"));
        Point c = new Point(mm("xc"), mm("yc"));
        Point crankEnd = along(beta, mm("rr"));
        Point e = crankEnd.minus(along(k2, mm("d")));
        Point g = a.plus(along(k5, mm("zt")));
        Point h = a.minus(across(k7, mm("u")));
        MechanismBuilder builder = new MechanismBuilder().gravity(Point.ORIGIN);
        body(builder, 1, along(beta, mm("ra")));
        body(builder, 2, crankEnd.minus(along(k2, mm("da"))));
        body(builder, 3, b.plus(along(k3, mm("sb"))).minus(across(k3, mm("sa"))));
        body(builder, 4, g.minus(across(k4, mm("e") - mm("ea"))));
        body(builder, 5, a.plus(along(k5, mm("ta"))).plus(across(k5, mm("tb"))));
        body(builder, 6, h.plus(along(k6, mm("zf") - mm("fa"))));
        body(builder, 7, a.minus(across(k7, mm("ua"))).plus(along(k7, mm("ub"))));
        Point d = b.plus(along(k3, mm("sd"))).minus(across(k3, mm("sc")));
        return new TimeStepper(
                builder.pin("O", 0, GROUND, Point.ORIGIN, 0, 0)
                        .pin("12", 0, 1, crankEnd, 0, 0)
                        .pin("23", 1, 2, e, 0, 0)
                        .pin("24", 1, 3, e, 0, 0)
                        .pin("26", 1, 5, e, 0, 0)
                        .pin("B", 2, GROUND, b, 0, 0)
                        .pin("A5", 4, GROUND, a, 0, 0)
                        .pin("A7", 6, GROUND, a, 0, 0)
                        .pin("45", 3, 4, g, 0, 0)
                        .pin("67", 5, 6, h, 0, 0)
                        // 1 N/m = 1000 µN/mm, 1 N m = 10⁹ µN·mm
                        .spring("spring", 2, d, GROUND, c, 1000 * si("c0"), mm("l0"), false)
                        .load(0, Point.ORIGIN, Point.ORIGIN, 1e9 * si("mom"))
                        .lever(0, 1, crankEnd, new Point(0, 1))
                        .build(),
                step);
    }

    private static void body(MechanismBuilder builder, int number, Point centre) {
        builder.body("K" + number, 1000 * si("m" + number), centre, 1e9 * si("i" + number));
    }

    /** Largest error of the seven angles at 0.03 s, rad. */
    private static double error(int steps) {
        TimeStepper stepper = squeezer(0.03 / steps);
        assertThat(stepper.runTo(0.03)).isTrue();
        assertThat(stepper.attempts()).isLessThanOrEqualTo(steps);
        double[] turned = new double[7];
        for (int i = 0; i < 7; i++) {
            turned[i] = stepper.pose()[3 * i + 2];
        }
        double[] change = {
            turned[0],
            turned[1] - turned[0],
            turned[2],
            turned[3] - turned[4],
            turned[4],
            turned[5] - turned[6],
            turned[6]
        };
        double most = 0;
        for (int i = 0; i < 7; i++) {
            double reference = Published.value(TABLE, 2, "reference_t0.03", ANGLES[i]);
            most = Math.max(most, Math.abs(start(ANGLES[i]) + change[i] - reference));
        }
        return most;
    }

    @Test
    void sevenAnglesWithinFourThousandSteps() {
        assertThat(error(4000)).isLessThan(1e-3);
    }

    @Test
    void halvingTheStepQuartersTheError() {
        assertThat(Math.log(error(1000) / error(2000)) / Math.log(2)).isCloseTo(2, within(0.2));
        assertThat(Math.log(error(2000) / error(4000)) / Math.log(2)).isCloseTo(2, within(0.2));
    }
}

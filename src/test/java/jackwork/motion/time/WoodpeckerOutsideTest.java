package jackwork.motion.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.Published;
import jackwork.geometry.Point;
import jackwork.motion.model.Joint;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.MechanismBuilder;
import jackwork.motion.model.Rows;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The woodpecker toy: a sleeve that jams on its pole by friction and comes free again, a sprung bird whose beak
 * strikes. Leine, Glocker and van Campen, ASME DETC2001/VIB-21608.
 *
 * <p>Reach: blows, sticking and sliding, jamming, a limit cycle of all these. The paper's model is linear in the
 * angles (y, φ_M, φ_S), so its rows are written here as such; the paper's impact law is Poisson's, ours
 * Newton's, which is why the period is held to 1 % only.
 */
@Tag("outside")
@Tag("quick")
class WoodpeckerOutsideTest {

    private static final String TABLE = "/jackwork/motion/woodpecker.csv";
    private static final int SLEEVE = 0;
    private static final int BIRD = 1;

    private static double mm(String name) {
        return 1000 * Published.value(TABLE, 2, "parameter", name);
    }

    private static double parameter(String name) {
        return Published.value(TABLE, 2, "parameter", name);
    }

    private static double published(String name) {
        return Published.value(TABLE, 2, "published_result", name);
    }

    /** The bird's height is linear in the coordinates: y_S = y + l_M φ_M + l_G φ_S. */
    private static final class Carried extends Joint {
        private final double arm = mm("lM");
        private final double reach = mm("lG");

        Carried() {
            super("carried");
        }

        @Override
        public int rows() {
            return 1;
        }

        @Override
        public void evaluate(Rows rows, int row, int axis) {
            rows.row(row, rows.y(BIRD) - rows.y(SLEEVE) - arm * rows.angle(SLEEVE) - reach * rows.angle(BIRD));
            rows.block(row, BIRD, 0, 1, -reach);
            rows.block(row, SLEEVE, 0, -1, -arm);
        }
    }

    /** A touch whose gap is linear in one angle, rubbing along the pole. */
    private static final class OnPole extends Joint {
        private final int body;
        private final double open;
        private final double slope;
        private final double arm;
        private final double back;
        private final double friction = parameter("mu1=mu2=mu3");

        OnPole(String name, int body, double open, double slope, double arm, double back) {
            super(name);
            this.body = body;
            this.open = open;
            this.slope = slope;
            this.arm = arm;
            this.back = back;
        }

        @Override
        public int rows() {
            return 1;
        }

        @Override
        public int axes() {
            return 1;
        }

        @Override
        public boolean pushesOnly(int row) {
            return true;
        }

        @Override
        public double restitution() {
            return back;
        }

        @Override
        public void evaluate(Rows rows, int row, int axis) {
            rows.row(row, open + slope * rows.angle(body));
            rows.block(row, body, 0, 0, slope);
            rows.axis(axis, friction, row, -1);
            rows.block(rows.count + axis, body, 0, 1, arm);
        }
    }

    private static TimeStepper woodpecker(double step) {
        MechanismBuilder builder = new MechanismBuilder().gravity(new Point(0, -mm("g")));
        builder.body("sleeve", mm("mM"), Point.ORIGIN, 1e9 * parameter("JM"));
        builder.body("bird", mm("mS"), Point.ORIGIN, 1e9 * parameter("JS"));
        int lever = builder.body("lever", 1, Point.ORIGIN, 1);
        double play = mm("rM") - mm("r0");
        Mechanism mechanism = builder.joint(new Carried())
                .joint(new OnPole(
                        "beak",
                        BIRD,
                        mm("lM") + mm("lG") - mm("lS") - mm("r0"),
                        -mm("hS"),
                        -mm("lS"),
                        parameter("eN1 (beak)")))
                .joint(new OnPole("lower", SLEEVE, play, mm("hM"), mm("rM"), 0))
                .joint(new OnPole("upper", SLEEVE, play, -mm("hM"), mm("rM"), 0))
                // 1 N m/rad = 10⁹ µN·mm/rad
                .torsionSpring("spring", SLEEVE, BIRD, 1e9 * parameter("c_phi"), 0)
                .pin("aside", lever, Mechanism.GROUND, Point.ORIGIN, 0, 0)
                .lever(lever, 1, Point.ORIGIN, new Point(0, 1))
                .build();
        TimeStepper stepper = new TimeStepper(mechanism, step);
        double phiM = -0.1036;
        double phiS = -0.2788;
        double vy = -341.1;
        double vS = -7.4583;
        stepper.begin(
                new double[] {0, 0, phiM, 0, mm("lM") * phiM + mm("lG") * phiS, phiS, 0, 0, 0},
                new double[] {0, vy, 0, 0, vy + mm("lG") * vS, vS, 0, 0, 0});
        return stepper;
    }

    @Test
    void limitCycle() {
        double step = 2e-5;
        TimeStepper stepper = woodpecker(step);
        List<Double> strikes = new ArrayList<>();
        double least = 0;
        double most = -1;
        double mostSleeve = 0;
        double before = 0;
        while (stepper.time() < 2) {
            double speed = stepper.velocity()[5];
            stepper.step(step);
            boolean struck = speed > 0 && stepper.velocity()[5] < 0 && stepper.pose()[5] > 0.1;
            if (struck && stepper.time() - before > 0.05) {
                strikes.add(stepper.time());
                before = stepper.time();
            }
            if (stepper.time() > 1) {
                least = Math.min(least, stepper.pose()[5]);
                most = Math.max(most, stepper.pose()[5]);
                mostSleeve = Math.max(mostSleeve, Math.abs(stepper.pose()[2]));
            }
        }
        assertThat(stepper.isComputed()).isTrue();
        assertThat(strikes).hasSizeGreaterThan(10);
        int n = strikes.size();
        double period = (strikes.get(n - 1) - strikes.get(n - 6)) / 5;
        assertThat(period)
                .isCloseTo(published("limit-cycle period T"), within(0.01 * published("limit-cycle period T")));
        assertThat(least).isCloseTo(published("minimum phi_S during jam"), within(0.005));
        assertThat(most).isCloseTo(published("phi_S beak limit"), within(0.001));
        assertThat(mostSleeve).isCloseTo(published("phi_M limit"), within(0.001));
    }
}

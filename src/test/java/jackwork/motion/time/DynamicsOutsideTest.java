package jackwork.motion.time;

import static jackwork.motion.model.Mechanism.GROUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.Published;
import jackwork.geometry.Point;
import jackwork.motion.model.MechanismBuilder;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The time stepper against closed forms and the IFToMM pendulum; each row of the table names its source.
 *
 * <p>Reach: one or two bodies each, so every law alone: free swing, dry friction, blows, strings.
 */
@Tag("outside")
@Tag("quick")
class DynamicsOutsideTest {

    private static final String TABLE = "/jackwork/motion/dynamics.csv";
    /** The table's gravity, mm/s². */
    private static final double G = 9810;

    private static double published(String topic, String inputs, String quantity) {
        return Published.value(TABLE, 3, topic, inputs, quantity);
    }

    private static MechanismBuilder builder() {
        return new MechanismBuilder().gravity(new Point(0, -G));
    }

    /** The stepper needs no lever, a mechanism does: one that stands by itself. */
    private static TimeStepper stepper(MechanismBuilder builder, double step) {
        Point aside = new Point(-5000, 0);
        int lever = builder.body("lever", 1, aside, 100);
        builder.pin("lever-pivot", lever, GROUND, aside, 0, 0).lever(lever, 1, aside, new Point(0, 1));
        return new TimeStepper(builder.build(), step);
    }

    private static TimeStepper pendulum(double step) {
        MechanismBuilder builder = builder();
        int bob = builder.body("bob", 1000, new Point(-1000, 0), 1);
        return stepper(builder.pin("o", bob, GROUND, Point.ORIGIN, 0, 0), step);
    }

    @Test
    void pendulumOfTheIftommBenchmark() {
        TimeStepper stepper = pendulum(1e-3);
        for (int t = 1; t <= 10; t++) {
            assertThat(stepper.runTo(t)).isTrue();
            double x = published("IFToMM_A01_simple_pendulum", "", "x(t=" + t + ")");
            double y = published("IFToMM_A01_simple_pendulum", "", "y(t=" + t + ")");
            assertThat(stepper.pose()[0] / 1000).isCloseTo(x, within(2e-4));
            assertThat(stepper.pose()[1] / 1000).isCloseTo(y, within(2e-4));
        }
        // Of an energy that goes up and down by 10⁷ µN·mm.
        assertThat(Math.abs(stepper.energyGained())).isLessThan(1e-5 * 1000 * G * 1000);
    }

    @Test
    void halvingTheStepQuartersItsError() {
        double coarse = pendulumError(2e-3);
        double fine = pendulumError(1e-3);
        assertThat(Math.log(coarse / fine) / Math.log(2)).isCloseTo(2, within(0.2));
    }

    private static double pendulumError(double step) {
        TimeStepper stepper = pendulum(step);
        stepper.runTo(2);
        double x = 1000 * published("IFToMM_A01_simple_pendulum", "", "x(t=2)");
        double y = 1000 * published("IFToMM_A01_simple_pendulum", "", "y(t=2)");
        return Math.hypot(stepper.pose()[0] - x, stepper.pose()[1] - y);
    }

    @ParameterizedTest
    @ValueSource(ints = {10, 60, 120, 170})
    void compoundPendulumAtLargeAmplitude(int amplitude) {
        // A uniform rod of 300 mm hung at its end, let go at rest.
        MechanismBuilder builder = builder();
        Point down = new Point(0, -150).turned(Math.toRadians(amplitude));
        int rod = builder.body("rod", 30, down, 30 * 300 * 300 / 12.0);
        TimeStepper stepper = stepper(builder.pin("o", rod, GROUND, Point.ORIGIN, 0, 0), 5e-4);
        double period = published(
                "compound_pendulum",
                amplitude == 0
                        ? ""
                        : "uniform rod 0.3 m pivoted at end; l_eq=0.2 m; g=9.81; amplitude " + amplitude + " deg",
                "period");
        // A quarter swing: it passes straight down.
        double before = 0;
        while (stepper.pose()[0] > 0) {
            before = stepper.pose()[0];
            stepper.step(5e-4);
        }
        double passed = stepper.time() - 5e-4 * stepper.pose()[0] / (stepper.pose()[0] - before);
        assertThat(4 * passed).isCloseTo(period, within(2e-4 * period));
    }

    @Test
    void dryFrictionOscillator() {
        String inputs = "m=0.2 kg k=50 N/m mu=0.25 g=9.81 x0=0.12 m v0=0";
        assertThat(published("dry_friction_oscillator", inputs, "friction shift F/k"))
                .isEqualTo(0.00981);
        // A peg of the block in a level slot, pulled by a spring whose far end is 120 mm from rest.
        MechanismBuilder builder = builder();
        int block = builder.body("block", 200, Point.ORIGIN, 1e5);
        builder.slide("floor-1", block, GROUND, new Point(-10, 0), new Point(-900, 0), new Point(900, 0), 0.25)
                .slide("floor-2", block, GROUND, new Point(10, 0), new Point(-900, 0), new Point(900, 0), 0.25)
                .spring("spring", block, Point.ORIGIN, GROUND, new Point(-1e6 - 120, 0), 50e3, 1e6, false);
        TimeStepper stepper = stepper(builder, 2e-4);
        List<Double> rests = new ArrayList<>();
        double path = 0;
        double speed = 0;
        double x = 0;
        double stopped = 0;
        while (stepper.time() < 1.5) {
            stepper.step(2e-4);
            // Where friction holds it, the block may creep by less than this, mm/s.
            double now = Math.abs(stepper.velocity()[0]) < 1e-5 ? 0 : stepper.velocity()[0];
            if (speed != 0 && now * speed <= 0) {
                rests.add(stepper.pose()[0] + 120);
            }
            if (now != 0) {
                stopped = stepper.time();
            }
            path += Math.abs(stepper.pose()[0] - x);
            x = stepper.pose()[0];
            speed = now;
        }
        List<List<String>> swings = Published.rows(TABLE).stream()
                .filter(row -> row.get(2).startsWith("x after half swing"))
                .toList();
        assertThat(swings).hasSize(6);
        assertThat(rests).hasSize(6);
        for (int k = 0; k < 6; k++) {
            assertThat(rests.get(k) / 1000)
                    .isCloseTo(Double.parseDouble(swings.get(k).get(3)), within(2e-6));
        }
        assertThat(x + 120)
                .isCloseTo(1000 * published("dry_friction_oscillator", "same", "rest position"), within(2e-3));
        assertThat(stopped).isCloseTo(published("dry_friction_oscillator", "same", "stop time"), within(1e-3));
        assertThat(path / 1000)
                .isCloseTo(published("dry_friction_oscillator", "same", "total sliding path"), within(1e-5));
        assertThat(stepper.isComputed()).isTrue();
    }

    private static List<Point> floor(double y) {
        return List.of(new Point(-1000, y - 50), new Point(1000, y - 50), new Point(1000, y), new Point(-1000, y));
    }

    @Test
    void bouncingBall() {
        MechanismBuilder builder = builder();
        int ball = builder.body("ball", 8.5, new Point(0, 110), 8.5 * 100 / 2);
        builder.touchDisc("floor", ball, new Point(0, 110), 10, GROUND, floor(0), 0, 0.6);
        TimeStepper stepper = stepper(builder, 1e-3);
        int bounces = 0;
        double apex = 0;
        double speed = 0;
        while (stepper.time() < 0.56 && bounces < 8) {
            stepper.step(1e-3);
            double now = stepper.velocity()[1];
            if (speed < 0 && now > 0) {
                bounces++;
                double at = published("bouncing_ball", "", "t_impact_" + bounces);
                assertThat(stepper.time()).as("blow " + bounces).isCloseTo(at, within(2e-6));
                if (bounces > 1) {
                    double height = published("bouncing_ball", "", "apex_after_" + (bounces - 1));
                    assertThat(apex - 10).isCloseTo(1000 * height, within(0.02));
                }
                apex = 0;
            }
            apex = Math.max(apex, stepper.pose()[1]);
            speed = now;
        }
        assertThat(bounces).isGreaterThanOrEqualTo(6);
        stepper.runTo(1);
        assertThat(stepper.pose()[1]).isCloseTo(10, within(1e-4));
        assertThat(stepper.velocity()[1]).isCloseTo(0, within(1e-9));
    }

    @Test
    void aBlowBetweenTwoDiscs() {
        MechanismBuilder builder = new MechanismBuilder().gravity(Point.ORIGIN);
        int a = builder.body("a", 8.5, new Point(-50, 0), 100);
        int b = builder.body("b", 30, new Point(50, 0), 100);
        builder.touchDiscs("blow", a, new Point(-50, 0), 10, b, new Point(50, 0), 10, 0, 0.5);
        TimeStepper stepper = stepper(builder, 1e-3);
        stepper.begin(stepper.pose().clone(), new double[] {1200, 0, 0, 0, 0, 0, 0, 0, 0});
        double before = stepper.energy();
        stepper.runTo(0.2);
        String inputs = "m1=8.5 g v1=1.2; m2=30 g v2=0; e=0.5";
        assertThat(stepper.velocity()[0] / 1000)
                .isCloseTo(published("impact_central", inputs, "v1_after"), within(1e-9));
        assertThat(stepper.velocity()[3] / 1000)
                .isCloseTo(published("impact_central", "same", "v2_after"), within(1e-9));
        // 1 J = 10⁹ µN·mm
        assertThat((before - stepper.energy()) / 1e9)
                .isCloseTo(published("impact_central", "same", "energy lost"), within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.3})
    void aCoinStrikesALever(double restitution) {
        // J about the fixed pivot 2·10⁻⁵ kg m² = 2·10⁴ g mm²; the lever is balanced, so that it stays at rest.
        MechanismBuilder builder = builder();
        int lever = builder.body("lever", 10, Point.ORIGIN, 2e4);
        int coin = builder.body("coin", 8.5, new Point(60, 70), 1e3);
        builder.pin("o", lever, GROUND, Point.ORIGIN, 0, 0)
                .touchDisc(
                        "strike",
                        coin,
                        new Point(60, 70),
                        20,
                        lever,
                        List.of(new Point(-100, -5), new Point(100, -5), new Point(100, 0), new Point(-100, 0)),
                        0,
                        restitution);
        TimeStepper stepper = stepper(builder, 1e-3);
        double energy = 0;
        while (stepper.blows() == 0) {
            energy = 0.5 * 8.5 * 2 * G * 50;
            stepper.step(1e-3);
        }
        String inputs = "same with e=0.3";
        double omega = restitution == 0
                ? published("impact_lever", "", "kinetic energy kept fraction")
                : published("impact_lever", inputs, "omega_after");
        if (restitution == 0) {
            double kept =
                    0.5 * 8.5 * Math.pow(stepper.velocity()[4], 2) + 0.5 * 2e4 * Math.pow(stepper.velocity()[2], 2);
            assertThat(kept / energy).isCloseTo(omega, within(1e-5));
        } else {
            assertThat(Math.abs(stepper.velocity()[2])).isCloseTo(omega, within(1e-4));
        }
    }

    @Test
    void aBlockSlidesDownAnInclineByItsFriction() {
        double mu = 0.3;
        double slope = Math.toRadians(25);
        MechanismBuilder builder = new MechanismBuilder().gravity(new Point(G * Math.sin(slope), -G * Math.cos(slope)));
        int block = builder.body("block", 20, new Point(0, 5), 20 * (30 * 30 + 100) / 12.0);
        builder.touch(
                "ramp",
                block,
                List.of(new Point(-15, 0), new Point(15, 0), new Point(15, 10), new Point(-15, 10)),
                GROUND,
                floor(0),
                mu,
                0);
        TimeStepper stepper = stepper(builder, 1e-3);
        stepper.runTo(0.3);
        double a = 1000 * published("incline", "25 deg, mu_k=0.3", "acceleration");
        assertThat(stepper.pose()[0]).isCloseTo(0.5 * a * 0.09, within(1e-3));
        assertThat(stepper.velocity()[0]).isCloseTo(a * 0.3, within(1e-6 * a));
    }

    @Test
    void aDiscRollsDownAChute() {
        double slope = Math.toRadians(10);
        MechanismBuilder builder = new MechanismBuilder().gravity(new Point(G * Math.sin(slope), -G * Math.cos(slope)));
        int coin = builder.body("coin", 8, new Point(0, 12), 8 * 144 / 2.0);
        builder.touchDisc("chute", coin, new Point(0, 12), 12, GROUND, floor(0), 0.25, 0);
        TimeStepper stepper = stepper(builder, 1e-3);
        double time = published("coin_rolling", "uniform disc, chute 0.2 m at 10 deg from rest", "time");
        stepper.runTo(time);
        assertThat(stepper.pose()[0]).isCloseTo(200, within(0.01));
        assertThat(stepper.pose()[2]).isCloseTo(-200 / 12.0, within(0.001));
    }

    @Test
    void atwoodOverAPulley() {
        assertThat(atwood(100, 60, 0)).isCloseTo(1000 * published("atwood", "", "acceleration"), within(1e-3));
    }

    @Test
    void atwoodOverAFixedPegByTheCapstanLaw() {
        double a = published(
                "atwood_fixed_peg", "m1=0.10 m2=0.04 kg, string half-turn over fixed peg mu=0.2", "acceleration");
        assertThat(atwood(100, 40, 0.2)).isCloseTo(1000 * a, within(1e-2));
    }

    /** Mean acceleration of two weights on a string over a post, over the first 0.1 s. */
    private static double atwood(double heavy, double light, double friction) {
        MechanismBuilder builder = builder();
        int first = builder.body("heavy", heavy, new Point(-10, -200), 1000);
        int second = builder.body("light", light, new Point(10, -300), 1000);
        builder.cord(
                "string",
                first,
                new Point(-10, -200),
                List.of(new MechanismBuilder.CordGuide(GROUND, Point.ORIGIN, 10, -1, friction)),
                second,
                new Point(10, -300),
                0);
        TimeStepper stepper = stepper(builder, 1e-3);
        stepper.runTo(0.1);
        assertThat(stepper.isComputed()).isTrue();
        return -2 * (stepper.pose()[1] + 200) / 0.01;
    }
}

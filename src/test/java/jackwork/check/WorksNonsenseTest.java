package jackwork.check;

import static jackwork.check.Nonsense.changed;
import static jackwork.check.Nonsense.isNo;
import static jackwork.check.Nonsense.number;
import static jackwork.check.Nonsense.place;
import static jackwork.check.Nonsense.replaced;
import static org.assertj.core.api.Assertions.assertThat;

import jackwork.geometry.Point;
import java.io.IOException;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Marks of lever and coin works that lie on wood, and cannot be meant: random ones on either side of what works. */
class WorksNonsenseTest {

    private static final String BUCKET = "box.coin-works.bucket.";

    private final Random random = new Random(51);

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /** The case's outer face at the right is at 153.55 mm. */
    @Test
    void theLeverIsPressedOutsideTheCase() throws IOException {
        for (int i = 0; i < 8; i++) {
            double inside = between(85, 153);
            double outside = between(157, 169);
            assertThat(isNo(press("heron", inside))).as("pressed at %s", inside).isTrue();
            assertThat(press("heron", outside)).as("pressed at %s", outside).isEqualTo(Nonsense.Verdict.PASSES);
            double wider = between(156, 400);
            assertThat(isNo(Nonsense.ask(
                            new PressReached(),
                            () -> replaced(
                                    "heron", "boxes/marsh-box/box.yaml", "width: 151.2", "width: " + number(wider)))))
                    .as("a case %s wide", wider)
                    .isTrue();
        }
        for (String design : List.of("windmill", "cobbler", "lamplighter")) {
            assertThat(isNo(press(design, between(85, 153)))).as(design).isTrue();
        }
    }

    private static Nonsense.Verdict press(String design, double x) throws IOException {
        return Nonsense.ask(new PressReached(), () -> changed(design, "box.lever.press: " + place(x, 72)));
    }

    /** The chute of the heron's box is as wide as its slot, the cobbler's 0.8 mm wider. */
    @Test
    void theCoinFallsBetweenTheWalls() throws IOException {
        for (int i = 0; i < 8; i++) {
            double aside = (random.nextBoolean() ? 1 : -1) * between(3, 20);
            double beside = between(-1.5, 1.5);
            assertThat(isNo(slot("heron", 53 + aside))).as("%s aside", aside).isTrue();
            assertThat(isNo(slot("cobbler", 57.65 + aside)))
                    .as("%s aside", aside)
                    .isTrue();
            assertThat(slot("heron", 53 + beside)).as("%s aside", beside).isEqualTo(Nonsense.Verdict.PASSES);
            assertThat(slot("cobbler", 57.65 + beside)).as("%s aside", beside).isEqualTo(Nonsense.Verdict.PASSES);
        }
    }

    private static Nonsense.Verdict slot(String design, double x) throws IOException {
        return Nonsense.ask(new CoinFalls(), () -> changed(design, "box.coin-works.slot.at: " + place(x, 100)));
    }

    @Test
    void lipToeHeelAndKickerFollowEachOther() throws IOException {
        assertThat(order("heron", BUCKET + "heel: bucket-toe", BUCKET + "toe: bucket-heel"))
                .isTrue();
        assertThat(order("cobbler", BUCKET + "heel: floor-left", BUCKET + "toe: floor-right"))
                .isTrue();
        assertThat(order("heron", BUCKET + "rise: bucket-toe")).isTrue();
        assertThat(order("heron", BUCKET + "lip: bucket-rise")).isTrue();
        assertThat(order("heron", BUCKET + "lip: bucket-toe")).isTrue();
        assertThat(order("cobbler", BUCKET + "lip: face")).isTrue();
        assertThat(order("heron", "box.coin-works.catch.tooth: strut", "box.coin-works.catch.strut: tooth"))
                .isTrue();
        Point toe = new Point(45, 20.5);
        Point heel = new Point(62, 19.013);
        for (int i = 0; i < 8; i++) {
            // Anywhere along the floor, in the right order or not.
            double a = between(0, 1);
            double b = between(0, 1);
            Point one = toe.plus(heel.minus(toe).times(Math.min(a, b)));
            Point other = toe.plus(heel.minus(toe).times(Math.max(a, b)));
            String low = place(one.x(), one.y());
            String high = place(other.x(), other.y());
            assertThat(Nonsense.ask(
                            new WorksOrdered(),
                            () -> changed("heron", BUCKET + "toe: " + low, BUCKET + "heel: " + high)))
                    .as("toe %s heel %s", low, high)
                    .isEqualTo(Nonsense.Verdict.PASSES);
            assertThat(order("heron", BUCKET + "toe: " + high, BUCKET + "heel: " + low))
                    .as("toe %s heel %s", high, low)
                    .isTrue();
        }
    }

    /** A quarter of the stroke takes the tooth down by some 1.1 mm. */
    @Test
    void theToothComesDownOnTheStrut() throws IOException {
        for (int i = 0; i < 8; i++) {
            double low = between(40, 69);
            double near = between(70, 70.6);
            assertThat(order("heron", "box.coin-works.catch.strut: " + place(101, low)))
                    .as("strut at %s", low)
                    .isTrue();
            assertThat(order("heron", "box.coin-works.catch.strut: " + place(101, near)))
                    .as("strut at %s", near)
                    .isFalse();
        }
    }

    private static boolean order(String design, String... changes) throws IOException {
        return isNo(Nonsense.ask(new WorksOrdered(), () -> changed(design, changes)));
    }

    /** Held against points of the turned gate, without its outline being turned. */
    @Test
    void aGateThatHardlyTipsKeepsTheCoin() throws IOException {
        for (int i = 0; i < 8; i++) {
            double little = between(1, 44);
            double enough = between(48, 60);
            assertThat(gate(little)).as("tips by %s", little).isTrue();
            assertThat(gate(enough)).as("tips by %s", enough).isFalse();
        }
        // The heron's bucket is no gate.
        assertThat(new GateOpens().appliesTo(changed("heron", BUCKET + "tip: 9")))
                .isFalse();
    }

    private static boolean gate(double tip) throws IOException {
        return isNo(Nonsense.ask(new GateOpens(), () -> changed("cobbler", BUCKET + "tip: " + number(tip))));
    }

    /** At its stop a gate takes the strut no farther out of the way, however hard the coin is pressed. */
    @Test
    void aGateAtItsStopFreesNothingMore() throws IOException {
        for (int i = 0; i < 6; i++) {
            double tip = between(0.5, 2);
            assertThat(isNo(Nonsense.ask(new CoinBridges(), () -> changed("cobbler", BUCKET + "tip: " + number(tip)))))
                    .as("tips by %s", tip)
                    .isTrue();
        }
        assertThat(Nonsense.ask(new CoinBridges(), () -> changed("cobbler", BUCKET + "tip: 55")))
                .isEqualTo(Nonsense.Verdict.PASSES);
    }
}

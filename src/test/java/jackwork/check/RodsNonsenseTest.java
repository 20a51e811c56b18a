package jackwork.check;

import static jackwork.check.Nonsense.changed;
import static jackwork.check.Nonsense.isNo;
import static jackwork.check.Nonsense.number;
import static jackwork.check.Nonsense.place;
import static jackwork.check.Nonsense.replaced;
import static org.assertj.core.api.Assertions.assertThat;

import jackwork.check.Nonsense.Verdict;
import jackwork.geometry.Point;
import jackwork.parts.Part;
import jackwork.parts.RodRun;
import java.io.IOException;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Rods, their holes and the wood around them: random numbers on either side of what can be made. */
class RodsNonsenseTest {

    private static final String RUNNING = "running: {value: 0.20, low: 0.10, high: 0.30";
    private static final String PRESS = "press: {value: -0.05, low: -0.15, high: 0.05";
    private static final double ROD = 3;

    private final Random random = new Random(20);

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private static Nonsense.Verdict fit(Question question, String fit, String name, double value) throws IOException {
        return Nonsense.ask(
                question,
                () -> replaced(
                        "heron",
                        "workshop.yaml",
                        fit,
                        name + ": {value: " + number(value) + ", low: " + number(value - 0.02) + ", high: "
                                + number(value + 0.02)));
    }

    @Test
    void rodsTurnOnlyWithRoomAndNotTooMuch() throws IOException {
        for (int i = 0; i < 8; i++) {
            double tight = between(-1.5, 0.045);
            double wide = between(0.78, 2.8);
            double sensible = between(0.15, 0.6);
            assertThat(isNo(fit(new RodsTurn(), RUNNING, "running", tight)))
                    .as("running %s", tight)
                    .isTrue();
            assertThat(isNo(fit(new RodsTurn(), RUNNING, "running", wide)))
                    .as("running %s", wide)
                    .isTrue();
            assertThat(fit(new RodsTurn(), RUNNING, "running", sensible))
                    .as("running %s", sensible)
                    .isEqualTo(Nonsense.Verdict.PASSES);
        }
    }

    @Test
    void rodsAreHeldOnlyWhereTheyGoInAndStay() throws IOException {
        for (int i = 0; i < 8; i++) {
            double tight = between(-2.5, -0.32);
            double loose = between(0.17, 2);
            double sensible = between(-0.2, 0.05);
            assertThat(isNo(fit(new RodsHeld(), PRESS, "press", tight)))
                    .as("press %s", tight)
                    .isTrue();
            assertThat(isNo(fit(new RodsHeld(), PRESS, "press", loose)))
                    .as("press %s", loose)
                    .isTrue();
            assertThat(fit(new RodsHeld(), PRESS, "press", sensible))
                    .as("press %s", sensible)
                    .isEqualTo(Nonsense.Verdict.PASSES);
        }
    }

    /** One dowel of the heron's wing is moved to any distance from the other. */
    @Test
    void noTwoRodsTakeOnePlace() throws IOException {
        int refused = 0;
        for (int i = 0; i < 20; i++) {
            double apart = i == 0 ? 0 : between(0.001, 7);
            Point at = new Point(-14, 79).plus(new Point(apart, 0).turned(between(0, 2 * Math.PI)));
            Nonsense.Verdict verdict = Nonsense.ask(
                    new RodsApart(), () -> changed("heron", "figure.pins.wing-dowel-1.at: " + place(at.x(), at.y())));
            if (apart < ROD - 0.001) {
                assertThat(isNo(verdict)).as("%s mm apart", apart).isTrue();
            } else if (apart > ROD + 0.001) {
                assertThat(verdict).as("%s mm apart", apart).isNotEqualTo(Nonsense.Verdict.FAILS);
                refused += verdict == Nonsense.Verdict.REFUSED ? 1 : 0;
            }
        }
        assertThat(refused).as("of those far enough apart").isLessThan(3);
    }

    /** Another pin through the same parts, at every pin of the heron's. */
    @Test
    void aSecondPinInTheSamePlaceIsNone() throws IOException {
        for (String pin : List.of("hip", "shoulder", "bend", "knee", "back-pin", "wing-dowel-2")) {
            Nonsense.Verdict verdict = Nonsense.ask(
                    new RodsApart(),
                    () -> replaced(
                            "heron",
                            "heron/figure.yaml",
                            "pins:\n",
                            "pins:\n  again: {parts: [" + partsOf(pin) + "], rod: bamboo-3, at: " + pin + "}\n"));
            assertThat(isNo(verdict)).as(pin).isTrue();
        }
    }

    private static String partsOf(String pin) throws IOException {
        RodRun run = changed("heron", "figure.weights.tail.mass: 28").rods().stream()
                .filter(rod -> rod.name().equals(pin))
                .findFirst()
                .orElseThrow();
        return String.join(", ", run.parts());
    }

    /** A post under two strings, a peg that is the end of a dowel: one rod written twice. */
    @Test
    void oneRodMayServeTwoJoints() throws IOException {
        RodRun dowel = new RodRun("dowel", RodRun.Kind.PIN, List.of("stand", "shoe"), Point.ORIGIN, ROD, 1, 5);
        RodRun peg = new RodRun("peg", RodRun.Kind.PEG, List.of("shoe", "rack"), Point.ORIGIN, ROD, 3, 5);
        RodRun other = new RodRun("other", RodRun.Kind.PEG, List.of("bench", "rack"), Point.ORIGIN, ROD, 3, 5);
        RodRun second = new RodRun("second", RodRun.Kind.PIN, List.of("stand", "shoe"), Point.ORIGIN, ROD, 1, 5);
        assertThat(peg.isRodOf(dowel)).isTrue();
        assertThat(dowel.isRodOf(peg)).isTrue();
        assertThat(other.isRodOf(dowel)).isFalse();
        assertThat(second.isRodOf(dowel)).isFalse();
        for (String design : List.of("heron", "lamplighter", "windmill", "cobbler")) {
            assertThat(Nonsense.ask(new RodsApart(), () -> changed(design, "box.weights.counterweight.count: 2")))
                    .as(design)
                    .isEqualTo(Nonsense.Verdict.PASSES);
        }
    }

    /** Held against points around the hole: all must be wood. */
    @Test
    void everyHoleLeavesWoodAroundIt() throws IOException {
        int narrow = 0;
        int wide = 0;
        for (int i = 0; i < 60; i++) {
            Point at = new Point(between(-50, -20), between(72, 88));
            Subject[] seen = new Subject[1];
            Nonsense.Verdict verdict = Nonsense.ask(new HolesInWood(), () -> {
                seen[0] = changed("heron", "figure.pins.wing-dowel-1.at: " + place(at.x(), at.y()));
                return seen[0];
            });
            if (seen[0] == null) {
                // A point off the wood is refused, which has a test of its own.
                continue;
            }
            boolean close = around(seen[0], -0.05);
            boolean far = around(seen[0], 0.05);
            if (!close) {
                narrow++;
                assertThat(verdict).as("at %s", at).isEqualTo(Nonsense.Verdict.FAILS);
            } else if (far) {
                wide++;
                assertThat(verdict).as("at %s", at).isEqualTo(Nonsense.Verdict.PASSES);
            }
        }
        assertThat(narrow).isGreaterThan(3);
        assertThat(wide).isGreaterThan(3);
    }

    /** Whether, so far beyond the least bar about the moved dowel's holes, all is wood of the parts that it goes through. */
    private static boolean around(Subject subject, double beyond) {
        RodRun dowel = subject.rods().stream()
                .filter(rod -> rod.name().equals("wing-dowel-1"))
                .findFirst()
                .orElseThrow();
        for (Part part : subject.assembly().parts()) {
            // The hole is bored 0.05 mm closer than the rod is thick.
            double radius = (ROD - 0.05) / 2 + LeastBar.of(part.thickness().value(), 0.16) + beyond;
            for (int degrees = 0; dowel.parts().contains(part.name()) && degrees < 360; degrees++) {
                Point rim = dowel.at().plus(new Point(radius, 0).turned(Math.toRadians(degrees)));
                if (!part.drawn().contains(rim)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** A dowel through two outer layers meets the wood between, but where that is cut away. */
    @Test
    void aRodGoesThroughNoOtherWood() throws IOException {
        for (int i = 0; i < 10; i++) {
            // Both wings are there, and the body between them.
            double x = between(-32, -14);
            Nonsense.Verdict through = Nonsense.ask(
                    new RodsPass(),
                    () -> replaced(
                            "heron",
                            "heron/figure.yaml",
                            "wing-dowel-1: {parts: [body, wing-far, wing-near], rod: bamboo-3}",
                            "wing-dowel-1: {parts: [wing-far, wing-near], rod: bamboo-3, at: " + place(x, 78) + "}"));
            assertThat(through).as("at %s", x).isEqualTo(Nonsense.Verdict.FAILS);
            Nonsense.Verdict named = Nonsense.ask(
                    new RodsPass(), () -> changed("heron", "figure.pins.wing-dowel-1.at: " + place(x, 78)));
            assertThat(named).as("at %s", x).isEqualTo(Nonsense.Verdict.PASSES);
        }
    }

    /** The glow's dowels hold it behind the door's layer; before it, the door would have to swing through them. */
    @Test
    void aRodIsLookedAtAllAlongTheRun() throws IOException {
        for (int layer = 5; layer <= 7; layer++) {
            String moved = "figure.parts.glow.layer: " + layer;
            assertThat(Nonsense.ask(new RodsPass(), () -> Nonsense.changed("lamplighter", moved)))
                    .as(moved)
                    .isNotEqualTo(Verdict.PASSES);
        }
        assertThat(Nonsense.ask(new RodsPass(), () -> Nonsense.changed("lamplighter", "figure.parts.glow.layer: 2")))
                .isEqualTo(Verdict.PASSES);
    }
}

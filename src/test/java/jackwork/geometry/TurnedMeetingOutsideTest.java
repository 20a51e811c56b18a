package jackwork.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Where a turning outline meets a standing one: against school geometry, and against the JDK's {@link Area} turned by small steps. */
@Tag("outside")
@Tag("quick")
class TurnedMeetingOutsideTest {

    private static final double STEP = Math.toRadians(0.5);
    /** Beyond the place where they meet, rad: there they must overlap. */
    private static final double BEYOND = 1e-4;

    private static final int PAIRS = 400;

    private static Area area(Outline outline) {
        Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        path(path, outline.outer());
        outline.holes().forEach(hole -> path(path, hole));
        return new Area(path);
    }

    private static void path(Path2D path, List<Point> ring) {
        path.moveTo(ring.get(0).x(), ring.get(0).y());
        ring.stream().skip(1).forEach(p -> path.lineTo(p.x(), p.y()));
        path.closePath();
    }

    private static boolean overlap(Area turning, Point pivot, Area standing, double angle) {
        Area turned = turning.createTransformedArea(AffineTransform.getRotateInstance(angle, pivot.x(), pivot.y()));
        turned.intersect(standing);
        return !turned.isEmpty();
    }

    private static Outline bar(double length, double half) {
        return Outline.rectangle(0, -half, length, half);
    }

    /** A bar's upper corner goes round on a circle, and meets a ledge at the height that it has there. */
    @Test
    void aBarComesUpAgainstALedge() {
        Outline ledge = Outline.rectangle(20, 10, 40, 14);
        TurnedMeeting met =
                TurnedMeeting.first(bar(30, 2), Point.ORIGIN, ledge, 0, Math.PI).orElseThrow();
        double radius = Math.hypot(30, 2);
        assertThat(met.angle()).isCloseTo(Math.asin(10 / radius) - Math.atan2(2, 30), within(1e-14));
        assertThat(met.at().y()).isCloseTo(10, within(1e-12));
        assertThat(met.out().y()).isCloseTo(-1, within(1e-12));
        assertThat(met.arm(Point.ORIGIN)).isCloseTo(radius, within(1e-12));
    }

    /** The other way round: a standing corner meets the bar's long side. */
    @Test
    void aLedgesCornerMeetsABar() {
        Outline ledge = Outline.rectangle(20, 10, 30, 14);
        TurnedMeeting met =
                TurnedMeeting.first(bar(50, 2), Point.ORIGIN, ledge, 0, Math.PI).orElseThrow();
        double away = Math.hypot(30, 10);
        assertThat(met.angle()).isCloseTo(Math.atan2(10, 30) - Math.asin(2 / away), within(1e-14));
        assertThat(met.at().distance(new Point(30, 10))).isCloseTo(0, within(1e-12));
        // The bar's upper side pushes up, so the ledge pushes back at right angles to it.
        assertThat(met.out().distance(new Point(0, -1).turned(met.angle()))).isCloseTo(0, within(1e-12));
    }

    @Test
    void clockwiseIsTheMirrorImage() {
        Outline ledge = Outline.rectangle(20, -14, 40, -10);
        assertThat(TurnedMeeting.first(bar(30, 2), Point.ORIGIN, ledge, 0, -Math.PI)
                        .orElseThrow()
                        .angle())
                .isCloseTo(Math.atan2(2, 30) - Math.asin(10 / Math.hypot(30, 2)), within(1e-14));
    }

    /** A peg in a slot of what turns: its hole's edge is what it meets. */
    @Test
    void aPegMeetsTheEndOfASlot() {
        Outline plate = Outline.of(
                Outline.rectangle(-10, -10, 40, 40).outer(),
                List.of(Outline.rectangle(20, 0, 24, 12).outer()));
        Outline peg = Outline.rectangle(21, 5, 23, 7);
        TurnedMeeting met = TurnedMeeting.first(plate, Point.ORIGIN, peg, 0, 1).orElseThrow();
        double byCorner = Math.atan2(7, 23) - Math.asin(0 / 23.0);
        assertThat(met.angle()).isBetween(0.0, byCorner);
        Area turning = area(plate);
        Area standing = area(peg);
        assertThat(overlap(turning, Point.ORIGIN, standing, met.angle() - 1e-6)).isFalse();
        assertThat(overlap(turning, Point.ORIGIN, standing, met.angle() + BEYOND))
                .isTrue();
    }

    /** What rests on its stop as drawn meets it at once, turned into it, and never when turned away. */
    @Test
    void whatRestsAsDrawnMeetsAtOnce() {
        Outline under = Outline.rectangle(10, -6, 20, -2);
        assertThat(TurnedMeeting.first(bar(30, 2), Point.ORIGIN, under, 0, -1)
                        .orElseThrow()
                        .angle())
                .isCloseTo(0, within(1e-12));
        assertThat(TurnedMeeting.first(bar(30, 2), Point.ORIGIN, under, 0, 1)).isEmpty();
    }

    @Test
    void randomPairsMeetWhereTheirAreasBeginToOverlap() {
        SplittableRandom random = new SplittableRandom(21);
        int met = 0;
        int passed = 0;
        for (int pair = 0; pair < PAIRS; pair++) {
            Outline turning = RandomOutlinesOutsideTest.outline(random);
            Point away = new Point(random.nextDouble(30, 90), 0).turned(random.nextDouble(0, 2 * Math.PI));
            Outline standing = RandomOutlinesOutsideTest.outline(random).moved(away);
            Point pivot = new Point(random.nextDouble(-30, 30), random.nextDouble(-30, 30));
            double to = (random.nextBoolean() ? 1 : -1) * random.nextDouble(0.3, 6);
            Area a = area(turning);
            Area b = area(standing);
            if (overlap(a, pivot, b, 0)) {
                continue;
            }
            Optional<TurnedMeeting> first = TurnedMeeting.first(turning, pivot, standing, 0, to);
            double free = first.map(TurnedMeeting::angle).orElse(to);
            for (double at = 0; at < Math.abs(free) - 1e-7; at += STEP) {
                assertThat(overlap(a, pivot, b, Math.copySign(at, to)))
                        .as("pair %d at %s of %s", pair, at, free)
                        .isFalse();
            }
            if (first.isPresent()) {
                met++;
                assertThat(overlap(a, pivot, b, free + Math.copySign(BEYOND, to)))
                        .as("pair %d beyond %s", pair, free)
                        .isTrue();
            } else {
                passed++;
            }
        }
        assertThat(met).isGreaterThan(100);
        assertThat(passed).isGreaterThan(30);
    }
}

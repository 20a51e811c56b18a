package jackwork.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The way of a taut string, against shortest ways known by hand. */
@Tag("quick")
class TautPathTest {

    private static TautPath over(double radius, int side, int turns, Point from, Point to) {
        return TautPath.of(from, List.of(new TautPath.Round(Point.ORIGIN, radius, side, turns)), to);
    }

    @Test
    void halfRoundAPost() {
        TautPath path = over(5, 1, 0, new Point(5, -30), new Point(-5, -40));
        assertThat(path.wraps().get(0)).isCloseTo(Math.PI, within(1e-12));
        assertThat(path.length()).isCloseTo(70 + 5 * Math.PI, within(1e-12));
    }

    @Test
    void wholeTurnsAreAddedToWhatIsDrawn() {
        TautPath path = over(5, 1, 3, new Point(5, -30), new Point(-5, -40));
        assertThat(path.wraps().get(0)).isCloseTo(7 * Math.PI, within(1e-12));
        assertThat(path.length()).isCloseTo(70 + 35 * Math.PI, within(1e-12));
    }

    @Test
    void aPostThatIsPassedByIsNoPost() {
        TautPath path = over(5, -1, 0, new Point(-40, 12), new Point(40, 12.5));
        assertThat(path.wraps().get(0)).isNegative();
        assertThat(path.length()).isCloseTo(Math.hypot(80, 0.5), within(1e-12));
    }

    @Test
    void anEyeletHoldsItEitherWay() {
        TautPath path = TautPath.of(
                new Point(-30, 0),
                List.of(new TautPath.Round(new Point(0, 40), 0, 1, 0), new TautPath.Round(new Point(30, 0), 0, 1, 0)),
                new Point(60, 0));
        assertThat(path.length()).isCloseTo(50 + 50 + 30, within(1e-12));
        assertThat(path.wraps().get(0)).isCloseTo(2 * Math.atan2(4, 3), within(1e-12));
        assertThat(path.wraps().get(1)).isCloseTo(Math.atan2(4, 3), within(1e-12));
    }

    /** Any wrap that is wound on by hand is found again, with as many whole turns as a picture cannot show. */
    @Test
    void anyWrap() {
        Random random = new Random(5);
        for (int k = 0; k < 500; k++) {
            double wrap = 6 * Math.PI * random.nextDouble();
            double radius = 1 + 10 * random.nextDouble();
            double one = 5 + 90 * random.nextDouble();
            double two = 5 + 90 * random.nextDouble();
            int side = random.nextBoolean() ? 1 : -1;
            double begins = 2 * Math.PI * random.nextDouble();
            double ends = begins + side * wrap;
            Point from = ray(begins)
                    .times(radius)
                    .plus(ray(begins - side * Math.PI / 2).times(one));
            Point to =
                    ray(ends).times(radius).plus(ray(ends + side * Math.PI / 2).times(two));
            int turns = (int) Math.ceil((wrap - 1.5 * Math.PI) / (2 * Math.PI));
            TautPath path = over(radius, side, turns, from, to);
            assertThat(path.wraps().get(0)).isCloseTo(wrap, within(1e-9));
            assertThat(path.length()).isCloseTo(one + two + radius * wrap, within(1e-9));
        }
    }

    private static Point ray(double angle) {
        return new Point(Math.cos(angle), Math.sin(angle));
    }
}

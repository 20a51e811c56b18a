package jackwork.motion.rest;

import static jackwork.motion.model.Mechanism.GROUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.Published;
import jackwork.geometry.Point;
import jackwork.motion.model.Direction;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.MechanismBuilder;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A drawer on two pegs, pulled beside its middle: it jams when its guide is shorter than 2 µ e
 * (moment balance; Beer and Johnston, Statics, ch. 8, Sample Problem 8.3 for the bracket, book figure
 * from memory).
 *
 * <p>Reach: two slides with Coulomb friction on one body, the load parallel to the guide; the lever
 * that pulls adds no friction. The drawer is pulled along y through a link from a lever far away, so
 * that the pull stays parallel at the drawn position where the forces are asked.
 */
@Tag("outside")
@Tag("quick")
class DrawerOutsideTest {

    private static final String TABLE = "/jackwork/motion/jamming.csv";

    /** Pull needed to move a load of 1000 µN on the drawer's middle; NaN when it jams. */
    private static double pull(double friction, double offset, double length) {
        MechanismBuilder builder = new MechanismBuilder().gravity(Point.ORIGIN);
        int drawer = builder.body("drawer", 1, new Point(0, 0), 1);
        int link = builder.body("link", 1, new Point(offset, 500), 1);
        int lever = builder.body("lever", 1, new Point(offset - 500, 1000), 1);
        Point grip = new Point(offset, 0);
        Point end = new Point(offset, 1000);
        Mechanism mechanism = builder.slide(
                        "front",
                        drawer,
                        GROUND,
                        new Point(0, length / 2),
                        new Point(0, -1e4),
                        new Point(0, 1e4),
                        friction)
                .slide(
                        "back",
                        drawer,
                        GROUND,
                        new Point(0, -length / 2),
                        new Point(0, -1e4),
                        new Point(0, 1e4),
                        friction)
                .pin("grip", link, drawer, grip, 0, 0)
                .pin("end", link, lever, end, 0, 0)
                .pin("fulcrum", lever, GROUND, new Point(offset - 1000, 1000), 0, 0)
                .load(drawer, new Point(0, 0), new Point(0, -1000), 0)
                .lever(lever, 0.01, end, new Point(0, 1))
                .build();
        ForceSolver forces = new ForceSolver(mechanism);
        return forces.solve(new PoseSolver(mechanism), Direction.PRESSING, 1) ? forces.fingerForce() : Double.NaN;
    }

    static Stream<List<String>> usefulShares() {
        return Published.rows(TABLE).stream().filter(row -> row.get(2).equals("useful force / applied force"));
    }

    @ParameterizedTest
    @MethodSource("usefulShares")
    void shareOfThePullThatMovesTheLoad(List<String> row) {
        double[] numbers = Stream.of(row.get(1).split(" "))
                .mapToDouble(word -> Double.parseDouble(word.split("=")[1]))
                .toArray();
        double share = 1000 / pull(numbers[0], numbers[1], numbers[2]);
        assertThat(share).isCloseTo(Double.parseDouble(row.get(3)), within(1e-9));
    }

    static Stream<List<String>> leastLengths() {
        return Published.rows(TABLE).stream().filter(row -> row.get(2).startsWith("L_min mu="));
    }

    @ParameterizedTest
    @MethodSource("leastLengths")
    void jamsJustBelowTheLeastGuideLength(List<String> row) {
        double friction = Double.parseDouble(row.get(2).split("=")[1]);
        double least = Double.parseDouble(row.get(3));
        assertThat(pull(friction, 60, least * 1.001)).isGreaterThan(0);
        assertThat(pull(friction, 60, least * 0.999)).isNaN();
    }

    @Test
    void bracketHoldsFromTwelveInches() {
        double distance = Published.value(
                TABLE,
                3,
                "jam",
                "Beer & Johnston, Vector Mechanics for Engineers: Statics, Ch. 8 Sample Problem 8.3: movable bracket on 3 in pipe, bearing height 6 in, mu_s=0.25");
        assertThat(pull(0.25, distance * 0.999, 6)).isGreaterThan(0);
        assertThat(pull(0.25, distance * 1.001, 6)).isNaN();
    }
}

package jackwork.motion.rest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.Published;
import jackwork.geometry.Point;
import jackwork.motion.model.FourBar;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What lengths do to a linkage's output, by the pose solver, against the table's rows (each computed as it says). */
@Tag("outside")
@Tag("quick")
class ToleranceOutsideTest {

    private static final double CRANK = Math.toRadians(40);
    private static final double SMALL = 1e-3;
    private static final double[] LENGTHS = {40, 120, 80, 100};

    /** Degrees that the rocker turns for each mm of a length. */
    private static double sensitivity(int length) {
        double[] more = LENGTHS.clone();
        double[] less = LENGTHS.clone();
        more[length] += SMALL;
        less[length] -= SMALL;
        return Math.toDegrees(rocker(more) - rocker(less)) / (2 * SMALL);
    }

    /** The rocker's angle where the crank stands at 40 degrees, the linkage having been put together at 30. */
    private static double rocker(double[] lengths) {
        FourBar bar = new FourBar(lengths[0], lengths[1], lengths[2], lengths[3]);
        double from = Math.toRadians(30);
        PoseSolver poses =
                new PoseSolver(bar.drivenByCrank(from, 1, CRANK - from).build());
        assertThat(poses.moveTo(1)).isTrue();
        Point start = bar.rockerEnd(from, 1);
        return Math.atan2(start.y(), start.x() - lengths[3]) + poses.pose()[3 * 2 + 2];
    }

    private static double rss(double tolerance) {
        double squares = 0;
        for (int i = 0; i < LENGTHS.length; i++) {
            squares += Math.pow(tolerance * sensitivity(i), 2);
        }
        return Math.sqrt(squares);
    }

    private static double sum(double tolerance) {
        double sum = 0;
        for (int i = 0; i < LENGTHS.length; i++) {
            sum += tolerance * Math.abs(sensitivity(i));
        }
        return sum;
    }

    record Row(String quantity, double published, double ours) {}

    static List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (List<String> row : Published.rows("/jackwork/motion/tolerances.csv")) {
            String quantity = row.get(2);
            double value = Double.parseDouble(row.get(3));
            int length = List.of("d theta4/da", "d theta4/db", "d theta4/dc", "d theta4/dd")
                    .indexOf(quantity);
            if (length >= 0) {
                rows.add(new Row(quantity, value, sensitivity(length)));
            } else if (quantity.equals("RSS half-width of theta4")) {
                rows.add(new Row(quantity, value, rss(0.1)));
            } else if (quantity.equals("worst case half-width of theta4")) {
                rows.add(new Row(quantity, value, sum(0.1)));
            }
        }
        assertThat(rows).hasSize(6);
        return rows;
    }

    @ParameterizedTest
    @MethodSource("rows")
    void fourBar(Row row) {
        assertThat(row.ours()).isCloseTo(row.published(), within(1e-5));
    }
}

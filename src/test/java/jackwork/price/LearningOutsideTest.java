package jackwork.price;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import jackwork.Published;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Learning curves against tables of Wright's (cumulative average) and Crawford's (unit) curve; the formula of each stands
 * in its row. Reach: rates of 80 to 95 %, up to 1,000 pieces; what is learnt never ends there.
 */
@Tag("outside")
@Tag("quick")
class LearningOutsideTest {

    /** The table has nine digits. */
    private static final double DIGITS = 1e-6;

    private static final double NEVER = 1e9;
    private static final Pattern RATE = Pattern.compile("(\\d+) %.*");
    private static final Pattern NUMBER = Pattern.compile(".* n=(\\d+)");

    static Stream<List<String>> rows() {
        return Published.rows("/jackwork/price/learning.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void followsTheTable(List<String> row) {
        Matcher rate = RATE.matcher(row.get(1));
        assertThat(rate.matches()).isTrue();
        Learning learning = new Learning(Double.parseDouble(rate.group(1)) / 100, NEVER);
        double published = Double.parseDouble(row.get(3));
        assertThat(computed(learning, row.get(2))).isCloseTo(published, withinPercentage(DIGITS));
    }

    private static double computed(Learning learning, String quantity) {
        if (quantity.equals("exponent b")) {
            return learning.exponent();
        }
        Matcher number = NUMBER.matcher(quantity);
        assertThat(number.matches()).as(quantity).isTrue();
        int n = Integer.parseInt(number.group(1));
        if (quantity.startsWith("total time")) {
            return learning.total(n);
        } else if (quantity.startsWith("unit factor")) {
            return learning.ofPiece(n);
        }
        assertThat(quantity).startsWith("cumulative factor");
        return IntStream.rangeClosed(1, n).mapToDouble(learning::ofPiece).sum();
    }
}

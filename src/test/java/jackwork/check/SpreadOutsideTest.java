package jackwork.check;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.Published;
import jackwork.stock.Basis;
import jackwork.stock.Uncertain;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The stack of four dimensions in the table of tolerances: a margin of just its root sum of squares is the limit. */
@Tag("outside")
@Tag("quick")
class SpreadOutsideTest {

    private static Spread stack(double margin) {
        Spread spread = new Spread(margin);
        for (double tolerance : new double[] {0.10, 0.05, 0.20, 0.15}) {
            Uncertain length = new Uncertain(10, 10 - tolerance, 10 + tolerance, "mm", Basis.GUESS, "test");
            spread.add("length", length, value -> margin - (value - 10));
        }
        return spread;
    }

    @Test
    void rootSumOfSquares() {
        double published = Published.rows("/jackwork/motion/tolerances.csv").stream()
                .filter(row -> row.get(2).equals("RSS"))
                .map(row -> Double.parseDouble(row.get(3)))
                .findFirst()
                .orElseThrow();
        assertThat(stack(published + 1e-8).status()).isEqualTo(Status.PASS);
        assertThat(stack(published - 1e-8).status()).isEqualTo(Status.DOUBTFUL);
        assertThat(stack(0).status()).isEqualTo(Status.FAIL);
    }
}

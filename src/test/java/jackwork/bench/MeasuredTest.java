package jackwork.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jackwork.check.CoinSeat;
import jackwork.design.DesignReader;
import jackwork.parts.Assembler;
import jackwork.parts.Assembly;
import jackwork.stock.Basis;
import jackwork.stock.Uncertain;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Readings made up from known values give those back, with intervals that hold the next one as often as they say. */
@Tag("quick")
class MeasuredTest {

    @Test
    void theNextPieceLiesWithinNineteenTimesInTwenty() {
        Random random = new Random(20261126);
        int held = 0;
        int runs = 20_000;
        for (int run = 0; run < runs; run++) {
            double[] values = new double[2 + run % 5];
            for (int i = 0; i < values.length; i++) {
                values[i] = 10 + 0.3 * random.nextGaussian();
            }
            Uncertain read = Readings.of(values, 0, "mm", "test");
            double next = 10 + 0.3 * random.nextGaussian();
            held += next > read.low() && next < read.high() ? 1 : 0;
        }
        // 95 % within four standard deviations of such a count.
        assertThat((double) held / runs).isCloseTo(0.95, within(4 * Math.sqrt(0.95 * 0.05 / runs)));
    }

    @Test
    void slopes() {
        Uncertain read = FrictionBySlope.of(new double[] {20, 20, 20}, 0);
        assertThat(read.value()).isCloseTo(Math.tan(Math.toRadians(20)), within(1e-12));
        assertThat(read.basis()).isEqualTo(Basis.MEASURED);
        // A protractor of 1 degree alone, about 20 degrees: half of 1 degree / cos² 20.
        Uncertain coarse = FrictionBySlope.of(new double[] {20, 20, 20}, 1);
        assertThat(coarse.high() - coarse.value()).isCloseTo(Math.toRadians(0.5) / 0.883022, within(1e-6));
        assertThatThrownBy(() -> FrictionBySlope.of(new double[] {20}, 1)).hasMessageContaining("at least two");
        assertThatThrownBy(() -> FrictionBySlope.of(new double[] {95, 20}, 1)).hasMessageContaining("95");
    }

    @Test
    void pieces() {
        Uncertain read = KerfByPieces.of(50, new double[] {49.84, 49.83}, new double[] {50.15, 50.18}, 0.01);
        assertThat(read.value()).isCloseTo((0.16 + 0.17 + 0.15 + 0.18) / 4, within(1e-9));
        assertThat(read.low()).isBetween(0.10, 0.14);
        assertThatThrownBy(() -> KerfByPieces.of(50, new double[] {40, 49.8}, new double[0], 0.01))
                .hasMessageContaining("right piece");
        assertThatThrownBy(() -> KerfByPieces.of(100, 0, new double[] {98, 98}, new double[0], 0.01))
                .hasMessageContaining("0 strips");
    }

    /** Weights worked out from the heron's own bucket, on a rod of 4 mm, by its moment and friction, read back. */
    @Test
    void weights() {
        Assembly heron = Assembler.assemble(DesignReader.read(Path.of("demo/heron")));
        double closing = CoinSeat.closingMoment(heron, 0);
        double arm = 40;
        double friction = 0.12;
        double tips = (closing + friction) / CoinSeat.weight(1) / arm;
        double falls = (closing - friction) / CoinSeat.weight(1) / arm;
        BucketByWeights read = BucketByWeights.of(heron, tips, falls, arm, 0.1);
        assertThat(read.closing()).isCloseTo(closing, within(1e-9));
        assertThat(read.friction()).isCloseTo(friction, within(1e-9));
        double carried = CoinSeat.weight(heron.body(heron.coinWorks().bucket()).mass() + (tips + falls) / 2);
        assertThat(read.coefficient()).isCloseTo(friction / (2 * carried), within(1e-9));
        assertThatThrownBy(() -> BucketByWeights.of(heron, 3, 4, arm, 0.1)).hasMessageContaining("never more");
    }
}

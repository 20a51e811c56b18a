package jackwork.builds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sampling against published values, named beside each check. */
@Tag("outside")
class SamplingOutsideTest {

    /** McKay, Beckman and Conover 1979: one point in each stratum of each dimension. */
    @Test
    void onePointInEachStratum() {
        double[][] sample = LatinHypercube.sample(50, 7, 42);
        for (int d = 0; d < 7; d++) {
            int dimension = d;
            int[] strata = Arrays.stream(sample)
                    .mapToInt(point -> (int) (50 * point[dimension]))
                    .sorted()
                    .toArray();
            for (int i = 0; i < 50; i++) {
                assertThat(strata[i]).isEqualTo(i);
            }
        }
    }

    /** Owen 1997: the mean of an additive function scatters far less than that of plain draws. */
    @Test
    void itsMeanScattersLess() {
        double squares = 0;
        int replicates = 200;
        for (int r = 0; r < replicates; r++) {
            double mean = Arrays.stream(LatinHypercube.sample(20, 3, r))
                    .mapToDouble(u -> u[0] + u[1] * u[1] + Math.sqrt(u[2]))
                    .average()
                    .orElseThrow();
            double expected = 0.5 + 1.0 / 3 + 2.0 / 3;
            squares += (mean - expected) * (mean - expected);
        }
        // Plain draws: 1/12 + 4/45 + 1/18 over 20.
        double plain = (1.0 / 12 + 4.0 / 45 + 1.0 / 18) / 20;
        assertThat(squares / replicates).isLessThan(0.1 * plain);
    }

    /**
     * JCGM 101:2008, 9.2.3 and 9.2.4: sums of four even numbers, by Latin hypercubes of numbers drawn as builds draw
     * theirs. Half interval of 95 %: 3.88 printed, 3.879 in closed form; 17.0 printed.
     */
    @ParameterizedTest
    @CsvSource({"1, 3.87940674, 0.02", "10, 17.0162707, 0.06"})
    void sumsOfEvenNumbers(double lastDeviation, double published, double within) {
        int size = 200_000;
        double[] half = {Math.sqrt(3), Math.sqrt(3), Math.sqrt(3), lastDeviation * Math.sqrt(3)};
        double[] sums = new double[size];
        double[][] sample = LatinHypercube.sample(size, 4, 101);
        for (int i = 0; i < size; i++) {
            for (int d = 0; d < 4; d++) {
                sums[i] +=
                        Unknown.even("x", -half[d], half[d], (build, v) -> {}).at(sample[i][d]);
            }
        }
        Arrays.sort(sums);
        assertThat(sums[(int) (0.975 * size)]).isCloseTo(published, within(within));
        assertThat(sums[(int) (0.025 * size)]).isCloseTo(-published, within(within));
    }
}

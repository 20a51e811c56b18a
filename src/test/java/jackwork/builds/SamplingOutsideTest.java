package jackwork.builds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.Published;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Sampling and intervals against published values; the sources stand in each row of the table. */
@Tag("outside")
class SamplingOutsideTest {

    private static final Pattern TRIES = Pattern.compile(".* (\\d+)/(\\d+)");

    static Stream<List<String>> clopperPearson() {
        return Published.rows("/jackwork/builds/reliability.csv").stream()
                .filter(row -> row.get(2).equals("Clopper-Pearson upper"));
    }

    /** Reach: 95 %, the upper end; the lower is its mirror image. */
    @ParameterizedTest
    @MethodSource("clopperPearson")
    void clopperAndPearson(List<String> row) {
        Matcher tries = TRIES.matcher(row.get(1));
        assertThat(tries.matches()).isTrue();
        int passes = Integer.parseInt(tries.group(1));
        int all = Integer.parseInt(tries.group(2));
        double published = Double.parseDouble(row.get(3));
        assertThat(Interval.plain(passes, all).high()).isCloseTo(published, within(1e-8));
        assertThat(Interval.plain(all - passes, all).low()).isCloseTo(1 - published, within(1e-8));
    }

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

    static Stream<List<String>> successRuns() {
        return Published.rows("/jackwork/builds/reliability.csv").stream()
                .filter(row -> row.get(0).equals("success_run"));
    }

    /** Tries that prove a rate, without and with failures allowed. */
    @ParameterizedTest
    @MethodSource("successRuns")
    void successRun(List<String> row) {
        double confidence = Double.parseDouble(row.get(1).replaceAll(".*C=([0-9.]+).*", "$1"));
        double rate = Double.parseDouble(row.get(1).replaceAll(".*R=([0-9.]+).*", "$1"));
        boolean allows = row.get(1).startsWith("f=");
        int failures = allows ? Integer.parseInt(row.get(1).replaceAll("f=(\\d+).*", "$1")) : 0;
        assertThat(Proof.tries(rate, confidence, failures)).isEqualTo((int) Math.ceil(Double.parseDouble(row.get(3))));
    }

    static Stream<List<String>> ruleOfThree() {
        return Published.rows("/jackwork/builds/reliability.csv").stream()
                .filter(row -> row.get(0).equals("rule_of_three"));
    }

    /** None of n failed: the exact upper end at 95 % is the rate that n tries just prove. */
    @ParameterizedTest
    @MethodSource("ruleOfThree")
    void noneOfManyFailed(List<String> row) {
        int tries = Integer.parseInt(row.get(1).replaceAll(".*n=(\\d+).*", "$1"));
        double upper = Double.parseDouble(row.get(3));
        assertThat(Proof.tries(1 - upper * (1 + 1e-6), 0.95, 0)).isEqualTo(tries);
        assertThat(Proof.tries(1 - upper * (1 - 1e-6), 0.95, 0)).isEqualTo(tries + 1);
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

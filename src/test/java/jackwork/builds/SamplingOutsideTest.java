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
}

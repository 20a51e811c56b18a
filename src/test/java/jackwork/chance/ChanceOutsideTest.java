package jackwork.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.Published;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Intervals and proofs against published values; the sources stand in each row of the table. */
@Tag("outside")
@Tag("quick")
class ChanceOutsideTest {

    private static final Pattern TRIES = Pattern.compile(".* (\\d+)/(\\d+)");

    static Stream<List<String>> clopperPearson() {
        return Published.rows("/jackwork/chance/reliability.csv").stream()
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
        assertThat(Interval.ofRate(passes, all).high()).isCloseTo(published, within(1e-8));
        assertThat(Interval.ofRate(all - passes, all).low()).isCloseTo(1 - published, within(1e-8));
    }

    static Stream<List<String>> successRuns() {
        return Published.rows("/jackwork/chance/reliability.csv").stream()
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
        return Published.rows("/jackwork/chance/reliability.csv").stream()
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

    /** NIST/SEMATECH e-Handbook 7.2.4.2: 4 of 20 defective, two-sided 90 %. */
    @Test
    void handbook() {
        double published = Double.parseDouble(Published.rows("/jackwork/chance/reliability.csv").stream()
                .filter(row -> row.get(1).startsWith("NIST/SEMATECH"))
                .findFirst()
                .orElseThrow()
                .get(3));
        assertThat(Interval.ofRate(4, 20, 0.9).high()).isCloseTo(published, within(1e-8));
    }

    /**
     * Fisher's own example, a lady tasting tea (The Design of Experiments, 1935, chapter II, from memory): of 8 cups all right has one
     * chance in 70; three right and one wrong of each kind, or better, 17 in 70. Two-sided both double by symmetry.
     */
    @Test
    void aLadyTastingTea() {
        assertThat(Gap.chance(4, 4, 0, 4)).isCloseTo(2.0 / 70, within(1e-12));
        assertThat(Gap.chance(3, 4, 1, 4)).isCloseTo(34.0 / 70, within(1e-12));
        assertThat(Gap.chance(2, 4, 2, 4)).isCloseTo(1, within(1e-12));
    }
}

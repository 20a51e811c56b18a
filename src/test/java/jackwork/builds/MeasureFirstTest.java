package jackwork.builds;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.stock.Basis;
import jackwork.stock.Uncertain;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntPredicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What to measure first comes from what separates builds that fail from builds that do not. */
class MeasureFirstTest {

    private static final int NUMBERS = 30;
    private static final int BUILDS = 200;

    private final List<Unknown> unknowns = new ArrayList<>();

    MeasureFirstTest() {
        for (int d = 0; d < NUMBERS; d++) {
            unknowns.add(on(Basis.GUESS, "number " + d));
        }
    }

    private static Unknown on(Basis basis, String name) {
        return Unknown.of(name, new Uncertain(1, 0, 2, "1", basis, "planted"), (build, v) -> {});
    }

    private static double[][] quantiles(int builds, long seed) {
        return LatinHypercube.sample(builds, NUMBERS, seed);
    }

    private static BuildResult passes(int number, double margin) {
        return new BuildResult(number, List.of(new BuildResult.Trial("EUR-1", Optional.empty(), true, margin)));
    }

    private static BuildResult fails(int number, Cause cause, double margin) {
        return new BuildResult(number, List.of(new BuildResult.Trial("EUR-1", Optional.of(cause), true, margin)));
    }

    private Optional<String> advice(double[][] quantiles, List<BuildResult> results) {
        return MeasureFirst.of(unknowns, quantiles, results);
    }

    private static List<BuildResult> results(
            double[][] quantiles, IntPredicate fails, Cause cause, DoubleUnaryOperator margin, int of) {
        List<BuildResult> results = new ArrayList<>();
        for (int i = 0; i < quantiles.length; i++) {
            double far = margin.applyAsDouble(quantiles[i][of]);
            results.add(fails.test(i) ? fails(i, cause, far - 3) : passes(i, far));
        }
        return results;
    }

    /** One number alone decides; the margin of what passes, and how near what fails came, go with another. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void whatDecidesIsNamedAndNotWhatTheMarginGoesWith(long seed) {
        Random random = new Random(seed);
        int decides = random.nextInt(NUMBERS / 2);
        int moves = NUMBERS / 2 + random.nextInt(NUMBERS / 2);
        double share = 0.04 + 0.9 * random.nextDouble();
        boolean high = random.nextBoolean();
        Cause cause = Cause.values()[random.nextInt(Cause.values().length)];
        double[][] quantiles = quantiles(BUILDS, seed);
        List<BuildResult> results = results(
                quantiles,
                i -> high ? quantiles[i][decides] > 1 - share : quantiles[i][decides] < share,
                cause,
                u -> u,
                moves);
        assertThat(advice(quantiles, results))
                .hasValueSatisfying(words -> assertThat(words)
                        .startsWith("Measure the number " + decides + " first: ")
                        .contains("Where " + cause.words())
                        .contains(high ? "higher" : "lower")
                        .contains("100 of 100 pairs"));
    }

    /** Six failures of two hundred are enough where they lie cleanly; three never are. */
    @Test
    void aFewFailuresSpeakWhereTheyAreClean() {
        double[][] quantiles = quantiles(BUILDS, 11);
        assertThat(advice(quantiles, results(quantiles, i -> quantiles[i][4] > 0.97, Cause.RETURNS, u -> u, 9)))
                .hasValueSatisfying(words -> assertThat(words).contains("number 4 first"));
        assertThat(advice(quantiles, results(quantiles, i -> quantiles[i][4] > 0.985, Cause.RETURNS, u -> u, 9)))
                .isEmpty();
    }

    /** Failures that fall at random: no number, and not the one that moves the margin of what passes. */
    @Test
    void whereNoNumberSeparatesNothingIsAdvised() {
        int advised = 0;
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(1000 + seed);
            double[][] quantiles = quantiles(100, seed);
            double share = 0.05 + 0.9 * random.nextDouble();
            boolean[] failing = new boolean[100];
            for (int i = 0; i < failing.length; i++) {
                failing[i] = random.nextDouble() < share;
            }
            Optional<String> advice = advice(quantiles, results(quantiles, i -> failing[i], Cause.FREES, u -> u, 3));
            advised += advice.isPresent() ? 1 : 0;
        }
        // One in twenty by construction: 10 of 200, and hardly ever more than 19 (binomial, one in 500).
        assertThat(advised).isLessThan(20);
    }

    /** Where each cause has a number, the one that stops most builds is told, with its cause. */
    @Test
    void eachCauseIsAskedByItself() {
        double[][] quantiles = quantiles(BUILDS, 21);
        List<BuildResult> results = new ArrayList<>();
        for (int i = 0; i < BUILDS; i++) {
            results.add(
                    quantiles[i][2] < 0.1
                            ? fails(i, Cause.LANDS, -8)
                            : quantiles[i][7] > 0.7 ? fails(i, Cause.RETURNS, -2) : passes(i, 0.5));
        }
        assertThat(advice(quantiles, results))
                .hasValueSatisfying(words -> assertThat(words)
                        .startsWith("Measure the number 7 first")
                        .contains("does not come back"));
    }

    /**
     * None passes, by two causes: what fails later has got past what comes first. All margins in one row would go with
     * the number that moves them within a cause.
     */
    @Test
    void whereNonePassesWhatGetsFartherIsHeldAgainstWhatDoesNot() {
        double[][] quantiles = quantiles(70, 31);
        List<BuildResult> results = new ArrayList<>();
        for (int i = 0; i < 70; i++) {
            results.add(
                    quantiles[i][5] < 0.5
                            ? fails(i, Cause.THROWN, -4 + quantiles[i][20])
                            : fails(i, Cause.RETURNS, -3 + quantiles[i][21]));
        }
        assertThat(advice(quantiles, results))
                .hasValueSatisfying(words -> assertThat(words)
                        .startsWith("Measure the number 5 first")
                        .contains("the coin is not thrown"));
    }

    /** All by one cause: how near they came with it, whatever other coins of the build did. */
    @Test
    void whereAllFailByOneCauseItsMarginDecides() {
        double[][] quantiles = quantiles(70, 41);
        List<BuildResult> results = new ArrayList<>();
        for (int i = 0; i < 70; i++) {
            results.add(new BuildResult(
                    i,
                    List.of(
                            new BuildResult.Trial(
                                    "EUR-2", Optional.of(Cause.RETURNS), true, -3 + 0.9 * (1 - quantiles[i][12])),
                            // A coin that sticks in some of them has less margin, by its play, and other numbers.
                            new BuildResult.Trial("EUR-1", Optional.of(Cause.REFUSES), true, -11 - quantiles[i][3]))));
        }
        assertThat(advice(quantiles, results))
                .hasValueSatisfying(words -> assertThat(words)
                        .startsWith("Measure the number 12 first")
                        .contains("In 70 of 70 builds the lever does not come back")
                        .contains("lower")
                        .contains("the design must change as well"));
    }

    /** What all of its spread hardly brings nearer is not worth measuring, however surely it does. */
    @Test
    void whereNothingBringsThemNearThereIsNothingToMeasure() {
        double[][] quantiles = quantiles(70, 43);
        assertThat(advice(quantiles, results(quantiles, i -> true, Cause.RETURNS, u -> 0.1 * u, 6)))
                .hasValueSatisfying(words -> assertThat(words)
                        .isEqualTo(
                                "There is nothing to measure first: in 70 of 70 builds the lever does not come back, and no"
                                        + " number within its spread brings one near. Change the design."));
    }

    /** Where all pass the margin is asked, as it is all there is. */
    @Test
    void whereAllPassTheMarginDecides() {
        double[][] quantiles = quantiles(100, 51);
        assertThat(advice(quantiles, results(quantiles, i -> false, Cause.FREES, u -> 0.2 + u, 17)))
                .hasValueSatisfying(words -> assertThat(words).startsWith("Measure the number 17 first"));
        assertThat(advice(quantiles, results(quantiles, i -> false, Cause.FREES, u -> 0.2, 17)))
                .isEmpty();
    }

    /** What is known, and what lies otherwise each time, is nothing to measure. */
    @Test
    void onlyWhatCanBeMeasuredAndIsNotYetIsAdvised() {
        unknowns.set(4, on(Basis.MEASURED, "number 4"));
        unknowns.set(5, Unknown.even("number 5", -1, 1, (build, v) -> {}));
        unknowns.set(6, on(Basis.PUBLISHED, "number 6"));
        double[][] quantiles = quantiles(BUILDS, 61);
        assertThat(advice(quantiles, results(quantiles, i -> quantiles[i][6] > 0.6, Cause.LOCKS, u -> u, 6)))
                .hasValueSatisfying(words -> assertThat(words).startsWith("Measure the number 6 first"));
        for (int decides : new int[] {4, 5}) {
            assertThat(advice(
                            quantiles,
                            results(quantiles, i -> quantiles[i][decides] > 0.6, Cause.LOCKS, u -> u, decides)))
                    .isEmpty();
        }
    }

    /** What is not computed has neither failed nor got past anything. */
    @Test
    void whatIsNotComputedCountsAsNeither() {
        double[][] quantiles = quantiles(BUILDS, 71);
        List<BuildResult> results = new ArrayList<>();
        for (int i = 0; i < BUILDS; i++) {
            results.add(
                    quantiles[i][8] > 0.5
                            ? new BuildResult(
                                    i, List.of(new BuildResult.Trial("EUR-1", Optional.empty(), false, Double.NaN)))
                            : passes(i, 0.5));
        }
        assertThat(advice(quantiles, results)).isEmpty();
    }
}

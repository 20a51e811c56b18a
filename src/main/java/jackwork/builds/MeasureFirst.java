package jackwork.builds;

import jackwork.check.Measurement;
import jackwork.stock.Basis;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.stat.StatUtils;
import org.hipparchus.stat.correlation.SpearmansCorrelation;
import org.hipparchus.stat.ranking.NaturalRanking;

/**
 * The one measurement that would settle most of what builds leave open: of the number, not measured here yet, that separates those that fail from
 * those that get past it; where none fails, or none gets past, of the one that goes most with the margin.
 *
 * <p>The margin of what passes says nothing of what fails: it is the share of time left, or the play of the bucket, and hangs on other
 * numbers. So failures are asked first, each cause by itself and all together.
 */
final class MeasureFirst {

    /** Too few on one side to tell anything apart, however clean they lie. */
    private static final int FEW = 4;
    /** Farther from even than that in pairs of builds, or it is not worth a measurement. */
    private static final double PAIRS = 0.15;
    /** Weaker rank correlations are not worth one either, however many builds there are. */
    private static final double CORRELATION = 0.2;
    /** Less of what failing builds lack is not worth one, in what all of a number's spread brings. */
    private static final double OF_WHAT_LACKS = 0.5;
    /** Standard deviations from the middle of a number to its good end. */
    private static final double TO_ITS_END = 2;
    /** How often chance alone may find some number, of all that are tried. */
    private static final double BY_CHANCE = 0.05;

    /**
     * A number that goes with failing, or with the margin.
     *
     * @param z how far from chance, standard deviations, without sign
     */
    private record Lead(String number, double z, String words) {}

    /** Builds that fail beside builds that get past it; by one cause, or by any. */
    private record Split(Optional<Cause> cause, List<BuildResult> failed, List<BuildResult> past) {

        String happens() {
            return cause.map(Cause::words).orElse("it fails");
        }
    }

    private final List<Integer> open = new ArrayList<>();
    private final List<Unknown> unknowns;
    private final double[][] quantiles;
    private final List<BuildResult> results;

    private MeasureFirst(List<Unknown> unknowns, double[][] quantiles, List<BuildResult> results) {
        this.unknowns = unknowns;
        this.quantiles = quantiles;
        this.results = results;
        for (int d = 0; d < unknowns.size(); d++) {
            // What is anywhere, evenly, lies otherwise each time: there is nothing to measure.
            if (unknowns.get(d).number().basis() != Basis.MEASURED
                    && !unknowns.get(d).isEven()) {
                open.add(d);
            }
        }
    }

    /**
     * A sentence or two; empty when no number stands out.
     *
     * @param quantiles by the build's number and the unknown, 0 to 1
     */
    static Optional<String> of(List<Unknown> unknowns, double[][] quantiles, List<BuildResult> results) {
        return new MeasureFirst(unknowns, quantiles, results).sentence();
    }

    private Optional<String> sentence() {
        List<Split> splits = splits();
        List<Lead> leads = new ArrayList<>();
        double sure = sure(open.size() * Math.max(1, splits.size()));
        for (int d : open) {
            if (splits.isEmpty()) {
                byMargin(d).ifPresent(leads::add);
            }
            for (Split split : splits) {
                (split.past().size() < FEW ? nearest(d, split) : separating(d, split)).ifPresent(leads::add);
            }
        }
        return leads.stream()
                .filter(lead -> lead.z() > sure)
                .max(Comparator.comparingDouble(Lead::z))
                .map(lead -> Measurement.first(lead.number()) + lead.words())
                .or(() -> hopeless(splits));
    }

    /** Every cause beside what gets past it, passing or failing later; then all that fail beside all that pass. */
    private List<Split> splits() {
        List<Split> splits = new ArrayList<>();
        for (Cause cause : Cause.values()) {
            splits.add(new Split(
                    Optional.of(cause),
                    results.stream().filter(result -> fails(result, cause)).toList(),
                    results.stream().filter(result -> getsPast(result, cause)).toList()));
        }
        splits.add(new Split(
                Optional.empty(),
                results.stream().filter(result -> result.cause().isPresent()).toList(),
                results.stream().filter(BuildResult::passes).toList()));
        splits.removeIf(split -> split.failed().isEmpty());
        return splits;
    }

    private static boolean fails(BuildResult result, Cause cause) {
        return result.coins().stream().anyMatch(trial -> trial.cause().equals(Optional.of(cause)));
    }

    private static boolean getsPast(BuildResult result, Cause cause) {
        return result.coins().stream()
                .allMatch(trial -> trial.passes()
                        || trial.cause()
                                .filter(later -> later.compareTo(cause) > 0)
                                .isPresent());
    }

    /**
     * Of all pairs of a failed build and one that got past, the share A in which the failed one has the higher number
     * (Mann and Whitney 1947): by chance one half, with a variance of (m + n + 1) / (12 m n).
     */
    private Optional<Lead> separating(int d, Split split) {
        int failed = split.failed().size();
        int past = split.past().size();
        if (failed < FEW) {
            return Optional.empty();
        }
        double[] both = Arrays.copyOf(numbers(d, split.failed()), failed + past);
        System.arraycopy(numbers(d, split.past()), 0, both, failed, past);
        double sum =
                Arrays.stream(new NaturalRanking().rank(both)).limit(failed).sum();
        double higher = (sum / failed - (failed + 1) / 2.0) / past;
        double z = Math.abs(higher - 0.5) / Math.sqrt((failed + past + 1.0) / (12.0 * failed * past));
        if (Math.abs(higher - 0.5) < PAIRS) {
            return Optional.empty();
        }
        String words = String.format(
                Locale.ROOT,
                " Where %s it is mostly %s than elsewhere, in %.0f of 100 pairs of builds.",
                split.happens(),
                higher > 0.5 ? "higher" : "lower",
                100 * Math.max(higher, 1 - higher));
        return Optional.of(new Lead(unknowns.get(d).name(), z, words));
    }

    /** Spearman's rank correlation of a number with the margin of what passes, by chance nought, with a variance of 1 / (n − 1). */
    private Optional<Lead> byMargin(int d) {
        List<BuildResult> known = results.stream()
                .filter(result -> !Double.isNaN(result.margin()))
                .toList();
        double correlation = correlation(
                d, known, known.stream().mapToDouble(BuildResult::margin).toArray());
        return lead(d, correlation, known.size(), "");
    }

    /**
     * Where next to none gets past a cause: the number by which they come nearer to it, if all its spread brings at least
     * half of what they lack. Margins of different causes count stages, and do not belong in one row.
     */
    private Optional<Lead> nearest(int d, Split split) {
        Optional<Cause> cause = split.cause();
        if (cause.isEmpty()) {
            return Optional.empty();
        }
        double[] missing = split.failed().stream()
                .mapToDouble(result -> missing(result, cause.get()))
                .toArray();
        double correlation = correlation(d, split.failed(), missing);
        double brings = Math.abs(correlation) * TO_ITS_END * Math.sqrt(StatUtils.variance(missing));
        if (!(brings >= OF_WHAT_LACKS * StatUtils.mean(missing))) {
            return Optional.empty();
        }
        return lead(
                d,
                correlation,
                missing.length,
                " " + inSoMany(split) + "; the " + (correlation < 0 ? "higher" : "lower")
                        + " it is, the nearer they come, but the design must change as well.");
    }

    /** Where all fail by one cause and nothing brings them near it, a measurement is lost time. */
    private Optional<String> hopeless(List<Split> splits) {
        return splits.stream()
                .filter(split -> split.cause().isPresent()
                        && split.past().size() < FEW
                        && split.failed().size() > results.size() / 2)
                .findFirst()
                .map(split ->
                        "There is nothing to measure first: i" + inSoMany(split).substring(1)
                                + ", and no number within its spread brings one near. Change the design.");
    }

    private String inSoMany(Split split) {
        return "In " + split.failed().size() + " of " + results.size() + " builds " + split.happens();
    }

    private Optional<Lead> lead(int d, double correlation, int builds, String words) {
        return Math.abs(correlation) >= CORRELATION
                ? Optional.of(new Lead(unknowns.get(d).name(), Math.abs(correlation) * Math.sqrt(builds - 1.0), words))
                : Optional.empty();
    }

    /** Nought where nothing varies. */
    private double correlation(int d, List<BuildResult> of, double[] with) {
        return of.size() < FEW || Arrays.stream(with).distinct().count() < 2
                ? 0
                : new SpearmansCorrelation().correlation(numbers(d, of), with);
    }

    /** What a build lacked with whichever coin came least near. */
    private static double missing(BuildResult result, Cause cause) {
        return result.coins().stream()
                .filter(trial -> trial.cause().equals(Optional.of(cause)))
                .mapToDouble(trial -> BuildTrial.missing(cause, trial.margin()))
                .max()
                .orElse(Double.NaN);
    }

    private double[] numbers(int d, List<BuildResult> of) {
        return of.stream().mapToDouble(result -> quantiles[result.number()][d]).toArray();
    }

    /** Standard deviations that chance stays below in all of so many tries, 19 times in 20 (Bonferroni). */
    private static double sure(int tries) {
        return new NormalDistribution().inverseCumulativeProbability(1 - BY_CHANCE / (2.0 * Math.max(1, tries)));
    }
}

package jackwork.builds;

import jackwork.chance.Interval;
import jackwork.stock.Coin;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.stat.correlation.SpearmansCorrelation;

/**
 * What came of all builds.
 *
 * @param passes builds in which every coin passes
 * @param notComputed builds in which no coin failed but some run is not computed: no passes, no failures
 * @param rate share of all builds that pass
 * @param interval of that share
 * @param passesByCoin by the coin's code
 * @param card what tuning makes of it; empty where the design has no adjuster
 * @param causes of the builds that fail, most frequent first
 * @param matters what moves the margin, most first
 * @param measureFirst the one measurement that would settle most, in a sentence or two; empty when no number stands out
 * @param conditions how the driest, the dampest and the most worn third do
 * @param unknowns how many numbers were drawn
 * @param guesses how many of those are guesses
 */
public record BuildReport(
        long seed,
        int builds,
        int passes,
        int notComputed,
        double rate,
        Interval interval,
        Map<String, Integer> passesByCoin,
        Optional<TuningCard> card,
        Map<Cause, Integer> causes,
        List<Matter> matters,
        Optional<String> measureFirst,
        List<Condition> conditions,
        int unknowns,
        int guesses,
        List<BuildResult> results) {

    private static final int MOST_MATTERS = 6;

    /**
     * @param correlation Spearman's rank correlation of the number with the build's margin, −1 to 1
     */
    public record Matter(String name, double correlation, boolean guess) {}

    /** A third of the builds, by one number: how many it has and how many of those pass. */
    public record Condition(String name, int builds, int passes) {}

    static BuildReport of(
            long seed,
            List<Coin> coins,
            List<Unknown> unknowns,
            double[][] quantiles,
            List<BuildResult> results,
            List<Adjuster> adjusters) {
        Map<String, Integer> byCoin = new LinkedHashMap<>();
        Map<Cause, Integer> causes = new EnumMap<>(Cause.class);
        int passes = 0;
        int notComputed = 0;
        for (Coin coin : coins) {
            byCoin.put(coin.code(), 0);
        }
        for (BuildResult result : results) {
            for (BuildResult.Trial trial : result.coins()) {
                byCoin.merge(trial.coin(), trial.passes() ? 1 : 0, Integer::sum);
            }
            if (result.passes()) {
                passes++;
            } else if (result.isOpen()) {
                notComputed++;
            }
            result.cause().ifPresent(cause -> causes.merge(cause, 1, Integer::sum));
        }
        Map<Cause, Integer> sorted = new LinkedHashMap<>();
        causes.entrySet().stream()
                .sorted(Map.Entry.<Cause, Integer>comparingByValue().reversed().thenComparing(Map.Entry::getKey))
                .forEach(entry -> sorted.put(entry.getKey(), entry.getValue()));
        int guesses = (int) unknowns.stream().filter(Unknown::isGuess).count();
        return new BuildReport(
                seed,
                results.size(),
                passes,
                notComputed,
                (double) passes / results.size(),
                ReplicateInterval.of(results, BuildRun.REPLICATES),
                byCoin,
                adjusters.isEmpty() ? Optional.empty() : Optional.of(TuningCard.of(adjusters, results)),
                sorted,
                matters(unknowns, quantiles, results),
                MeasureFirst.of(unknowns, quantiles, results),
                List.of(
                        third("the driest third", Unknowns.MOISTURE, false, unknowns, quantiles, results),
                        third("the dampest third", Unknowns.MOISTURE, true, unknowns, quantiles, results),
                        third("the most worn third", Unknowns.WEAR, true, unknowns, quantiles, results)),
                unknowns.size(),
                guesses,
                List.copyOf(results));
    }

    private static Condition third(
            String name,
            String number,
            boolean most,
            List<Unknown> unknowns,
            double[][] quantiles,
            List<BuildResult> results) {
        int d = 0;
        while (!unknowns.get(d).name().equals(number)) {
            d++;
        }
        int builds = 0;
        int passes = 0;
        for (int i = 0; i < results.size(); i++) {
            double share = most ? 1 - quantiles[i][d] : quantiles[i][d];
            if (share < 1.0 / 3 && !results.get(i).isOpen()) {
                builds++;
                passes += results.get(i).passes() ? 1 : 0;
            }
        }
        return new Condition(name, builds, passes);
    }

    private static List<Matter> matters(List<Unknown> unknowns, double[][] quantiles, List<BuildResult> all) {
        List<Matter> matters = new ArrayList<>();
        List<BuildResult> results =
                all.stream().filter(result -> !Double.isNaN(result.margin())).toList();
        if (results.size() < 3) {
            return matters;
        }
        double[] margin = results.stream().mapToDouble(BuildResult::margin).toArray();
        double first = margin[0];
        boolean varies = java.util.Arrays.stream(margin).anyMatch(m -> m != first);
        if (!varies) {
            return matters;
        }
        double[] number = new double[margin.length];
        for (int d = 0; d < unknowns.size(); d++) {
            for (int i = 0; i < margin.length; i++) {
                number[i] = quantiles[results.get(i).number()][d];
            }
            double correlation = new SpearmansCorrelation().correlation(number, margin);
            matters.add(new Matter(
                    unknowns.get(d).name(), correlation, unknowns.get(d).isGuess()));
        }
        matters.sort(Comparator.comparingDouble((Matter m) -> -Math.abs(m.correlation())));
        return List.copyOf(matters.subList(0, Math.min(MOST_MATTERS, matters.size())));
    }

    /** Builds that pass at once, or once they are tuned where the design has something to tune by. */
    public int worked() {
        return card.map(TuningCard::passes).orElse(passes);
    }

    /** The share of those. */
    public double workedRate() {
        return card.map(TuningCard::rate).orElse(rate);
    }

    /** The interval of that share. */
    public Interval workedInterval() {
        return card.map(TuningCard::interval).orElse(interval);
    }

    /** The whole in a sentence that never leaves out what it rests on. */
    public String words() {
        return String.format(
                java.util.Locale.ROOT,
                "%d of %d builds pass with every coin%s: %.1f %% (95 %% interval %.1f to %.1f %%), under these spreads,"
                        + " of which %d of %d are guesses%s",
                worked(),
                builds,
                card.isEmpty() ? "" : " once they are tuned, " + passes + " at once",
                100 * workedRate(),
                100 * workedInterval().low(),
                100 * workedInterval().high(),
                guesses,
                unknowns,
                notComputed == 0 ? "" : "; " + notComputed + " could not be computed and count as neither");
    }
}

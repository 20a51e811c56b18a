package jackwork.app.bench;

import jackwork.bench.BenchLog;
import jackwork.bench.Forms;
import jackwork.bench.Kinds;
import jackwork.bench.Measured;
import jackwork.bench.Prediction;
import jackwork.bench.Revision;
import jackwork.bench.RevisionName;
import jackwork.bench.Score;
import jackwork.bench.Timing;
import jackwork.bench.Trial;
import jackwork.chance.Gap;
import jackwork.stock.Uncertain;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What the log says of its revisions and measurements.
 *
 * @param wish what is to be proved
 */
public record BenchReport(Wish wish, List<OfRevision> revisions, List<OfMeasured> measured) {

    /**
     * @param rate of success
     * @param confidence with which it is to be shown
     */
    public record Wish(double rate, double confidence) {}

    /**
     * @param all coins together
     * @param prediction the last one; null when there is none
     */
    public record OfRevision(
            Revision revision,
            Score all,
            List<OfCoin> coins,
            List<OfOperation> operations,
            @Nullable Prediction prediction) {}

    /**
     * One coin's trials beside the builds.
     *
     * @param predicted builds that pass with it, of {@code builds}; null when there is no prediction
     * @param gapChance how often chance alone would part the two so far (Fisher's exact test, two-sided)
     */
    public record OfCoin(
            String coin,
            Score score,
            @Nullable Integer predicted,
            int builds,
            @Nullable Double gapChance) {}

    /**
     * @param minutes for a piece, on average
     * @param pieces timed
     */
    public record OfOperation(String operation, double minutes, int pieces, int times) {}

    /**
     * @param value null when there are too few readings
     * @param why there is none
     * @param place in {@code workshop.yaml}
     */
    public record OfMeasured(
            String kind,
            String about,
            String place,
            @Nullable Uncertain value,
            String why,
            int measurements) {}

    /** @param design the only one to tell of; null for all */
    public static BenchReport of(BenchLog log, @Nullable String design, Wish wish) {
        List<Trial> trials = log.counting(Kinds.TRIALS);
        List<Timing> timings = log.counting(Kinds.TIMINGS);
        List<Prediction> predictions = log.counting(Kinds.PREDICTIONS);
        List<OfRevision> revisions = log.revisions().stream()
                .filter(revision -> design == null || revision.name().design().equals(design))
                .map(revision -> of(revision, trials, timings, predictions))
                .toList();
        return new BenchReport(wish, revisions, measured(log.counting(Kinds.MEASURED)));
    }

    private static OfRevision of(
            Revision revision, List<Trial> allTrials, List<Timing> allTimings, List<Prediction> predictions) {
        RevisionName name = revision.name();
        Prediction prediction = predictions.stream()
                .filter(p -> p.revision().equals(name))
                .reduce((first, second) -> second)
                .orElse(null);
        List<Trial> trials =
                allTrials.stream().filter(t -> t.revision().equals(name)).toList();
        Map<String, List<Trial>> byCoin = new TreeMap<>();
        trials.forEach(trial ->
                byCoin.computeIfAbsent(trial.coin(), c -> new ArrayList<>()).add(trial));
        if (prediction != null) {
            prediction.coins().keySet().forEach(coin -> byCoin.computeIfAbsent(coin, c -> new ArrayList<>()));
        }
        List<OfCoin> coins = new ArrayList<>();
        byCoin.forEach((coin, its) -> coins.add(coin(coin, Score.of(its), prediction)));
        List<Timing> timings =
                allTimings.stream().filter(t -> t.revision().equals(name)).toList();
        return new OfRevision(revision, Score.of(trials), coins, operations(timings), prediction);
    }

    private static OfCoin coin(String coin, Score score, @Nullable Prediction prediction) {
        Integer predicted = prediction == null ? null : prediction.coins().get(coin);
        if (prediction == null || predicted == null) {
            return new OfCoin(coin, score, null, 0, null);
        }
        Double chance = score.tries() == 0
                ? null
                : Double.valueOf(Gap.chance(score.passes(), score.tries(), predicted, prediction.builds()));
        return new OfCoin(coin, score, predicted, prediction.builds(), chance);
    }

    private static List<OfOperation> operations(List<Timing> timings) {
        Map<String, List<Timing>> byOperation = new LinkedHashMap<>();
        timings.forEach(timing -> byOperation
                .computeIfAbsent(timing.operation(), o -> new ArrayList<>())
                .add(timing));
        List<OfOperation> operations = new ArrayList<>();
        byOperation.forEach((operation, its) -> {
            int pieces = its.stream().mapToInt(Timing::pieces).sum();
            double minutes = its.stream().mapToDouble(Timing::minutes).sum();
            operations.add(new OfOperation(operation, minutes / pieces, pieces, its.size()));
        });
        return operations;
    }

    private static List<OfMeasured> measured(List<Measured> all) {
        List<OfMeasured> measured = new ArrayList<>();
        grouped(all).forEach((key, same) -> {
            Measured first = same.get(0);
            Uncertain value = null;
            String why = "";
            try {
                value = Forms.of(same);
            } catch (IllegalArgumentException e) {
                why = String.valueOf(e.getMessage());
            }
            measured.add(new OfMeasured(
                    first.kind(), first.about(), Forms.place(first.kind(), first.about()), value, why, same.size()));
        });
        return measured;
    }

    /** Measurements of one and the same thing together. */
    static Map<String, List<Measured>> grouped(List<Measured> all) {
        Map<String, List<Measured>> groups = new LinkedHashMap<>();
        all.forEach(measured -> groups.computeIfAbsent(
                        measured.kind() + (measured.about().isEmpty() ? "" : ":" + measured.about()),
                        key -> new ArrayList<>())
                .add(measured));
        return groups;
    }
}

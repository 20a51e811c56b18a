package jackwork.app.core;

import jackwork.app.wire.Places;
import jackwork.bench.BenchLog;
import jackwork.bench.Kinds;
import jackwork.bench.Timing;
import jackwork.price.Timed;
import jackwork.stock.Operations;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How long work on a design takes, as the log has it: the last revision that has it timed counts, since hands learn and
 * designs change.
 *
 * @param operation or stage of the work, or the maker's own word
 * @param minutes for a piece on average; for a batch, where it is done once a batch
 * @param low the quickest timing
 * @param high the slowest
 * @param pieces timed
 * @param times that it was timed
 * @param revision of the design
 */
public record TimedWork(
        String operation,
        @Places(3) double minutes,
        @Places(3) double low,
        @Places(3) double high,
        int pieces,
        int times,
        int revision) {

    public static List<TimedWork> of(BenchLog log, String design) {
        Map<String, List<Timing>> byOperation = new LinkedHashMap<>();
        log.counting(Kinds.TIMINGS).stream()
                .filter(timing -> timing.revision().design().equals(design))
                .forEach(timing -> byOperation
                        .computeIfAbsent(timing.operation(), operation -> new ArrayList<>())
                        .add(timing));
        return byOperation.entrySet().stream()
                .map(entry -> of(entry.getKey(), entry.getValue()))
                .toList();
    }

    private static TimedWork of(String operation, List<Timing> timings) {
        int last = timings.stream()
                .mapToInt(timing -> timing.revision().number())
                .max()
                .orElse(0);
        List<Timing> its = timings.stream()
                .filter(timing -> timing.revision().number() == last)
                .toList();
        int pieces = its.stream().mapToInt(Timing::pieces).sum();
        double minutes = its.stream().mapToDouble(Timing::minutes).sum();
        boolean once =
                Operations.catalogue().find(operation).filter(o -> o.perBatch()).isPresent();
        double[] each = its.stream()
                .mapToDouble(timing -> once ? timing.minutes() : timing.minutes() / timing.pieces())
                .sorted()
                .toArray();
        double mean = minutes / (once ? its.size() : pieces);
        return new TimedWork(operation, mean, each[0], each[each.length - 1], pieces, its.size(), last);
    }

    public static Map<String, Timed> forPrice(List<TimedWork> all) {
        Map<String, Timed> timed = new LinkedHashMap<>();
        all.forEach(work -> timed.put(work.operation(), work.forPrice()));
        return timed;
    }

    public Timed forPrice() {
        return new Timed(minutes, low, high, "timed at the bench, " + words());
    }

    /** What was timed. */
    public String words() {
        return (pieces == 1 ? "1 piece" : pieces + " pieces") + " of revision " + revision;
    }
}

package jackwork.price;

import jackwork.stock.Basis;
import jackwork.stock.Operation;
import jackwork.stock.Operations;
import jackwork.stock.Uncertain;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What was timed at the bench, by operation ({@code pivot}) or by stage ({@code build}), put among the rates: minutes for
 * one of each, measured here.
 */
public final class Timings {

    private Timings() {}

    /**
     * @param batch the design as it was timed; a quicker way of making it is asked for afterwards
     * @param timed by operation or stage; other names are the maker's own and not used
     */
    public static Rates in(Rates rates, Batch batch, Map<String, Timed> timed) {
        if (timed.isEmpty()) {
            return rates;
        }
        Map<String, Double> counts = Times.counts(batch, rates);
        Map<String, Uncertain> minutes = new LinkedHashMap<>();
        for (Operation operation : Operations.catalogue().all()) {
            Timed all = timed.get(operation.name());
            double count = counts.getOrDefault(operation.name(), 0.0);
            if (all != null && count > 0) {
                minutes.put(operation.name(), each(all.times(1 / count)));
            }
        }
        timed.forEach((name, all) -> {
            if (isStage(name) && Operations.catalogue().find(name).isEmpty()) {
                share(rates, counts, name, all, minutes);
            }
        });
        return rates.timed(minutes);
    }

    /** A stage timed as a whole: its operations keep their proportions, but for those that were timed by themselves. */
    private static void share(
            Rates rates, Map<String, Double> counts, String stage, Timed all, Map<String, Uncertain> minutes) {
        List<Operation> those = Operations.catalogue().all().stream()
                .filter(operation -> operation.stage().equals(stage) && !operation.perBatch())
                .toList();
        double supposed = those.stream()
                .mapToDouble(operation -> counts.getOrDefault(operation.name(), 0.0) * number(rates, operation))
                .sum();
        if (supposed > 0) {
            those.forEach(operation ->
                    minutes.putIfAbsent(operation.name(), each(all.times(number(rates, operation) / supposed))));
        }
    }

    private static double number(Rates rates, Operation operation) {
        return rates.number(Times.path(operation));
    }

    private static Uncertain each(Timed one) {
        return new Uncertain(one.minutes(), one.low(), one.high(), "min", Basis.MEASURED, one.source());
    }

    private static boolean isStage(String name) {
        return Arrays.stream(Stage.values()).anyMatch(stage -> stage.word().equals(name));
    }

    /** Names that are no operation and no stage. */
    public static List<String> unused(Collection<String> names) {
        return names.stream()
                .filter(name ->
                        !isStage(name) && Operations.catalogue().find(name).isEmpty())
                .sorted()
                .toList();
    }
}

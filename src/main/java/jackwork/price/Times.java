package jackwork.price;

import jackwork.stock.Operation;
import jackwork.stock.Operations;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Hands' minutes for one good piece, operation by operation, most first. */
final class Times {

    /** An operation with where it stands. */
    private record Kind(Operation operation, Stage stage, String path) {}

    private static final List<Kind> KINDS = Operations.catalogue().all().stream()
            .map(operation -> new Kind(operation, Stage.of(operation.stage()), path(operation)))
            .toList();

    private final Rates rates;
    private final Yields yields;
    private final int pieces;

    Times(Rates rates, int pieces) {
        this.rates = rates;
        this.yields = Yields.of(rates);
        this.pieces = pieces;
    }

    /** Of its minutes, among the rates. */
    static String path(Operation operation) {
        return "times." + operation.name();
    }

    List<Task> of(Batch batch) {
        Map<String, Double> counts = counts(batch, rates);
        double learnt = Learning.of(rates).average(pieces);
        List<Task> tasks = new ArrayList<>();
        for (Kind kind : KINDS) {
            double count = counts.getOrDefault(kind.operation().name(), 0.0);
            if (count > 0) {
                tasks.add(task(kind, count, learnt));
            }
        }
        double all = tasks.stream().mapToDouble(Task::minutes).sum();
        return tasks.stream()
                .map(task -> task.withShare(all))
                .sorted(Comparator.comparingDouble(Task::minutes).reversed().thenComparing(Task::operation))
                .toList();
    }

    /** How often each operation is done for one piece, or for the batch where it is done once a batch. */
    static Map<String, Double> counts(Batch batch, Rates rates) {
        Map<String, Double> counts = new LinkedHashMap<>();
        for (Kind kind : KINDS) {
            Operation operation = kind.operation();
            double count = batch.work().getOrDefault(operation.name(), 0.0);
            counts.put(operation.name(), operation.perBatch() ? count : count / batch.pieces());
        }
        // What follows from machines and failures.
        counts.put("watch-laser", batch.laserMinutes() * rates.number("laser.attention") / 100);
        counts.put("watch-printer", printerMinutes(batch, rates) * rates.number("printer.attention") / 100);
        counts.put("rework", Yields.of(rates).fails() * rates.number("yields.rework"));
        return counts;
    }

    /** For one piece. */
    static double printerMinutes(Batch batch, Rates rates) {
        return batch.printedGrams() / batch.pieces() / rates.number("printer.speed") * 60;
    }

    private Task task(Kind kind, double count, double learnt) {
        Operation operation = kind.operation();
        double each = rates.number(kind.path());
        // Timed at the bench is timed as it is done there: what was learnt is in it.
        double learning = operation.learns() && !rates.isTimed(kind.path()) ? learnt : 1;
        double factor = operation.perBatch() ? 1.0 / pieces : yields.into(kind.stage()) * learning;
        return new Task(
                operation.name(),
                operation.what(),
                kind.stage(),
                count,
                each,
                operation.perBatch(),
                operation.learns(),
                count * each * factor,
                0,
                rates.known(kind.path()).basis());
    }
}

package jackwork.price;

import jackwork.stock.Basis;
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
            .map(operation -> new Kind(operation, Stage.of(operation.stage()), "times." + operation.name()))
            .toList();

    private final Rates rates;
    private final Yields yields;
    private final Map<String, Double> measured;
    private final int pieces;

    /**
     * @param measured at the bench: minutes for one piece (for the batch, where that is how it is done) by operation or
     *     by stage; names that are neither are the maker's own and not used
     */
    Times(Rates rates, Map<String, Double> measured, int pieces) {
        this.rates = rates;
        this.yields = Yields.of(rates);
        this.measured = measured;
        this.pieces = pieces;
    }

    List<Task> of(Batch batch) {
        Map<String, Double> work = new LinkedHashMap<>(batch.work());
        watched(batch, work);
        double learnt = Learning.of(rates).average(pieces);
        List<Task> tasks = new ArrayList<>();
        for (Kind kind : KINDS) {
            double count = work.getOrDefault(kind.operation().name(), 0.0);
            if (count > 0) {
                tasks.add(task(kind, kind.operation().perBatch() ? count : count / batch.pieces(), learnt));
            }
        }
        List<Task> scaled = byStage(tasks);
        double all = scaled.stream().mapToDouble(Task::minutes).sum();
        return scaled.stream()
                .map(task -> task.withShare(all))
                .sorted(Comparator.comparingDouble(Task::minutes).reversed().thenComparing(Task::operation))
                .toList();
    }

    /** What follows from machines and failures, for the whole batch. */
    private void watched(Batch batch, Map<String, Double> work) {
        double laser = batch.laserMinutes() * rates.number("laser.attention") / 100;
        double printer = printerMinutes(batch, rates) * rates.number("printer.attention") / 100;
        work.put("watch-laser", batch.pieces() * laser);
        work.put("watch-printer", batch.pieces() * printer);
        work.put("rework", batch.pieces() * yields.fails() * rates.number("yields.rework"));
    }

    /** For one piece. */
    static double printerMinutes(Batch batch, Rates rates) {
        return batch.printedGrams() / batch.pieces() / rates.number("printer.speed") * 60;
    }

    private Task task(Kind kind, double count, double learnt) {
        Operation operation = kind.operation();
        String path = kind.path();
        Double timed = measured.get(operation.name());
        double each = timed == null ? rates.number(path) : timed / count;
        Stage stage = kind.stage();
        // Timed at the bench is timed as it is done there: what was learnt is in it.
        double factor = operation.perBatch()
                ? 1.0 / pieces
                : yields.into(stage) * (operation.learns() && timed == null ? learnt : 1);
        return new Task(
                operation.name(),
                operation.what(),
                stage,
                count,
                each,
                operation.perBatch(),
                operation.learns(),
                count * each * factor,
                0,
                timed == null ? rates.known(path).basis() : Basis.MEASURED);
    }

    /** A stage timed as a whole: its operations keep their proportions. */
    private List<Task> byStage(List<Task> tasks) {
        List<Task> scaled = new ArrayList<>();
        for (Task task : tasks) {
            Double timed = measured.isEmpty() ? null : measured.get(task.stage().word());
            if (timed == null || task.perBatch() || measured.containsKey(task.operation()) || isOperation(task)) {
                scaled.add(task);
            } else {
                double now = tasks.stream()
                        .filter(other -> other.stage() == task.stage() && !other.perBatch())
                        .mapToDouble(other -> other.count() * other.each())
                        .sum();
                double each = task.each() * timed / now;
                double minutes = task.count() * each * yields.into(task.stage());
                scaled.add(new Task(
                        task.operation(),
                        task.what(),
                        task.stage(),
                        task.count(),
                        each,
                        false,
                        task.learns(),
                        minutes,
                        0,
                        Basis.MEASURED));
            }
        }
        return scaled;
    }

    /** Trying and packing are called like their stages: one timing, one meaning. */
    private static boolean isOperation(Task task) {
        return Operations.catalogue().find(task.stage().word()).isPresent();
    }
}

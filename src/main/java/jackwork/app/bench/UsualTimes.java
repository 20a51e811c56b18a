package jackwork.app.bench;

import jackwork.app.wire.Payload;
import jackwork.app.wire.Places;
import jackwork.design.Design;
import jackwork.make.MakeException;
import jackwork.make.Quantities;
import jackwork.price.Rates;
import jackwork.stock.Basis;
import jackwork.stock.Operation;
import jackwork.stock.Operations;
import jackwork.stock.Uncertain;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Minutes of hands for one piece as the workshop's numbers have them, without learning and without waste, to lay what was
 * timed beside.
 *
 * @param stages each with all its operations together
 * @param trouble why they cannot be told; then there are none
 */
record UsualTimes(List<UsualTime> stages, List<UsualTime> operations, String trouble) implements Payload {

    /** @param guess whether any of it is one */
    record UsualTime(
            String name,
            String what,
            @Places(2) double minutes,
            @Places(2) double low,
            @Places(2) double high,
            boolean guess) {}

    static UsualTimes of(Design design) {
        Map<String, Double> work;
        try {
            work = Quantities.of(design, 1).work();
        } catch (MakeException e) {
            return new UsualTimes(List.of(), List.of(), String.valueOf(e.getMessage()));
        }
        Rates rates = Rates.of(design.workshop());
        List<UsualTime> operations = new ArrayList<>();
        List<UsualTime> stages = new ArrayList<>();
        for (Operation operation : Operations.catalogue().all()) {
            double count = work.getOrDefault(operation.name(), 0.0);
            if (count > 0) {
                Uncertain each = rates.known("times." + operation.name());
                UsualTime time = new UsualTime(
                        operation.name(),
                        operation.what(),
                        count * each.value(),
                        count * each.low(),
                        count * each.high(),
                        each.basis() == Basis.GUESS);
                operations.add(time);
                into(stages, operation, time);
            }
        }
        return new UsualTimes(stages, operations, "");
    }

    /** What is done once a batch is none of a piece's own time. */
    private static void into(List<UsualTime> stages, Operation operation, UsualTime time) {
        if (operation.perBatch()) {
            return;
        }
        int last = stages.size() - 1;
        if (last >= 0 && stages.get(last).name().equals(operation.stage())) {
            UsualTime so = stages.get(last);
            stages.set(
                    last,
                    new UsualTime(
                            so.name(),
                            so.what() + "; " + time.what(),
                            so.minutes() + time.minutes(),
                            so.low() + time.low(),
                            so.high() + time.high(),
                            so.guess() || time.guess()));
        } else {
            stages.add(new UsualTime(
                    operation.stage(), time.what(), time.minutes(), time.low(), time.high(), time.guess()));
        }
    }
}

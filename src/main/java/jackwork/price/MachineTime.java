package jackwork.price;

import java.math.BigDecimal;
import java.util.List;

/**
 * A machine's part in one piece, before what is spoiled.
 *
 * @param minutes it runs; machines do not learn
 * @param hour what an hour of it costs, as paid: wear + upkeep + power · energy
 */
public record MachineTime(String machine, double minutes, BigDecimal hour) {

    static List<MachineTime> of(Costing costing, int places) {
        Batch batch = costing.batch();
        return List.of(
                new MachineTime("laser", batch.laserMinutes(), Money.shown(costing.machineHour("laser"), places)),
                new MachineTime(
                        "printer",
                        Times.printerMinutes(batch, costing.rates()),
                        Money.shown(costing.machineHour("printer"), places)));
    }
}

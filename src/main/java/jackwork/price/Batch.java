package jackwork.price;

import java.util.List;
import java.util.Map;

/**
 * What a batch takes, as laid out for so many pieces.
 *
 * @param pieces in it; all amounts are for the whole of it
 * @param printedGrams of filament in printed parts
 * @param work by operation
 * @param have what is on the shelf, by the names of the bill
 */
public record Batch(
        int pieces,
        List<LaidSheet> sheets,
        List<Item> items,
        double printedGrams,
        Map<String, Double> work,
        Map<String, Double> have) {

    /** Minutes of the laser, for one piece. */
    double laserMinutes() {
        return sheets.stream().mapToDouble(LaidSheet::seconds).sum() / 60 / pieces;
    }

    /** The same batch with other work. */
    Batch withWork(Map<String, Double> other) {
        return new Batch(pieces, sheets, items, printedGrams, other, have);
    }
}

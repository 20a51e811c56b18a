package jackwork.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Alternatives to slow steps, those that save most minutes first. */
final class Quicker {

    private static final List<Alternative> ALL =
            List.of(new TabsForDowels(), new PrintedPictures(), new JigForGluing(), new LargerBatch());

    private Quicker() {}

    static List<Offer> of(Costing costing, List<Edited> edits) {
        List<Offer> offers = new ArrayList<>();
        for (Alternative alternative : ALL) {
            alternative.offer(costing).ifPresent(offers::add);
        }
        edits.forEach(edit -> offers.add(edit.offer(costing)));
        offers.sort(Comparator.comparingDouble(Offer::minutesSaved).reversed().thenComparing(Offer::id));
        return offers;
    }

    static double count(Batch batch, String operation) {
        return batch.work().getOrDefault(operation, 0.0);
    }

    /** Hours of one's own, and stock. */
    static BigDecimal capital(Rates rates, String hours, BigDecimal stock) {
        return rates.hourCost().multiply(rates.money("quicker." + hours)).add(stock);
    }
}

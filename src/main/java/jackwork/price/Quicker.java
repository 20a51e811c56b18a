package jackwork.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;

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

    /**
     * A step that falls away, and what is done in its place; its drawings change, so every question is asked again.
     *
     * @param step the operation; where it is not done there is nothing to offer
     * @param others puts in what comes for as many of it
     * @param hours the number that says how long it takes to draw and try, once
     */
    static Optional<Offer> instead(
            Costing costing,
            String step,
            BiConsumer<Map<String, Double>, Double> others,
            String id,
            String name,
            String words,
            String hours) {
        Map<String, Double> work = new LinkedHashMap<>(costing.batch().work());
        Double often = work.remove(step);
        if (often == null || often == 0) {
            return Optional.empty();
        }
        others.accept(work, often);
        return Optional.of(Offer.of(
                id,
                name,
                words,
                costing,
                costing.with(costing.batch().withWork(work)),
                capital(costing.rates(), hours, BigDecimal.ZERO),
                Offer.AGAIN));
    }

    /** Hours of one's own, and stock. */
    static BigDecimal capital(Rates rates, String hours, BigDecimal stock) {
        return rates.hourCost().multiply(rates.money("quicker." + hours)).add(stock);
    }
}

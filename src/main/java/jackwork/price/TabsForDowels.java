package jackwork.price;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Layers that lock by tabs cut into them, not by dowels that are sawn, rounded and glued. */
final class TabsForDowels implements Alternative {

    @Override
    public Optional<Offer> offer(Costing costing) {
        Batch batch = costing.batch();
        double dowels = Quicker.count(batch, "dowel-glue");
        if (dowels == 0) {
            return Optional.empty();
        }
        Map<String, Double> work = new LinkedHashMap<>(batch.work());
        work.remove("dowel-glue");
        work.merge("dowel-cut", -dowels, (all, less) -> Math.max(0, all + less));
        work.merge("tab", dowels, Double::sum);
        return Optional.of(Offer.of(
                "tabs-for-dowels",
                "Tabs for dowels",
                "Draw tabs and slots into the layers of a stack; its dowels fall away, its pivots stay.",
                costing,
                costing.with(batch.withWork(work)),
                Quicker.capital(costing.rates(), "tab-hours", BigDecimal.ZERO),
                Offer.AGAIN));
    }
}

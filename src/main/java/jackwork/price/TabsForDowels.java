package jackwork.price;

import java.util.Optional;

/** Layers that lock by tabs cut into them, not by dowels that are sawn, rounded and glued. */
final class TabsForDowels implements Alternative {

    @Override
    public Optional<Offer> offer(Costing costing) {
        return Quicker.instead(
                costing,
                "dowel-glue",
                (work, dowels) -> {
                    work.merge("dowel-cut", -dowels, (all, less) -> Math.max(0, all + less));
                    work.merge("tab", dowels, Double::sum);
                },
                "tabs-for-dowels",
                "Tabs for dowels",
                "Draw tabs and slots into the layers of a stack; its dowels fall away, its pivots stay.",
                "tab-hours");
    }
}

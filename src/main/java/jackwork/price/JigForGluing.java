package jackwork.price;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A board with pegs for every stack, so that gluing needs no measuring and no holding. */
final class JigForGluing implements Alternative {

    private static final List<String> HELPED = List.of("glue-stack", "glue-layer", "dowel-glue");

    @Override
    public Optional<Offer> offer(Costing costing) {
        Batch batch = costing.batch();
        double left = 1 - costing.rates().number("quicker.jig-saves") / 100;
        Map<String, Double> work = new LinkedHashMap<>(batch.work());
        boolean any = false;
        for (String operation : HELPED) {
            any |= work.computeIfPresent(operation, (name, count) -> count * left) != null;
        }
        if (!any) {
            return Optional.empty();
        }
        BigDecimal stock = costing.rates().cost(costing.rates().money("quicker.jig-stock"));
        return Optional.of(Offer.of(
                "jig",
                "A jig for every stack",
                "Cut boards with pegs from the sheet of jigs in the pack; the piece itself stays as it is.",
                costing,
                costing.with(batch.withWork(work)),
                Quicker.capital(costing.rates(), "jig-hours", stock),
                Offer.STAY));
    }
}

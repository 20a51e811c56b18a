package jackwork.price;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Pictures printed and glued on in place of paint. */
final class PrintedPictures implements Alternative {

    @Override
    public Optional<Offer> offer(Costing costing) {
        Batch batch = costing.batch();
        double painted = Quicker.count(batch, "paint-part");
        if (painted == 0) {
            return Optional.empty();
        }
        Map<String, Double> work = new LinkedHashMap<>(batch.work());
        work.remove("paint-part");
        work.merge("picture", painted, Double::sum);
        work.merge("print-page", painted, Double::sum);
        return Optional.of(Offer.of(
                "printed-pictures",
                "Printed pictures",
                "Draw the paint once and print it for every piece, a page a part; paper weighs, and its edge shows.",
                costing,
                costing.with(batch.withWork(work)),
                Quicker.capital(costing.rates(), "picture-hours", BigDecimal.ZERO),
                Offer.AGAIN));
    }
}

package jackwork.price;

import java.math.BigDecimal;
import java.util.Optional;

/** Twice as many at once: set-up is shared, hands learn. What more stock costs is tied up until they are sold. */
final class LargerBatch implements Alternative {

    @Override
    public Optional<Offer> offer(Costing costing) {
        Costing then = costing.with(2 * costing.pieces());
        BigDecimal now = CashLine.sum(CashLine.of(costing));
        BigDecimal more = CashLine.sum(CashLine.of(then)).subtract(now);
        return Optional.of(Offer.of(
                "larger-batch",
                "Batches of " + then.pieces(),
                "Make twice as many at once, if you can sell them and have room for them.",
                costing,
                then,
                more,
                Offer.STAY));
    }
}

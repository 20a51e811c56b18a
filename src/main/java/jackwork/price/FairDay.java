package jackwork.price;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * A day at a stall.
 *
 * @param share of the price for taking cards
 */
record FairDay(
        BigDecimal stall, BigDecimal travel, BigDecimal hours, BigDecimal wage, BigDecimal vat, BigDecimal share) {

    static FairDay of(Rates rates, String name) {
        String at = "channels.fair." + name + ".";
        return new FairDay(
                rates.money(at + "stall"),
                rates.money(at + "travel"),
                rates.money(at + "hours"),
                rates.money("wage"),
                rates.vat(),
                rates.share(at + "fee"));
    }

    /** stall + travel + hours · wage. */
    BigDecimal cost() {
        return stall.add(travel).add(hours.multiply(wage));
    }

    /**
     * Pieces that pay for the day: cost / (price / (1 + v) − f · price − what a piece costs without selling); empty when
     * each one sold loses money.
     */
    Optional<BigDecimal> pieces(BigDecimal price, BigDecimal floor) {
        BigDecimal left = Money.divided(price, BigDecimal.ONE.add(vat))
                .subtract(share.multiply(price))
                .subtract(floor);
        return left.signum() > 0 ? Optional.of(Money.divided(cost(), left)) : Optional.empty();
    }

    /** The same, whole pieces. */
    Optional<BigDecimal> wholePieces(BigDecimal price, BigDecimal floor) {
        return pieces(price, floor).map(pieces -> pieces.setScale(0, RoundingMode.CEILING));
    }
}

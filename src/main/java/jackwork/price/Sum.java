package jackwork.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A sum being written down, line by line. */
final class Sum {

    private final List<WayResult.WayLine> lines = new ArrayList<>();

    Sum plus(String name, BigDecimal amount) {
        lines.add(new WayResult.WayLine(name, amount));
        return this;
    }

    Sum minus(String name, BigDecimal amount) {
        return plus(name, amount.negate());
    }

    BigDecimal left() {
        return WayResult.sum(lines);
    }

    List<WayResult.WayLine> lines() {
        return List.copyOf(lines);
    }

    WayResult.Purse purse(String whose) {
        return new WayResult.Purse(whose, left(), lines());
    }

    /** @param hours of the maker's hands in it */
    WayResult result(String id, String name, String unit, BigDecimal hours, Rates rates, List<String> words) {
        return result(id, name, unit, hours, rates, List.of(), List.of(), words);
    }

    WayResult result(
            String id,
            String name,
            String unit,
            BigDecimal hours,
            Rates rates,
            List<WayResult.Purse> purses,
            List<BigDecimal> months,
            List<String> words) {
        return new WayResult(
                id,
                name,
                unit,
                left(),
                anHour(hours, rates),
                lines(),
                purses,
                months,
                months.isEmpty() ? null : SaleOrReturn.peak(months),
                words,
                List.of());
    }

    /** The wage at which nothing would be left: each hour costs the wage with its on-costs, so what is left counts less. */
    private @Nullable BigDecimal anHour(BigDecimal hours, Rates rates) {
        if (hours.signum() <= 0) {
            return null;
        }
        BigDecimal more = Money.divided(left(), hours.multiply(rates.costOfWage()));
        return rates.money("wage").add(more);
    }
}

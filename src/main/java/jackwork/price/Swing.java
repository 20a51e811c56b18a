package jackwork.price;

import jackwork.stock.Uncertain;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/**
 * What one number does to an answer between the ends of its interval, all others left as they are.
 *
 * @param name its path in workshop.yaml
 * @param atLow the answer with the number at its lower end
 * @param atHigh likewise
 * @param move the distance between the two
 */
public record Swing(String name, Uncertain number, BigDecimal atLow, BigDecimal atHigh, BigDecimal move) {

    /**
     * @param answer of the rates, about the finished piece; other ways of selling move nothing of it
     * @return largest moves first, those that move nothing left out
     */
    static List<Swing> of(Rates rates, Function<Rates, BigDecimal> answer, int places) {
        List<Swing> swings = new ArrayList<>();
        rates.all().forEach((name, number) -> {
            if (number.low() < number.high() && !name.startsWith("ways.") && !name.startsWith("quicker.")) {
                BigDecimal low = Money.shown(answer.apply(rates.with(name, number.low())), places);
                BigDecimal high = Money.shown(answer.apply(rates.with(name, number.high())), places);
                if (low.compareTo(high) != 0) {
                    swings.add(new Swing(
                            name, number, low, high, high.subtract(low).abs()));
                }
            }
        });
        swings.sort(Comparator.comparing(Swing::move).reversed().thenComparing(Swing::name));
        return swings;
    }
}

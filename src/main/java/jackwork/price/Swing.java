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

    /** @return largest moves first, those that move nothing left out */
    static List<Swing> of(List<Ends> numbers, Function<Costing, BigDecimal> answer, int places) {
        List<Swing> swings = new ArrayList<>();
        for (Ends ends : numbers) {
            BigDecimal low = Money.shown(answer.apply(ends.low()), places);
            BigDecimal high = Money.shown(answer.apply(ends.high()), places);
            if (low.compareTo(high) != 0) {
                swings.add(new Swing(
                        ends.name(),
                        ends.number(),
                        low,
                        high,
                        high.subtract(low).abs()));
            }
        }
        swings.sort(Comparator.comparing(Swing::move).reversed().thenComparing(Swing::name));
        return swings;
    }
}

package jackwork.price;

import jackwork.stock.Basis;
import java.math.BigDecimal;
import java.util.List;

/**
 * A line of what a good piece costs.
 *
 * @param group {@code stock}, {@code machines}, {@code hands}, {@code overhead}, {@code set-up}, {@code design},
 *     {@code salvage}
 * @param amount for one good piece; negative where something comes back
 * @param basis the weakest that it rests on: a guess among measured numbers leaves a guess
 * @param restsOn paths of its numbers; the yields, on which every line of a stage rests, are told apart
 */
public record CostLine(String group, String name, BigDecimal amount, Basis basis, List<String> restsOn) {

    CostLine with(BigDecimal shown) {
        return new CostLine(group, name, shown, basis, restsOn);
    }
}

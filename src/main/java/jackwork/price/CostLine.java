package jackwork.price;

import java.math.BigDecimal;

/**
 * A line of what a good piece costs.
 *
 * @param group {@code stock}, {@code machines}, {@code hands}, {@code overhead}, {@code set-up}, {@code design},
 *     {@code salvage}
 * @param amount for one good piece; negative where something comes back
 */
public record CostLine(String group, String name, BigDecimal amount) {}

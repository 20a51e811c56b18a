package jackwork.price;

import java.math.BigDecimal;

/**
 * A step of the ladder.
 *
 * @param adds what it adds
 * @param reaches the amount it reaches
 */
public record Rung(String name, BigDecimal adds, BigDecimal reaches) {

    static Rung to(String name, BigDecimal from, BigDecimal reaches) {
        return new Rung(name, reaches.subtract(from), reaches);
    }
}

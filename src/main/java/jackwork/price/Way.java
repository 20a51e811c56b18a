package jackwork.price;

import java.math.BigDecimal;

/** A way of selling. A new one is one new file and one line in {@link Ways}. */
@FunctionalInterface
interface Way {

    /**
     * @param costing the finished piece, in its batch
     * @param price what a buyer pays for the finished piece, VAT in it
     */
    WayResult of(Costing costing, BigDecimal price, WayFacts facts);
}

/**
 * Will it pay? Times ({@link jackwork.price.Times}, {@link jackwork.price.Learning}), the cost of a good piece ({@link
 * jackwork.price.Costing}), the ladder from floor to shelf and back ({@link jackwork.price.Channels}, {@link
 * jackwork.price.Backwards}), other ways of selling ({@link jackwork.price.Ways}), quicker ways of making ({@link
 * jackwork.price.Quicker}) and which number matters ({@link jackwork.price.Swing}).
 *
 * <p>Units: minutes, hours, percent in files and shares inside, the workshop's currency in decimals, never binary floats.
 * All numbers stand in {@link jackwork.price.Rates} by their path in workshop.yaml, so that any of them can be put to
 * another value. May import {@code check} and below, no sibling: what a batch takes comes as a {@link
 * jackwork.price.Batch} of plain values through {@code app}.
 *
 * <p>Sources: T. P. Wright 1936 for learning; the formulas are worked by hand in docs/pay-by-hand.md.
 */
@NullMarked
package jackwork.price;

import org.jspecify.annotations.NullMarked;

/**
 * Times, costs, the price ladder and ways of selling. Nothing stands here yet.
 *
 * <p>Units: minutes, the workshop's currency in decimals, never binary floats. May import {@code
 * check} and below, no sibling: cut lengths, areas and pass rates come as plain values through
 * {@code app}.
 */
@NullMarked
package jackwork.price;

import org.jspecify.annotations.NullMarked;

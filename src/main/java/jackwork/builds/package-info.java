/**
 * Virtual builds and tuning: a design built a thousand times, each with its own errors of size,
 * friction and hand. Nothing stands here yet; {@code check} states spreads to first order meanwhile.
 *
 * <p>Units as in {@code motion}. May import {@code check} and below, no sibling.
 */
@NullMarked
package jackwork.builds;

import org.jspecify.annotations.NullMarked;

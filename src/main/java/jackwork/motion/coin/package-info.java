/**
 * A coin's whole visit, from the slot to the second press that must be refused.
 */
@NullMarked
package jackwork.motion.coin;

import org.jspecify.annotations.NullMarked;

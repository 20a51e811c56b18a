/**
 * The stepper and its blows.
 */
@NullMarked
package jackwork.motion.time;

import org.jspecify.annotations.NullMarked;

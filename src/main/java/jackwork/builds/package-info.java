/**
 * Virtual builds: every uncertain number drawn at once, the whole cycle run with each coin, and what came of a
 * thousand of them: how many pass, why the others fail, what matters, what to change.
 */
@NullMarked
package jackwork.builds;

import org.jspecify.annotations.NullMarked;

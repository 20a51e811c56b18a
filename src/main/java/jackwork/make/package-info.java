/**
 * Everything a maker takes to the machines: flat parts at this workshop's kerf, laid out on sheets,
 * as drawings and lists.
 *
 * <p>Units: mm, g. May import {@code check} and below; its siblings' values come through {@code app}.
 */
@NullMarked
package jackwork.make;

import org.jspecify.annotations.NullMarked;

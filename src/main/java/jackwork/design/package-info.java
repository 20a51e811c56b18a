/**
 * What a maker writes: the workshop, box, figure and design files, and their drawings.
 *
 * <p>Immutable records exactly as written; a record component {@code sideGap} is the key
 * {@code side-gap}. Units as in the files: mm, g, N, degrees. May import {@code geometry},
 * {@code stock} and {@code drawing}. Every complaint carries file, line and column.
 */
@NullMarked
package jackwork.design;

import org.jspecify.annotations.NullMarked;

/**
 * The bench log: revisions, trials, pieces and measured values in SQLite. Nothing stands here yet.
 *
 * <p>Units: mm, g, s, degrees. May import {@code check} and below, no sibling.
 */
@NullMarked
package jackwork.bench;

import org.jspecify.annotations.NullMarked;

/**
 * What really happened. So far: how readings become a workshop's values, with their spread. The log of revisions,
 * trials and pieces does not stand yet.
 *
 * <p>Units: mm, g, N, degrees. May import {@code check} and below, no sibling.
 */
@NullMarked
package jackwork.bench;

import org.jspecify.annotations.NullMarked;

/**
 * Can I make it: sheets, solids, papers, the pack.
 */
@NullMarked
package jackwork.app.make;

import org.jspecify.annotations.NullMarked;

/**
 * What was done to a design's files and can be taken back; hostile until it fits.
 */
@NullMarked
package jackwork.app.history;

import org.jspecify.annotations.NullMarked;

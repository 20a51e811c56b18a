/**
 * Opens a workshop, works out what is shown of a design, changes its files as one step, runs long work.
 */
@NullMarked
package jackwork.app.core;

import org.jspecify.annotations.NullMarked;

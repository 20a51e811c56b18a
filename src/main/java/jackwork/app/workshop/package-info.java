/**
 * My workshop: its numbers, and what the designs' verdicts hang on.
 */
@NullMarked
package jackwork.app.workshop;

import org.jspecify.annotations.NullMarked;

/**
 * The use cases that both faces call: check, pack, the mechanism as JSON; and the page's: look, change, take back, play, follow
 * long work.
 *
 * <p>Here the engine's units become those of files and screens (N, N·mm, degrees), and results
 * become JSON whose names stay. May import everything below; knows nothing of arguments or HTTP.
 */
@NullMarked
package jackwork.app;

import org.jspecify.annotations.NullMarked;

/**
 * The use cases that both faces call, in rooms: what goes over the {@code wire}; the {@code history} of changes; the {@code core},
 * which opens a workshop, shows a design, changes it and runs long work; and a room for each place of the page. A place knows
 * the core and below, never another place.
 *
 * <p>Here the engine's units become those of files and screens (N, N·mm, degrees), and results become JSON whose names stay.
 * May import everything below; knows nothing of arguments or HTTP.
 */
@NullMarked
package jackwork.app;

import org.jspecify.annotations.NullMarked;

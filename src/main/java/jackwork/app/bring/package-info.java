/**
 * A drawing or a picture becomes a design; drawn again; begun from bare boards or an example.
 */
@NullMarked
package jackwork.app.bring;

import org.jspecify.annotations.NullMarked;

/**
 * What goes to the page or comes from it: records, how they become JSON and are read back, and how a request is refused.
 */
@NullMarked
package jackwork.app.wire;

import org.jspecify.annotations.NullMarked;

/**
 * How each kind of joint that is written by name becomes rows; one file a kind, one line each in the service file.
 */
@NullMarked
package jackwork.motion.kind;

import org.jspecify.annotations.NullMarked;

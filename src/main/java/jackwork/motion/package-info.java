/**
 * How a design moves, in rooms: the {@code model}, what stands on it at {@code rest} and in {@code time}, each {@code kind} of
 * joint that is written by name, and a whole visit of a {@code coin}.
 *
 * <p>Units inside: mm, g, s, radians; so forces are g·mm/s² = µN and moments µN·mm. Results that
 * leave the room say their unit. A {@code Mechanism} is immutable and may be shared by any number
 * of threads; solvers keep the state and belong to one thread each. Its arrays are read by the solvers
 * as they are, since nothing may be allocated in a step; nobody writes them.
 *
 * <p>May import {@code parts} and below. Method: Newton on joint closure in the bodies' own
 * coordinates; reactions from the transposed system; dry friction as one nonsymmetric system by
 * direction of motion (friction circle at pins, Coulomb in slots). Sources are named where a
 * formula stands.
 */
@NullMarked
package jackwork.motion;

import org.jspecify.annotations.NullMarked;

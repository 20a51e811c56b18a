/**
 * How a design moves: the compiled {@link jackwork.motion.Mechanism} and its pose solver.
 *
 * <p>Units inside: mm, g, s, radians; so forces are g·mm/s² = µN and moments µN·mm. Results that
 * leave the room say their unit. A {@code Mechanism} is immutable and may be shared by any number
 * of threads; solvers keep the state and belong to one thread each.
 *
 * <p>May import {@code parts} and below. Method: Newton on joint closure in the bodies' own
 * coordinates; reactions from the transposed system; dry friction as one nonsymmetric system by
 * direction of motion (friction circle at pins, Coulomb in slots). Sources are named where a
 * formula stands.
 */
@NullMarked
package jackwork.motion;

import org.jspecify.annotations.NullMarked;

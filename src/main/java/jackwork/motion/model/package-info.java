/**
 * A mechanism compiled from an assembly: bodies, joints as rows of gaps and gradients, loads, touching shapes, and the linear and
 * complementarity problems that are solved of them.
 */
@NullMarked
package jackwork.motion.model;

import org.jspecify.annotations.NullMarked;

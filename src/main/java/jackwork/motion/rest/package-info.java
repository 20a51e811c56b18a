/**
 * Poses and forces along the stroke, at rest: the pose solver, balance, friction, and what happens on the way.
 */
@NullMarked
package jackwork.motion.rest;

import org.jspecify.annotations.NullMarked;

/**
 * What a design's parts become: outlines with their holes as they will be, bodies with mass, centre
 * and inertia, joints with their rods and friction, the coin works with its points.
 *
 * <p>Units: mm, g, g·mm², radians. May import {@code design} and below.
 */
@NullMarked
package jackwork.parts;

import org.jspecify.annotations.NullMarked;

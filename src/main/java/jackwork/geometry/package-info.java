/**
 * Points, poses and outlines in the plane of the mechanism.
 *
 * <p>Units: millimetres and radians; x to the right, y up, angles counter-clockwise. Areas in mm²,
 * second moments of area in mm⁴. Imports nothing of Jackwork; areas, offsets and unions rest on the
 * JTS Topology Suite, which no other room needs to know.
 */
@NullMarked
package jackwork.geometry;

import org.jspecify.annotations.NullMarked;

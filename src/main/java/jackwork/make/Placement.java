package jackwork.make;

import jackwork.geometry.Point;
import jackwork.parts.Part;

/**
 * A part on a sheet.
 *
 * @param name of this piece; copies are numbered
 * @param shift from the common frame to the sheet's lower left corner, mm
 */
record Placement(Part part, String name, Point shift) {}

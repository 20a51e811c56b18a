package jackwork.make;

import jackwork.geometry.Pose;

/**
 * A piece on a sheet.
 *
 * @param name of this copy; copies are numbered
 * @param pose from the piece's own frame to the sheet, mm from its lower left corner
 */
record Placement(FlatPiece piece, String name, Pose pose) {}

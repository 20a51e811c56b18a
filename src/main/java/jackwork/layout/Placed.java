package jackwork.layout;

import jackwork.geometry.Pose;

/**
 * Where a piece lies.
 *
 * @param piece its place in the list given
 * @param sheet counted from 0
 * @param pose from the piece's own frame to the sheet's lower left corner
 */
public record Placed(int piece, int sheet, Pose pose) {}

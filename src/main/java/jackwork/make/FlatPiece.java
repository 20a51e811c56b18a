package jackwork.make;

import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.parts.Hole;
import jackwork.parts.Part;
import java.util.List;

/**
 * Anything cut from a sheet: a part of the mechanism or a panel of the case, as it must be once cut.
 *
 * @param stock the workshop's name for its sheet
 * @param thickness of that sheet, mm
 * @param grain whether it must lie along the sheet's grain as drawn, or across it turned by half a turn
 * @param drawn the outline with its cut-outs, without round holes, mm
 * @param engraving lines burnt on the face that lies up
 */
record FlatPiece(
        String name,
        String stock,
        double thickness,
        boolean grain,
        Outline drawn,
        List<Hole> holes,
        List<List<Point>> engraving) {

    static FlatPiece of(Part part) {
        return new FlatPiece(
                part.name(),
                part.stock(),
                part.thickness().value(),
                part.kind().grain(),
                part.drawn(),
                part.holes(),
                part.engraving());
    }
}

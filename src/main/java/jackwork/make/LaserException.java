package jackwork.make;

import jackwork.design.WorkshopFile.Laser;
import jackwork.geometry.InvalidOutlineException;

/** A laser whose numbers in workshop.yaml leave nothing that can be cut with it. */
public final class LaserException extends MakeException {

    private static final long serialVersionUID = 1L;

    private LaserException(String message) {
        super(message);
    }

    /** Room between pieces and along the edges of a sheet is 0 mm at least: below that they would be cut into each other. */
    static void requireRoom(Laser laser) {
        require("gap", laser.gap(), "pieces would lie on each other");
        require("margin", laser.margin(), "pieces would lie beyond the edge of their sheet");
    }

    private static void require(String name, double value, String otherwise) {
        if (!(value >= 0)) {
            throw new LaserException("workshop.yaml: laser." + name + " reads " + value + " mm, and so " + otherwise
                    + "; expected 0 mm or more");
        }
    }

    static LaserException of(String piece, double kerf, InvalidOutlineException why) {
        return new LaserException(
                "workshop.yaml: laser.kerf reads " + kerf + " mm, and with the beam led so beside its edge " + piece
                        + " is no whole outline any more (" + why.getMessage() + "); expected the width of a cut");
    }
}

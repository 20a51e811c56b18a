package jackwork.drawing;

import jackwork.geometry.Point;

/**
 * Words on a sheet, engraved or only printed.
 *
 * @param kind {@link CutKind#ENGRAVE} or {@link CutKind#MARK}
 * @param at left end of the base line, mm
 * @param height of a capital letter, mm
 */
public record Label(CutKind kind, Point at, double height, String text) {

    /** Height of a capital over type size, Helvetica (standard 14 fonts of PDF: CapHeight 718 of 1000). */
    private static final double CAPITAL = 0.718;

    public Label {
        if (kind != CutKind.ENGRAVE && kind != CutKind.MARK) {
            throw new IllegalArgumentException(
                    "label \"" + text + "\" is " + kind + "; words can be engraved or marked, not cut");
        }
        if (!(at.isFinite() && height > 0 && height < 1000)) {
            throw new IllegalArgumentException("label \"" + text + "\" at " + at + " has the height " + height
                    + " mm; more than 0 and less than 1000 was expected");
        }
    }

    /** Type size for whoever draws it in Helvetica or a face like it, mm. */
    double helveticaSize() {
        return height / CAPITAL;
    }
}

package jackwork.make;

import jackwork.design.WorkshopFile;
import jackwork.drawing.CutKind;
import jackwork.drawing.CutPath;
import jackwork.drawing.CutSheet;
import java.util.List;

/**
 * A sheet as laid out.
 *
 * @param stock the workshop's name for it
 * @param width mm
 * @param height mm
 * @param seconds of the laser's at the workshop's speeds
 * @param kept share of its area that is left in one strip, wide enough to be used again
 */
public record SheetUse(String stock, double width, double height, double seconds, double kept) {

    /** A narrower strip is thrown away, mm. */
    private static final double NARROWEST = 60;

    static List<SheetUse> of(List<PlannedSheet> sheets, WorkshopFile workshop) {
        double gap = workshop.laser().gap();
        return sheets.stream()
                .map(planned -> new SheetUse(
                        planned.stock(),
                        planned.sheet().width(),
                        planned.sheet().height(),
                        planned.seconds(),
                        kept(planned.sheet(), gap)))
                .toList();
    }

    /** The larger of the strip beside and the strip above all that is cut. */
    private static double kept(CutSheet sheet, double gap) {
        double right = 0;
        double top = 0;
        for (CutPath path : sheet.paths()) {
            if (path.kind() != CutKind.MARK) {
                double[] most = Extent.most(path.shape());
                right = Math.max(right, most[0] + gap);
                top = Math.max(top, most[1] + gap);
            }
        }
        double beside = sheet.width() - right;
        double above = sheet.height() - top;
        double besideArea = beside < NARROWEST ? 0 : beside * sheet.height();
        double aboveArea = above < NARROWEST ? 0 : above * sheet.width();
        return Math.max(besideArea, aboveArea) / (sheet.width() * sheet.height());
    }
}

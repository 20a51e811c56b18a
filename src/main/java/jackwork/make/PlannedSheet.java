package jackwork.make;

import jackwork.design.WorkshopFile;
import jackwork.drawing.CutSheet;
import jackwork.geometry.Bounds;

/**
 * A sheet as it goes to the laser.
 *
 * @param stock the workshop's name for it
 * @param number counted from 1 within the stock
 * @param sheet its cuts in order, at the workshop's kerf
 * @param offcutWidth an offcut so wide will do, mm
 * @param offcutHeight and so high
 * @param engrave length engraved, mm
 * @param cut length cut, mm
 * @param travel way of the head between, mm
 * @param seconds at the workshop's speeds
 * @param share of the sheet that becomes pieces
 */
public record PlannedSheet(
        String stock,
        int number,
        CutSheet sheet,
        double offcutWidth,
        double offcutHeight,
        double engrave,
        double cut,
        double travel,
        double seconds,
        double share) {

    static PlannedSheet of(SheetLayout layout, WorkshopFile workshop) {
        CutSheet drawn = SheetDrawing.of(layout, workshop.laser().kerf().value());
        CutPlan plan = CutPlan.of(drawn, workshop.laser().speedsOrGuess());
        Bounds used = layout.used();
        double margin = workshop.laser().margin();
        double pieces = layout.placements().stream()
                .mapToDouble(placement -> placement.piece().drawn().area())
                .sum();
        return new PlannedSheet(
                layout.stock(),
                layout.number(),
                plan.sheet(),
                used.maxX() + margin,
                used.maxY() + margin,
                plan.engrave(),
                plan.cut(),
                plan.travel(),
                plan.seconds(),
                pieces / (layout.width() * layout.height()));
    }

    /** Its files are called so. */
    public String name() {
        return sheet.title();
    }
}

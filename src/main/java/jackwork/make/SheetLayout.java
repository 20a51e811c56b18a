package jackwork.make;

import jackwork.geometry.Bounds;
import java.util.List;

/**
 * One sheet with its parts.
 *
 * @param stock the workshop's name for it
 * @param number counted from 1 within the stock
 * @param width mm
 * @param height mm
 */
record SheetLayout(String stock, int number, double width, double height, List<Placement> placements) {

    /** Extent of its pieces, from the sheet's lower left corner, mm. */
    Bounds used() {
        double minX = Double.POSITIVE_INFINITY;
        double minY = Double.POSITIVE_INFINITY;
        double maxX = 0;
        double maxY = 0;
        for (Placement placement : placements) {
            Bounds bounds = placement.piece().drawn().moved(placement.pose()).bounds();
            minX = Math.min(minX, bounds.minX());
            minY = Math.min(minY, bounds.minY());
            maxX = Math.max(maxX, bounds.maxX());
            maxY = Math.max(maxY, bounds.maxY());
        }
        return new Bounds(minX, minY, maxX, maxY);
    }

    String name() {
        return stock + "-sheet-" + number;
    }
}

package jackwork.make;

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

    String name() {
        return stock + "-sheet-" + number;
    }
}

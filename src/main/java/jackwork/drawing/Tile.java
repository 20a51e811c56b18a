package jackwork.drawing;

import jackwork.geometry.Bounds;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * What one page shows of something larger.
 *
 * @param corner lower left, in the frame of what is shown, mm
 */
record Tile(Point corner, double width, double height) {

    /** Neighbours show so much of each other, mm: room to glue. */
    static final double OVERLAP = 10;

    /**
     * From the upper left on, line by line; where nothing is to be seen there is no tile.
     *
     * @param width what a page has room for, mm
     * @param height likewise
     */
    static List<Tile> of(Outline shown, double width, double height) {
        Bounds bounds = shown.bounds();
        int columns = count(bounds.width(), width);
        int rows = count(bounds.height(), height);
        double left = (bounds.minX() + bounds.maxX() - columns * (width - OVERLAP) - OVERLAP) / 2;
        // One page: up against the title, so that the rest of the paper is of use.
        double bottom = rows == 1
                ? bounds.maxY() - height
                : (bounds.minY() + bounds.maxY() - rows * (height - OVERLAP) - OVERLAP) / 2;
        List<Tile> tiles = new ArrayList<>();
        for (int row = rows - 1; row >= 0; row--) {
            for (int column = 0; column < columns; column++) {
                Tile tile = new Tile(
                        new Point(left + column * (width - OVERLAP), bottom + row * (height - OVERLAP)), width, height);
                if (tile.outline().overlaps(shown)) {
                    tiles.add(tile);
                }
            }
        }
        return tiles;
    }

    private static int count(double length, double room) {
        return length <= room ? 1 : (int) Math.ceil((length - OVERLAP) / (room - OVERLAP));
    }

    Outline outline() {
        return Outline.rectangle(corner.x(), corner.y(), corner.x() + width, corner.y() + height);
    }

    /** Where a page's crosses are, the same places on the pages beside it. */
    List<Point> crosses() {
        double inset = OVERLAP / 2;
        return List.of(
                corner.plus(new Point(inset, inset)),
                corner.plus(new Point(width - inset, inset)),
                corner.plus(new Point(width - inset, height - inset)),
                corner.plus(new Point(inset, height - inset)));
    }
}

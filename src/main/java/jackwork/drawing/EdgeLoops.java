package jackwork.drawing;

import jackwork.geometry.Point;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Closed lines along which the coverage is one half: marching squares between the pixels' middles. Pixels, y down,
 * a pixel's middle at half numbers; on the screen the subject lies on the left of the way.
 */
final class EdgeLoops {

    private static final double HALF = 127.5;

    /** 160 m of edge at 300 dpi: what is more ragged is no outline. */
    private static final int MOST_POINTS = 2_000_000;

    /** Sides of a cell in clockwise order, seen with y down. */
    private static final int TOP = 0;

    private static final int RIGHT = 1;
    private static final int BOTTOM = 2;

    private final Coverage field;
    private final String name;
    /** Sides with the subject's first point, by cell and side, that a loop has passed. */
    private final BitSet passed = new BitSet();

    private int points;

    private EdgeLoops(Coverage field, String name) {
        this.field = field;
        this.name = name;
    }

    static List<List<Point>> of(Coverage field, String name) {
        EdgeLoops edges = new EdgeLoops(field, name);
        List<List<Point>> loops = new ArrayList<>();
        for (int y = -1; y < field.height() - 2; y++) {
            for (int x = -1; x < field.width() - 2; x++) {
                // Every loop enters some cell through its top.
                if (edges.enters(x, y, TOP) && !edges.passed.get(edges.cell(x, y))) {
                    loops.add(edges.loop(x, y));
                }
            }
        }
        return loops;
    }

    private int cell(int x, int y) {
        return (y + 1) * field.width() + x + 1;
    }

    private boolean inside(int x, int y) {
        return field.at(x, y) > HALF;
    }

    /** Corners of a cell clockwise: a side runs from its corner to the next. */
    private boolean corner(int x, int y, int corner) {
        return inside(x + (corner == 1 || corner == 2 ? 1 : 0), y + (corner >= 2 ? 1 : 0));
    }

    /** A loop enters where, clockwise round the cell, the subject begins... */
    private boolean enters(int x, int y, int side) {
        return !corner(x, y, side) && corner(x, y, (side + 1) % 4);
    }

    private boolean leaves(int x, int y, int side) {
        return corner(x, y, side) && !corner(x, y, (side + 1) % 4);
    }

    private List<Point> loop(int startX, int startY) {
        List<Point> loop = new ArrayList<>();
        int x = startX;
        int y = startY;
        int side = TOP;
        do {
            if (side == TOP) {
                passed.set(cell(x, y));
            }
            loop.add(crossing(x, y, side));
            if (++points > MOST_POINTS) {
                throw new PictureException(
                        name, "is too ragged to trace; take out its grain or make its background one plain colour");
            }
            int out = exit(x, y, side);
            x += out == RIGHT ? 1 : out == TOP || out == BOTTOM ? 0 : -1;
            y += out == BOTTOM ? 1 : out == TOP ? -1 : 0;
            side = (out + 2) % 4;
        } while (x != startX || y != startY || side != TOP);
        return loop;
    }

    /** ... and leaves where it ends; where two lines cross a cell, its middle says which belong together. */
    private int exit(int x, int y, int in) {
        int next = (in + 1) % 4;
        int before = (in + 3) % 4;
        boolean saddle = leaves(x, y, next) && leaves(x, y, before);
        if (saddle) {
            double middle = (field.at(x, y) + field.at(x + 1, y) + field.at(x, y + 1) + field.at(x + 1, y + 1)) / 4.0;
            return middle > HALF ? before : next;
        }
        for (int side = next; ; side = (side + 1) % 4) {
            if (leaves(x, y, side)) {
                return side;
            }
        }
    }

    private Point crossing(int x, int y, int side) {
        int fromX = x + (side == 1 || side == 2 ? 1 : 0);
        int fromY = y + (side >= 2 ? 1 : 0);
        int toX = x + (side == 0 || side == 1 ? 1 : 0);
        int toY = y + (side == 1 || side == 2 ? 1 : 0);
        double from = field.at(fromX, fromY);
        double share = (HALF - from) / (field.at(toX, toY) - from);
        return new Point(fromX + 0.5 + share * (toX - fromX), fromY + 0.5 + share * (toY - fromY));
    }
}

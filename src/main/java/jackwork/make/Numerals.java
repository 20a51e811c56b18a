package jackwork.make;

import jackwork.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** Numbers as strokes, for engraving: they turn with their part, and need no typeface at the laser. */
final class Numerals {

    /** The corners that each digit's stroke runs through, on a grid of 2 × 3 points counted from the lower left. */
    private static final int[][] STROKES = {
        {0, 1, 5, 4, 0},
        {2, 5, 1},
        {4, 5, 3, 2, 0, 1},
        {4, 5, 3, 2, 3, 1, 0},
        {4, 2, 3, 5, 1},
        {5, 4, 2, 3, 1, 0},
        {5, 4, 0, 1, 3, 2},
        {4, 5, 0},
        {2, 4, 5, 1, 0, 2, 3},
        {3, 2, 4, 5, 1, 0}
    };

    private Numerals() {}

    /**
     * @param middle of the whole number
     * @param height of a digit, mm
     */
    static List<List<Point>> strokes(int number, Point middle, double height) {
        String digits = Integer.toString(number);
        double step = height * 0.75;
        double left = middle.x() - (step * digits.length() - height * 0.25) / 2;
        List<List<Point>> strokes = new ArrayList<>();
        for (int i = 0; i < digits.length(); i++) {
            List<Point> stroke = new ArrayList<>();
            for (int corner : STROKES[digits.charAt(i) - '0']) {
                int row = corner / 2;
                int column = corner % 2;
                stroke.add(
                        new Point(left + step * i + column * height / 2, middle.y() - height / 2 + row * height / 2));
            }
            strokes.add(stroke);
        }
        return strokes;
    }
}

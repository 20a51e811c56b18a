package jackwork.drawing;

import jackwork.geometry.Circle;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.util.List;
import java.util.Optional;

/**
 * What a drawing offers to be made into parts and pivots, with ids or without, in the order of painting, back to front.
 * Lengths in mm at the size asked for, y up from the circle {@code origin}, or from the page's lower left corner.
 *
 * <p>Keys are the same whenever the same file is read, at whatever size.
 *
 * @param width of the page, mm
 * @param height of the page, mm
 * @param sized whether the file says its size in a unit of length, so that it need not be asked for
 */
public record Candidates(
        double width,
        double height,
        boolean sized,
        List<Shape> shapes,
        List<Round> rounds,
        List<Open> lines,
        List<Flaw> flaws) {

    /**
     * A closed outline.
     *
     * @param id of the file; may be empty
     * @param paint its colour, {@code #rrggbb}, when it is painted within
     * @param twins how many more times it is drawn, nearly alike: its line beside its fill, say
     */
    public record Shape(String key, String id, Outline outline, Optional<String> paint, int twins) {}

    /** A small circle, or what was drawn like one: a pivot, a hole. */
    public record Round(String key, String id, Circle circle) {}

    /** A line with two ends. */
    public record Open(String key, String id, List<Point> points) {}

    /**
     * A closed shape that bounds no region.
     *
     * @param line of the file
     * @param at where it goes wrong
     */
    public record Flaw(String key, String id, int line, Point at, String words) {}
}

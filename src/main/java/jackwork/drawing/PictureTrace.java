package jackwork.drawing;

import jackwork.geometry.InvalidOutlineException;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An outline from a maker's picture: the edge of its largest subject, found between the pixels from their shades.
 * Where the picture is transparent, alpha of one half is the edge; else half-way from the background's colour, or
 * from white to black.
 */
public final class PictureTrace {

    /** Lowest and highest resolution that is one of a picture for print, pixels an inch. */
    private static final double LEAST_DPI = 20;

    private static final double MOST_DPI = 5000;

    /** Share of the tolerance that smoothing may use; the rest is left for taking out points. */
    private static final double SMOOTHING = 0.25;

    private static final double MM_PER_INCH = 25.4;

    /**
     * @param by what tells the subject from its background: alpha, background or darkness; absent: alpha where the
     *     picture has any, else background
     * @param dpi pixels an inch; absent: as the picture says
     * @param tolerance how far the outline may be from the picture's edge, mm
     * @param leastHole holes of at least this area stay, mm²; absent: all are filled
     */
    public record Setup(Optional<String> by, OptionalDouble dpi, double tolerance, OptionalDouble leastHole) {}

    /**
     * @param outline mm from the picture's lower left corner, y up
     * @param dpi pixels an inch, as asked for or as the picture says
     * @param width of the whole picture, mm
     * @param height of the whole picture, mm
     */
    public record Traced(Outline outline, double dpi, double width, double height) {}

    private final Picture picture;
    private final double tolerance;
    /** mm a pixel. */
    private final double scale;

    private PictureTrace(Picture picture, double dpi, double tolerance) {
        this.picture = picture;
        this.tolerance = tolerance;
        this.scale = MM_PER_INCH / dpi;
    }

    /** @throws PictureException when there is nothing to trace, or not enough is known to trace it */
    public static Traced of(Picture picture, Setup setup) {
        if (!(setup.tolerance() > 0 && setup.tolerance() <= 10)) {
            throw new PictureException(
                    picture.name(), "the tolerance reads " + setup.tolerance() + " mm, expected more than 0 to 10 mm");
        }
        double dpi = dpi(picture, setup);
        Coverage.By by = setup.by().map(word -> by(picture, word)).orElseGet(() -> Coverage.usual(picture));
        PictureTrace trace = new PictureTrace(picture, dpi, setup.tolerance());
        Outline outline = trace.outline(
                EdgeLoops.of(Coverage.of(picture, by), picture.name()),
                setup.leastHole().orElse(Double.POSITIVE_INFINITY));
        return new Traced(outline, dpi, picture.width() * trace.scale, picture.height() * trace.scale);
    }

    private static double dpi(Picture picture, Setup setup) {
        OptionalDouble known = setup.dpi().isPresent() ? setup.dpi() : picture.dpi();
        double dpi = known.orElseThrow(() -> new PictureException(
                picture.name(), "does not say how many pixels an inch it has; say so, as in --dpi 300"));
        if (!(dpi >= LEAST_DPI && dpi <= MOST_DPI)) {
            throw new PictureException(
                    picture.name(), "is to have " + dpi + " pixels an inch, expected " + LEAST_DPI + " to " + MOST_DPI);
        }
        return dpi;
    }

    private static Coverage.By by(Picture picture, String word) {
        for (Coverage.By by : Coverage.By.values()) {
            if (by.name().toLowerCase(Locale.ROOT).equals(word)) {
                return by;
            }
        }
        throw new PictureException(
                picture.name(), "cannot be traced by \"" + word + "\"; expected alpha, background or darkness");
    }

    /** Outer edges run counter-clockwise, holes clockwise. */
    private Outline outline(List<List<Point>> loops, double leastHole) {
        List<List<Point>> outer = new ArrayList<>();
        List<List<Point>> holes = new ArrayList<>();
        for (List<Point> loop : loops) {
            double area = -Contour.area(loop) * scale * scale;
            if (area > 0) {
                outer.add(loop);
            } else if (-area >= leastHole) {
                holes.add(loop);
            }
        }
        outer.sort(Comparator.comparingDouble(Contour::area));
        if (outer.isEmpty()) {
            throw new PictureException(
                    picture.name(), "shows no subject: nothing in it differs enough from its background");
        }
        List<Point> largest = outer.get(0);
        List<List<Point>> islands = outer.subList(1, outer.size());
        holes.removeIf(hole ->
                !encloses(largest, hole.get(0)) || islands.stream().anyMatch(island -> encloses(island, hole.get(0))));
        try {
            return Outline.of(
                            finished(largest),
                            holes.stream().map(this::finished).toList())
                    .simplified(tolerance * (1 - SMOOTHING));
        } catch (InvalidOutlineException e) {
            throw new PictureException(
                    picture.name(),
                    String.format(
                            Locale.ROOT,
                            "its subject has no edge that goes once round (%s near %.1f mm right, %.1f mm up);"
                                    + " mend the picture there or trace with a finer tolerance",
                            e.getMessage(),
                            e.at().x(),
                            e.at().y()));
        }
    }

    private List<Point> finished(List<Point> loop) {
        List<Point> points = new ArrayList<>();
        for (Point pixel : LoopSmoothing.of(loop, tolerance * SMOOTHING / scale)) {
            points.add(new Point(pixel.x() * scale, (picture.height() - pixel.y()) * scale));
        }
        return points;
    }

    /** Whether a ray to the right crosses the loop an odd number of times. */
    private static boolean encloses(List<Point> loop, Point point) {
        boolean inside = false;
        Point before = loop.get(loop.size() - 1);
        for (Point here : loop) {
            if (here.y() > point.y() != before.y() > point.y()) {
                double along = (point.y() - here.y()) / (before.y() - here.y());
                inside ^= point.x() < here.x() + along * (before.x() - here.x());
            }
            before = here;
        }
        return inside;
    }
}

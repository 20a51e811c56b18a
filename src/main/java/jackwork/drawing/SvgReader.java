package jackwork.drawing;

import jackwork.geometry.Circle;
import jackwork.geometry.InvalidOutlineException;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Reads the outlines, circles and lines that have an id from an SVG drawing of any vector editor.
 *
 * <p>Read: groups and transforms, nested svg, symbol, {@code use} of local ids, path, rect, circle,
 * ellipse, line, polyline, polygon. Not read: style sheets, text, pictures, anything outside the file.
 * What stands in defs, clipPath, mask, symbol or pattern, or is not displayed, counts only where a
 * {@code use} draws it. A shape that {@code use} copies goes by the id of the {@code use}, if it has one.
 */
public final class SvgReader {

    static final String ORIGIN = "origin";

    /** Outlines of no more points are taken as they are: some ten times what a part drawn by hand has. */
    private static final int FEW = 2000;
    /**
     * How far an outline of more points may come to be from what was drawn, mm; a laser's repeatability is some ten times
     * that. A point where a ring was begun may be left out after its neighbours, and so be off twice as far as asked of each.
     */
    static final double THINNED = 0.01;

    private final Point origin;
    private final Map<String, Outline> outlines = new LinkedHashMap<>();
    private final Map<String, Circle> circles = new LinkedHashMap<>();
    private final Map<String, List<Point>> lines = new LinkedHashMap<>();

    private SvgReader(Point origin) {
        this.origin = origin;
    }

    /**
     * @param fileName as the maker knows it, for messages
     * @param svg the file's bytes, trusted in nothing
     * @throws DrawingException when the drawing cannot be read as meant; nothing is guessed
     */
    public static Drawing read(String fileName, byte[] svg) {
        SvgElement root = SvgParser.parse(SvgSource.of(fileName, svg));
        Viewport page = Viewport.page(root);
        Point size = new Point(page.width(), page.height()).times(SvgLength.MM_PER_UNIT);
        Map<String, SvgWalk.Drawn> drawn =
                SvgWalk.drawn(root, page.filledBy(root).inner(TransformList.of(root)));
        SvgReader reader = new SvgReader(origin(drawn.get(ORIGIN), size));
        drawn.forEach(reader::sort);
        return new Drawing(
                size.x(),
                size.y(),
                Collections.unmodifiableMap(reader.outlines),
                Collections.unmodifiableMap(reader.circles),
                Collections.unmodifiableMap(reader.lines));
    }

    /** In page mm, y down. */
    private static Point origin(SvgWalk.@Nullable Drawn drawn, Point size) {
        if (drawn == null) {
            return new Point(0, size.y());
        }
        Optional<Circle> circle = circle(drawn);
        return circle.map(Circle::centre)
                .orElseThrow(() -> drawn.by()
                        .problem("this id marks the drawing's origin, so a circle was expected;"
                                + " draw one or rename this shape"));
    }

    private void sort(String id, SvgWalk.Drawn drawn) {
        List<Contour> contours = drawn.contours();
        if (contours.isEmpty()) {
            return;
        }
        Optional<Circle> circle = circle(drawn);
        if (circle.isPresent()) {
            circles.put(id, new Circle(up(circle.get().centre()), circle.get().radius()));
        } else if (contours.stream().allMatch(Contour::closed)) {
            outlines.put(id, outline(id, drawn));
        } else if (contours.size() == 1) {
            lines.put(id, up(contours.get(0).points()));
        } else {
            throw drawn.by()
                    .problem("this path has " + contours.size() + " pieces and not all of them are closed;"
                            + " close them for a part, or make each a path of its own");
        }
    }

    /** The largest piece is the part's edge, the others are its holes. */
    private Outline outline(String id, SvgWalk.Drawn drawn) {
        List<Contour> bySize = new ArrayList<>(drawn.contours());
        bySize.sort(Comparator.comparingDouble((Contour contour) -> -Math.abs(contour.area())));
        List<List<Point>> rings =
                bySize.stream().map(contour -> up(contour.points())).toList();
        try {
            return thinned(Outline.of(rings.get(0), rings.subList(1, rings.size())));
        } catch (InvalidOutlineException e) {
            DrawingException problem = drawn.by().problem(describe(e, id));
            problem.initCause(e);
            throw problem;
        }
    }

    /** An outline of very many points, as traced pictures have, with as few as stay within {@link #THINNED} of them. */
    private static Outline thinned(Outline outline) {
        int points = outline.outer().size()
                + outline.holes().stream().mapToInt(List::size).sum();
        return points > FEW ? outline.simplified(THINNED / 2) : outline;
    }

    private static String describe(InvalidOutlineException e, String id) {
        String place = String.format(Locale.ROOT, " at (%.3f, %.3f) mm from the origin", e.at().x(), e.at().y());
        if (String.valueOf(e.getMessage()).startsWith("Hole lies outside shell")) {
            return "this path holds several separate outlines, the second" + place
                    + "; a part is one piece, make each a path of its own";
        }
        return "\"" + id + "\" does not bound one region (" + e.getMessage() + ")" + place
                + "; an outline that does not cross or touch itself was expected, move the points there apart";
    }

    private static Optional<Circle> circle(SvgWalk.Drawn drawn) {
        return drawn.contours().size() == 1 ? drawn.contours().get(0).circle() : Optional.empty();
    }

    private Point up(Point page) {
        return new Point(page.x() - origin.x(), origin.y() - page.y());
    }

    private List<Point> up(List<Point> page) {
        return page.stream().map(this::up).toList();
    }
}

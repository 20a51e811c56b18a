package jackwork.drawing;

import jackwork.geometry.Bounds;
import jackwork.geometry.Circle;
import jackwork.geometry.InvalidOutlineException;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads everything in an SVG drawing that may become a part or a pivot; ids are welcome and not needed. */
public final class SvgCandidates {

    /** A circle up to this diameter is taken for a pivot or a hole, mm; larger ones are wheels. */
    public static final double LARGEST_PIVOT = 12;

    /** More outlines than any figure has; each is held against all others. */
    private static final int MOST_PIECES = 2000;

    /** Outlines keep their points within this, mm: a fiftieth of what a laser is out by. */
    private static final double FINE = 0.005;

    /** A gap in a line that was surely meant to be closed, mm. */
    private static final double SMALL_GAP = 1;

    /** Least side of a part, mm; what is smaller is a speck. */
    private static final double SPECK = 0.2;

    private final Point origin;
    private final Bounds page;
    private final List<Candidates.Shape> shapes = new ArrayList<>();
    private final List<Candidates.Round> rounds = new ArrayList<>();
    private final List<Candidates.Open> lines = new ArrayList<>();
    private final List<Candidates.Flaw> flaws = new ArrayList<>();
    private int pieces;

    private SvgCandidates(Point origin, Point size) {
        this.origin = origin;
        this.page = new Bounds(-origin.x(), origin.y() - size.y(), size.x() - origin.x(), origin.y());
    }

    /**
     * @param fileName as the maker knows it, for messages
     * @param svg the file's bytes, trusted in nothing
     * @param scale how much larger than the file says everything is
     * @throws DrawingException when the drawing cannot be read; single shapes that cannot are told as flaws
     */
    public static Candidates read(String fileName, byte[] svg, double scale) {
        SvgElement root = SvgParser.parse(SvgSource.of(fileName, svg));
        Viewport page = Viewport.page(root);
        Point size = new Point(page.width(), page.height()).times(SvgLength.MM_PER_UNIT * scale);
        Viewport inside = page.filledBy(root).inner(TransformList.of(root));
        Viewport scaled =
                new Viewport(Affine.scaling(scale, scale).after(inside.toPage()), inside.width(), inside.height());
        List<SvgWalk.Painted> painted = SvgWalk.painted(root, scaled);
        SvgCandidates reader = new SvgCandidates(origin(painted, size), size);
        for (int i = 0; i < painted.size(); i++) {
            reader.sort("s" + (i + 1), painted.get(i));
        }
        return new Candidates(
                size.x(),
                size.y(),
                root.attribute("width").matches(".*(mm|cm|in|Q)"),
                Twins.shapes(reader.shapes),
                Twins.rounds(reader.rounds),
                List.copyOf(reader.lines),
                List.copyOf(reader.flaws));
    }

    /** How much larger than its original a drawing of ours was made; 1 for all others. */
    public static double scaleOf(String fileName, byte[] svg) {
        SvgElement root = SvgParser.parse(SvgSource.of(fileName, svg));
        String scale = root.attribute(DrawingSvg.SCALE);
        return scale.matches("[0-9]{1,6}(\\.[0-9]{1,12})?") && Double.parseDouble(scale) > 0
                ? Double.parseDouble(scale)
                : 1;
    }

    private static Point origin(List<SvgWalk.Painted> painted, Point size) {
        return painted.stream()
                .filter(drawn ->
                        drawn.id().equals(SvgReader.ORIGIN) && drawn.contours().size() == 1)
                .flatMap(drawn -> drawn.contours().get(0).circle().stream())
                .map(Circle::centre)
                .findFirst()
                .orElse(new Point(0, size.y()));
    }

    private void sort(String key, SvgWalk.Painted drawn) {
        List<Contour> closed = new ArrayList<>();
        for (Contour contour : drawn.contours()) {
            if (contour.closed() || closes(contour, drawn.paint())) {
                closed.add(new Contour(contour.points(), true, contour.curved()));
            } else if (contour.points().size() > 1) {
                String name = key + (drawn.contours().size() > 1 ? "-" + (lines.size() + 1) : "");
                lines.add(new Candidates.Open(name, drawn.id(), up(contour.points())));
            }
        }
        pieces += closed.size();
        if (pieces > MOST_PIECES) {
            throw drawn.by()
                    .problem("the drawing has more than " + MOST_PIECES
                            + " outlines; a figure has some dozens, keep decoration and text out of the drawing");
        }
        List<Nest> nests = Nest.of(closed);
        for (int i = 0; i < nests.size(); i++) {
            piece(nests.size() == 1 ? key : key + "-" + (i + 1), drawn, nests.get(i));
        }
    }

    /** A filled shape is closed by its fill; a line whose ends all but meet was meant to be. */
    private static boolean closes(Contour contour, SvgPaint paint) {
        if (contour.points().size() < 3) {
            return false;
        }
        Point first = contour.points().get(0);
        double gap = first.distance(contour.points().get(contour.points().size() - 1));
        return gap <= SMALL_GAP || (paint.filled() && paint.fill() != null);
    }

    private void piece(String key, SvgWalk.Painted drawn, Nest nest) {
        Optional<Circle> circle = small(nest.outer());
        if (circle.isPresent()) {
            double inner = nest.holes().size() == 1
                    ? small(nest.holes().get(0)).map(Circle::radius).orElse(0.0)
                    : 0;
            // A line turned into its outline is two circles; the pivot was drawn midway.
            double radius = circle.get().radius();
            round(key, drawn.id(), circle.get(), inner > 0.6 * radius ? (inner + radius) / 2 : radius);
            return;
        }
        List<List<Point>> holes = new ArrayList<>();
        for (int i = 0; i < nest.holes().size(); i++) {
            Contour hole = nest.holes().get(i);
            Optional<Circle> bored = small(hole);
            if (bored.isPresent()) {
                round(key + "h" + (i + 1), "", bored.get(), bored.get().radius());
            } else if (!nest.isThinLine(hole)) {
                holes.add(up(hole.points()));
            }
        }
        shape(key, drawn, up(nest.outer().points()), holes);
    }

    private void shape(String key, SvgWalk.Painted drawn, List<Point> outer, List<List<Point>> holes) {
        try {
            Outline outline = Outline.of(outer, holes).simplified(FINE);
            Bounds bounds = outline.bounds();
            if (Math.max(bounds.width(), bounds.height()) >= SPECK && !isPage(bounds, outline.area())) {
                Optional<String> paint = drawn.paint().filled() ? drawn.paint().colour() : Optional.empty();
                shapes.add(new Candidates.Shape(key, drawn.id(), outline, paint, 0));
            }
        } catch (InvalidOutlineException e) {
            flaws.add(new Candidates.Flaw(
                    key,
                    drawn.id(),
                    drawn.by().line(),
                    e.at(),
                    String.format(
                            Locale.ROOT,
                            "crosses or touches itself near (%.1f, %.1f) mm; move the points apart there",
                            e.at().x(),
                            e.at().y())));
        }
    }

    /** A frame or a ground as large as the page is no part. */
    private boolean isPage(Bounds bounds, double area) {
        double whole = page.width() * page.height();
        return area > 0.97 * whole && bounds.width() > 0.97 * page.width() && bounds.height() > 0.97 * page.height();
    }

    private static Optional<Circle> small(Contour contour) {
        return contour.circle().filter(circle -> circle.diameter() <= LARGEST_PIVOT);
    }

    private void round(String key, String id, Circle circle, double radius) {
        rounds.add(new Candidates.Round(key, id, new Circle(up(circle.centre()), radius)));
    }

    private Point up(Point page) {
        return new Point(page.x() - origin.x(), origin.y() - page.y());
    }

    private List<Point> up(List<Point> page) {
        return page.stream().map(this::up).toList();
    }
}

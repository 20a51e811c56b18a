package jackwork.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.algorithm.PointLocation;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.distance.DistanceOp;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;
import org.locationtech.jts.simplify.TopologyPreservingSimplifier;

/**
 * A flat part's region: one outer ring, any number of holes, straight edges between its points.
 * Curves arrive here already flattened by whoever read them. Immutable; mm.
 */
public final class Outline {

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final Polygon polygon;
    /** Index of the edges, made when first asked for; the same whoever makes it. */
    private volatile @Nullable IndexedFacetDistance edges;

    private Outline(Polygon polygon) {
        this.polygon = polygon;
    }

    /**
     * @param outer at least three points, not closed by repeating the first; either winding
     * @param holes rings inside the outer one, likewise
     * @throws InvalidOutlineException when a ring crosses itself, holes overlap or a number is not finite
     */
    public static Outline of(List<Point> outer, List<List<Point>> holes) {
        Polygon polygon = FACTORY.createPolygon(
                ring(outer), holes.stream().map(Outline::ring).toArray(LinearRing[]::new));
        TopologyValidationError error = new IsValidOp(polygon).getValidationError();
        if (error != null) {
            Coordinate at = error.getCoordinate();
            throw new InvalidOutlineException(error.getMessage(), new Point(at.x, at.y));
        }
        polygon.normalize();
        return new Outline(polygon);
    }

    public static Outline of(List<Point> outer) {
        return of(outer, List.of());
    }

    /** The smallest outline without a hollow that holds all points: three at least, not all on one line. */
    public static Outline around(List<Point> points) {
        Coordinate[] all = points.stream()
                .map(point -> new Coordinate(point.x(), point.y()))
                .toArray(Coordinate[]::new);
        Polygon hull = (Polygon) FACTORY.createMultiPointFromCoords(all).convexHull();
        hull.normalize();
        return new Outline(hull);
    }

    public static Outline rectangle(double minX, double minY, double maxX, double maxY) {
        return of(List.of(new Point(minX, minY), new Point(maxX, minY), new Point(maxX, maxY), new Point(minX, maxY)));
    }

    /** A many-sided stand-in for a circle whose sides stay within {@code tolerance} mm of it. */
    public static Outline disc(Circle circle, double tolerance) {
        return of(circlePoints(circle, tolerance));
    }

    /** mm², holes taken off. */
    public double area() {
        return polygon.getArea();
    }

    /** Length of everything there is to cut, outer ring and holes, mm. */
    public double cutLength() {
        return polygon.getLength();
    }

    public Point centroid() {
        SectionProperties section = SectionProperties.of(this);
        return section.centroid();
    }

    public Bounds bounds() {
        Envelope e = polygon.getEnvelopeInternal();
        return new Bounds(e.getMinX(), e.getMinY(), e.getMaxX(), e.getMaxY());
    }

    public boolean contains(Point point) {
        return SimplePointInAreaLocator.locate(new Coordinate(point.x(), point.y()), polygon) == Location.INTERIOR;
    }

    public boolean overlaps(Outline other) {
        return polygon.intersects(other.polygon)
                && Overlay.shared(polygon, other.polygon).getArea() > 0;
    }

    /** Whether a closed line goes round a point or through it, whatever else it does; its first point is not repeated. */
    public static boolean ringHolds(List<Point> ring, Point at) {
        Coordinate[] closed = new Coordinate[ring.size() + 1];
        for (int i = 0; i <= ring.size(); i++) {
            Point point = ring.get(i % ring.size());
            closed[i] = new Coordinate(point.x(), point.y());
        }
        return PointLocation.isInRing(new Coordinate(at.x(), at.y()), closed);
    }

    /** Area shared with another outline, mm². */
    public double sharedArea(Outline other) {
        return Overlay.shared(polygon, other.polygon).getArea();
    }

    /** Least distance between this outline's edges and another's, mm; its own edges are indexed once. */
    public double distance(Outline other) {
        IndexedFacetDistance known = edges;
        if (known == null) {
            known = new IndexedFacetDistance(polygon);
            edges = known;
        }
        return known.distance(other.polygon);
    }

    /** Least distance between a point and the edges, mm. */
    public double distanceToEdge(Point point) {
        Coordinate at = new Coordinate(point.x(), point.y());
        double least =
                Distance.pointToSegmentString(at, polygon.getExteriorRing().getCoordinates());
        for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
            least = Math.min(
                    least,
                    Distance.pointToSegmentString(
                            at, polygon.getInteriorRingN(i).getCoordinates()));
        }
        return least;
    }

    /**
     * The region grown (positive) or shrunk (negative) by {@code distance} mm all round: outer edges
     * move out while holes close in. Corners are mitred, blunted beyond twice the distance.
     *
     * @throws InvalidOutlineException when shrinking leaves nothing or falls into several pieces
     */
    public Outline offset(double distance) {
        if (distance == 0) {
            return this;
        }
        return only(moved(polygon, distance), "offset by " + distance + " mm");
    }

    /**
     * What is farther than {@code distance} mm from every edge: unlike with {@link #offset}, a sharp notch takes no more
     * away than its tip's distance.
     *
     * @throws InvalidOutlineException when nothing is left or it falls into several pieces
     */
    public Outline eroded(double distance) {
        BufferParameters round = new BufferParameters(16, BufferParameters.CAP_FLAT);
        return only(BufferOp.bufferOp(polygon, -distance, round), "eroded by " + distance + " mm");
    }

    private static Geometry moved(Geometry geometry, double distance) {
        BufferParameters mitred = new BufferParameters(16, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 2.0);
        return BufferOp.bufferOp(geometry, distance, mitred);
    }

    /** All regions together, gaps and bars between them narrower than {@code bar} mm filled in. */
    public static List<Outline> closed(List<Outline> outlines, double bar) {
        Geometry all = Overlay.together(
                outlines.stream().map(o -> (Geometry) o.polygon).toList(), FACTORY);
        Geometry filled = bridged(moved(moved(all, bar / 2), -bar / 2), bar);
        List<Outline> parts = new ArrayList<>();
        for (int i = 0; i < filled.getNumGeometries(); i++) {
            if (filled.getGeometryN(i) instanceof Polygon part && !part.isEmpty()) {
                parts.add(of(points(part.getExteriorRing(), true)));
            }
        }
        return parts;
    }

    /** Where two regions still come nearer than the bar, by their corners, the wood between those goes. */
    private static Geometry bridged(Geometry regions, double bar) {
        for (int i = 0; i < regions.getNumGeometries(); i++) {
            for (int j = 0; j < i; j++) {
                Coordinate[] near = DistanceOp.nearestPoints(regions.getGeometryN(i), regions.getGeometryN(j));
                if (near[0].distance(near[1]) < bar) {
                    Envelope between = new Envelope(near[0], near[1]);
                    between.expandBy(bar / 2);
                    return bridged(Overlay.together(regions, FACTORY.toGeometry(between)), bar);
                }
            }
        }
        return regions;
    }

    /** Its outer ring with as few points as stay within {@code tolerance} mm, counter-clockwise, first not repeated. */
    public List<Point> outerWithin(double tolerance) {
        return points(simple(tolerance).getExteriorRing(), true);
    }

    /** The same region with as few points as stay within {@code tolerance} mm; nothing crosses that did not before. */
    public Outline simplified(double tolerance) {
        return new Outline(simple(tolerance));
    }

    private Polygon simple(double tolerance) {
        try {
            return (Polygon) TopologyPreservingSimplifier.simplify(polygon, tolerance);
        } catch (StackOverflowError e) {
            // It calls itself anew where it can leave little out: a comb of thousands of teeth stays as it is.
            return polygon;
        }
    }

    /** The largest circle that lies in it, its radius within {@code tolerance} mm. */
    public Circle inscribed(double tolerance) {
        MaximumInscribedCircle largest = new MaximumInscribedCircle(polygon, tolerance);
        Coordinate centre = largest.getCenter().getCoordinate();
        return new Circle(new Point(centre.x, centre.y), largest.getRadiusLine().getLength());
    }

    /** What this region and another have in common, piece by piece, the largest first. */
    public List<Outline> shared(Outline other) {
        Geometry common = Overlay.shared(polygon, other.polygon);
        List<Outline> pieces = new ArrayList<>();
        for (int i = 0; i < common.getNumGeometries(); i++) {
            if (common.getGeometryN(i) instanceof Polygon piece && !piece.isEmpty()) {
                piece.normalize();
                pieces.add(new Outline(piece));
            }
        }
        pieces.sort(Comparator.comparingDouble((Outline piece) -> -piece.area()));
        return pieces;
    }

    /** This region less a round hole, its rim flattened within {@code tolerance} mm. */
    public Outline without(Circle hole, double tolerance) {
        Geometry rest = Overlay.less(polygon, FACTORY.createPolygon(ring(circlePoints(hole, tolerance))));
        return only(
                rest,
                String.format(
                        java.util.Locale.ROOT,
                        "a hole of %.2f mm at (%.2f, %.2f) mm",
                        2 * hole.radius(),
                        hole.centre().x(),
                        hole.centre().y()));
    }

    /** This region less another. */
    public Outline without(Outline other) {
        return only(Overlay.less(polygon, other.polygon), "what is cut out");
    }

    /**
     * This region and another together.
     *
     * @throws InvalidOutlineException when they do not meet
     */
    public Outline with(Outline other) {
        return only(Overlay.together(polygon, other.polygon), "putting two outlines together");
    }

    /** The same region with its holes filled in. */
    public Outline filled() {
        return new Outline(FACTORY.createPolygon(polygon.getExteriorRing()));
    }

    /** Turned by {@code pose.angle()} about the origin, then shifted by ({@code pose.x()}, {@code pose.y()}). */
    public Outline moved(Pose pose) {
        AffineTransformation move =
                AffineTransformation.rotationInstance(pose.angle()).translate(pose.x(), pose.y());
        return new Outline((Polygon) move.transform(polygon));
    }

    /** Seen from its other side: left and right exchanged about the line x = 0. */
    public Outline mirrored() {
        Polygon mirrored = (Polygon) AffineTransformation.scaleInstance(-1, 1).transform(polygon);
        mirrored.normalize();
        return new Outline(mirrored);
    }

    public Outline moved(Point by) {
        return moved(new Pose(by.x(), by.y(), 0));
    }

    /** Outer ring, counter-clockwise, first point not repeated. */
    public List<Point> outer() {
        return points(polygon.getExteriorRing(), true);
    }

    /** Holes, each clockwise, first point not repeated. */
    public List<List<Point>> holes() {
        List<List<Point>> holes = new ArrayList<>();
        for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
            holes.add(points(polygon.getInteriorRingN(i), false));
        }
        return holes;
    }

    private static Outline only(Geometry geometry, String what) {
        Geometry one = geometry.getNumGeometries() == 1 ? geometry.getGeometryN(0) : geometry;
        if (!(one instanceof Polygon polygon) || polygon.isEmpty()) {
            Coordinate at = geometry.isEmpty() ? new Coordinate(0, 0) : geometry.getCoordinate();
            int pieces = 0;
            for (int i = 0; i < geometry.getNumGeometries(); i++) {
                pieces += geometry.getGeometryN(i) instanceof Polygon piece && !piece.isEmpty() ? 1 : 0;
            }
            throw new InvalidOutlineException(
                    what + " leaves " + (pieces == 0 ? "nothing" : pieces + " pieces where one is needed"),
                    new Point(at.x, at.y));
        }
        return new Outline(polygon);
    }

    private static LinearRing ring(List<Point> points) {
        if (points.size() < 3) {
            throw new InvalidOutlineException(
                    "a ring needs at least three points, this one has " + points.size(),
                    points.isEmpty() ? Point.ORIGIN : points.get(0));
        }
        Coordinate[] coordinates = new Coordinate[points.size() + 1];
        for (int i = 0; i < points.size(); i++) {
            Point p = points.get(i);
            if (!p.isFinite()) {
                throw new InvalidOutlineException(
                        "a point of it lies nowhere: two points that it goes by are one, or three stand in line",
                        Point.ORIGIN);
            }
            coordinates[i] = new Coordinate(p.x(), p.y());
        }
        coordinates[points.size()] = new Coordinate(coordinates[0]);
        return FACTORY.createLinearRing(coordinates);
    }

    private static List<Point> circlePoints(Circle circle, double tolerance) {
        // A chord over angle a leaves the circle by r(1 - cos a/2).
        double half = Math.acos(Math.max(0, 1 - tolerance / circle.radius()));
        int sides = Math.max(12, (int) Math.ceil(Math.PI / half));
        List<Point> points = new ArrayList<>(sides);
        for (int i = 0; i < sides; i++) {
            double angle = 2 * Math.PI * i / sides;
            points.add(circle.centre()
                    .plus(new Point(circle.radius() * Math.cos(angle), circle.radius() * Math.sin(angle))));
        }
        return points;
    }

    private static List<Point> points(LinearRing ring, boolean counterClockwise) {
        Coordinate[] c = ring.getCoordinates();
        List<Point> points = new ArrayList<>(c.length - 1);
        boolean keep = org.locationtech.jts.algorithm.Orientation.isCCW(c) == counterClockwise;
        for (int i = 0; i < c.length - 1; i++) {
            Coordinate at = keep ? c[i] : c[c.length - 1 - i];
            points.add(new Point(at.x, at.y));
        }
        return points;
    }
}

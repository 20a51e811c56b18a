package jackwork.app.bring;

import jackwork.app.bring.BringPlan.PlannedPart;
import jackwork.app.bring.BringPlan.PlannedPoint;
import jackwork.app.bring.BringPlan.PointRole;
import jackwork.app.wire.Pair;
import jackwork.design.WorkshopFile;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.parts.Slot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Bare boards with a real mechanism, to go on from: a board or two, what they turn on, what moves them, what brings them
 * back. Drawn about the first post, mm, y up; that post comes to stand over the middle of the box.
 */
final class BareStarts {

    /**
     * @param id as in {@code bare/nodding}
     * @param words what it shows
     */
    record Bare(String id, String name, String words, List<Board> boards, List<PlannedPoint> points) {}

    /** One board; two of them cross, so each has a layer of its own. */
    record Board(String name, Outline outline, int layer) {}

    /** Of two arms: the second one's post from the first one's. */
    private static final double APART = -24;

    private static final String BOARD = "board";
    private static final String LEFT = "left-arm";
    private static final String RIGHT = "right-arm";
    private static final int LAYER = 3;

    static final List<Bare> ALL = List.of(
            one(
                    "nodding",
                    "A board that nods",
                    "the lever lifts its tail by a rod",
                    plank(),
                    point(BOARD, "pivot", 0, 0, PointRole.POST, 0),
                    point(BOARD, "crank", -16, 0, PointRole.LIFT, 0),
                    point(BOARD, "tail", -40, 0, PointRole.WEIGHT, 30)),
            one(
                    "bowing",
                    "A board that bows",
                    "the lever pulls its head down by a rod",
                    plank(),
                    point(BOARD, "pivot", 0, 0, PointRole.POST, 0),
                    point(BOARD, "crank", 18, 0, PointRole.PULL, 0),
                    point(BOARD, "tail", -40, 0, PointRole.WEIGHT, 30)),
            two(
                    "lifting",
                    "Two arms that lift",
                    "a rod each, close to its pivot; they fall by their own weight",
                    -35,
                    12,
                    6),
            two("flapping", "Two wings that flap", "they cross in the middle, a rod lifts each", -8, 20, 22),
            one(
                    "turning",
                    "A wheel that turns",
                    "a short crank makes much of a little lift",
                    wheel(),
                    point(BOARD, "pivot", 0, 0, PointRole.POST, 0),
                    point(BOARD, "crank", -6, -3.4, PointRole.LIFT, 0),
                    point(BOARD, "counterweight", -17, -4, PointRole.WEIGHT, 15)),
            one(
                    "hammering",
                    "A hammer that strikes",
                    "the lever lifts it by a rod; let go, it falls",
                    hammer(),
                    point(BOARD, "pivot", 0, 0, PointRole.POST, 0),
                    point(BOARD, "crank", -14, 0, PointRole.LIFT, 0),
                    point(BOARD, "head", -44, -4, PointRole.WEIGHT, 15)));

    private BareStarts() {}

    static Optional<Bare> find(String id) {
        return ALL.stream().filter(bare -> bare.id().equals(id)).findFirst();
    }

    private static Bare one(String id, String name, String words, Outline outline, PlannedPoint... points) {
        return new Bare(id, name, words, List.of(new Board(BOARD, outline, LAYER)), List.of(points));
    }

    /**
     * Two arms to either side, drawn so far from the level; the left one's post is the first. The other's stands so far
     * above it that its rod passes the left arm however that moves.
     */
    private static Bare two(String id, String name, String words, double degrees, double width, double above) {
        Point right = new Point(1, 0).turned(Math.toRadians(degrees));
        Point left = new Point(-right.x(), right.y());
        Point other = new Point(APART, above);
        List<PlannedPoint> points = new ArrayList<>();
        points.add(point(LEFT, "left-pivot", Point.ORIGIN, PointRole.POST, 0));
        points.add(point(RIGHT, "right-pivot", other, PointRole.POST, 0));
        // Their rods stand side by side on the lever.
        points.add(point(LEFT, "left-crank", left.times(23), PointRole.LIFT, 0));
        points.add(point(RIGHT, "right-crank", other.plus(right.times(14)), PointRole.LIFT, 0));
        points.add(point(LEFT, "left-hand", left.times(52), PointRole.WEIGHT, 5));
        points.add(point(RIGHT, "right-hand", other.plus(right.times(52)), PointRole.WEIGHT, 5));
        return new Bare(
                id,
                name,
                words,
                List.of(
                        new Board(LEFT, Slot.along(left.times(-2), left.times(60), width), LAYER),
                        new Board(
                                RIGHT,
                                Slot.along(other.plus(right.times(-2)), other.plus(right.times(60)), width),
                                LAYER + 2)),
                points);
    }

    private static Outline plank() {
        return Slot.along(new Point(-45, 0), new Point(45, 0), 24);
    }

    /** With five lobes, so that its turning is seen. */
    private static Outline wheel() {
        List<Point> ring = new ArrayList<>();
        for (int degrees = 0; degrees < 360; degrees += 4) {
            double turn = Math.toRadians(degrees);
            ring.add(new Point(23 + 3 * Math.cos(5 * turn), 0).turned(turn));
        }
        return Outline.of(ring);
    }

    private static Outline hammer() {
        return Slot.along(new Point(4, 0), new Point(-44, 0), 11)
                .with(Slot.along(new Point(-44, -12), new Point(-44, 10), 15));
    }

    private static PlannedPoint point(String part, String name, double x, double y, PointRole role, double grams) {
        return point(part, name, new Point(x, y), role, grams);
    }

    private static PlannedPoint point(String part, String name, Point at, PointRole role, double grams) {
        return new PlannedPoint(name, Pair.of(at), 1.5, role, List.of(part), grams);
    }

    /** A bare start as a plan for a box. */
    static BringPlan plan(Bare bare, String title, String box, WorkshopFile workshop) {
        String stock = workshop.sheets().entrySet().stream()
                .max(Map.Entry.comparingByValue(
                        Comparator.comparing(sheet -> sheet.thickness().value())))
                .map(Map.Entry::getKey)
                .orElse("");
        List<PlannedPart> parts = bare.boards().stream()
                .map(board -> new PlannedPart(
                        board.name(), List.of(Pair.ring(board.outline().outer())), stock, board.layer(), "", ""))
                .toList();
        // High enough over the box for the rod to be one.
        return new BringPlan(title, box, 1, false, new Pair(0, 0), parts, bare.points(), List.of());
    }
}

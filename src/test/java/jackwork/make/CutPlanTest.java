package jackwork.make;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.design.DesignReader;
import jackwork.design.Speeds;
import jackwork.design.WorkshopFile;
import jackwork.drawing.CutKind;
import jackwork.drawing.CutPath;
import jackwork.drawing.CutShape;
import jackwork.drawing.CutSheet;
import jackwork.geometry.Circle;
import jackwork.geometry.Point;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The order of cutting: nothing lost, kinds in their order, and a head that goes no farther than it must. */
@Tag("quick")
class CutPlanTest {

    private static final WorkshopFile WORKSHOP =
            DesignReader.read(Path.of("demo/heron")).workshop();
    private static final Speeds SPEEDS = WORKSHOP.laser().speedsOrGuess();

    private static CutSheet rounds(List<Point> at, CutKind kind) {
        List<CutPath> paths = new ArrayList<>();
        for (int i = 0; i < at.size(); i++) {
            paths.add(new CutPath(kind, new CutShape.Round(new Circle(at.get(i), 1e-3)), "p" + i));
        }
        return new CutSheet("test", 400, 300, paths, List.of());
    }

    /** Points on a line in any order: there and back is the shortest, and it is found. */
    @Test
    void alongALineItGoesStraight() {
        List<Point> at = new ArrayList<>();
        for (int i : new int[] {7, 2, 9, 1, 5, 3, 8, 4, 6, 10}) {
            at.add(new Point(20 * i, 0));
        }
        assertThat(CutPlan.of(rounds(at, CutKind.INSIDE), SPEEDS).travel()).isCloseTo(200, within(0.1));
    }

    /** Random points: far shorter than as given, and near what is known of shortest ways, 0.7124 √(n A) (from memory). */
    @Test
    void amongManyItIsNearTheShortest() {
        Random random = new Random(7);
        List<Point> at = new ArrayList<>();
        double given = 0;
        for (int i = 0; i < 150; i++) {
            at.add(new Point(10 + 380 * random.nextDouble(), 10 + 280 * random.nextDouble()));
            given += i == 0 ? 0 : at.get(i).distance(at.get(i - 1));
        }
        double travel = CutPlan.of(rounds(at, CutKind.OUTSIDE), SPEEDS).travel();
        double shortest = 0.7124 * Math.sqrt(150 * 380.0 * 280.0);
        assertThat(travel).isLessThan(0.2 * given).isBetween(0.9 * shortest, 1.25 * shortest);
    }

    @Test
    void nothingIsLostAndInsidesComeBeforeOutsides() {
        var heron = DesignReader.read(Path.of("demo/heron"));
        double kerf = heron.workshop().laser().kerf().value();
        for (SheetLayout layout :
                Pack.of(Makings.of(heron), 2, SheetSearch.usual()).layouts()) {
            CutSheet sheet = SheetDrawing.of(layout, kerf);
            CutPlan plan = CutPlan.of(sheet, SPEEDS);
            assertThat(plan.sheet().paths())
                    .extracting(CutPath::id)
                    .containsExactlyInAnyOrderElementsOf(
                            sheet.paths().stream().map(CutPath::id).toList());
            List<CutKind> kinds =
                    plan.sheet().paths().stream().map(CutPath::kind).toList();
            assertThat(kinds).isSorted();
            double seconds = plan.engrave() / 80 + plan.cut() / 10 + plan.travel() / 200;
            assertThat(plan.seconds()).isCloseTo(seconds, within(1e-9));
        }
    }

    /**
     * Random sheets of rings, rounds and lines, engraved, cut and marked: every path is there once and is itself, engraved
     * ones come first; rings are begun at the corner, and lines at the end, that the head comes to first; what is said of
     * lengths and ways is what the head goes, and what is only marked takes none of it.
     */
    @Test
    void theFiguresAreThoseOfTheOrderPlanned() {
        Random random = new Random(23);
        for (int i = 0; i < 40; i++) {
            List<CutPath> paths = new ArrayList<>();
            for (int k = 0; k < 3 + random.nextInt(10); k++) {
                CutKind kind = CutKind.values()[random.nextInt(CutKind.values().length)];
                paths.add(new CutPath(kind, shape(random), "p" + k));
            }
            CutPlan plan = CutPlan.of(new CutSheet("test", 400, 300, paths, List.of()), SPEEDS);
            double travel = 0;
            double engrave = 0;
            double cut = 0;
            Point head = Point.ORIGIN;
            List<String> order = new ArrayList<>();
            for (CutPath path : plan.sheet().paths()) {
                order.add(path.id());
                CutPath given = paths.get(Integer.parseInt(path.id().substring(1)));
                assertThat(corners(path)).containsExactlyInAnyOrderElementsOf(corners(given));
                if (path.kind() == CutKind.MARK) {
                    assertThat(path).isEqualTo(given);
                    continue;
                }
                List<Point> way = way(path.shape());
                for (Point other : mayBegin(path.shape())) {
                    assertThat(head.distance(way.get(0)))
                            .as("from %s to %s", head, path)
                            .isLessThanOrEqualTo(head.distance(other));
                }
                travel += head.distance(way.get(0));
                head = way.get(way.size() - 1);
                if (path.kind() == CutKind.ENGRAVE) {
                    assertThat(cut).as("engraved first").isZero();
                    engrave += lengthOf(path.shape());
                } else {
                    cut += lengthOf(path.shape());
                }
                assertThat(lengthOf(path.shape())).isCloseTo(lengthOf(given.shape()), within(1e-9));
            }
            assertThat(order).doesNotHaveDuplicates().hasSameSizeAs(paths);
            assertThat(plan.travel()).isCloseTo(travel, within(1e-9));
            assertThat(plan.engrave()).isCloseTo(engrave, within(1e-9));
            assertThat(plan.cut()).isCloseTo(cut, within(1e-9));
        }
    }

    private static CutShape shape(Random random) {
        Point at = new Point(20 + 360 * random.nextDouble(), 20 + 260 * random.nextDouble());
        if (random.nextInt(3) == 0) {
            return new CutShape.Round(new Circle(at, 1 + 5 * random.nextDouble()));
        }
        List<Point> points = new ArrayList<>();
        int corners = 3 + random.nextInt(4);
        for (int k = 0; k < corners; k++) {
            points.add(at.plus(new Point(15, 0).turned(2 * Math.PI * k / corners)));
        }
        return random.nextBoolean() ? new CutShape.Ring(points) : new CutShape.Line(points);
    }

    private static List<Point> corners(CutPath path) {
        List<Point> way = way(path.shape());
        return path.shape() instanceof CutShape.Ring ? way.subList(1, way.size()) : way;
    }

    /** Where the head goes, the first place once more where it comes back to it. */
    private static List<Point> way(CutShape shape) {
        if (shape instanceof CutShape.Round round) {
            Circle circle = round.circle();
            return List.of(circle.centre().plus(new Point(circle.radius(), 0)));
        }
        if (shape instanceof CutShape.Line line) {
            return line.points();
        }
        List<Point> way = new ArrayList<>(((CutShape.Ring) shape).points());
        way.add(way.get(0));
        return way;
    }

    private static List<Point> mayBegin(CutShape shape) {
        List<Point> way = way(shape);
        return shape instanceof CutShape.Line ? List.of(way.get(0), way.get(way.size() - 1)) : way;
    }

    private static double lengthOf(CutShape shape) {
        if (shape instanceof CutShape.Round round) {
            return 2 * Math.PI * round.circle().radius();
        }
        return length(way(shape));
    }

    /** Parts laid in openings of parts that lie in openings: whatever falls out has nothing uncut on it. */
    @Test
    void whatLiesInAnOpeningIsCutBeforeIt() {
        Random random = new Random(11);
        for (int i = 0; i < 20; i++) {
            List<CutPath> paths = new ArrayList<>();
            int depth = 1 + random.nextInt(4);
            for (int k = 0; k < depth; k++) {
                Point centre = new Point(200 + random.nextDouble(), 150 + random.nextDouble());
                double half = 120 - 24 * k;
                paths.add(new CutPath(CutKind.OUTSIDE, square(centre, half), "part" + k));
                paths.add(new CutPath(CutKind.INSIDE, square(centre, half - 8), "opening" + k));
                Circle hole = new Circle(new Point(200 + half - 4, 150), 1);
                paths.add(new CutPath(CutKind.INSIDE, new CutShape.Round(hole), "hole" + k));
            }
            java.util.Collections.shuffle(paths, random);
            List<String> order =
                    CutPlan.of(new CutSheet("test", 400, 300, paths, List.of()), SPEEDS).sheet().paths().stream()
                            .map(CutPath::id)
                            .toList();
            assertThat(order).hasSize(paths.size());
            for (int k = 0; k < depth; k++) {
                assertThat(order.indexOf("hole" + k)).isLessThan(order.indexOf("part" + k));
                assertThat(order.indexOf("opening" + k)).isLessThan(order.indexOf("part" + k));
                if (k > 0) {
                    assertThat(order.indexOf("part" + k)).isLessThan(order.indexOf("opening" + (k - 1)));
                }
            }
        }
    }

    private static CutShape square(Point centre, double half) {
        return new CutShape.Ring(List.of(
                centre.plus(new Point(-half, -half)),
                centre.plus(new Point(half, -half)),
                centre.plus(new Point(half, half)),
                centre.plus(new Point(-half, half))));
    }

    /** No stretch of the order, turned round, would shorten the way: holes all over a sheet, as many as are bored. */
    @Test
    void noStretchTurnedRoundIsShorter() {
        Random random = new Random(29);
        for (int i = 0; i < 30; i++) {
            List<Point> at = new ArrayList<>();
            for (int k = 0; k < 4 + random.nextInt(14); k++) {
                at.add(new Point(400 * random.nextDouble(), 300 * random.nextDouble()));
            }
            CutPlan plan = CutPlan.of(rounds(at, CutKind.INSIDE), SPEEDS);
            List<Point> order = new ArrayList<>(List.of(Point.ORIGIN));
            plan.sheet().paths().forEach(path -> order.add(way(path.shape()).get(0)));
            for (int from = 1; from < order.size(); from++) {
                for (int to = from + 1; to <= order.size(); to++) {
                    List<Point> turned = new ArrayList<>(order);
                    java.util.Collections.reverse(turned.subList(from, to));
                    assertThat(plan.travel()).isLessThanOrEqualTo(length(turned) + 1e-6);
                }
            }
        }
    }

    private static double length(List<Point> way) {
        double length = 0;
        for (int k = 1; k < way.size(); k++) {
            length += way.get(k).distance(way.get(k - 1));
        }
        return length;
    }

    /** A round opening is one too; a hole with nothing in it stays an inside cut. */
    @Test
    void whatLiesInARoundOpeningIsCutBeforeIt() {
        Point centre = new Point(200, 150);
        Circle opening = new Circle(centre, 60);
        Circle hole = new Circle(new Point(140, 90), 2);
        // Nearer to where the head begins than what lies in it.
        CutPlan plan = CutPlan.of(
                new CutSheet(
                        "test",
                        400,
                        300,
                        List.of(
                                new CutPath(CutKind.INSIDE, new CutShape.Round(opening), "opening"),
                                new CutPath(CutKind.OUTSIDE, square(centre, 70), "part"),
                                new CutPath(CutKind.INSIDE, new CutShape.Round(hole), "hole"),
                                new CutPath(CutKind.OUTSIDE, square(centre, 30), "inner")),
                        List.of()),
                SPEEDS);
        assertThat(plan.sheet().paths()).extracting(CutPath::id).containsExactly("hole", "inner", "opening", "part");
        assertThat(plan.sheet().paths().get(0).kind()).isEqualTo(CutKind.INSIDE);
    }

    /** A ring is the same ring wherever it is begun. */
    @Test
    void ringsKeepTheirCorners() {
        List<Point> square =
                List.of(new Point(300, 200), new Point(310, 200), new Point(310, 210), new Point(300, 210));
        CutSheet sheet = new CutSheet(
                "test",
                400,
                300,
                List.of(new CutPath(CutKind.OUTSIDE, new CutShape.Ring(square), "square")),
                List.of());
        CutPlan plan = CutPlan.of(sheet, SPEEDS);
        CutShape.Ring ring = (CutShape.Ring) plan.sheet().paths().get(0).shape();
        assertThat(ring.points()).containsExactlyElementsOf(square);
        assertThat(plan.cut()).isCloseTo(40, within(1e-12));
        assertThat(plan.travel()).isCloseTo(Math.hypot(300, 200), within(1e-12));
    }
}

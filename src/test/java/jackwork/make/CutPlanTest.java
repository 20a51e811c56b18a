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

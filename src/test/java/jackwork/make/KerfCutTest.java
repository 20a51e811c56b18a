package jackwork.make;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.design.DesignReader;
import jackwork.design.WorkshopFile;
import jackwork.drawing.CutKind;
import jackwork.drawing.CutPath;
import jackwork.drawing.CutShape;
import jackwork.geometry.Bounds;
import jackwork.geometry.Circle;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.geometry.Pose;
import jackwork.parts.Hole;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What is left of the wood, once the beam has taken its width, is the piece as it must be; and what a sheet says of itself. */
@Tag("quick")
class KerfCutTest {

    private final Random random = new Random(31);

    private static List<Point> rectangle(double width, double height) {
        return List.of(
                new Point(-width / 2, -height / 2),
                new Point(width / 2, -height / 2),
                new Point(width / 2, height / 2),
                new Point(-width / 2, height / 2));
    }

    private static FlatPiece piece(double width, double height, Outline drawn, Circle hole) {
        List<Point> line = List.of(new Point(-3, -height / 4), new Point(3, -height / 4));
        return new FlatPiece("plate", "ply", 3, false, drawn, List.of(Hole.open(hole, "axle")), List.of(line, line));
    }

    private static Bounds bounds(CutPath path) {
        return Outline.of(((CutShape.Ring) path.shape()).points()).bounds();
    }

    @Test
    void whatIsLeftIsAsDrawn() {
        for (int i = 0; i < 25; i++) {
            double width = 40 + 60 * random.nextDouble();
            double height = 40 + 60 * random.nextDouble();
            double opening = 5 + 10 * random.nextDouble();
            double kerf = 0.05 + 0.4 * random.nextDouble();
            Circle hole = new Circle(new Point(width / 3, height / 3), 1 + 3 * random.nextDouble());
            Outline drawn = Outline.of(rectangle(width, height), List.of(rectangle(opening, opening + 2)));
            Pose pose = new Pose(200 * random.nextDouble(), 200 * random.nextDouble(), Math.PI / 2 * random.nextInt(4));
            List<CutPath> paths = KerfCut.paths(piece(width, height, drawn, hole), kerf, pose, "plate-1");
            assertThat(paths)
                    .extracting(CutPath::id)
                    .containsExactly(
                            "plate-1.engrave-1",
                            "plate-1.engrave-2",
                            "plate-1.hole-axle",
                            "plate-1.opening-1",
                            "plate-1");
            assertThat(paths)
                    .extracting(CutPath::kind)
                    .containsExactly(CutKind.ENGRAVE, CutKind.ENGRAVE, CutKind.INSIDE, CutKind.INSIDE, CutKind.OUTSIDE);
            assertThat(((CutShape.Line) paths.get(0).shape()).points().get(0))
                    .isEqualTo(pose.apply(new Point(-3, -height / 4)));
            Circle cut = ((CutShape.Round) paths.get(2).shape()).circle();
            assertThat(cut.centre()).isEqualTo(pose.apply(hole.centre()));
            assertThat(2 * cut.radius() + kerf).isCloseTo(2 * hole.radius(), within(1e-9));
            boolean turned = Math.abs(Math.sin(pose.angle())) > 0.5;
            // The beam's own width, half of it on either side, is gone.
            assertThat(bounds(paths.get(4)).width() - kerf).isCloseTo(turned ? height : width, within(1e-6));
            assertThat(bounds(paths.get(4)).height() - kerf).isCloseTo(turned ? width : height, within(1e-6));
            assertThat(bounds(paths.get(3)).width() + kerf).isCloseTo(turned ? opening + 2 : opening, within(1e-6));
            assertThat(bounds(paths.get(3)).height() + kerf).isCloseTo(turned ? opening : opening + 2, within(1e-6));
        }
    }

    /** An offcut will do that reaches a margin beyond the last piece; the share is the pieces' own area. */
    @Test
    void theOffcutThatWillDo() {
        WorkshopFile workshop = DesignReader.read(Path.of("demo/heron")).workshop();
        FlatPiece piece = piece(50, 40, Outline.of(rectangle(50, 40)), new Circle(new Point(10, 10), 2));
        SheetLayout layout = new SheetLayout(
                "ply",
                3,
                400,
                300,
                List.of(
                        new Placement(piece, "plate-1", new Pose(60, 40, 0)),
                        new Placement(piece, "plate-2", new Pose(130, 90, 0))));
        PlannedSheet planned = PlannedSheet.of(layout, workshop);
        assertThat(planned.name()).isEqualTo("ply-sheet-3");
        assertThat(planned.offcutWidth()).isCloseTo(155 + workshop.laser().margin(), within(1e-9));
        assertThat(planned.offcutHeight()).isCloseTo(110 + workshop.laser().margin(), within(1e-9));
        assertThat(planned.share()).isCloseTo(2 * 50 * 40 / (400.0 * 300), within(1e-12));
        assertThat(planned.seconds()).isGreaterThan(0);
    }
}

package jackwork.make;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.bench.KerfByPieces;
import jackwork.design.DesignReader;
import jackwork.design.WorkshopFile;
import jackwork.drawing.CutKind;
import jackwork.drawing.CutPath;
import jackwork.drawing.CutShape;
import jackwork.drawing.CutSheet;
import jackwork.geometry.Outline;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Test pieces as a beam of the reckoned kerf, and of another, would leave them. */
class TestPiecesTest {

    private static final WorkshopFile WORKSHOP =
            DesignReader.read(Path.of("demo/heron")).workshop();

    private static CutSheet sheet() {
        return TestPieces.sheets(List.of("birch-3"), WORKSHOP).get(0);
    }

    /** Cut with any kerf, the strips pushed together are shorter by ten of it: the form's rule gives it back. */
    @Test
    void stripsTellTheKerf() {
        long inner = sheet().paths().stream()
                .filter(path -> path.id().startsWith("strip-"))
                .count();
        assertThat(inner).isEqualTo(TestPieces.STRIPS - 1);
        double beam = 0.23;
        double each = TestPieces.STRIPS_WIDE / TestPieces.STRIPS - beam;
        double together = each * TestPieces.STRIPS;
        double[] measured = {together, together};
        assertThat(KerfByPieces.of(TestPieces.STRIPS_WIDE, TestPieces.STRIPS, measured, new double[0], 0.01)
                        .value())
                .isCloseTo(beam, within(1e-9));
    }

    /** At the reckoned kerf the holes come out in even steps about the rod's diameter. */
    @Test
    void holesComeOutInSteps() {
        double kerf = WORKSHOP.laser().kerf().value();
        List<Double> rods = Stream.of("bamboo-3", "steel-4")
                .map(rod -> WORKSHOP.rods().get(rod).diameter().value())
                .toList();
        int each = 13;
        List<Double> holes = sheet().paths().stream()
                .filter(path -> path.id().contains("-hole-"))
                .map(path -> 2 * ((CutShape.Round) path.shape()).circle().radius() + kerf)
                .toList();
        assertThat(holes).hasSize(each * rods.size());
        for (int i = 0; i < holes.size(); i++) {
            assertThat(holes.get(i))
                    .isCloseTo(
                            rods.get(i / each) + TestPieces.TIGHTEST_HOLE + i % each * TestPieces.STEP, within(1e-9));
        }
    }

    /** What the beam leaves of the comb: its notches are as wide as engraved on them. */
    @Test
    void notchesComeOutInSteps() {
        double kerf = WORKSHOP.laser().kerf().value();
        CutPath comb = sheet().paths().stream()
                .filter(path -> path.id().equals("comb"))
                .findFirst()
                .orElseThrow();
        assertThat(comb.kind()).isEqualTo(CutKind.OUTSIDE);
        Outline left = Outline.of(((CutShape.Ring) comb.shape()).points()).offset(-kerf / 2);
        double full = left.bounds().width() * left.bounds().height();
        double notches = full - left.area();
        double expected = 0;
        for (int i = 0; i < 9; i++) {
            expected += 12 * (2.95 + TestPieces.TIGHTEST_NOTCH + i * TestPieces.STEP);
        }
        assertThat(notches).isCloseTo(expected, within(1e-6));
    }

    /** A sheet measured on the command line changes the comb. */
    @Test
    void aMeasuredSheetIsCutAsMeasured() {
        var design = DesignReader.read(Path.of("demo/heron")).withMeasured(Map.of("birch-3", 3.1));
        assertThat(TestPieces.thickness("birch-3", design.workshop())).isEqualTo(3.1);
        assertThat(TestPieces.form(List.of("birch-3"), design.workshop()))
                .contains("reckoned 3.10 mm")
                .contains("bamboo-3");
        org.assertj.core.api.Assertions.assertThatThrownBy(() -> design.withMeasured(Map.of("brich-3", 3.0)))
                .hasMessageContaining("birch-3");
    }

    /** A dumb-bell's neck is its bar; a hole near an edge leaves what lies between. */
    @Test
    void necks() {
        Outline bar = Outline.of(List.of(
                p(0, 0), p(20, 0), p(20, 8), p(40, 8), p(40, 0), p(60, 0), p(60, 20), p(40, 20), p(40, 11), p(20, 11),
                p(20, 20), p(0, 20)));
        assertThat(ThinnestNeck.neck(bar)).isCloseTo(3, within(0.02));
        Outline holed = Outline.rectangle(0, 0, 40, 40).without(new jackwork.geometry.Circle(p(20, 5), 3), 0.002);
        assertThat(ThinnestNeck.neck(holed)).isCloseTo(2, within(0.02));
        assertThat(ThinnestNeck.neck(Outline.rectangle(0, 0, 40, 40))).isEqualTo(12);
    }

    private static jackwork.geometry.Point p(double x, double y) {
        return new jackwork.geometry.Point(x, y);
    }
}

package jackwork.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jackwork.geometry.Bounds;
import jackwork.geometry.Circle;
import jackwork.geometry.Point;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Drawings as makers bring them: no ids, pixels, mirrored copies, everything drawn twice. */
@Tag("quick")
class SvgCandidatesTest {

    private static final double PX = 25.4 / 96;

    private static Candidates read(String svg) {
        return read(svg, 1);
    }

    private static Candidates read(String svg, double scale) {
        return SvgCandidates.read("bird.svg", svg.getBytes(StandardCharsets.UTF_8), scale);
    }

    private static String page(String inside) {
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\""
                + " width=\"100mm\" height=\"100mm\" viewBox=\"0 0 100 100\">" + inside + "</svg>";
    }

    @Test
    void offersEveryOutlineAndSmallCircleWithoutIds() {
        Candidates found = read(page("""
                <rect x="10" y="10" width="40" height="20" fill="#aabbcc"/>
                <path d="M60,60 h20 v20 h-20 Z"/>
                <circle cx="15" cy="20" r="1.5"/>
                <circle cx="70" cy="70" r="9"/>"""));
        assertThat(found.sized()).isTrue();
        assertThat(found.shapes()).extracting(Candidates.Shape::key).containsExactly("s1", "s2", "s4");
        assertThat(found.shapes().get(0).outline().area()).isCloseTo(800, within(1e-9));
        assertThat(found.shapes().get(0).paint()).contains("#aabbcc");
        assertThat(found.rounds()).extracting(Candidates.Round::key).containsExactly("s3");
        assertThat(found.rounds().get(0).circle().centre().distance(new Point(15, 80)))
                .isLessThan(1e-6);
        assertThat(found.rounds().get(0).circle().radius()).isCloseTo(1.5, within(1e-3));
    }

    @Test
    void readsPixelsThroughNestedTransforms() {
        // 96 px an inch; the inner square of 10 is moved, doubled, then turned a quarter about the page's corner.
        Candidates found = read("""
                <svg xmlns="http://www.w3.org/2000/svg" width="960" height="960">
                  <g transform="translate(100 50)"><g transform="scale(2)">
                    <g transform="rotate(90)"><rect x="5" y="-30" width="20" height="10"/></g>
                  </g></g>
                </svg>""");
        assertThat(found.sized()).isFalse();
        Bounds bounds = found.shapes().get(0).outline().bounds();
        // rotate(90): (x, y) to (-y, x): x 20..30, y 5..25; doubled: 40..60, 10..50; moved: 140..160, 60..100.
        assertThat(bounds.minX()).isCloseTo(140 * PX, within(1e-6));
        assertThat(bounds.maxX()).isCloseTo(160 * PX, within(1e-6));
        assertThat(bounds.maxY()).isCloseTo((960 - 60) * PX, within(1e-6));
        assertThat(bounds.minY()).isCloseTo((960 - 100) * PX, within(1e-6));
    }

    @Test
    void givesMirroredCopiesTheirOwnPlace() {
        Candidates found = read(page("""
                <defs><path id="wing" d="M0,0 L20,0 L20,5 Z"/></defs>
                <use href="#wing" transform="translate(10 10)"/>
                <use xlink:href="#wing" transform="translate(90 10) scale(-1 1)"/>"""));
        assertThat(found.shapes()).hasSize(2);
        Bounds left = found.shapes().get(0).outline().bounds();
        Bounds right = found.shapes().get(1).outline().bounds();
        assertThat(left.minX()).isCloseTo(10, within(1e-9));
        assertThat(right.minX()).isCloseTo(70, within(1e-9));
        Point leftMiddle = found.shapes().get(0).outline().centroid();
        Point rightMiddle = found.shapes().get(1).outline().centroid();
        assertThat(leftMiddle.x() + rightMiddle.x()).isCloseTo(100, within(1e-9));
        assertThat(leftMiddle.y()).isCloseTo(rightMiddle.y(), within(1e-9));
    }

    @Test
    void takesFillAndLineOfOneShapeForOne() {
        Candidates found = read(page("""
                <path d="M10,10 h40 v30 h-40 Z" fill="#d0a060" stroke="none"/>
                <path d="M10,10 h40 v30 h-40 Z" fill="none" stroke="#000"/>
                <path d="M9.8,9.8 h40.4 v30.4 h-40.4 Z M10.2,10.2 h39.6 v29.6 h-39.6 Z" fill="#000"/>
                <circle cx="20" cy="20" r="1.5" fill="#fff"/>
                <path d="M22,20 A2,2 0 1 1 18,20 A2,2 0 1 1 22,20 Z"/>
                <path d="M60,10 h40 v30 h-40 Z" fill="#d0a060"/>"""));
        assertThat(found.shapes()).hasSize(2);
        Candidates.Shape first = found.shapes().get(0);
        assertThat(first.twins()).isEqualTo(2);
        assertThat(first.paint()).contains("#d0a060");
        assertThat(first.outline().area()).isCloseTo(1200, within(1e-6));
        assertThat(found.rounds()).hasSize(1);
        assertThat(found.rounds().get(0).circle().radius()).isCloseTo(1.5, within(1e-3));
    }

    @Test
    void tellsPiecesHolesAndPivotsOfOnePathApart() {
        Candidates found = read(page("""
                <path fill-rule="evenodd" d="M10,10 h30 v30 h-30 Z M20,25 h10 v10 h-10 Z
                  M16.5,15 A1.5,1.5 0 1 0 13.5,15 A1.5,1.5 0 1 0 16.5,15 Z M60,10 h20 v20 h-20 Z"/>"""));
        assertThat(found.shapes()).extracting(Candidates.Shape::key).containsExactly("s1-1", "s1-2");
        assertThat(found.shapes().get(0).outline().holes()).hasSize(1);
        assertThat(found.shapes().get(0).outline().area()).isCloseTo(800, within(1e-6));
        Circle pivot = found.rounds().get(0).circle();
        assertThat(pivot.centre().distance(new Point(15, 85))).isLessThan(1e-3);
    }

    @Test
    void keepsItsKeysAtTrueSize() {
        String svg = page("<rect x=\"10\" y=\"10\" width=\"4\" height=\"2\"/><circle cx=\"11\" cy=\"11\" r=\"0.3\"/>");
        Candidates small = read(svg);
        Candidates large = read(svg, 10);
        assertThat(large.shapes().get(0).key()).isEqualTo(small.shapes().get(0).key());
        assertThat(large.rounds().get(0).key()).isEqualTo(small.rounds().get(0).key());
        assertThat(large.shapes().get(0).outline().area()).isCloseTo(800, within(1e-6));
        assertThat(large.width()).isCloseTo(1000, within(1e-9));
    }

    @Test
    void leavesOutThePageAndTellsOfCrossings() {
        Candidates found = read(page("""
                <rect width="100" height="100" fill="#fff"/>
                <path d="M10,10 L30,30 L30,10 L10,30 Z"/>
                <path d="M50,50 L70,50 L70,70 L50,70 L50,50.4" fill="none"/>
                <path d="M10,60 L30,60" fill="none"/>"""));
        assertThat(found.flaws()).hasSize(1);
        assertThat(found.flaws().get(0).at().distance(new Point(20, 80))).isLessThan(0.01);
        assertThat(found.shapes()).extracting(Candidates.Shape::key).containsExactly("s3");
        assertThat(found.lines()).hasSize(1);
    }

    @Test
    void writesADrawingThatReadsTheSame() {
        Candidates found = read(page("""
                <path d="M10,10 C30,0 50,20 60,40 L10,50 Z"/><circle cx="20" cy="20" r="1.5"/>"""), 3);
        String own = DrawingSvg.write(
                "A bird -- <drawn>",
                3,
                java.util.Map.of("wing", found.shapes().get(0).outline()),
                java.util.Map.of("hip", found.rounds().get(0).circle()),
                java.util.Map.of("engrave-wing", List.of(new Point(40, 200), new Point(60, 210))));
        byte[] bytes = own.getBytes(StandardCharsets.UTF_8);
        Drawing back = SvgReader.read("figure.svg", bytes);
        assertThat(back.outline("wing").orElseThrow().area())
                .isCloseTo(found.shapes().get(0).outline().area(), within(0.01));
        assertThat(back.circle("hip").orElseThrow().centre().distance(new Point(60, 240)))
                .isLessThan(1e-3);
        assertThat(back.lines()).containsKey("engrave-wing");
        assertThat(SvgCandidates.scaleOf("figure.svg", bytes)).isEqualTo(3);
        Candidates again = SvgCandidates.read("figure.svg", bytes, 1);
        assertThat(again.shapes().get(0).id()).isEqualTo("wing");
        assertThat(again.shapes()
                        .get(0)
                        .outline()
                        .sharedArea(found.shapes().get(0).outline()))
                .isCloseTo(found.shapes().get(0).outline().area(), within(1.0));
    }

    @Test
    void refusesAMillionPointsInWords() {
        StringBuilder path = new StringBuilder("M0,0");
        for (int i = 0; i < 1_000_001; i++) {
            path.append('l').append(i % 2 == 0 ? "1,0" : "-1,.1");
        }
        assertThatThrownBy(() -> read(page("<path d=\"" + path + "Z\"/>")))
                .isInstanceOf(DrawingException.class)
                .hasMessageContaining("1000000 path points")
                .hasMessageContaining("simplify");
    }

    @Test
    void refusesMoreOutlinesThanAFigureHas() {
        String many = "<path d=\"M1,1h1v1h-1Z\"/>".repeat(2001);
        assertThatThrownBy(() -> read(page(many)))
                .isInstanceOf(DrawingException.class)
                .hasMessageContaining("more than 2000 outlines");
    }

    @Test
    void refusesEntitiesInWords() {
        assertThatThrownBy(() -> read("<!DOCTYPE svg [<!ENTITY a \"b\">]><svg xmlns=\"http://www.w3.org/2000/svg\"/>"))
                .isInstanceOf(DrawingException.class)
                .hasMessageContaining("plain SVG");
    }
}

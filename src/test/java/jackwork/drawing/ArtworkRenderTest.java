package jackwork.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.geometry.Bounds;
import jackwork.geometry.Circle;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.awt.Color;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Printed pictures, rendered: true size, and crosses where the holes are, on one page and over several. */
class ArtworkRenderTest {

    private static final double EDGE_PEN = 0.15;
    private static final double CHECK_PEN = 0.2;
    private static final List<String> CAUTIONS = List.of("Mind the edges.");

    @TempDir
    private Path folder;

    private static Paper paper(String name) {
        return Paper.ALL.stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow();
    }

    /** A board of that size, not at the frame's origin, with holes in its corners and its middle. */
    private static ArtworkFigure board(double width, double height) throws IOException {
        Outline edge = Outline.rectangle(-17.3, 8.9, -17.3 + width, 8.9 + height);
        List<Circle> holes = new ArrayList<>();
        for (double x : new double[] {0.1, 0.47, 0.93}) {
            for (double y : new double[] {0.12, 0.52, 0.9}) {
                holes.add(new Circle(new Point(-17.3 + x * width, 8.9 + y * height), 1.475));
            }
        }
        Picture picture = PictureReader.read("pale.png", Pictures.plain(40, 40, new Color(0xf0e8d8)));
        double side = Math.max(width, height) + 20;
        return new ArtworkFigure("board", picture, new Point(-27, -1), side, edge, 2, holes, List.of());
    }

    /** The pages laid together by their crosses: what is seen where, mm, y down. */
    private record Sheet(List<RenderedPages.Page> pages, List<Point> offsets, Bounds room) {

        static Sheet of(List<RenderedPages.Page> pages, int columns, Bounds room) {
            List<Point> offsets = new ArrayList<>();
            for (int i = 0; i < pages.size(); i++) {
                if (i == 0) {
                    offsets.add(Point.ORIGIN);
                } else if (i % columns > 0) {
                    Point there = offsets.get(i - 1).plus(cross(pages.get(i - 1), room, true, true));
                    offsets.add(there.minus(cross(pages.get(i), room, false, true)));
                } else {
                    Point there = offsets.get(i - columns).plus(cross(pages.get(i - columns), room, false, false));
                    offsets.add(there.minus(cross(pages.get(i), room, false, true)));
                }
            }
            return new Sheet(pages, offsets, room);
        }

        private static Point cross(RenderedPages.Page page, Bounds room, boolean right, boolean top) {
            double x = right ? room.maxX() - 5 : room.minX() + 5;
            double y = top ? room.minY() + 5 : room.maxY() - 5;
            return page.middle(RenderedPages::isInk, new Bounds(x - 4.8, y - 4.8, x + 4.8, y + 4.8));
        }

        /** The board's edge, from the middle of its pen. */
        Bounds edge() {
            Bounds all = null;
            for (int i = 0; i < pages.size(); i++) {
                Bounds span = pages.get(i).span(RenderedPages::isEdge, room);
                Point by = offsets.get(i);
                Bounds moved = new Bounds(
                        span.minX() + by.x(), span.minY() + by.y(), span.maxX() + by.x(), span.maxY() + by.y());
                all = all == null ? moved : all.union(moved);
            }
            assertThat(all).isNotNull();
            double half = EDGE_PEN / 2;
            return new Bounds(all.minX() + half, all.minY() + half, all.maxX() - half, all.maxY() - half);
        }

        /** Middles of the mark that is looked for there, on every page that shows all of it. */
        List<Point> marks(Point expected) {
            List<Point> marks = new ArrayList<>();
            for (int i = 0; i < pages.size(); i++) {
                Point there = expected.minus(offsets.get(i));
                Bounds around = new Bounds(there.x() - 4, there.y() - 4, there.x() + 4, there.y() + 4);
                if (around.minX() > room.minX()
                        && around.maxX() < room.maxX()
                        && around.minY() > room.minY()
                        && around.maxY() < room.maxY()) {
                    marks.add(pages.get(i).middle(RenderedPages::isHole, around).plus(offsets.get(i)));
                }
            }
            return marks;
        }
    }

    @ParameterizedTest
    @CsvSource({
        "A4, 120, 80, 1, 1",
        "Letter, 120, 80, 1, 1",
        "A3, 230, 300, 1, 1",
        "A4, 250, 200, 2, 2",
        "Letter, 300, 400, 4, 2"
    })
    void crossesMeetTheHoles(String name, double width, double height, int count, int columns) throws Exception {
        Paper paper = paper(name);
        ArtworkFigure board = board(width, height);
        byte[] pdf = ArtworkPdf.write("Test", List.of(board), paper, CAUTIONS);
        List<RenderedPages.Page> pages = RenderedPages.of(folder, pdf);
        assertThat(pages).hasSize(count);
        Bounds up = PdfWriter.room(paper, "Test: board, page 1 of 1", CAUTIONS);
        Bounds room = new Bounds(up.minX(), paper.height() - up.maxY(), up.maxX(), paper.height() - up.minY());
        for (RenderedPages.Page page : pages) {
            assertThat(page.width() / RenderedPages.PER_MM).isCloseTo(paper.width(), within(0.1));
            assertThat(page.checkLine() - CHECK_PEN).isCloseTo(100, within(0.1));
        }
        Sheet sheet = Sheet.of(pages, columns, room);
        Bounds edge = sheet.edge();
        assertThat(edge.width()).isCloseTo(width, within(0.1));
        assertThat(edge.height()).isCloseTo(height, within(0.1));
        int seen = 0;
        for (Circle hole : board.holes()) {
            Point onBoard = hole.centre().minus(new Point(-17.3, 8.9));
            Point expected = new Point(edge.minX() + onBoard.x(), edge.maxY() - onBoard.y());
            List<Point> marks = sheet.marks(expected);
            assertThat(marks).isNotEmpty();
            for (Point mark : marks) {
                assertThat(mark.distance(expected)).isLessThan(0.05);
            }
            seen++;
        }
        assertThat(seen).isEqualTo(9);
    }

    @Test
    void theSameFiguresGiveTheSameBytes() throws IOException {
        assertThat(ArtworkPdf.write("Test", List.of(board(250, 200)), Paper.A4, CAUTIONS))
                .isEqualTo(ArtworkPdf.write("Test", List.of(board(250, 200)), Paper.A4, CAUTIONS));
    }

    @Test
    void thePictureIsCutOffAtItsBleed() throws Exception {
        byte[] pdf = ArtworkPdf.write("Test", List.of(board(120, 80)), Paper.A4, CAUTIONS);
        RenderedPages.Page page = RenderedPages.of(folder, pdf).get(0);
        Bounds picture = page.span(colour -> colour == 0xf0e8d8, new Bounds(0, 0, 210, 297));
        assertThat(picture.width()).isCloseTo(124, within(0.1));
        assertThat(picture.height()).isCloseTo(84, within(0.1));
    }

    @Test
    void emptyTilesAreLeftOut() throws IOException {
        // An L of long arms leaves its inner corner's page empty.
        Outline ell = Outline.of(List.of(
                new Point(0, 0),
                new Point(340, 0),
                new Point(340, 20),
                new Point(20, 20),
                new Point(20, 440),
                new Point(0, 440)));
        assertThat(Tile.of(ell, 190, 240)).hasSize(3);
        assertThat(Tile.of(Outline.rectangle(0, 0, 340, 440), 190, 240)).hasSize(4);
    }
}

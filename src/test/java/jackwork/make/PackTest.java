package jackwork.make;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.design.Design;
import jackwork.design.DesignReader;
import jackwork.drawing.Drawing;
import jackwork.drawing.Paper;
import jackwork.drawing.SvgReader;
import jackwork.geometry.Circle;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.geometry.Pose;
import jackwork.parts.Assembler;
import jackwork.parts.Assembly;
import jackwork.parts.Hole;
import jackwork.parts.Part;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The heron's pack, read back from its files and measured: what the beam leaves standing is what the
 * design asks for. The edge that the beam leaves is its line moved back by half a kerf, toward the
 * part; so every point of a cut line must lie half a kerf from the design's edge, on the waste side.
 */
class PackTest {

    private static final double TOLERANCE = 0.01;

    @TempDir
    static Path folder;

    private static Assembly assembly;
    private static double kerf;

    @BeforeAll
    static void pack() throws IOException {
        assembly = Assembler.assemble(DesignReader.read(Path.of("demo/heron")));
        kerf = assembly.workshop().laser().kerf().value();
        Pack.write(DesignReader.read(Path.of("demo/heron")), folder, new Pack.Wish(1, Paper.A4), name -> {});
    }

    private static List<Drawing> sheets() throws IOException {
        List<Drawing> drawings = new ArrayList<>();
        try (var files = Files.list(folder)) {
            for (Path file : files.filter(f -> f.getFileName().toString().matches("birch.*[.]svg"))
                    .sorted()
                    .toList()) {
                drawings.add(SvgReader.read(file.getFileName().toString(), Files.readAllBytes(file)));
            }
        }
        return drawings;
    }

    /** What is cut, not printed. */
    private static List<Part> cut(Assembly assembly) {
        return assembly.parts().stream().filter(part -> part.printed() == null).toList();
    }

    /** Carries the design onto the sheet: the part's two holes farthest apart say how it lies; all else must agree. */
    private static Pose pose(Part part, Drawing sheet) {
        Hole first = part.holes().get(0);
        Hole second = part.holes().stream()
                .max(Comparator.comparingDouble(
                        hole -> hole.circle().centre().distance(first.circle().centre())))
                .orElseThrow();
        Point from = onSheet(part, first, sheet);
        Point along = first.circle().centre().minus(second.circle().centre());
        Point lies = from.minus(onSheet(part, second, sheet));
        double angle = Math.atan2(along.cross(lies), along.dot(lies));
        Point origin = from.minus(first.circle().centre().turned(angle));
        return new Pose(origin.x(), origin.y(), angle);
    }

    private static Point onSheet(Part part, Hole hole, Drawing sheet) {
        return sheet.circle(part.name() + ".hole-" + hole.joint()).orElseThrow().centre();
    }

    /** Middles of edges and points of curves, none nearer than four kerfs to a corner of 8° or more. */
    private static List<Point> plainPoints(List<Point> ring) {
        List<Point> corners = new ArrayList<>();
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            Point here = ring.get(i);
            Point in = here.minus(ring.get((i + ring.size() - 1) % ring.size()));
            Point out = ring.get((i + 1) % ring.size()).minus(here);
            double bend = Math.abs(Math.atan2(in.cross(out), in.dot(out)));
            (bend < Math.toRadians(8) ? points : corners).add(here);
            points.add(here.plus(out.times(0.5)));
        }
        points.removeIf(point -> corners.stream().anyMatch(corner -> corner.distance(point) < 4 * kerf));
        return points;
    }

    @Test
    void everyEdgeIsHalfAKerfOutsideThePart() throws IOException {
        Set<String> seen = new HashSet<>();
        for (Drawing sheet : sheets()) {
            for (Part part : cut(assembly)) {
                Outline cut = sheet.outlines().get(part.name());
                if (cut == null) {
                    continue;
                }
                seen.add(part.name());
                Outline wanted = part.drawn().moved(pose(part, sheet));
                assertAround(part.name(), wanted, cut.outer(), false);
                // And back: from every edge of the design the cut line is half a kerf away. Inside corners
                // are left out: there a round beam leaves a fillet of its own radius.
                List<Point> plain = plainPoints(wanted.outer());
                assertThat(plain).as(part.name()).isNotEmpty();
                for (Point point : plain) {
                    assertThat(Outline.of(cut.outer()).distanceToEdge(point))
                            .as(part.name() + " at " + point)
                            .isCloseTo(kerf / 2, within(TOLERANCE));
                }
                int openings = wanted.holes().size();
                for (int i = 1; i <= openings; i++) {
                    Outline opening = sheet.outlines().get(part.name() + ".opening-" + i);
                    assertThat(opening).as(part.name() + " opening " + i).isNotNull();
                    assertAround(part.name(), wanted, opening.outer(), true);
                }
            }
        }
        assertThat(seen).hasSize(cut(assembly).size());
    }

    /**
     * Straight and curved edges stand exactly half a kerf off; outside a sharp corner the mitre may
     * reach a little over twice that before it is blunted, which only cuts waste; never nearer.
     */
    private static void assertAround(String name, Outline wanted, List<Point> line, boolean inside) {
        Outline solid = Outline.of(wanted.outer());
        for (int i = 0; i < line.size(); i++) {
            Point a = line.get(i);
            Point b = line.get((i + 1) % line.size());
            Point middle = a.plus(b).times(0.5);
            assertThat(wanted.contains(a))
                    .as(name + ": the beam runs in the waste")
                    .isFalse();
            if (inside) {
                assertThat(solid.contains(a))
                        .as(name + ": an opening is cut within the part")
                        .isTrue();
            }
            assertThat(wanted.distanceToEdge(a)).as(name).isBetween(kerf / 2 - TOLERANCE, 1.2 * kerf);
            assertThat(wanted.distanceToEdge(middle)).as(name).isBetween(kerf / 2 - TOLERANCE, 1.2 * kerf);
        }
    }

    @Test
    void everyHoleIsAKerfSmallerOnTheSheetAndRightInTheWood() throws IOException {
        int seen = 0;
        for (Drawing sheet : sheets()) {
            for (Part part : cut(assembly)) {
                Outline cut = sheet.outlines().get(part.name());
                if (cut == null) {
                    continue;
                }
                Pose pose = pose(part, sheet);
                for (Hole hole : part.holes()) {
                    Circle line =
                            sheet.circle(part.name() + ".hole-" + hole.joint()).orElseThrow();
                    assertThat(line.diameter() + kerf)
                            .as(part.name() + " " + hole.joint())
                            .isCloseTo(hole.circle().diameter(), within(TOLERANCE));
                    assertThat(line.centre().distance(pose.apply(hole.circle().centre())))
                            .as(part.name() + " " + hole.joint())
                            .isLessThan(TOLERANCE);
                    seen++;
                }
            }
        }
        assertThat(seen).isGreaterThan(40);
    }

    /** What is left of each piece between the beam's lines; small pieces may lie in the openings of large ones. */
    private static List<Outline> pieces(Drawing sheet) {
        List<Outline> pieces = new ArrayList<>();
        sheet.outlines().forEach((name, ring) -> {
            if (!name.contains(".")) {
                Outline piece = ring;
                for (Map.Entry<String, Outline> other : sheet.outlines().entrySet()) {
                    if (other.getKey().startsWith(name + ".opening-")) {
                        piece = piece.without(other.getValue());
                    }
                }
                pieces.add(piece);
            }
        });
        return pieces;
    }

    @Test
    void nothingOverlapsAndNothingLeavesItsSheet() throws IOException {
        double apart = assembly.workshop().laser().gap() - kerf - TOLERANCE;
        for (Drawing sheet : sheets()) {
            List<Outline> pieces = pieces(sheet);
            assertThat(pieces.size()).isGreaterThan(3);
            for (int i = 0; i < pieces.size(); i++) {
                var bounds = pieces.get(i).bounds();
                assertThat(bounds.minX()).isGreaterThan(0);
                assertThat(bounds.minY()).isGreaterThan(0);
                assertThat(bounds.maxX()).isLessThan(sheet.width());
                assertThat(bounds.maxY()).isLessThan(sheet.height());
                for (int j = i + 1; j < pieces.size(); j++) {
                    assertThat(pieces.get(i).overlaps(pieces.get(j))).isFalse();
                    assertThat(pieces.get(i).distance(pieces.get(j))).isGreaterThan(apart);
                }
            }
        }
    }

    /** Every hole and edge of the SVG sheets is on the PDF's page for that sheet, to a hundredth of a mm. */
    @Test
    void pdfSaysTheSameAsTheSvg() throws IOException {
        List<Drawing> sheets = sheets();
        try (PDDocument pdf = Loader.loadPDF(folder.resolve("sheets.pdf").toFile())) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(sheets.size());
            List<PdfPaths> pages = new ArrayList<>();
            for (int page = 0; page < sheets.size(); page++) {
                pages.add(PdfPaths.of(pdf.getPage(page)));
            }
            for (Drawing sheet : sheets) {
                List<String> missing = pages.stream()
                        .map(page -> page.missing(sheet, TOLERANCE))
                        .min(java.util.Comparator.comparingInt(List::size))
                        .orElseThrow();
                assertThat(sheet.circles().size() + sheet.outlines().size()).isGreaterThan(20);
                assertThat(missing).isEmpty();
            }
        }
    }

    @Test
    void partsListNamesEveryPart() throws IOException {
        List<String> lines = Files.readAllLines(folder.resolve("parts.csv"));
        for (Part part : cut(assembly)) {
            assertThat(lines).as(part.name()).anyMatch(line -> line.startsWith(part.name() + ","));
        }
        assertThat(Files.readString(folder.resolve("cautions.txt"))).contains("keep from children under three");
    }

    /** Every hole of every part stands on a sheet under its own name; edges are measured on the heron. */
    @ParameterizedTest
    @ValueSource(strings = {"lamplighter", "windmill", "cobbler"})
    void theBareDesignsPackToo(String name, @TempDir Path own) throws IOException {
        Design design = DesignReader.read(Path.of("demo", name));
        Assembly bare = Assembler.assemble(design);
        Pack.write(design, own, new Pack.Wish(1, Paper.A4), file -> {});
        Set<String> circles = new HashSet<>();
        try (var files = Files.list(own)) {
            for (Path file : files.filter(f -> f.getFileName().toString().matches("birch.*[.]svg"))
                    .toList()) {
                circles.addAll(SvgReader.read(file.getFileName().toString(), Files.readAllBytes(file))
                        .circles()
                        .keySet());
            }
        }
        for (Part part : cut(bare)) {
            for (Hole hole : part.holes()) {
                assertThat(circles).contains(part.name() + ".hole-" + hole.joint());
            }
        }
    }
}

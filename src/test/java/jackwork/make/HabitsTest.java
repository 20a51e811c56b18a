package jackwork.make;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.DemoCopy;
import jackwork.design.Design;
import jackwork.design.DesignReader;
import jackwork.drawing.Drawing;
import jackwork.drawing.SvgReader;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The heron's pack as two makers would have it: one prints on A4 and cuts 2 mm ply, one prints on Letter and cuts 1/8 inch;
 * both on a bed of 300 × 200 mm.
 */
class HabitsTest {

    private static final List<String> READ =
            List.of("artwork.pdf", "label.pdf", "glue-up.pdf", "buyers-card.pdf", "service.pdf", "to-sell.pdf");

    @TempDir
    private Path folder;

    private Path pack(String paper, double thickness) throws IOException {
        Path demo = DemoCopy.at(folder.resolve("demo"));
        Path workshop = demo.resolve("workshop.yaml");
        String text = Files.readString(workshop);
        assertThat(text).contains("bed: [600, 400]");
        Files.writeString(workshop, text.replace("bed: [600, 400]", "bed: [300, 200]") + "\npaper: " + paper + "\n");
        Design design = DesignReader.read(demo.resolve("heron")).withMeasured(Map.of("birch-3", thickness));
        Path out = folder.resolve("out");
        Pack.write(design, out, new Pack.Wish(1, design.workshop().paperOrUsual()), name -> {});
        return out;
    }

    @ParameterizedTest
    @CsvSource({"A4, 2, 210, 297", "Letter, 3.175, 215.9, 279.4"})
    void everythingFitsTheBedAndThePaper(String paper, double thickness, double width, double height)
            throws IOException {
        Path out = pack(paper, thickness);
        List<Drawing> sheets = new ArrayList<>();
        try (var files = Files.list(out)) {
            for (Path file : files.filter(f -> f.getFileName().toString().matches("birch.*[.]svg"))
                    .toList()) {
                sheets.add(SvgReader.read(file.getFileName().toString(), Files.readAllBytes(file)));
            }
        }
        assertThat(sheets.size()).isGreaterThan(3);
        for (Drawing sheet : sheets) {
            assertThat(sheet.width()).isLessThanOrEqualTo(300);
            assertThat(sheet.height()).isLessThanOrEqualTo(200);
        }
        for (String name : READ) {
            try (PDDocument document = Loader.loadPDF(out.resolve(name).toFile())) {
                for (var page : document.getPages()) {
                    PDRectangle box = page.getMediaBox();
                    double across = Math.min(box.getWidth(), box.getHeight()) / 72 * 25.4;
                    double along = Math.max(box.getWidth(), box.getHeight()) / 72 * 25.4;
                    assertThat(across).as(name).isCloseTo(width, within(0.05));
                    assertThat(along).as(name).isCloseTo(height, within(0.05));
                }
            }
        }
        // The lid's slots take the walls: as wide as their sheet and the fit, less the kerf that the beam adds.
        Drawing lid = sheets.stream()
                .filter(sheet -> sheet.outlines().containsKey("case-lid"))
                .findFirst()
                .orElseThrow();
        Design design = DesignReader.read(folder.resolve("demo/heron"));
        double slot = thickness
                + design.workshop().fits().pushOrGuess().value()
                - design.workshop().laser().kerf().value();
        assertThat(lid.outlines().entrySet().stream()
                        .filter(entry -> entry.getKey().startsWith("case-lid.opening"))
                        .mapToDouble(entry -> narrow(entry.getValue()))
                        .filter(side -> Math.abs(side - slot) < 0.01)
                        .count())
                .isGreaterThanOrEqualTo(8);
    }

    /** The shorter side of an opening of four corners. */
    private static double narrow(Outline opening) {
        List<Point> ring = opening.outer();
        return ring.size() == 4
                ? Math.min(ring.get(0).distance(ring.get(1)), ring.get(1).distance(ring.get(2)))
                : Double.NaN;
    }
}

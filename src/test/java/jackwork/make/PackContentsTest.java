package jackwork.make;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.DemoCopy;
import jackwork.check.Subject;
import jackwork.design.Design;
import jackwork.design.DesignReader;
import jackwork.drawing.Paper;
import jackwork.geometry.Outline;
import jackwork.geometry.Pose;
import jackwork.parts.Assembly;
import jackwork.parts.Part;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A batch of three herons, all that goes into it: what the lists say against the design itself. */
@Tag("quick")
class PackContentsTest {

    @TempDir
    static Path folder;

    private static Design design;
    private static Subject subject;
    private static List<Path> written;

    @BeforeAll
    static void pack() throws IOException {
        design = DesignReader.read(Path.of("demo/heron"));
        subject = Subject.of(design);
        written = Pack.write(design, folder, new Pack.Wish(3, Paper.LETTER), name -> {});
    }

    private static String words(String pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(folder.resolve(pdf).toFile())) {
            assertThat(document.getPage(0).getMediaBox().getWidth()).isCloseTo(8.5f * 72, within(0.1f));
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    @Test
    void theContentsPageNamesEveryFileAndNothingElse() throws IOException {
        String page = Files.readString(folder.resolve("contents.html"));
        Matcher link = Pattern.compile("href=\"([^\"]+)\"").matcher(page);
        List<String> named = link.results().map(found -> found.group(1)).toList();
        List<String> there = written.stream()
                .map(file -> file.getFileName().toString())
                .filter(name -> !name.equals("contents.html"))
                .toList();
        assertThat(named).containsExactlyInAnyOrderElementsOf(there).doesNotHaveDuplicates();
        try (var files = Files.list(folder)) {
            assertThat(files).containsExactlyInAnyOrderElementsOf(written);
        }
        assertThat(page).contains("Local codes");
    }

    @Test
    void theBillCountsWhatTheDesignNames() throws IOException {
        String bill = Files.readString(folder.resolve("bill-of-materials.csv"));
        // Two nuts on the counterweight and one bar in the tail, three times.
        assertThat(bill).contains("nut-m6,6,pieces").contains("weight of 50.0 g,3,pieces");
        for (String rod : List.of("bamboo-3", "steel-4")) {
            double rods = Dowels.of(design, subject.assembly()).stream()
                            .filter(dowel -> dowel.rod().equals(rod))
                            .mapToDouble(Dowels.Dowel::length)
                            .sum()
                    * 3;
            assertThat(bill).contains(String.format(java.util.Locale.ROOT, "%s,%.1f,mm", rod, rods));
        }
        // Every screw of the case has its nut.
        assertThat(bill).contains("screw-m3x12,15,pieces").contains("nut-m3,27,pieces");
    }

    @Test
    void whatIsOnTheShelfIsNotBought(@TempDir Path other) throws IOException {
        Path demo = DemoCopy.at(other.resolve("demo"));
        Path workshop = demo.resolve("workshop.yaml");
        Files.writeString(workshop, Files.readString(workshop) + "\nhave: {nut-m6: 4, birch-2: 9}\n");
        Pack.write(
                DesignReader.read(demo.resolve("heron")), other.resolve("out"), new Pack.Wish(3, Paper.A4), name -> {});
        String shopping = Files.readString(other.resolve("out/shopping.csv"));
        assertThat(shopping)
                .contains("nut-m6,2,pieces,6,4")
                .doesNotContain("birch-2")
                .contains("nut-m3,27,");
    }

    @Test
    void theBookletHasEveryPartEveryRodAndTheCautions() throws IOException {
        String words = words("glue-up.pdf");
        for (Part part : subject.assembly().parts()) {
            assertThat(words).contains(part.name());
        }
        for (Dowels.Dowel dowel : Dowels.of(design, subject.assembly())) {
            assertThat(words).contains(dowel.name());
        }
        assertThat(words).contains("50.0 g").contains("Local codes").contains("about");
        String card = words("buyers-card.pdf");
        assertThat(card).contains(Cautions.FOR_THE_PIECE).contains("20 c, 50 c, €1, €2");
        assertThat(words("service.pdf")).contains("long screws");
        assertThat(words("to-sell.pdf")).contains("Photographs").contains(Cautions.FOR_THE_PIECE);
    }

    /** In the lever's way down, clear of it at rest, and its head too large for the opening. */
    @Test
    void theTransitLockStopsTheLever() {
        Assembly assembly = subject.assembly();
        Case housing = Case.of(design, subject);
        assertThat(housing).isNotNull();
        FlatPiece lock = TransitLock.of(assembly, housing);
        assertThat(lock).isNotNull();
        List<Pose> poses = Sweep.poses(subject, assembly.lever().body());
        Part lever = assembly.parts().stream()
                .filter(part -> part.name().equals("lever"))
                .findFirst()
                .orElseThrow();
        assertThat(lock.drawn().overlaps(lever.drawn().moved(poses.get(0)))).isFalse();
        // A fiftieth of the stroke is as far as it goes.
        Pose soon = poses.get(subject.stroke().stroke().length / 50);
        assertThat(lock.drawn().overlaps(lever.drawn().moved(soon))).isTrue();
        Panel end = housing.panels().get(3);
        assertThat(end.name()).isEqualTo("case-right");
        Outline tongue = lock.drawn();
        assertThat(tongue.bounds().maxX()).isGreaterThan(end.to() + 5);
        assertThat(tongue.bounds().minX()).isLessThan(end.from());
    }

    @Test
    void theParcelHoldsThePiece() {
        Parcel parcel = Parcel.of(subject, Case.of(design, subject));
        double parts = subject.assembly().bodies().stream()
                .mapToDouble(body -> body.mass())
                .sum();
        assertThat(parcel.mass()).isGreaterThan(parts);
        assertThat(parcel.height()).isBetween(200.0, 300.0);
        assertThat(parcel.depth()).isCloseTo(62 + 2 * 2.95 + 2 * 4, within(1e-9));
    }

    /** The lever's moment by hand: its mass times its arm, at rest and pressed. */
    @Test
    void theBoxSaysWhatItCanDrive() {
        Assembly assembly = subject.assembly();
        BoxDrives drives = BoxDrives.of(assembly);
        double mass = assembly.body(assembly.lever().body()).mass() / 1000;
        double arm = assembly.body(assembly.lever().body()).centre().x()
                - assembly.lever().pivot().x();
        double own = mass * 9.80665 * arm;
        assertThat(drives.turn()).isCloseTo(Math.toRadians(14), within(1e-12));
        assertThat(drives.returning()).isLessThanOrEqualTo(-own);
        assertThat(drives.pressing()).isBetween(6 * 74.0 - Math.abs(own) - 5, 6 * 78.0);
        assertThat(drives.words("x"))
                .contains(Map.of(true, "does not come up", false, "comes up").get(own > 0));
    }
}

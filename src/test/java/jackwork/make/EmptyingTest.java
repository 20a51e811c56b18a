package jackwork.make;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.DemoCopy;
import jackwork.check.Subject;
import jackwork.design.Design;
import jackwork.design.DesignReader;
import jackwork.drawing.Paper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the buyer and the maker are told of a door is told of a door that is there. */
class EmptyingTest {

    private static final String DOOR = "  door: {at: [40, -3], width: 70, height: 32}\n";

    @TempDir
    Path folder;

    /** A gate is no bucket, and strings wear only where there are some. */
    @ParameterizedTest
    @CsvSource({"heron, bucket, false", "lamplighter, bucket, true", "windmill, bucket, false", "cobbler, gate, false"})
    void whatIsInsideIsCalledByItsName(String id, String inside, boolean strings) throws IOException {
        Design design = DesignReader.read(Path.of("demo", id));
        Makings makings = Makings.of(design);
        Subject subject = makings.subject();
        assertThat(words(Leaflets.forTheBuyer(design, subject, Paper.A4))).contains("the heap reaches the " + inside);
        String service = words(Leaflets.service(design, subject, makings.housing(), List.of(), Paper.A4));
        assertThat(service).contains("the " + inside + "'s pivot");
        assertThat(service.contains("strings")).isEqualTo(strings);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "as drawn | take the door out by its hole",
                "no door | It has no door. Do not break it open",
                "nuts alone | undo the screws around the far wall",
                "no case | How the coins come out: ___",
            })
    void isToldByWhatTheCaseHas(String how, String words) throws IOException {
        Path demo = DemoCopy.with(folder.resolve("demo"), "heron");
        Path box = demo.resolve("boxes/marsh-box/box.yaml");
        String text = Files.readString(box);
        assertThat(text).contains(DOOR);
        Files.writeString(
                box,
                switch (how) {
                    case "no door" -> text.replace(DOOR, "");
                    case "nuts alone" -> text.replace(DOOR, "  joined: screws\n");
                    case "no case" -> text.replaceFirst("(?m)^case:\n(?: .*\n|#.*\n)+", "");
                    default -> text;
                });
        Design design = DesignReader.read(demo.resolve("heron"));
        boolean door = how.equals("as drawn");
        Subject subject = Subject.of(design);
        String card = words(Leaflets.forTheBuyer(design, subject, Paper.A4));
        assertThat(card).contains(words);
        if (!door) {
            assertThat(card).doesNotContain("take the door out", "Turn the button");
        }
        String steps = Makings.of(design).steps().toString();
        assertThat(steps.contains("The door's frame")).isEqualTo(door);
    }

    private static String words(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }
}

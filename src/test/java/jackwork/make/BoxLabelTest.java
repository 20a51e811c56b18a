package jackwork.make;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.DemoCopy;
import jackwork.design.DesignReader;
import jackwork.parts.Assembler;
import jackwork.parts.Assembly;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What stands on the label, read back from its PDF. */
class BoxLabelTest {

    private static String words(Assembly assembly) throws IOException {
        try (PDDocument document = Loader.loadPDF(BoxLabel.pdf(assembly))) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    @Test
    void saysWhatItIsAndWhatItTakes() throws IOException {
        Assembly heron = Assembler.assemble(DesignReader.read(Path.of("demo/heron")));
        assertThat(words(heron))
                .contains("Heron")
                .contains("Takes 20 c, 50 c, €1, €2.")
                .contains("Maker")
                .contains("Contact")
                .contains("Serial no.")
                .contains(Cautions.FOR_THE_PIECE);
        assertThat(BoxLabel.pdf(heron)).isEqualTo(BoxLabel.pdf(heron));
    }

    @Test
    void saysWhoMadeItWhenTheWorkshopDoes(@TempDir Path folder) throws IOException {
        Path workshop = DemoCopy.at(folder.resolve("w"));
        Path file = workshop.resolve("workshop.yaml");
        Files.writeString(
                file,
                Files.readString(file)
                        + "\npaper: Letter\nmaker: Reed hut\ncontact: \"the hut by the marsh, bell at the door\"\n");
        Assembly heron = Assembler.assemble(DesignReader.read(workshop.resolve("heron")));
        assertThat(words(heron)).contains("Reed hut").contains("the hut by the marsh, bell at the door");
        try (PDDocument document = Loader.loadPDF(BoxLabel.pdf(heron))) {
            assertThat(document.getPage(0).getMediaBox().getWidth()).isEqualTo(612f);
        }
    }

    @Test
    void otherMoney() {
        assertThat(BoxLabel.takes(List.of("GBP-0.50", "GBP-1"))).isEqualTo("Takes 50p, £1.");
        assertThat(BoxLabel.takes(List.of("USD-0.25", "USD-1"))).isEqualTo("Takes 25¢, $1.");
        assertThat(BoxLabel.takes(List.of("CHF-0.50", "CHF-5"))).isEqualTo("Takes CHF 0.50, CHF 5.");
    }
}

package jackwork.make;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.DemoCopy;
import jackwork.design.DesignReader;
import jackwork.drawing.Paper;
import jackwork.parts.Assembler;
import jackwork.parts.Assembly;
import jackwork.stock.Coin;
import jackwork.stock.Coins;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What stands on the label, read back from its PDF. */
class BoxLabelTest {

    private static byte[] pdf(Assembly assembly, Paper paper) {
        return BoxLabel.pdf(assembly, coins("EUR-0.20", "EUR-0.50", "EUR-1", "EUR-2"), paper);
    }

    private static List<Coin> coins(String... codes) {
        return Arrays.stream(codes)
                .map(code -> Coins.catalogue().find(code).orElseThrow())
                .toList();
    }

    private static String words(Assembly assembly) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(assembly, Paper.A4))) {
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
        assertThat(pdf(heron, Paper.A4)).isEqualTo(pdf(heron, Paper.A4));
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
        try (PDDocument document = Loader.loadPDF(pdf(heron, heron.workshop().paperOrUsual()))) {
            assertThat(document.getPage(0).getMediaBox().getWidth()).isEqualTo(612f);
        }
    }

    @Test
    void otherMoney() {
        assertThat(CoinWords.of(coins("GBP-0.50", "GBP-1"))).isEqualTo("50p, £1");
        assertThat(CoinWords.of(coins("USD-0.25", "USD-1"))).isEqualTo("25¢, $1");
        assertThat(CoinWords.of(coins("CHF-0.50", "CHF-5"))).isEqualTo("CHF 0.50, CHF 5");
    }
}

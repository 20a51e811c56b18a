package jackwork.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.DemoCopy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Copies of the demo, each spoiled in one place: the complaint names file, line, column and the right word. */
@Tag("quick")
class DesignReaderTest {

    @TempDir
    private Path folder;

    private Path workshop;

    @BeforeEach
    void copy() throws IOException {
        workshop = DemoCopy.at(folder.resolve("w"));
    }

    private Path file(String name) {
        return switch (name) {
            case "design" -> workshop.resolve("heron/design.yaml");
            case "figure" -> workshop.resolve("heron/figure.yaml");
            case "box" -> workshop.resolve("boxes/marsh-box/box.yaml");
            default -> workshop.resolve("workshop.yaml");
        };
    }

    private String complaint() {
        return Spoil.complaint(workshop.resolve("heron"));
    }

    @Test
    void theDemoReads() {
        Design heron = DesignReader.read(workshop.resolve("heron"));
        assertThat(heron.name()).isEqualTo("Heron");
        assertThat(heron.figure().works().parts()).containsKeys("body", "head", "lower-neck", "wing-near");
        assertThat(heron.figureShift().x()).isCloseTo(72, within(1e-9));
        assertThat(heron.figureShift().y()).isCloseTo(100, within(1e-9));
        assertThat(heron.inFigure(null, "hip").x()).isCloseTo(66, within(1e-9));
    }

    @Test
    void aMisspeltKeyNamesItsPlaceAndTheRightWord() throws IOException {
        Spoil.edit(file("design"), "coins:", "coinz:");
        assertThat(complaint())
                .isEqualTo("design.yaml:5:1: read the key \"coinz\", which is not known here; did you mean \"coins\"?");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "design|EUR-1,|EUR-3,|design.yaml:5:29: read \"EUR-3\"",
                "figure|stay:       {stock: birch-2|stay:       {stock: brich-2|did you mean \"birch-2\"?",
                "figure|hip:         {parts: [leg-near|hip:         {parts: [leg-neer|did you mean \"leg-near\"?",
                "figure|knee:        {parts: [leg-near, stay], rod: bamboo-3}|knee:        {parts: [leg-near], rod: bamboo-3}|two parts or more",
                "figure|on: body, mass: 50|on: body|either what (a nut or washer) or mass",
                "figure|on: body, mass: 50|on: bodi, mass: 28|did you mean \"body\"?",
                "figure|link:       {stock|box:        {stock|a part cannot be called \"box\"",
                "figure|nape:        {parts|napee:       {parts|did you mean \"nape\"?",
                "box|throw: 14|throw: 140|expected 1 to 80 degrees",
                "box|throw: 14|throw: 14 mm|expected a number of degrees",
                "box|throw: 14|throw: .nan|expected a number of degrees",
                "box|what: nut-m6|what: nut-m7|did you mean \"nut-m",
                "box|tooth: tooth|tooth: tooht|did you mean \"tooth\"?",
                "box|kicker: kicker-tip|kiker: kicker-tip|the key \"kicker\" is missing here",
                "workshop|kind: bamboo|kind: bambu|did you mean \"bamboo\"?",
                "workshop|bed: [600, 400]|bed: [600]|expected [width, height]",
                "workshop|low: 0.10, high: 0.22|low: 0.20, high: 0.22|must lie between low",
                "design|format: 2|format: 3|use a newer Jackwork",
                "design|figure: figure.yaml|figure: figur.yaml|no such file",
                "design|part: head|part: haed|did you mean \"head\"?",
                "figure|  body: {file: heron|  bodi: {file: heron|did you mean \"body\"?",
                "figure|file: heron-body.png|file: heron-bodi.png|read \"heron-bodi.png\", but there is no such file beside figure.yaml",
                "figure|file: heron-body.png|file: figure.svg|the picture figure.svg does not begin as a PNG file does",
                "figure|file: heron-body.png|file: ../../../heron-body.png|no such file",
                "figure|at: [-74, 48], width: 113|at: bil, width: 113|no circle with id \"bil\"",
                "figure|at: [-74, 48], width: 113|at: [-74, 48], width: 0|expected 1 to 5000 mm",
                "figure|width: 113, bleed: 2|width: 113, bleed: -2|expected 0 to 20",
                "figure|width: 113, bleed: 2|width: 113, bled: 2|did you mean \"bleed\"?",
                "workshop|currency: EUR|currency: eur|expected three capital letters",
                "workshop|name: Visitor hut workshop|name: \"\"|read nothing, expected a word",
                "box|pin: lever-pivot|pin: lever-dowel-2|expected the pin on which lever turns, held by a part that never moves",
                "box|pin: bucket-pivot|pin: lever-pivot|expected the pin on which bucket-core turns",
                "box|fixed: [back, front,|fixed: [back, back, front,|name each part once",
                "figure|knee:        {parts|\"kn ee\":     {parts|a letter first"
            })
    void complains(String name, String from, String to, String expected) throws IOException {
        Spoil.edit(file(name), from, to);
        assertThat(complaint()).contains(expected).contains(".yaml:");
    }

    @Test
    void aPartDoesNotTouchItself() throws IOException {
        Spoil.edit(file("figure"), "pictures:", "touches: {seat: {part: head, on: head}}\npictures:");
        assertThat(complaint()).contains("figure.yaml:", "a part touches another one");
    }

    @Test
    void paperIsOneOfThoseKnown() throws IOException {
        Spoil.edit(file("workshop"), "currency: EUR", "currency: EUR\npaper: A5");
        assertThat(complaint()).contains("workshop.yaml:6:8: read \"A5\", expected A4, A3 or Letter");
    }

    @Test
    void aPictureThatIsNotThereNamesItsPlace() throws IOException {
        Spoil.edit(file("figure"), "file: heron-head.png", "file: head.png");
        assertThat(complaint())
                .containsPattern(
                        "^figure\\.yaml:\\d+:16: read \"head.png\", but there is no such file beside figure.yaml");
    }

    @Test
    void everyComplaintOfAFileIsNamedAtOnce() throws IOException {
        Spoil.edit(file("figure"), "stay:       {stock: birch-2", "stay:       {stock: oak");
        Spoil.edit(file("figure"), "on: body, mass: 50", "on: tial, mass: 28");
        assertThat(complaint().lines()).hasSize(2);
    }

    @Test
    void columnsCountCodePoints() throws IOException {
        Spoil.edit(file("figure"), "nape:        {parts: [head", "\"\uD83E\uDD86\": {parts: [haed");
        // The duck is one code point, two chars: quote, duck, quote, colon, blank, then the braces.
        assertThat(complaint()).containsPattern("figure\\.yaml:\\d+:17: read \"haed\"");
    }

    @Test
    void inchesAreAccepted() throws IOException {
        Spoil.edit(file("workshop"), "margin: 5 ", "margin: 1/8 in ");
        Design heron = DesignReader.read(workshop.resolve("heron"));
        assertThat(heron.workshop().laser().margin()).isCloseTo(3.175, within(1e-12));
    }

    @Test
    void changesReachTheFigureAndTheBox() throws IOException {
        Files.writeString(
                file("design"),
                Files.readString(file("design"))
                        + "\nchange:\n  figure.weights.tail.mass: 12 g\n  box.lever.throw: 10\n  figure.glued.0.1: wing-near\n"
                        + "  figure.glued.0.2: wing-far\n  figure.pins.hip.tight: body\n");
        Design heron = DesignReader.read(workshop.resolve("heron"));
        assertThat(heron.figure().works().weights().get("tail").mass()).isEqualTo(12);
        assertThat(heron.box().lever().turn()).isEqualTo(10);
        assertThat(heron.figure().works().glued().get(0)).containsExactly("body", "wing-near", "wing-far");
        assertThat(heron.figure().works().pins().get("hip").tight()).isEqualTo("body");
    }

    @ParameterizedTest
    @CsvSource({
        "figure.weights.tale.mass, did you mean \"tail\"?",
        "figur.weights.tail.mass, did you mean \"figure\"?",
        "figure.weights.tail.mas, did you mean \"mass\"?"
    })
    void aChangeWithoutAPlaceIsNamedInTheDesign(String path, String hint) throws IOException {
        Files.writeString(file("design"), Files.readString(file("design")) + "\nchange:\n  " + path + ": 3\n");
        assertThat(complaint()).startsWith("design.yaml:").contains(hint);
    }

    @Test
    void mountsMustAgree() throws IOException {
        Spoil.edit(
                file("figure"),
                "mount-right: {parts: [leg-near, leg-far], rod: bamboo-3}",
                "mount-right: {parts: [leg-near, leg-far], rod: bamboo-3, at: [12, -10]}");
        assertThat(complaint()).contains("mounts").contains("2.00 mm right");
    }

    @Test
    void filesOutsideTheWorkshopAreRefused() throws IOException {
        Files.copy(file("figure"), folder.resolve("figure.yaml"));
        Spoil.edit(file("design"), "figure: figure.yaml", "figure: ../../figure.yaml");
        assertThat(complaint()).contains("outside the workshop's folder");
    }

    @Test
    void aBrokenDrawingIsNamedWithItsPlace() throws IOException {
        Path svg = workshop.resolve("heron/figure.svg");
        Files.writeString(svg, Files.readString(svg).replace("id=\"stay\" d=\"M", "id=\"stay\" d=\"M oops"));
        assertThat(complaint()).startsWith("figure.svg:");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "format: 2\nformat: 2\n",
                "a: &a [x, x]\nb: &b [*a, *a]\nc: &c [*b, *b]\nd: &d [*c, *c]\ne: [*d, *d]\n",
                "name: !!java.net.URL [\"http://example.org\"]\n",
                "- just\n- a list\n",
                "name: [unclosed\n",
                "\u0000",
                "a: &a\n  b: *a\n"
            })
    void hostileYamlIsRefusedInWords(String text) throws IOException {
        Files.writeString(file("design"), text);
        assertThat(complaint()).startsWith("design.yaml");
    }

    @Test
    void anAliasBombEndsQuickly() throws IOException {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x,x,x,x,x,x,x,x,x]\n");
        for (int i = 1; i < 12; i++) {
            String before = "*a" + (i - 1);
            bomb.append("a")
                    .append(i)
                    .append(": &a")
                    .append(i)
                    .append(" [")
                    .append(String.join(",", java.util.Collections.nCopies(9, before)))
                    .append("]\n");
        }
        bomb.append("coins: *a11\n");
        Files.writeString(file("design"), bomb);
        assertThat(complaint()).startsWith("design.yaml");
    }

    @Test
    void deepNestingIsRefused() throws IOException {
        Files.writeString(file("design"), "coins: " + "[".repeat(20_000) + "]".repeat(20_000) + "\n");
        assertThat(complaint()).startsWith("design.yaml");
    }
}

package jackwork.make;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.DemoCopy;
import jackwork.design.Design;
import jackwork.design.DesignReader;
import jackwork.drawing.StlWriter;
import jackwork.drawing.ThreeMfWriter;
import jackwork.geometry.Mesh;
import jackwork.geometry.SolidMesh;
import jackwork.parts.Assembler;
import jackwork.parts.Assembly;
import jackwork.parts.Body;
import jackwork.parts.Part;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Printed parts: files that others can read, and masses that the engine feels. */
class PrintedPieceTest {

    @TempDir
    Path folder;

    /** The heron on a box whose bucket and kicker are printed, its shoulder too. */
    private Design printed() throws IOException {
        Path demo = DemoCopy.at(folder.resolve("demo"));
        Path box = demo.resolve("boxes/marsh-box/box.yaml");
        String text = Files.readString(box);
        for (String part : List.of("bucket-hub", "bucket-far", "bucket-core", "bucket-near", "kicker")) {
            String piece = part.equals("kicker") ? "kicker" : "bucket";
            text = text.replaceFirst(
                    "(?m)^(  " + part + ": +\\{stock: birch-\\d, layer: \\d)", "$1, printed: " + piece);
        }
        Files.writeString(box, text);
        Path figure = demo.resolve("heron/figure.yaml");
        Files.writeString(
                figure,
                Files.readString(figure)
                        .replace(
                                "shoulder:    {parts: [body, lower-neck], rod: bamboo-3}",
                                "shoulder:    {parts: [body, lower-neck], rod: bamboo-3, shoulder: 6}"));
        return DesignReader.read(demo.resolve("heron"));
    }

    @Test
    void massIsFedBackToTheEngine() throws IOException {
        Assembly wood = Assembler.assemble(DesignReader.read(Path.of("demo/heron")));
        Design design = printed();
        Assembly plastic = Assembler.assemble(design);
        Body bucket = plastic.body(plastic.coinWorks().bucket());
        assertThat(bucket.mass())
                .isGreaterThan(1.2 * wood.body(wood.coinWorks().bucket()).mass());
        double lumps = bucket.lumps().stream().mapToDouble(lump -> lump.mass()).sum();
        double volume = SolidMesh.of(PrintedPiece.stacked(bucket.parts())).volume();
        double density = design.workshop().printerOrGuess().density().value();
        // Slabs of one body do not overlap, so that the solid weighs what the engine thinks.
        assertThat(bucket.mass() - lumps).isCloseTo(volume * density / 1000, within(1e-9 * bucket.mass()));
        // The sleeve of the shoulder: its mass on the body that holds the rod, its radius in the joint.
        assertThat(plastic.pins().stream()
                        .filter(pin -> pin.name().equals("shoulder"))
                        .findFirst()
                        .orElseThrow()
                        .radius())
                .isEqualTo(3);
        Part neck = plastic.parts().stream()
                .filter(part -> part.name().equals("lower-neck"))
                .findFirst()
                .orElseThrow();
        assertThat(neck.holes().stream()
                        .filter(hole -> hole.joint().equals("shoulder"))
                        .findFirst()
                        .orElseThrow()
                        .circle()
                        .diameter())
                .isCloseTo(6 + design.workshop().fits().running().value(), within(1e-12));
    }

    /** admesh is the reader: closed, wound outward, nothing degenerate, the same volume. */
    @Test
    void anIndependentMeshCheckerFindsNothingAmiss() throws IOException, InterruptedException {
        Design design = printed();
        Assembly assembly = Assembler.assemble(design);
        List<PrintedPiece> pieces = PrintedPiece.of(design, assembly, null);
        assertThat(pieces).extracting(PrintedPiece::name).contains("bucket", "kicker", "chute", "shoulder-shoulder");
        for (PrintedPiece piece : pieces) {
            Path file = folder.resolve(piece.name() + ".stl");
            Files.write(file, StlWriter.write(piece.mesh()));
            Process reader = new ProcessBuilder("admesh", file.toString())
                    .redirectErrorStream(true)
                    .start();
            String out = new String(reader.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(reader.waitFor()).as(out).isZero();
            assertThat(out).containsPattern("Total disconnected facets +: +0 +0");
            assertThat(out).containsPattern("Degenerate facets +: +0");
            assertThat(out).containsPattern("Facets reversed +: +0");
            assertThat(out).containsPattern("Number of parts +: +1 ");
            var volume = java.util.regex.Pattern.compile("Volume +: +([0-9.]+)").matcher(out);
            assertThat(volume.find()).isTrue();
            // STL keeps 32-bit floats.
            assertThat(Double.parseDouble(volume.group(1)))
                    .isCloseTo(piece.mesh().volume(), within(1e-4 * piece.mesh().volume()));
        }
    }

    /** The rules of 3MF Core 1.4.0 that a reader stumbles over: package parts, types, references, winding. */
    @Test
    void threeMfKeepsItsRules() throws Exception {
        Design design = DesignReader.read(Path.of("demo/heron"));
        PrintedPiece chute =
                PrintedPiece.of(design, Assembler.assemble(design), null).get(0);
        Map<String, byte[]> entries = new HashMap<>();
        try (ZipInputStream zip =
                new ZipInputStream(new ByteArrayInputStream(ThreeMfWriter.write(chute.name(), chute.mesh())))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                entries.put(entry.getName(), zip.readAllBytes());
            }
        }
        assertThat(entries).containsOnlyKeys("[Content_Types].xml", "_rels/.rels", "3D/3dmodel.model");
        assertThat(new String(entries.get("_rels/.rels"), StandardCharsets.UTF_8))
                .contains("\"/3D/3dmodel.model\"");
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        Document model = factory.newDocumentBuilder().parse(new ByteArrayInputStream(entries.get("3D/3dmodel.model")));
        String core = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";
        assertThat(model.getDocumentElement().getNamespaceURI()).isEqualTo(core);
        assertThat(model.getDocumentElement().getAttribute("unit")).isEqualTo("millimeter");
        NodeList vertices = model.getElementsByTagNameNS(core, "vertex");
        double[] flat = new double[3 * vertices.getLength()];
        for (int i = 0; i < vertices.getLength(); i++) {
            Element vertex = (Element) vertices.item(i);
            flat[3 * i] = Double.parseDouble(vertex.getAttribute("x"));
            flat[3 * i + 1] = Double.parseDouble(vertex.getAttribute("y"));
            flat[3 * i + 2] = Double.parseDouble(vertex.getAttribute("z"));
        }
        for (double coordinate : flat) {
            assertThat(coordinate).isGreaterThanOrEqualTo(0);
        }
        NodeList triangles = model.getElementsByTagNameNS(core, "triangle");
        List<Integer> numbers = new ArrayList<>();
        for (int i = 0; i < triangles.getLength(); i++) {
            for (String name : List.of("v1", "v2", "v3")) {
                int number = Integer.parseInt(((Element) triangles.item(i)).getAttribute(name));
                assertThat(number).isBetween(0, vertices.getLength() - 1);
                numbers.add(number);
            }
        }
        assertThat(triangles.getLength()).isGreaterThanOrEqualTo(4);
        Mesh back = new Mesh(flat, numbers.stream().mapToInt(Integer::intValue).toArray());
        // Six decimals are kept.
        assertThat(back.volume()).isCloseTo(chute.mesh().volume(), within(1e-6 * back.volume()));
        String object = ((Element) model.getElementsByTagNameNS(core, "object").item(0)).getAttribute("id");
        String item = ((Element) model.getElementsByTagNameNS(core, "item").item(0)).getAttribute("objectid");
        assertThat(item).isEqualTo(object);
    }
}

package jackwork.drawing;

import jackwork.geometry.Mesh;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** A mesh as 3MF (3MF Core Specification 1.4.0): an OPC package with one model of one object, in mm. */
public final class ThreeMfWriter {

    private static final String XML = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";

    private static final String TYPES = XML
            + "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">\n"
            + "  <Default Extension=\"rels\""
            + " ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>\n"
            + "  <Default Extension=\"model\" ContentType=\"application/vnd.ms-package.3dmanufacturing-3dmodel+xml\"/>\n"
            + "</Types>\n";

    private static final String RELATIONSHIPS = XML
            + "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">\n"
            + "  <Relationship Id=\"model\" Type=\"http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel\""
            + " Target=\"/3D/3dmodel.model\"/>\n"
            + "</Relationships>\n";

    /** Any fixed moment: the same mesh gives the same bytes. */
    private static final LocalDateTime WRITTEN = LocalDateTime.of(2000, 1, 1, 0, 0);

    private ThreeMfWriter() {}

    /** @param name of the object, for people */
    public static byte[] write(String name, Mesh mesh) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            put(zip, "[Content_Types].xml", TYPES);
            put(zip, "_rels/.rels", RELATIONSHIPS);
            put(zip, "3D/3dmodel.model", model(name, mesh.atOrigin()));
        } catch (IOException e) {
            throw new UncheckedIOException("writing a 3MF to memory failed", e);
        }
        return out.toByteArray();
    }

    private static void put(ZipOutputStream zip, String name, String text) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(WRITTEN);
        zip.putNextEntry(entry);
        zip.write(text.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }

    private static String model(String name, Mesh mesh) {
        StringBuilder xml = new StringBuilder(XML);
        xml.append("<model unit=\"millimeter\" xml:lang=\"en\"")
                .append(" xmlns=\"http://schemas.microsoft.com/3dmanufacturing/core/2015/02\">\n")
                .append("  <metadata name=\"Title\">")
                .append(escaped(name))
                .append("</metadata>\n  <resources>\n    <object id=\"1\" type=\"model\" name=\"")
                .append(escaped(name))
                .append("\">\n      <mesh>\n        <vertices>\n");
        double[] v = mesh.vertices();
        for (int i = 0; i < v.length; i += 3) {
            xml.append(String.format(
                    Locale.ROOT, "          <vertex x=\"%.6f\" y=\"%.6f\" z=\"%.6f\"/>\n", v[i], v[i + 1], v[i + 2]));
        }
        xml.append("        </vertices>\n        <triangles>\n");
        int[] t = mesh.triangles();
        for (int i = 0; i < t.length; i += 3) {
            xml.append("          <triangle v1=\"" + t[i] + "\" v2=\"" + t[i + 1] + "\" v3=\"" + t[i + 2] + "\"/>\n");
        }
        return xml.append("        </triangles>\n      </mesh>\n    </object>\n  </resources>\n  <build>\n")
                .append("    <item objectid=\"1\"/>\n  </build>\n</model>\n")
                .toString();
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
    }
}

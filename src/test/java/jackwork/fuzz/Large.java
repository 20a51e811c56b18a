package jackwork.fuzz;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/** Inputs that are too large to keep as files: made when they are wanted. */
final class Large {

    /** Makes one. */
    interface Input {
        byte[] bytes() throws IOException;
    }

    private Large() {}

    static Map<String, Input> of(Kept reader) {
        return switch (reader) {
            case YAML ->
                Map.of(
                        "nested-20000-deep", () -> text("# design of heron\nformat: " + "[".repeat(20_000)),
                        "flow-mappings-5000-deep", () -> text("# figure of heron\nparts: " + "{a: ".repeat(5_000)),
                        "a-key-of-900-kb", () -> text("# figure of heron\n" + "k".repeat(900_000) + ": 1"),
                        "twenty-thousand-parts", () -> text("# figure of heron\nformat: 2\nparts:\n" + parts(20_000)));
            case SVG ->
                Map.of(
                        "a-path-of-a-million-points",
                                () -> text(svg("<path id='a' d='M0 0" + " L1 1 L2 0".repeat(500_000) + "z'/>")),
                        "groups-30000-deep", () -> text(svg("<g>".repeat(30_000))),
                        "arcs-a-hundred-thousand",
                                () -> text(svg("<path id='a' d='M0 0" + "a9e9 9e9 0 1 1 1 1".repeat(100_000) + "'/>")),
                        "uses-of-uses", () -> text(svg(uses(24))),
                        "a-comb-of-six-thousand-teeth",
                                () -> text(svg(
                                        "<path id='a' d='M0 0" + " v90 h.004 v-90 h.004".repeat(6_000) + "V-9H0z'/>")));
            case PICTURE ->
                Map.of(
                        "a-page-of-nothing", () -> png(3990, 4000, 1, 0, 1),
                        "deep-colours", () -> png(2990, 3000, 16, 6, 0),
                        "a-profile-that-unpacks-to-a-gigabyte", Large::profileBomb);
            case CSV ->
                Map.of(
                        "a-field-of-four-megabytes",
                                () -> text("trials\nkey,at,design,note\n\"" + "x\"\"".repeat(1_300_000) + "\""),
                        "a-head-of-a-hundred-thousand-columns", () -> text("trials\nkey" + ",key".repeat(100_000)),
                        "rows-of-nothing", () -> text("trials\nkey,at,design\n" + ",\n".repeat(500_000)));
            case HISTORY ->
                Map.of(
                        "a-line-of-sixteen-megabytes", () -> text("{\"what\":\"" + "did".repeat(5_000_000)),
                        "a-list-larger-than-any", () -> new byte[(64 << 20) + 1],
                        "two-hundred-thousand-steps", () -> text("{\"what\":\"undone\"}\n".repeat(200_000)),
                        "nested-a-hundred-thousand-deep", () -> text("{\"what\":" + "[".repeat(100_000) + "\n"),
                        "a-text-larger-than-any", () -> text("# text\n" + "x".repeat(21 << 20)));
            case LOG ->
                Map.of(
                        "sixteen-megabytes-of-nothing", () -> new byte[16 << 20],
                        "a-text-of-four-megabytes", () -> text("The log.\n".repeat(450_000)));
            case HTTP ->
                Map.of(
                        "a-body-of-a-megabyte", () -> text(post("edit/heron", "[".repeat(1 << 20))),
                        "a-plan-nested-a-million-deep",
                                () -> text(post("bring/attempt", "{\"parts\":" + "[".repeat(1 << 20))),
                        "a-head-of-a-megabyte",
                                () -> text("GET / HTTP/1.1\nHost: {host}\nX-A: " + "a".repeat(1 << 20) + "\n\n"),
                        "fifty-thousand-headers",
                                () -> text("GET / HTTP/1.1\nHost: {host}\n" + "X-A: b\n".repeat(50_000) + "\n"));
        };
    }

    private static byte[] text(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static String parts(int count) {
        StringBuilder parts = new StringBuilder();
        for (int i = 0; i < count; i++) {
            parts.append(" p").append(i).append(": {layer: 1}\n");
        }
        return parts.toString();
    }

    private static String svg(String inside) {
        return "<svg xmlns='http://www.w3.org/2000/svg' width='100mm' height='100mm' viewBox='0 0 100 100'>" + inside
                + "</svg>";
    }

    /** Each shows the one before twice: 2 to the power of what is asked for, in a few hundred bytes. */
    private static String uses(int doublings) {
        StringBuilder inside = new StringBuilder("<defs><path id='u0' d='M0 0h9v9z'/>");
        for (int i = 1; i <= doublings; i++) {
            String use = "<use href='#u" + (i - 1) + "'/>";
            inside.append("<g id='u")
                    .append(i)
                    .append("'>")
                    .append(use)
                    .append(use)
                    .append("</g>");
        }
        return inside + "</defs><use href='#u" + doublings + "'/>";
    }

    private static String post(String path, String body) {
        return "POST /api/" + path + " HTTP/1.1\nHost: {host}\nContent-Type: application/json\n\n" + body;
    }

    /** Small in the file, as large in memory as a picture may be. */
    private static byte[] png(int width, int height, int bits, int colour, int value) throws IOException {
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        file.writeBytes(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'});
        ByteArrayOutputStream head = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(head);
        out.writeInt(width);
        out.writeInt(height);
        out.write(new byte[] {(byte) bits, (byte) colour, 0, 0, 0});
        chunk(file, "IHDR", head.toByteArray());
        int samples = colour == 6 ? 4 : 1;
        byte[] row = new byte[1 + (width * bits * samples + 7) / 8];
        java.util.Arrays.fill(row, 1, row.length, (byte) (value == 0 ? 0 : 0xff));
        chunk(file, "IDAT", packed(row, height));
        chunk(file, "IEND", new byte[0]);
        return file.toByteArray();
    }

    private static byte[] profileBomb() throws IOException {
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        byte[] small = png(8, 8, 8, 2, 0);
        file.write(small, 0, 33);
        ByteArrayOutputStream profile = new ByteArrayOutputStream();
        profile.writeBytes(text("p\0\0"));
        profile.writeBytes(packed(new byte[1 << 20], 256));
        chunk(file, "iCCP", profile.toByteArray());
        chunk(file, "zTXt", profile.toByteArray());
        file.write(small, 33, small.length - 33);
        return file.toByteArray();
    }

    private static byte[] packed(byte[] piece, int times) throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (DeflaterOutputStream deflate = new DeflaterOutputStream(packed, new Deflater(Deflater.BEST_SPEED))) {
            for (int i = 0; i < times; i++) {
                deflate.write(piece);
            }
        }
        return packed.toByteArray();
    }

    private static void chunk(ByteArrayOutputStream file, String name, byte[] data) throws IOException {
        DataOutputStream out = new DataOutputStream(file);
        out.writeInt(data.length);
        byte[] named = name.getBytes(StandardCharsets.US_ASCII);
        CRC32 sum = new CRC32();
        sum.update(named);
        sum.update(data);
        out.write(named);
        out.write(data);
        out.writeInt((int) sum.getValue());
    }
}

package jackwork.drawing;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.zip.CRC32;

/**
 * A PNG file's chunks (PNG, third edition, chapters 5 and 11), walked before anything is decoded. Only what makes up
 * the pixels is passed on, so that no text or profile of the file is ever unpacked.
 */
final class PngChunks {

    /** Sides of an A4 page at 600 dpi are 4,960 and 7,016 pixels, together 35 million. */
    static final long MOST_PIXELS = 36_000_000;

    /** An A4 page at 2400 dpi is 28,063 pixels long: what is longer than that is no picture of a part. */
    static final int MOST_SIDE = 30_000;

    static final int MOST_BYTES = 64 << 20;

    /** Signature, then length, name, thirteen bytes and checksum of the first chunk. */
    static final int HEADER_BYTES = 33;
    /** Where width and height stand in it, four bytes each. */
    static final int SIZE_AT = 16;

    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
    private static final Set<String> PIXELS = Set.of("IHDR", "PLTE", "tRNS", "IDAT", "IEND");
    private static final double METRES_PER_INCH = 0.0254;

    private final String file;
    private final ByteBuffer in;
    private final ByteArrayOutputStream pixels = new ByteArrayOutputStream();
    private OptionalDouble dpi = OptionalDouble.empty();

    private PngChunks(String file, byte[] png) {
        this.file = file;
        this.in = ByteBuffer.wrap(png);
    }

    /** Only the size is looked at; {@code png} may be the file's first 33 bytes. */
    static void checkHeader(String file, byte[] png) {
        new PngChunks(file, png).header();
    }

    static PngChunks of(String file, byte[] png) {
        PngChunks chunks = new PngChunks(file, png);
        if (png.length > MOST_BYTES) {
            throw chunks.problem("is " + png.length + " bytes long, at most " + MOST_BYTES + " are read");
        }
        chunks.header();
        chunks.walk();
        return chunks;
    }

    /** The same picture without anything but its pixels. */
    byte[] pixelsOnly() {
        return pixels.toByteArray();
    }

    OptionalDouble dpi() {
        return dpi;
    }

    private void header() {
        byte[] start = new byte[SIGNATURE.length];
        if (in.remaining() >= SIGNATURE.length) {
            in.get(start);
        }
        if (!java.util.Arrays.equals(start, SIGNATURE)) {
            throw problem("does not begin as a PNG file does; save the picture as PNG");
        }
        if (in.remaining() < HEADER_BYTES - SIGNATURE.length || in.getInt() != 13 || !name().equals("IHDR")) {
            throw problem("has no PNG header; save the picture again");
        }
        long width = in.getInt() & 0xffff_ffffL;
        long height = in.getInt() & 0xffff_ffffL;
        if (width == 0 || height == 0 || width > MOST_SIDE || height > MOST_SIDE || width * height > MOST_PIXELS) {
            throw problem("says it is " + width + " x " + height + " pixels; 1 to " + MOST_PIXELS
                    + " together were expected, an A4 page at 600 dpi, and no side longer than " + MOST_SIDE);
        }
    }

    private void walk() {
        in.position(SIGNATURE.length);
        pixels.writeBytes(SIGNATURE);
        String name = "";
        while (!name.equals("IEND")) {
            int at = in.position();
            if (in.remaining() < 12) {
                throw problem("breaks off at byte " + at + "; the end of a PNG file was expected later");
            }
            int length = in.getInt();
            name = name();
            if (length < 0 || length > in.remaining() - 4) {
                throw problem("has a part \"" + name + "\" at byte " + at + " that is longer than the file");
            }
            CRC32 sum = new CRC32();
            sum.update(in.array(), at + 4, length + 4);
            int data = in.position();
            in.position(data + length);
            if (in.getInt() != (int) sum.getValue()) {
                throw problem("is damaged: the part \"" + name + "\" at byte " + at + " does not fit its checksum");
            }
            if (PIXELS.contains(name)) {
                pixels.write(in.array(), at, length + 12);
            } else if (name.equals("pHYs") && length == 9) {
                dpi = density(in.getInt(data), in.getInt(data + 4), in.get(data + 8));
            }
        }
    }

    private OptionalDouble density(int across, int down, byte unit) {
        if (unit != 1 || across <= 0 || down <= 0) {
            return OptionalDouble.empty();
        }
        if (Math.abs(across - down) > 0.01 * across) {
            throw problem("says it has " + across + " pixels a metre across and " + down
                    + " down; square pixels were expected, save it with one resolution");
        }
        return OptionalDouble.of(across * METRES_PER_INCH);
    }

    private String name() {
        byte[] name = new byte[4];
        in.get(name);
        String text = new String(name, StandardCharsets.US_ASCII);
        return text.matches("[A-Za-z]{4}") ? text : "????";
    }

    private PictureException problem(String problem) {
        return new PictureException(file, problem);
    }
}

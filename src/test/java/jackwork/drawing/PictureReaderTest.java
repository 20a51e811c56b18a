package jackwork.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pictures are read whatever kind of PNG they are, and refused with reasons when they are none. */
class PictureReaderTest {

    private static byte[] plain() throws IOException {
        return Pictures.plain(40, 30, new Color(0x336699));
    }

    /** A PNG written by hand: one colour, given as the file's own samples. */
    private static byte[] ofKind(int bits, int kind, byte[] row, byte[]... extra) throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (DeflaterOutputStream deflater = new DeflaterOutputStream(packed)) {
            for (int y = 0; y < 4; y++) {
                deflater.write(0);
                deflater.write(row);
            }
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'});
        ByteBuffer header =
                ByteBuffer.allocate(13).putInt(4).putInt(4).put((byte) bits).put((byte) kind);
        out.writeBytes(chunk("IHDR", header.array()));
        for (byte[] chunk : extra) {
            out.writeBytes(chunk);
        }
        out.writeBytes(chunk("IDAT", packed.toByteArray()));
        out.writeBytes(chunk("IEND", new byte[0]));
        return out.toByteArray();
    }

    private static byte[] chunk(String name, byte[] data) {
        byte[] word = name.getBytes(StandardCharsets.US_ASCII);
        CRC32 sum = new CRC32();
        sum.update(word);
        sum.update(data);
        return ByteBuffer.allocate(12 + data.length)
                .putInt(data.length)
                .put(word)
                .put(data)
                .putInt((int) sum.getValue())
                .array();
    }

    @Test
    void everyKindGivesItsColour() throws IOException {
        byte[] grey = {100, 100, 100, 100};
        assertThat(PictureReader.read("grey", ofKind(8, 0, grey)).pixel(1, 1)).isEqualTo(0xff646464);
        byte[] deepGrey = {100, 0, 100, 0, 100, 0, 100, 0};
        assertThat(PictureReader.read("deep", ofKind(16, 0, deepGrey)).pixel(1, 1) & 0xff)
                .isBetween(99, 101);
        byte[] greyAlpha = {100, 50, 100, 50, 100, 50, 100, 50};
        assertThat(PictureReader.read("alpha", ofKind(8, 4, greyAlpha)).pixel(2, 2))
                .isEqualTo(0x32646464);
        byte[] colour = {1, 2, 3, 1, 2, 3, 1, 2, 3, 1, 2, 3};
        assertThat(PictureReader.read("rgb", ofKind(8, 2, colour)).pixel(3, 3)).isEqualTo(0xff010203);
        byte[] bits = {(byte) 0b0101_0000};
        assertThat(PictureReader.read("bits", ofKind(1, 0, bits)).pixel(1, 0)).isEqualTo(0xffffffff);
        assertThat(PictureReader.read("bits", ofKind(1, 0, bits)).pixel(2, 0)).isEqualTo(0xff000000);
        byte[] palette = chunk("PLTE", new byte[] {9, 8, 7, 6, 5, 4});
        byte[] clear = chunk("tRNS", new byte[] {0, (byte) 128});
        Picture indexed = PictureReader.read("indexed", ofKind(8, 3, new byte[] {0, 1, 0, 1}, palette, clear));
        assertThat(indexed.pixel(0, 0) >>> 24).isZero();
        assertThat(indexed.pixel(1, 0)).isEqualTo(0x80060504);
        byte[] key = chunk("tRNS", new byte[] {0, 1, 0, 2, 0, 3});
        assertThat(PictureReader.read("key", ofKind(8, 2, colour, key)).pixel(0, 0) >>> 24)
                .isZero();
    }

    @Test
    void knowsItsDensity() throws IOException {
        assertThat(PictureReader.read("a.png", plain()).dpi()).isEmpty();
        assertThat(PictureReader.read("a.png", Pictures.withDensity(plain(), 11811))
                        .dpi())
                .hasValueCloseTo(300.0, org.assertj.core.data.Offset.offset(0.01));
        byte[] oblong =
                ByteBuffer.allocate(9).putInt(1000).putInt(2000).put((byte) 1).array();
        assertThatThrownBy(() -> PictureReader.read("a.png", Pictures.with(plain(), "pHYs", oblong)))
                .hasMessageContaining("square pixels were expected");
    }

    @Test
    void whatIsNoPictureIsSaid() throws IOException {
        assertThatThrownBy(() -> PictureReader.read("a.png", new byte[0]))
                .hasMessageContaining("save the picture as PNG");
        assertThatThrownBy(() -> PictureReader.read("a.png", "GIF89a nonsense".getBytes(StandardCharsets.UTF_8)))
                .hasMessageContaining("a.png: does not begin as a PNG file does");
        byte[] cut = Arrays.copyOf(plain(), plain().length - 20);
        assertThatThrownBy(() -> PictureReader.read("a.png", cut)).isInstanceOf(PictureException.class);
        byte[] damaged = plain();
        damaged[damaged.length - 20] ^= 1;
        assertThatThrownBy(() -> PictureReader.read("a.png", damaged)).hasMessageContaining("checksum");
    }

    @ParameterizedTest
    @CsvSource({"0, 10", "60000, 60000", "-1, 1", "36000001, 1"})
    void impossibleSizesAreRefusedBeforeDecoding(int width, int height) throws IOException {
        byte[] png = plain();
        ByteBuffer.wrap(png).putInt(16, width).putInt(20, height);
        assertThatThrownBy(() -> PictureReader.read("huge.png", png))
                .isInstanceOf(PictureException.class)
                .hasMessageContaining("huge.png: says it is")
                .hasMessageContaining("were expected");
    }

    /** A text of a gigabyte packed into a few bytes is not unpacked, for nothing but pixels is. */
    @Test
    void packedTextsAreNotUnpacked() throws IOException {
        byte[] nonsense = "icc\0\0not a profile".getBytes(StandardCharsets.UTF_8);
        byte[] png = Pictures.with(Pictures.with(plain(), "zTXt", nonsense), "iCCP", nonsense);
        assertThat(PictureReader.read("a.png", png).pixel(3, 3)).isEqualTo(0xff336699);
    }

    @Test
    void anyDamageIsAPictureExceptionOrHarmless() throws IOException {
        byte[] good = Pictures.noise(30, 30);
        Random random = new Random(7);
        for (int i = 0; i < 300; i++) {
            byte[] bad = good.clone();
            int chunk = 41 + random.nextInt(bad.length - 60);
            bad[chunk] ^= (byte) (1 << random.nextInt(8));
            // With a checksum that fits, so that the pixels themselves are damaged.
            int length = ByteBuffer.wrap(bad).getInt(33);
            CRC32 sum = new CRC32();
            sum.update(bad, 37, length + 4);
            ByteBuffer.wrap(bad).putInt(41 + length, (int) sum.getValue());
            try {
                PictureReader.read("bad.png", bad);
            } catch (PictureException e) {
                assertThat(e).hasMessageStartingWith("bad.png: ");
            }
        }
    }
}

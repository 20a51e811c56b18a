package jackwork.drawing;

import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.Raster;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Iterator;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.MemoryCacheImageInputStream;

/** Reads a maker's picture: PNG, at most 64 MiB and 36 million pixels, both known before anything is unpacked. */
public final class PictureReader {

    private PictureReader() {}

    /**
     * @throws PictureException when it is no picture that can be read
     * @throws IOException when the file cannot be
     */
    public static Picture read(Path file) throws IOException {
        String name = String.valueOf(file.getFileName());
        long size = Files.size(file);
        if (size > PngChunks.MOST_BYTES) {
            throw new PictureException(
                    name, "is " + size + " bytes long, at most " + PngChunks.MOST_BYTES + " are read; make it smaller");
        }
        return read(name, Files.readAllBytes(file));
    }

    /** @param png the file's bytes, trusted in nothing */
    public static Picture read(String fileName, byte[] png) {
        PngChunks chunks = PngChunks.of(fileName, png);
        BufferedImage image = decoded(fileName, chunks.pixelsOnly());
        return new Picture(fileName, image.getWidth(), image.getHeight(), pixels(image), chunks.dpi());
    }

    /**
     * Only whether it is a PNG of a size that can be read; nothing is decoded.
     *
     * @throws PictureException when it is not
     */
    public static void checkHeader(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            PngChunks.checkHeader(String.valueOf(file.getFileName()), in.readNBytes(PngChunks.HEADER_BYTES));
        }
    }

    /** The same of bytes that are in hand. */
    public static void checkHeader(String name, byte[] png) {
        PngChunks.checkHeader(name, Arrays.copyOf(png, Math.min(png.length, PngChunks.HEADER_BYTES)));
    }

    /**
     * Its height as a share of its width, by its header; nothing is decoded.
     *
     * @throws PictureException when it is no PNG of a size that can be read
     */
    public static double heightByWidth(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] header = in.readNBytes(PngChunks.HEADER_BYTES);
            PngChunks.checkHeader(String.valueOf(file.getFileName()), header);
            ByteBuffer size = ByteBuffer.wrap(header, PngChunks.SIZE_AT, 2 * Integer.BYTES);
            double width = size.getInt();
            return size.getInt() / width;
        }
    }

    private static BufferedImage decoded(String fileName, byte[] png) {
        Iterator<ImageReader> readers = ImageIO.getImageReadersByFormatName("png");
        if (!readers.hasNext()) {
            throw new IllegalStateException("this Java has no PNG reader");
        }
        ImageReader reader = readers.next();
        // In memory, whatever ImageIO's cache is set to: nothing is written to the disk.
        try (MemoryCacheImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(png))) {
            reader.setInput(in, true, true);
            return reader.read(0);
        } catch (IOException | RuntimeException e) {
            // The reader answers damaged data with exceptions of many kinds.
            throw new PictureException(
                    fileName, "is a PNG whose pixels cannot be unpacked (" + e.getMessage() + "); save it again");
        } finally {
            reader.dispose();
        }
    }

    private static int[] pixels(BufferedImage image) {
        int width = image.getWidth();
        int height = image.getHeight();
        int[] pixels = new int[width * height];
        ColorModel model = image.getColorModel();
        boolean grey = image.getRaster().getNumBands() <= 2
                && model.getColorSpace().getType() == java.awt.color.ColorSpace.TYPE_GRAY;
        for (int y = 0; y < height; y++) {
            if (grey) {
                grey(image.getRaster(), y, model.getComponentSize(0), pixels);
            } else {
                image.getRGB(0, y, width, 1, pixels, y * width, width);
            }
        }
        return pixels;
    }

    /** Straight from the file: Java takes grey to be linear light and would lighten it. */
    private static void grey(Raster raster, int y, int bits, int[] pixels) {
        int width = raster.getWidth();
        int most = (1 << bits) - 1;
        int[] values = raster.getSamples(0, y, width, 1, 0, (int[]) null);
        int[] alphas = raster.getNumBands() == 2 ? raster.getSamples(0, y, width, 1, 1, (int[]) null) : null;
        for (int x = 0; x < width; x++) {
            int value = values[x] * 255 / most;
            int alpha = alphas == null ? 255 : alphas[x] * 255 / most;
            pixels[y * width + x] = alpha << 24 | value << 16 | value << 8 | value;
        }
    }
}

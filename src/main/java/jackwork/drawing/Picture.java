package jackwork.drawing;

import java.awt.image.BufferedImage;
import java.util.OptionalDouble;

/** A picture as its file has it: pixels from the upper left corner, colours as numbers of the file, alpha apart. */
public final class Picture {

    private final String name;
    private final int width;
    private final int height;
    /** Row by row, 0xAARRGGBB. */
    private final int[] pixels;

    private final OptionalDouble dpi;

    Picture(String name, int width, int height, int[] pixels, OptionalDouble dpi) {
        this.name = name;
        this.width = width;
        this.height = height;
        this.pixels = pixels;
        this.dpi = dpi;
    }

    /** As the maker knows it, for messages. */
    public String name() {
        return name;
    }

    /** Pixels. */
    public int width() {
        return width;
    }

    /** Pixels. */
    public int height() {
        return height;
    }

    /** Pixels an inch, when the file says so. */
    public OptionalDouble dpi() {
        return dpi;
    }

    /** 0xAARRGGBB. */
    int pixel(int x, int y) {
        return pixels[y * width + x];
    }

    /** As it looks on white paper. */
    BufferedImage onWhite() {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        int[] row = new int[width];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                row[x] = overWhite(pixel(x, y));
            }
            image.setRGB(0, y, width, 1, row, 0, width);
        }
        return image;
    }

    private static int overWhite(int argb) {
        int alpha = argb >>> 24;
        int red = over(argb >> 16 & 255, alpha);
        int green = over(argb >> 8 & 255, alpha);
        int blue = over(argb & 255, alpha);
        return red << 16 | green << 8 | blue;
    }

    private static int over(int value, int alpha) {
        return 255 - ((255 - value) * alpha + 127) / 255;
    }
}

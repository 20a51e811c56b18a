package jackwork.drawing;

import java.util.Arrays;

/**
 * How much of each pixel is subject and not background, 0 to 255, with a bare ring around the picture. Along an
 * edge that was drawn smooth the values say where in the pixel it runs.
 */
record Coverage(int width, int height, byte[] values) {

    /** What tells the subject from its background. */
    enum By {
        ALPHA,
        BACKGROUND,
        DARKNESS
    }

    /** Differences up to this are grain or compression, of 255: a guess. */
    private static final int GRAIN = 24;

    /** An edge drawn smooth is two or three pixels wide. */
    private static final int REACH = 2;

    /** Of the border's pixels, so many may show the subject where it is cut off there. */
    private static final double MOST_OTHER = 0.4;

    /** At a pixel of the picture; x and y may be -1 and one past the end. */
    int at(int x, int y) {
        return values[(y + 1) * width + x + 1] & 255;
    }

    /** Alpha where there is any transparency, else difference from the background. */
    static By usual(Picture picture) {
        for (int y = 0; y < picture.height(); y++) {
            for (int x = 0; x < picture.width(); x++) {
                if (picture.pixel(x, y) >>> 24 < 128) {
                    return By.ALPHA;
                }
            }
        }
        return By.BACKGROUND;
    }

    static Coverage of(Picture picture, By by) {
        Coverage coverage = new Coverage(
                picture.width() + 2, picture.height() + 2, new byte[(picture.width() + 2) * (picture.height() + 2)]);
        int background = by == By.BACKGROUND ? background(picture) : 0;
        for (int y = 0; y < picture.height(); y++) {
            for (int x = 0; x < picture.width(); x++) {
                int pixel = picture.pixel(x, y);
                int value = switch (by) {
                    case ALPHA -> pixel >>> 24;
                    case BACKGROUND -> difference(pixel, background);
                    case DARKNESS -> 255 - luma(pixel);
                };
                coverage.values[(y + 1) * coverage.width + x + 1] = (byte) value;
            }
        }
        return by == By.BACKGROUND ? coverage.againstNeighbours() : coverage;
    }

    /**
     * Near the background each value as a share of what the subject usually is there, so that a pale subject's edge
     * is found half-way between its own colour and the background's, whatever darker lines run up to it.
     */
    private Coverage againstNeighbours() {
        byte[] shares = new byte[values.length];
        int[] window = new int[(2 * REACH + 1) * (2 * REACH + 1)];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                shares[y * width + x] = (byte) share(x, y, window);
            }
        }
        return new Coverage(width, height, shares);
    }

    private int share(int x, int y, int[] window) {
        int here = values[y * width + x] & 255;
        if (here == 0) {
            return 0;
        }
        int subject = 0;
        int seen = 0;
        for (int row = Math.max(0, y - REACH); row <= Math.min(height - 1, y + REACH); row++) {
            for (int column = Math.max(0, x - REACH); column <= Math.min(width - 1, x + REACH); column++) {
                int value = values[row * width + column] & 255;
                seen++;
                if (value > GRAIN) {
                    window[subject++] = value;
                }
            }
        }
        if (subject == 0 || subject == seen) {
            return subject == 0 ? 0 : 255;
        }
        Arrays.sort(window, 0, subject);
        return Math.min(255, here * 255 / window[subject / 2]);
    }

    /** The middle value of the border's pixels, channel by channel. */
    private static int background(Picture picture) {
        int[] border = border(picture);
        int colour = 0xff;
        for (int shift = 16; shift >= 0; shift -= 8) {
            colour = colour << 8 | middle(border, shift);
        }
        int found = colour;
        long other = Arrays.stream(border)
                .filter(pixel -> difference(pixel, found) > GRAIN)
                .count();
        if (other > MOST_OTHER * border.length) {
            throw new PictureException(
                    picture.name(),
                    "has no one colour along its border (" + other + " of " + border.length
                            + " pixels there differ from the commonest), so its background cannot be told;"
                            + " make the background transparent, or trace by darkness");
        }
        return found;
    }

    private static int middle(int[] border, int shift) {
        int[] counts = new int[256];
        for (int pixel : border) {
            counts[pixel >> shift & 255]++;
        }
        int value = 0;
        for (int below = counts[0]; below <= border.length / 2; below += counts[value]) {
            value++;
        }
        return value;
    }

    private static int[] border(Picture picture) {
        int width = picture.width();
        int height = picture.height();
        int[] border = new int[2 * (width + height)];
        for (int x = 0; x < width; x++) {
            border[2 * x] = picture.pixel(x, 0);
            border[2 * x + 1] = picture.pixel(x, height - 1);
        }
        for (int y = 0; y < height; y++) {
            border[2 * (width + y)] = picture.pixel(0, y);
            border[2 * (width + y) + 1] = picture.pixel(width - 1, y);
        }
        return border;
    }

    /** Greatest of the three channels' differences. */
    private static int difference(int pixel, int other) {
        return Math.max(
                Math.abs((pixel & 255) - (other & 255)),
                Math.max(
                        Math.abs((pixel >> 8 & 255) - (other >> 8 & 255)),
                        Math.abs((pixel >> 16 & 255) - (other >> 16 & 255))));
    }

    /** ITU-R BT.601's weights. */
    private static int luma(int pixel) {
        return (299 * (pixel >> 16 & 255) + 587 * (pixel >> 8 & 255) + 114 * (pixel & 255) + 500) / 1000;
    }
}

package jackwork.demo;

import java.awt.Color;
import java.awt.Shape;
import java.awt.image.BufferedImage;

/** The heron's feathers; lower left corners and widths as in its figure.yaml, whose origin is at (72, 150). */
final class HeronPictures {

    private HeronPictures() {}

    /** Rows of feathers from tail to breast, each over the one behind it; at the breast long thin ones. */
    static BufferedImage body() {
        Brush brush = new Brush(-2, 40, 113, 62, "#8d98a0", 11);
        brush.shade(Brush.faded("#4f5b66", 0.5), 60, 40, 0, 80);
        for (double x = -6; x < 92; x += 5.2) {
            double share = (x + 6) / 98;
            int row = 0;
            for (double y = 38; y < 104; y += 4.6) {
                double at = y + (Math.round(x / 5.2) % 2 == 0 ? 0 : 2.3) + brush.between(-0.4, 0.4);
                feather(brush, x + brush.between(-0.6, 0.6), at, 12 - 3 * share, share, row++);
            }
        }
        for (int i = 0; i < 70; i++) {
            double x = brush.between(88, 112);
            double y = brush.between(38, 92);
            double length = brush.between(7, 13);
            String colour = i % 5 == 0 ? "#5a6067" : i % 2 == 0 ? "#f1efe9" : "#d9d9d4";
            brush.line(colour, brush.between(0.35, 0.7), x, y, x - 1.6, y + length / 2, x - 4.4, y + length);
        }
        return brush.image();
    }

    /** Its tip points back to the tail, to the left; the quill is light. */
    private static void feather(Brush brush, double x, double y, double length, double share, int row) {
        double half = length * 0.24;
        Shape shape = Brush.round(
                x - length / 2,
                y + 1.6,
                x - length * 0.2,
                y - half + 0.8,
                x + length * 0.35,
                y - half * 0.7,
                x + length / 2,
                y,
                x + length * 0.35,
                y + half * 0.9,
                x - length * 0.2,
                y + half + 0.8);
        Color base = brush.varied(Brush.between("#77848f", "#d3d7d8", share), 0.045);
        brush.fill(shape, base);
        brush.draw(shape, Brush.faded(row % 2 == 0 ? "#46505a" : "#57616a", 0.7), 0.22);
        brush.line("#e8eaea", 0.28, x + length * 0.4, y, x - length * 0.1, y + 0.3, x - length * 0.42, y + 1.3);
    }

    /** White cheek, black crest, yellow eye and bill. */
    static BufferedImage head() {
        Brush brush = new Brush(60, -3, 97, 38, "#eceeec", 12);
        brush.hatch(Brush.faded("#9aa5ab", 0.5), 260, 3, 165, 14, 0.25);
        brush.glow(Brush.faded("#ffffff", 0.9), 100, 22, 14);
        // The crest runs from over the eye to the nape and on.
        brush.fill(
                Brush.round(
                        60, 4, 74, 4.2, 88, 5.4, 100, 7.6, 108, 9.8, 112.6, 12.6, 106, 13.2, 98, 11.6, 88, 9.6, 74, 8.4,
                        60, 8.6),
                "#23282e");
        for (int i = 0; i < 26; i++) {
            double x = brush.between(62, 104);
            double y = 5.6 + (x - 62) * 0.08 + brush.between(-0.6, 2.2);
            brush.line(i % 3 == 0 ? "#4a525b" : "#111519", 0.25, x, y, x + 4, y + 0.5, x + 7, y + 1.4);
        }
        // The bill, darker along its ridge, and where it parts.
        brush.fill(Brush.straight(118, 12.6, 157, 28.4, 157, 34, 118, 27), "#dba33c");
        brush.fill(Brush.straight(118, 12.6, 157, 28.4, 157, 30, 118, 16), "#b37a2a");
        brush.line("#7c5320", 0.4, 117.6, 19.4, 128, 21.4, 138, 24, 150, 28);
        for (int i = 0; i < 22; i++) {
            double x = brush.between(112, 119);
            double y = brush.between(13.4, 25);
            brush.line("#d8dcd8", 0.4, x, y, x + 2.6, y + 0.6, x + 4.6, y + 1.6);
        }
        brush.dot("#e6c04a", 110.4, 12.2, 2.5);
        brush.dot("#14171a", 110.7, 12.2, 1.25);
        brush.dot("#ffffff", 111.2, 11.7, 0.4);
        brush.draw(Brush.circle(110.4, 12.2, 2.5), Color.decode("#3a3f44"), 0.3);
        return brush.image();
    }
}

package jackwork.demo;

import java.awt.Color;
import java.awt.Shape;
import java.awt.image.BufferedImage;

/** The lamplighter's light, face and coat, in the millimetres of his figure.svg. */
final class LamplighterPictures {

    private LamplighterPictures() {}

    /** A flame that lights all of its glass. */
    static BufferedImage glow() {
        Brush brush = new Brush(18, 44, 32, 52, "#f0b93a", 21);
        brush.glow(Brush.faded("#fff3c0", 1), 34, 69, 15);
        for (int i = 0; i < 24; i++) {
            double turn = Math.toRadians(15 * i + brush.between(-2, 2));
            double from = brush.between(8, 9.5);
            double to = brush.between(12, 18);
            brush.draw(
                    Brush.straight(
                            34 + from * Math.cos(turn), 69 + from * Math.sin(turn),
                            34 + to * Math.cos(turn), 69 + to * Math.sin(turn)),
                    Brush.faded("#fff7d6", 0.7),
                    0.5);
        }
        brush.fill(
                Brush.round(34.4, 58.6, 37, 64.4, 39, 69.4, 37.6, 74, 34, 76, 30.4, 74, 29, 69.4, 31, 65), "#ef7d22");
        brush.fill(
                Brush.round(34.2, 63.4, 36.2, 67.6, 37.2, 71, 36, 74, 34, 75, 32, 74, 30.9, 71, 32.2, 67.6), "#fbc441");
        brush.fill(Brush.round(34.1, 68.4, 35.3, 71.6, 34.9, 74, 34, 74.6, 33.1, 74, 32.8, 71.6), "#fffbe6");
        brush.fill(Brush.box(33, 75.6, 35, 79), "#4b3a2b");
        return brush.image();
    }

    /** A cold nose, a warm cheek, and a moustache to be proud of. */
    static BufferedImage face() {
        Brush brush = new Brush(93, 33, 36, 42, "#ecc29a", 22);
        brush.shade(Brush.faded("#b27f56", 0.45), 108, 50, 128, 58);
        brush.glow(Brush.faded("#d9694f", 0.75), 99.4, 56, 4.4);
        brush.glow(Brush.faded("#dd7d62", 0.6), 110.6, 57, 4.6);
        brush.fill(Brush.round(115.6, 36, 120, 36, 125.6, 37, 126, 46, 123.6, 50.6, 119.6, 50.8, 117, 47.6), "#5a3d28");
        for (int i = 0; i < 40; i++) {
            double x = brush.between(116, 124);
            double y = brush.between(37, 47);
            brush.line(i % 2 == 0 ? "#3e2918" : "#7a573b", 0.25, x, y, x + 0.8, y + 1.8, x + 0.6, y + 3.4);
        }
        ear(brush, 119.8, 54);
        brush.dot("#ffffff", 107, 53.4, 1.9);
        brush.dot("#2b241f", 106.5, 53.5, 1.05);
        brush.dot("#ffffff", 106.1, 53, 0.35);
        brush.line("#4b3321", 1, 103.8, 50.6, 106.4, 49, 110, 50.2);
        brush.line("#a2653f", 0.45, 109.6, 55.6, 110.8, 55.2, 111.6, 54.4);
        moustache(brush);
        return brush.image();
    }

    private static void moustache(Brush brush) {
        Shape shape = Brush.round(
                101.2, 60, 103.4, 58.4, 106.2, 58.6, 108.6, 59.8, 111.6, 60, 115.4, 57.6, 114.4, 61, 111.4, 62.6, 108,
                62.4, 104.4, 62.2);
        brush.fill(shape, "#5a3d28");
        for (int i = 0; i < 24; i++) {
            double x = 102 + i * 0.46;
            brush.line(
                    i % 2 == 0 ? "#7a573b" : "#3e2918",
                    0.22,
                    x,
                    59.6 + brush.between(-0.4, 0.4),
                    x + 0.6,
                    60.8,
                    x + 1.6,
                    61.4);
        }
        brush.line("#8a4a39", 0.5, 105.4, 63.6, 108, 64, 110.4, 63.6);
    }

    /** Middle of the ear, seen from the left. */
    static void ear(Brush brush, double x, double y) {
        Shape shape = Brush.round(
                x - 2.2, y - 1.4, x, y - 3, x + 2.2, y - 1.6, x + 1.8, y + 1.4, x - 0.4, y + 3.2, x - 1.6, y + 1.6);
        brush.fill(shape, "#e3b189");
        brush.draw(shape, Color.decode("#9d6a45"), 0.35);
        brush.line("#9d6a45", 0.35, x + 1, y - 1.2, x - 0.4, y - 1.4, x - 0.4, y + 0.6);
    }

    /** Blue twill with brass buttons, patched once. */
    static BufferedImage coat() {
        Brush brush = new Brush(86, 58, 60, 74, "#44618c", 23);
        brush.hatch(Brush.faded("#6681a8", 0.55), 900, 2.4, 58, 3, 0.2);
        brush.hatch(Brush.faded("#2c426a", 0.5), 700, 2.4, 58, 3, 0.2);
        brush.shade(Brush.faded("#16264a", 0.6), 116, 90, 146, 96);
        for (double[] fold : new double[][] {{129.4, 86, 130, 100, 133.8, 128}, {122.6, 90, 123.6, 106, 124.8, 126}}) {
            brush.line("#263a62", 0.8, fold);
        }
        brush.line("#263a62", 0.6, 107.6, 71, 106.4, 90, 104.4, 128);
        brush.fill(Brush.straight(108, 60, 120, 60, 123, 74, 116.6, 79, 109.4, 73, 106.6, 86, 105, 74), "#35507c");
        brush.line("#22355c", 0.5, 109.4, 72, 112, 75, 116.6, 79, 123, 74);
        for (double y : new double[] {92, 100, 108, 116}) {
            double x = 108.9 - (y - 92) * 0.055;
            brush.dot("#8b6a24", x, y, 1.5);
            brush.dot("#e2bd57", x - 0.15, y - 0.15, 1.15);
            brush.dot("#fff0bf", x - 0.5, y - 0.5, 0.35);
        }
        brush.fill(Brush.straight(116.4, 104.2, 126.2, 103.2, 126.6, 107.2, 116.6, 108.2), "#35507c");
        brush.line("#22355c", 0.4, 116.4, 104.2, 121, 103.6, 126.2, 103.2);
        brush.fill(Brush.straight(98, 114, 103.4, 113.4, 103.8, 119, 98.2, 119.4), "#7a5a6b");
        for (int i = 0; i < 5; i++) {
            brush.line("#f0e2c4", 0.3, 97.4, 114.6 + i, 98.8, 114.6 + i);
            brush.line("#f0e2c4", 0.3, 103, 114 + i, 104.4, 114 + i);
        }
        return brush.image();
    }
}

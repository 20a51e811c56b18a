package jackwork.demo;

import java.awt.Color;
import java.awt.Shape;
import java.awt.image.BufferedImage;

/** The cobbler's workshop, his face and his apron, in the millimetres of his figure.svg. */
final class CobblerPictures {

    private CobblerPictures() {}

    /** Plaster, a window on the marsh, tools on their rail, and boots that wait on a shelf. */
    static BufferedImage workshop() {
        Brush brush = new Brush(29, 16, 112, 133, "#e3d2ac", 41);
        brush.hatch(Brush.faded("#f2e6c8", 0.6), 500, 4, 20, 60, 0.6);
        brush.hatch(Brush.faded("#c7b188", 0.5), 400, 3, 20, 60, 0.4);
        brush.shade(Brush.faded("#6d5230", 0.4), 96, 50, 144, 70);
        window(brush);
        tools(brush);
        brush.fill(Brush.box(116, 50, 141, 52.2), "#7a5836");
        for (double x : new double[] {118.4, 127}) {
            boot(brush, x, 50, x < 120 ? "#4b3a2b" : "#7d3326");
        }
        for (double y = 112; y < 150; y += 8) {
            brush.fill(Brush.box(29, y, 141, y + 7.6), brush.varied("#a88557", 0.03));
            brush.line("#6f5331", 0.5, 29, y, 141, y);
            for (double x = 29 + (y % 16) * 1.4; x < 141; x += 23) {
                brush.line("#6f5331", 0.4, x, y, x, y + 7.6);
            }
        }
        return brush.image();
    }

    private static void window(Brush brush) {
        Shape pane = Brush.arch(42, 38.4, 70, 66);
        brush.fill(pane, "#b9dbe6");
        brush.fill(Brush.round(46, 46, 50, 44.4, 54, 45.4, 58, 46.6, 52, 47.6), "#ffffff");
        brush.glow(Brush.faded("#ffe9a0", 1), 64, 47, 5);
        brush.fill(Brush.box(42, 58, 70, 66), "#7fb0b8");
        for (int i = 0; i < 16; i++) {
            double x = brush.between(43, 68);
            double y = brush.between(59, 65);
            brush.line("#d9eef0", 0.3, x, y, x + 1.4, y - 0.3, x + 2.8, y);
        }
        for (int i = 0; i < 26; i++) {
            double x = 43 + i * 1.05;
            double tip = brush.between(53.4, 58.6);
            brush.line(i % 2 == 0 ? "#5b7a3a" : "#7f9a4e", 0.45, x, 66, x + 0.4, 61, x + brush.between(-0.6, 1.2), tip);
            if (i % 4 == 1) {
                brush.line("#6b4224", 1.1, x + 0.5, tip + 0.6, x + 0.5, tip + 2.8);
            }
        }
        brush.draw(pane, Color.decode("#7a5836"), 1.6);
        brush.line("#7a5836", 1, 56, 38.4, 56, 52, 56, 66);
        brush.line("#7a5836", 1, 42, 53, 56, 53, 70, 53);
        brush.fill(Brush.box(39.6, 66, 72.4, 68.8), "#8d6a43");
    }

    private static void tools(Brush brush) {
        brush.fill(Brush.box(72, 26.8, 90, 28.6), "#7a5836");
        brush.fill(Brush.box(75.4, 29, 77, 52), "#b58a54");
        brush.fill(Brush.box(72.4, 30.4, 80, 34.8), "#77808a");
        brush.fill(Brush.round(84, 29, 85.6, 35, 84, 42, 82.4, 35), "#aab3ba");
        brush.fill(Brush.round(84, 41, 85.6, 44, 85.2, 51, 84, 52.4, 82.8, 51, 82.4, 44), "#8a4a33");
    }

    /** Standing on its sole at y, heel to the left. */
    private static void boot(Brush brush, double x, double y, String colour) {
        Shape boot = Brush.round(
                x, y - 11.5, x + 4, y - 11.5, x + 4.2, y - 5.4, x + 8, y - 3.6, x + 8.4, y - 1, x + 4, y - 0.9, x,
                y - 0.9, x - 0.2, y - 5);
        brush.fill(boot, colour);
        brush.fill(Brush.box(x - 0.2, y - 1.3, x + 8.4, y - 0.1), "#2e231a");
        for (int i = 0; i < 3; i++) {
            brush.line("#e7d6b0", 0.3, x + 2.8, y - 9.4 + 2 * i, x + 4.2, y - 9 + 2 * i);
        }
    }

    /** Spectacles, and a nose that has seen weather. */
    static BufferedImage face() {
        Brush brush = new Brush(83, 27, 39, 43, "#e9bd94", 42);
        brush.shade(Brush.faded("#a86f48", 0.4), 102, 46, 120, 54);
        brush.glow(Brush.faded("#cf5a45", 0.85), 89, 50, 4.6);
        brush.glow(Brush.faded("#dd7d62", 0.6), 100.4, 52.4, 4);
        LamplighterPictures.ear(brush, 113, 47.4);
        for (int i = 0; i < 60; i++) {
            double x = brush.between(108, 117);
            double y = brush.between(33, 43);
            brush.line(i % 2 == 0 ? "#e9e5da" : "#bdb8ab", 0.3, x, y, x + 0.4, y + 1.6, x - 0.2, y + 3.2);
        }
        brush.dot("#ffffff", 97.4, 46.4, 1.9);
        brush.dot("#2b241f", 96.9, 46.6, 1);
        brush.dot("#ffffff", 96.5, 46.2, 0.35);
        brush.fill(Brush.circle(97.4, 46.4, 3.3), Brush.faded("#e2f0f2", 0.35));
        brush.draw(Brush.circle(97.4, 46.4, 3.4), Color.decode("#8a6a2c"), 0.7);
        brush.line("#8a6a2c", 0.6, 100.8, 46.2, 106, 45.2, 111.6, 44.6);
        brush.line("#8a6a2c", 0.6, 94.2, 45.4, 92.6, 44.6, 91, 45.2);
        brush.line("#e9e5da", 1.2, 94.4, 41.6, 97.4, 40.6, 100.4, 41.8);
        brush.line("#a2653f", 0.5, 88.6, 51.6, 89.8, 50.7, 91.4, 51.6);
        return brush.image();
    }

    /** Leather with a pocket, stitched all round, and what the work has left on it. */
    static BufferedImage apron() {
        Brush brush = new Brush(87, 90, 47, 59, "#8f6233", 43);
        brush.hatch(Brush.faded("#a97a45", 0.5), 500, 2, 80, 70, 0.3);
        brush.hatch(Brush.faded("#6c4520", 0.45), 400, 2, 80, 70, 0.25);
        for (int i = 0; i < 7; i++) {
            brush.glow(
                    Brush.faded("#5a3717", 0.45), brush.between(92, 128), brush.between(100, 144), brush.between(2, 5));
        }
        brush.shade(Brush.faded("#3f2610", 0.5), 112, 110, 134, 114);
        brush.fill(Brush.straight(96, 112, 114.4, 113, 113.6, 126.4, 97, 125.4), "#7d5329");
        stitches(brush, 97, 113.2, 97.8, 124.4);
        stitches(brush, 97.8, 124.4, 112.8, 125.4);
        stitches(brush, 112.8, 125.4, 113.4, 114);
        stitches(brush, 92.6, 97.6, 124.6, 97.4);
        stitches(brush, 92, 143.4, 129, 143.4);
        brush.line("#b9bec2", 0.8, 102, 118, 102, 110.4, 102, 108.6);
        brush.line("#8a4a33", 1.6, 102, 112.4, 102, 117);
        return brush.image();
    }

    private static void stitches(Brush brush, double x1, double y1, double x2, double y2) {
        double length = Math.hypot(x2 - x1, y2 - y1);
        for (double at = 0; at < length; at += 2) {
            double from = at / length;
            double to = Math.min(1, (at + 1.2) / length);
            brush.line(
                    "#e6cf9b",
                    0.35,
                    x1 + (x2 - x1) * from,
                    y1 + (y2 - y1) * from,
                    x1 + (x2 - x1) * to,
                    y1 + (y2 - y1) * to);
        }
    }
}

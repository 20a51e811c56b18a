package jackwork.demo;

import java.awt.Color;
import java.awt.Shape;
import java.awt.image.BufferedImage;

/** The mill's boards, its shingles and the miller, in the millimetres of its figure.svg. */
final class WindmillPictures {

    private WindmillPictures() {}

    /** Weathered boards, each a little other than the next, with nails and white frames. */
    static BufferedImage wall() {
        Brush brush = new Brush(42, 47, 88, 82, "#a9bdb8", 31);
        double[] edges = {46, 58, 66, 74, 82, 90, 98, 106, 114, 121, 130};
        for (int i = 0; i + 1 < edges.length; i++) {
            double top = edges[i];
            double bottom = edges[i + 1];
            brush.fill(Brush.box(40, top, 132, bottom), brush.varied("#a9bdb8", 0.035));
            for (int j = 0; j < 34; j++) {
                double x = brush.between(40, 128);
                double y = brush.between(top + 0.8, bottom - 0.8);
                brush.line(
                        j % 3 == 0 ? "#c6d4cf" : "#8fa6a1",
                        0.2,
                        x,
                        y,
                        x + 4,
                        y + brush.between(-0.2, 0.2),
                        x + brush.between(6, 12),
                        y + brush.between(-0.3, 0.3));
            }
            brush.line("#6d8681", 0.55, 40, bottom, 132, bottom);
            brush.line("#cddad5", 0.35, 40, top + 0.6, 132, top + 0.6);
            for (double x : new double[] {55, 96, 117}) {
                brush.dot("#6a5f55", x + brush.between(-0.4, 0.4), top + 2.6, 0.45);
            }
        }
        brush.shade(Brush.faded("#33504d", 0.35), 90, 60, 130, 84);
        frame(brush, 60, 85.6, 89.2, 119.6);
        frame(brush, 100.4, 93.4, 116.8, 115);
        brush.fill(Brush.box(97, 115, 120.4, 117.8), "#f3eee0");
        // Red flowers on the sill.
        for (double x = 98.6; x < 120; x += 1.5) {
            brush.line("#4e7a3f", 0.5, x, 118.4, x + brush.between(-0.8, 0.8), 116);
            brush.dot(brush.chance.nextBoolean() ? "#c63d2e" : "#e2694e", x, brush.between(115.2, 116.6), 0.75);
        }
        return brush.image();
    }

    /** A frame two millimetres wide round an arched opening. */
    private static void frame(Brush brush, double left, double top, double right, double foot) {
        Shape frame = Brush.arch(left - 2, top - 2, right + 2, foot);
        brush.fill(frame, "#f3eee0");
        brush.draw(frame, Color.decode("#7d8d86"), 0.4);
    }

    /** Rows of shingles, moss where it is damp. */
    static BufferedImage roof() {
        Brush brush = new Brush(40, 22, 92, 45, "#7d3d2d", 32);
        int row = 0;
        for (double y = 66; y > 20; y -= 4.2) {
            for (double x = 38 + (row % 2 == 0 ? 0 : 2.3); x < 134; x += 4.6) {
                Shape shingle = Brush.round(
                        x, y - 5.6, x + 4.4, y - 5.6, x + 4.5, y - 1.4, x + 3.4, y + 0.4, x + 2.2, y + 0.8, x + 1,
                        y + 0.4, x - 0.1, y - 1.4);
                brush.fill(shingle, brush.varied("#a2543d", 0.07));
                brush.draw(shingle, Color.decode("#5f2b20"), 0.3);
            }
            row++;
        }
        for (int i = 0; i < 60; i++) {
            brush.dot(
                    i % 2 == 0 ? "#7c8a4c" : "#96a160",
                    brush.between(42, 64),
                    brush.between(50, 66),
                    brush.between(0.3, 0.8));
        }
        return brush.image();
    }

    /** He has flour on his cap. */
    static BufferedImage miller() {
        Brush brush = new Brush(93, 86, 32, 37, "#3b3029", 33);
        brush.fill(Brush.round(97, 124, 97, 116, 102, 112.6, 109, 111.8, 116, 112.6, 121, 116, 121, 124), "#e9e6dc");
        brush.fill(
                Brush.round(
                        102, 103, 103.4, 97.4, 109, 95.6, 114.6, 97.4, 116, 103, 114.4, 110, 109, 114.4, 103.6, 110),
                "#ecc29a");
        brush.glow(Brush.faded("#d9694f", 0.65), 104.8, 107, 2.6);
        brush.glow(Brush.faded("#d9694f", 0.65), 113.2, 107, 2.6);
        Shape beard = Brush.round(
                102, 106, 103.6, 109, 106, 108.8, 109, 109.4, 112, 108.8, 114.4, 109, 116, 106, 115.4, 112, 112.6,
                116.2, 109, 117.4, 105.4, 116.2, 102.6, 112);
        brush.fill(beard, "#c9873f");
        for (int i = 0; i < 34; i++) {
            double x = brush.between(103.4, 114.6);
            double y = brush.between(109.4, 113);
            brush.line(i % 2 == 0 ? "#a5672b" : "#e0a862", 0.25, x, y, x + brush.between(-0.4, 0.4), y + 2.4);
        }
        brush.line("#8d3f30", 0.6, 106.4, 110.8, 109, 112, 111.6, 110.8);
        brush.fill(
                Brush.round(100, 99.8, 101, 96, 102, 92, 109, 89.4, 116, 92, 117, 96, 118, 99.8, 109, 98.4), "#f3f0e6");
        brush.line("#b9b3a2", 0.5, 100.4, 98.8, 109, 97.2, 117.6, 98.8);
        for (double x : new double[] {105.4, 112.2}) {
            brush.dot("#ffffff", x, 103.6, 1.35);
            brush.dot("#2b241f", x, 103.8, 0.8);
            brush.dot("#ffffff", x - 0.3, 103.4, 0.25);
            brush.line("#a5672b", 0.6, x - 1.8, 101.4, x, 100.6, x + 1.8, 101.4);
        }
        brush.fill(Brush.round(108.9, 103.4, 110.4, 106.6, 108.9, 108, 107.3, 106.6), "#dd9a76");
        return brush.image();
    }
}

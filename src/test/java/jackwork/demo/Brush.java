package jackwork.demo;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.LinearGradientPaint;
import java.awt.Paint;
import java.awt.RadialGradientPaint;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.Random;

/** Paints one picture in the millimetres of a figure's drawing, y down; what looks like chance is seeded. */
final class Brush {

    /** Enough for a home printer, dots an inch. */
    private static final double DPI = 200;

    private static final double DOTS = DPI / 25.4;

    private final Graphics2D graphics;
    private final BufferedImage image;
    private final Rectangle2D sheet;
    final Random chance;

    /** A picture with its upper left corner at x, y of the drawing, all of it in one colour. */
    Brush(double x, double y, double width, double height, String ground, long seed) {
        sheet = new Rectangle2D.Double(x, y, width, height);
        image = new BufferedImage(
                (int) Math.round(width * DOTS), (int) Math.round(height * DOTS), BufferedImage.TYPE_INT_RGB);
        graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.scale(image.getWidth() / width, image.getHeight() / height);
        graphics.translate(-x, -y);
        chance = new Random(seed);
        fill(sheet, Color.decode(ground));
    }

    BufferedImage image() {
        return image;
    }

    void fill(Shape shape, Paint paint) {
        graphics.setPaint(paint);
        graphics.fill(shape);
    }

    void fill(Shape shape, String colour) {
        fill(shape, Color.decode(colour));
    }

    /** A line through the points. */
    void line(String colour, double width, double... points) {
        draw(through(false, points), Color.decode(colour), width);
    }

    void draw(Shape shape, Color colour, double width) {
        graphics.setPaint(colour);
        graphics.setStroke(new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        graphics.draw(shape);
    }

    void dot(String colour, double x, double y, double radius) {
        fill(circle(x, y, radius), colour);
    }

    /** Darker towards one side: from clear to this shade, along the line between the two points. */
    void shade(Color shade, double x1, double y1, double x2, double y2) {
        fill(
                sheet,
                new LinearGradientPaint(
                        new Point2D.Double(x1, y1), new Point2D.Double(x2, y2), new float[] {0, 1}, new Color[] {
                            faded(shade, 0), shade
                        }));
    }

    /** A round glow, full in the middle and clear at the rim. */
    void glow(Color colour, double x, double y, double radius) {
        fill(
                circle(x, y, radius),
                new RadialGradientPaint(new Point2D.Double(x, y), (float) radius, new float[] {0, 1}, new Color[] {
                    colour, faded(colour, 0)
                }));
    }

    /** Short strokes all over, leaning by chance about one direction: hair, plaster, cloth. */
    void hatch(Color colour, int count, double length, double degrees, double spread, double width) {
        for (int i = 0; i < count; i++) {
            double x = between(sheet.getMinX(), sheet.getMaxX());
            double y = between(sheet.getMinY(), sheet.getMaxY());
            double turn = Math.toRadians(degrees + between(-spread, spread));
            double reach = length * between(0.6, 1.2);
            draw(
                    through(false, x, y, x + reach * Math.cos(turn), y + reach * Math.sin(turn)),
                    colour,
                    width * between(0.7, 1.2));
        }
    }

    double between(double low, double high) {
        return low + (high - low) * chance.nextDouble();
    }

    /** Lighter or darker by chance, by up to this share of full. */
    Color varied(String colour, double share) {
        Color base = Color.decode(colour);
        double by = 255 * between(-share, share);
        return new Color(bound(base.getRed() + by), bound(base.getGreen() + by), bound(base.getBlue() + by));
    }

    /** From one colour, at 0, to another, at 1. */
    static String between(String from, String to, double share) {
        Color a = Color.decode(from);
        Color b = Color.decode(to);
        return String.format(
                "#%02x%02x%02x",
                bound(a.getRed() + (b.getRed() - a.getRed()) * share),
                bound(a.getGreen() + (b.getGreen() - a.getGreen()) * share),
                bound(a.getBlue() + (b.getBlue() - a.getBlue()) * share));
    }

    static Color faded(Color colour, double opacity) {
        return new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), (int) Math.round(255 * opacity));
    }

    static Color faded(String colour, double opacity) {
        return faded(Color.decode(colour), opacity);
    }

    private static int bound(double value) {
        return (int) Math.max(0, Math.min(255, Math.round(value)));
    }

    static Shape circle(double x, double y, double radius) {
        return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
    }

    static Shape box(double x1, double y1, double x2, double y2) {
        return new Rectangle2D.Double(x1, y1, x2 - x1, y2 - y1);
    }

    /** Straight sides and half an oval over them. */
    static Shape arch(double left, double top, double right, double foot) {
        double shoulder = top + (right - left) * 0.45;
        Path2D path = new Path2D.Double();
        path.append(new Arc2D.Double(left, top, right - left, 2 * (shoulder - top), 0, 180, Arc2D.OPEN), false);
        path.lineTo(left, foot);
        path.lineTo(right, foot);
        path.closePath();
        return path;
    }

    /** Straight from point to point, closed. */
    static Shape straight(double... points) {
        Path2D path = new Path2D.Double();
        path.moveTo(points[0], points[1]);
        for (int i = 2; i < points.length; i += 2) {
            path.lineTo(points[i], points[i + 1]);
        }
        path.closePath();
        return path;
    }

    /** A round shape through the points. */
    static Shape round(double... points) {
        return through(true, points);
    }

    /** A smooth curve through the points: at each, along the line between its neighbours. */
    private static Path2D through(boolean closed, double... points) {
        int count = points.length / 2;
        Path2D path = new Path2D.Double();
        path.moveTo(points[0], points[1]);
        for (int i = 0; i < (closed ? count : count - 1); i++) {
            int before = closed ? (i + count - 1) % count : Math.max(0, i - 1);
            int next = (i + 1) % count;
            int after = closed ? (i + 2) % count : Math.min(count - 1, i + 2);
            path.curveTo(
                    points[2 * i] + (points[2 * next] - points[2 * before]) / 6,
                    points[2 * i + 1] + (points[2 * next + 1] - points[2 * before + 1]) / 6,
                    points[2 * next] - (points[2 * after] - points[2 * i]) / 6,
                    points[2 * next + 1] - (points[2 * after + 1] - points[2 * i + 1]) / 6,
                    points[2 * next],
                    points[2 * next + 1]);
        }
        if (closed) {
            path.closePath();
        }
        return path;
    }
}

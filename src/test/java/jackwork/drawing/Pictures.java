package jackwork.drawing;

import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;

/** Pictures of known shapes, drawn by Java2D. */
public final class Pictures {

    enum Look {
        TRANSPARENT,
        HARD,
        ON_COLOUR,
        PALE_ON_WHITE,
        BLACK_ON_WHITE,
        SHADED
    }

    private Pictures() {}

    public static byte[] onColour(Outline outline, double dpi) throws IOException {
        return png(outline, Look.ON_COLOUR, dpi);
    }

    /** @param outline mm from the picture's lower left corner, y up */
    static byte[] png(Outline outline, Look look, double dpi) throws IOException {
        double scale = dpi / 25.4;
        int width = (int) Math.ceil((outline.bounds().maxX() + 4) * scale);
        int height = (int) Math.ceil((outline.bounds().maxY() + 4) * scale);
        boolean clear = look == Look.TRANSPARENT || look == Look.HARD;
        BufferedImage image = new BufferedImage(
                width,
                height,
                clear
                        ? BufferedImage.TYPE_INT_ARGB
                        : look == Look.PALE_ON_WHITE ? BufferedImage.TYPE_BYTE_GRAY : BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(
                RenderingHints.KEY_ANTIALIASING,
                look == Look.HARD ? RenderingHints.VALUE_ANTIALIAS_OFF : RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        if (!clear) {
            g.setColor(look == Look.ON_COLOUR ? new Color(0x2f6f9f) : Color.WHITE);
            g.fillRect(0, 0, width, height);
        }
        g.transform(new AffineTransform(scale, 0, 0, -scale, 0, height));
        g.setColor(
                switch (look) {
                    case ON_COLOUR -> new Color(0xe8c890);
                    case PALE_ON_WHITE -> new Color(0xb4b4b4);
                    case BLACK_ON_WHITE -> Color.BLACK;
                    default -> new Color(0x606a70);
                });
        if (look == Look.SHADED) {
            g.setPaint(new GradientPaint(0, 0, new Color(0x404850), 60, 90, new Color(0xc8ccd0)));
        }
        Path2D path = path(outline);
        g.fill(path);
        if (look == Look.SHADED) {
            g.clip(path);
            g.setColor(new Color(0x202020));
            g.setStroke(new BasicStroke(0.4f));
            for (double x = 0; x < 200; x += 4) {
                g.draw(new Line2D.Double(x, 0, x + 30, 200));
            }
        }
        g.dispose();
        return png(image);
    }

    public static byte[] plain(int width, int height, Color colour) throws IOException {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(colour);
        g.fillRect(0, 0, width, height);
        g.dispose();
        return png(image);
    }

    static byte[] noise(int width, int height) throws IOException {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Random random = new Random(1);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                image.setRGB(x, y, random.nextInt(1 << 24));
            }
        }
        return png(image);
    }

    static byte[] png(BufferedImage image) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "png", out);
        return out.toByteArray();
    }

    /** The same file with a pHYs chunk after its header. */
    static byte[] withDensity(byte[] png, int perMetre) {
        byte[] data = ByteBuffer.allocate(9)
                .putInt(perMetre)
                .putInt(perMetre)
                .put((byte) 1)
                .array();
        return with(png, "pHYs", data);
    }

    /** The same file with another chunk after its header. */
    static byte[] with(byte[] png, String name, byte[] data) {
        byte[] word = name.getBytes(StandardCharsets.US_ASCII);
        CRC32 sum = new CRC32();
        sum.update(word);
        sum.update(data);
        return ByteBuffer.allocate(png.length + 12 + data.length)
                .put(png, 0, 33)
                .putInt(data.length)
                .put(word)
                .put(data)
                .putInt((int) sum.getValue())
                .put(png, 33, png.length - 33)
                .array();
    }

    static Path2D path(Outline outline) {
        Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        List<List<Point>> rings = new ArrayList<>(outline.holes());
        rings.add(outline.outer());
        for (List<Point> ring : rings) {
            path.moveTo(ring.get(0).x(), ring.get(0).y());
            ring.subList(1, ring.size()).forEach(p -> path.lineTo(p.x(), p.y()));
            path.closePath();
        }
        return path;
    }

    static List<List<Point>> rings(Shape shape) {
        List<List<Point>> rings = new ArrayList<>();
        double[] at = new double[6];
        for (PathIterator i = shape.getPathIterator(null); !i.isDone(); i.next()) {
            switch (i.currentSegment(at)) {
                case PathIterator.SEG_MOVETO -> rings.add(new ArrayList<>(List.of(new Point(at[0], at[1]))));
                case PathIterator.SEG_LINETO -> rings.get(rings.size() - 1).add(new Point(at[0], at[1]));
                default -> {
                    List<Point> ring = rings.get(rings.size() - 1);
                    if (ring.get(0).distance(ring.get(ring.size() - 1)) < 1e-9) {
                        ring.remove(ring.size() - 1);
                    }
                }
            }
        }
        return rings;
    }
}

package jackwork.make;

import jackwork.drawing.BookletWriter.Note;
import jackwork.drawing.BookletWriter.Picture;
import jackwork.drawing.BookletWriter.Shape;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.parts.Part;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The pictures beside the steps of the glue-up. */
final class GlueUpPictures {

    private static final int NEW = 0xe8c98f;
    private static final int STANDING = 0xefefef;

    private GlueUpPictures() {}

    /** What goes on now, on what stands already. */
    static Picture of(List<Part> now, List<Part> standing) {
        List<Shape> shapes = new ArrayList<>();
        List<Note> notes = new ArrayList<>();
        standing.forEach(part -> shapes.add(shape(part, STANDING, true)));
        Map<Integer, Integer> shade = new LinkedHashMap<>();
        for (Part part : now) {
            int tone = shade.merge(part.layer(), shade.size(), (a, b) -> a);
            shapes.add(shape(part, darker(tone, now.size()), false));
        }
        if (now.size() <= 3) {
            now.forEach(part -> notes.add(new Note(part.section().centroid(), part.name())));
        }
        return new Picture(shapes, notes);
    }

    /** Layers further forward are lighter. */
    private static int darker(int tone, int of) {
        double share = 0.78 + 0.22 * (of <= 1 ? 1 : (double) tone / (of - 1));
        int red = (int) ((NEW >> 16) * share);
        int green = (int) ((NEW >> 8 & 255) * share);
        int blue = (int) ((NEW & 255) * share);
        return red << 16 | green << 8 | blue;
    }

    private static Shape shape(Part part, int fill, boolean faint) {
        return new Shape(rings(part.outline()), fill, faint);
    }

    static List<List<Point>> rings(Outline outline) {
        List<List<Point>> rings = new ArrayList<>();
        rings.add(outline.outer());
        rings.addAll(outline.holes());
        return rings;
    }

    /** The panels side by side, as they lie with their numbers up. */
    static Picture panels(Case housing) {
        List<Shape> shapes = new ArrayList<>();
        List<Note> notes = new ArrayList<>();
        double x = 0;
        double y = 0;
        double row = 0;
        for (Panel panel : housing.panels()) {
            Outline face = panel.insideUp() ? panel.outline() : panel.outline().mirrored();
            var size = face.bounds();
            if (x > 0 && x + size.width() > 520) {
                x = 0;
                y -= row + 10;
                row = 0;
            }
            Outline moved = face.moved(new Point(x - size.minX(), y - size.maxY()));
            shapes.add(new Shape(rings(moved), NEW, false));
            notes.add(new Note(moved.centroid(), Integer.toString(panel.number())));
            x += size.width() + 10;
            row = Math.max(row, size.height());
        }
        return new Picture(shapes, notes);
    }
}

package jackwork.design;

import jackwork.drawing.Drawing;
import jackwork.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What of a design can be changed by a number or a place: found by walking what its files were read into, so
 * that whatever a file may say can be changed. Paths are those of a design's {@code change}.
 *
 * @param points by where they are
 */
public record Adjustable(List<Setting> numbers, List<Spot> points) {

    /**
     * @param path {@code figure.weights.tail.mass}
     * @param field what may be written there
     */
    public record Setting(String path, double value, Field field) {

        public String unit() {
            return field.unit();
        }

        /** Whether only whole numbers go. */
        public boolean whole() {
            return field.whole();
        }
    }

    /**
     * Places that are one and the same point of a file and move together: a pin and the string's end tied to it.
     *
     * @param paths of all that are there
     * @param at mm, in the common frame
     */
    public record Spot(List<String> paths, Point at) {}

    /** Closer together than this, mm, is the same point. */
    private static final double SAME = 1e-6;
    /** Both files name them, or they belong to what is printed or cut for the case. */
    private static final Set<String> HELD = Set.of("mounts", "pictures", "case");

    public static Adjustable of(Design design) {
        Gathered box = new Gathered(design, true);
        Walk.over(design.box(), "box", box);
        Gathered figure = new Gathered(design, false);
        Walk.over(design.figure(), "figure", figure);
        List<Setting> numbers = new ArrayList<>(box.numbers);
        numbers.addAll(figure.numbers);
        List<Spot> points = new ArrayList<>(box.points());
        points.addAll(figure.points());
        return new Adjustable(List.copyOf(numbers), List.copyOf(points));
    }

    /** A point of the common frame as the box's or the figure's file writes it. */
    public static String words(Design design, String path, Point at) {
        Point own = path.startsWith("figure.") ? at.minus(design.figureShift()) : at;
        return "[" + DesignEdit.words(own.x()) + ", " + DesignEdit.words(own.y()) + "]";
    }

    /** Gathers one file's numbers and points. */
    private static final class Gathered implements Walk.Visitor {

        private final Design design;
        private final boolean ofBox;
        private final Drawing drawing;
        private final List<Setting> numbers = new ArrayList<>();
        private final List<Spot> spots = new ArrayList<>();
        private final List<Spot> held = new ArrayList<>();

        Gathered(Design design, boolean ofBox) {
            this.design = design;
            this.ofBox = ofBox;
            this.drawing = ofBox ? design.boxDrawing() : design.figureDrawing();
        }

        @Override
        public void value(String path, String entry, Word word, @Nullable Object value) {
            if (word.leaf() == Place.class && !word.isList()) {
                point((Place) value, path, word.isOwnCircle() ? entry : "");
            } else if (value instanceof Number number && !word.key().equals("format")) {
                numbers.add(new Setting(path, number.doubleValue(), Field.of(word)));
            }
        }

        private void point(@Nullable Place place, String path, String fallback) {
            if (place == null && drawing.circle(fallback).isEmpty()) {
                return;
            }
            Point at = ofBox ? design.inBox(place, fallback) : design.inFigure(place, fallback);
            boolean stays = HELD.contains(path.split("\\.", 3)[1]);
            add(stays ? held : spots, path, at);
        }

        private static void add(List<Spot> among, String path, Point at) {
            for (Spot spot : among) {
                if (spot.at.distance(at) < SAME) {
                    spot.paths.add(path);
                    return;
                }
            }
            among.add(new Spot(new ArrayList<>(List.of(path)), at));
        }

        /** Without those that a mount or a picture stands on as well. */
        List<Spot> points() {
            return spots.stream()
                    .filter(spot -> held.stream().noneMatch(other -> other.at.distance(spot.at) < SAME))
                    .toList();
        }
    }
}

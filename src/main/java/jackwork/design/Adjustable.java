package jackwork.design;

import jackwork.drawing.Drawing;
import jackwork.geometry.Point;
import jackwork.stock.Uncertain;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What of a design can be changed by a number or a place: found by walking the records that its files were read into, so
 * that whatever a file may say can be changed. Paths are those of a design's {@code change}.
 *
 * @param points by where they are
 */
public record Adjustable(List<Setting> numbers, List<Spot> points) {

    /**
     * @param path {@code figure.weights.tail.mass}
     * @param whole whether only whole numbers go
     */
    public record Setting(String path, double value, String unit, boolean whole) {}

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
    /** Words that stand for the circle with the entry's own name where nothing is written. */
    private static final Set<String> OWN_CIRCLE = Set.of("at", "peg");

    public static Adjustable of(Design design) {
        Walk box = new Walk(design, true);
        box.walk(design.box(), "box", "");
        Walk figure = new Walk(design, false);
        figure.walk(design.figure(), "figure", "");
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

    /** Walks one file's records. */
    private static final class Walk {

        private final Design design;
        private final boolean ofBox;
        private final Drawing drawing;
        private final List<Setting> numbers = new ArrayList<>();
        private final List<Spot> spots = new ArrayList<>();
        private final List<Spot> held = new ArrayList<>();

        Walk(Design design, boolean ofBox) {
            this.design = design;
            this.ofBox = ofBox;
            this.drawing = ofBox ? design.boxDrawing() : design.figureDrawing();
        }

        /** @param entry name of the entry of a section that this stands in */
        void walk(Record record, String path, String entry) {
            for (RecordComponent component : record.getClass().getRecordComponents()) {
                String key = Binder.key(component);
                Unit unit = component.getAnnotation(Unit.class);
                visit(value(record, component), component.getType(), unit, path + "." + key, key, entry);
            }
        }

        private void visit(
                @Nullable Object value, Class<?> type, @Nullable Unit unit, String path, String key, String entry) {
            if (type == Place.class) {
                point((Place) value, path, OWN_CIRCLE.contains(key) ? entry : "");
            } else if (value instanceof Double number) {
                numbers.add(new Setting(path, number, unit == null ? "1" : unit.value(), false));
            } else if (value instanceof Integer number && !key.equals("format")) {
                numbers.add(new Setting(path, number, "1", true));
            } else if (value instanceof Map<?, ?> map) {
                map.forEach((name, inner) -> {
                    if (inner instanceof Record record) {
                        walk(record, path + "." + name, String.valueOf(name));
                    }
                });
            } else if (value instanceof List<?> list) {
                for (int i = 0; i < list.size(); i++) {
                    if (list.get(i) instanceof Record record && !(record instanceof Place)) {
                        walk(record, path + "." + i, "");
                    }
                }
            } else if (value instanceof Record record && !(value instanceof Uncertain)) {
                walk(record, path, entry);
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

        private static @Nullable Object value(Record record, RecordComponent component) {
            try {
                component.getAccessor().setAccessible(true);
                return component.getAccessor().invoke(record);
            } catch (IllegalAccessException | InvocationTargetException e) {
                throw new IllegalStateException(Objects.toString(component), e);
            }
        }
    }
}

package jackwork.drawing;

import jackwork.geometry.Circle;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A drawing that was drawn again held against what it was: which outline is which part, which circle which point; by id
 * where the new file has the old ids, else by shape and place, so that all pairs together are most alike.
 *
 * @param shift to add to the new drawing's points: its page may have another corner
 * @param parts by the old id
 * @param points by the old id
 * @param cost of all pairs and of those without one: the smaller, the more alike are the two drawings
 */
public record Redrawing(Point shift, Map<String, Part> parts, Map<String, Spot> points, double cost) {

    /** More outlines than this are not held against each other. */
    public static final int MOST_SHAPES = 400;

    /** Closer than this is the same place, mm: what a vector editor's rounding leaves. */
    static final double SAME_PLACE = 0.1;

    /**
     * An old outline in the new drawing.
     *
     * @param key of the new outline
     * @param shift how far its centroid was moved, mm, after the whole drawing's shift
     * @param angle by which it was turned, rad
     * @param overlap share of the common area once that is undone
     */
    public record Part(String key, boolean byId, Point shift, double angle, double overlap) {}

    /** @param key of the new circle */
    public record Spot(String key, boolean byId) {}

    public static Redrawing of(Map<String, Outline> outlines, Map<String, Circle> circles, Candidates now) {
        Map<String, Outline> plain = new LinkedHashMap<>();
        outlines.forEach((id, outline) -> plain.put(id, withoutBores(outline)));
        return new RedrawMatcher(plain, circles, now).match();
    }

    /** As new outlines are offered: small round holes are points of their own. */
    private static Outline withoutBores(Outline outline) {
        List<List<Point>> holes =
                outline.holes().stream().filter(hole -> bore(hole).isEmpty()).toList();
        return holes.size() == outline.holes().size() ? outline : Outline.of(outline.outer(), holes);
    }

    private static Optional<Circle> bore(List<Point> hole) {
        return new Contour(hole, true, true)
                .circle()
                .filter(circle -> circle.diameter() <= SvgCandidates.LARGEST_PIVOT);
    }

    /** The small round hole of an outline about a point, when there is one. */
    public static Optional<Circle> boreAt(Outline outline, Point middle) {
        return outline.holes().stream()
                .flatMap(hole -> bore(hole).stream())
                .filter(circle -> circle.centre().distance(middle) < SAME_PLACE)
                .findFirst();
    }

    /** Where a point of an old outline went when that was moved; itself when the outline was not found again. */
    public Point carried(String id, Outline old, Point point) {
        Part part = parts.get(id);
        return part == null
                ? point
                : Likeness.carried(point, old.centroid(), new Likeness.Move(part.shift(), part.angle()));
    }

    /**
     * The same with the pairs that the maker chose.
     *
     * @param newParts keys of new outlines by the old id; empty for none. What is not named stays.
     * @param newPoints keys of new circles by the old id, likewise
     */
    public Redrawing as(
            Map<String, Outline> outlines,
            Map<String, String> newParts,
            Map<String, String> newPoints,
            Candidates now) {
        Map<String, Part> otherParts = new LinkedHashMap<>(parts);
        newParts.forEach((id, key) -> {
            Part before = parts.get(id);
            Outline old = outlines.get(id);
            if (key.isEmpty()) {
                otherParts.remove(id);
            } else if (old != null && (before == null || !before.key().equals(key))) {
                now.shapes().stream()
                        .filter(shape -> shape.key().equals(key))
                        .findFirst()
                        .ifPresent(shape -> otherParts.put(id, part(withoutBores(old), shape, false, shift)));
            }
        });
        Map<String, Spot> otherPoints = new LinkedHashMap<>(points);
        newPoints.forEach((id, key) -> {
            Spot before = points.get(id);
            if (key.isEmpty()) {
                otherPoints.remove(id);
            } else if (before == null || !before.key().equals(key)) {
                otherPoints.put(id, new Spot(key, false));
            }
        });
        return new Redrawing(shift, Map.copyOf(otherParts), Map.copyOf(otherPoints), cost);
    }

    private static Part part(Outline old, Candidates.Shape shape, boolean byId, Point shift) {
        return part(shape, byId, Likeness.of(old, shape.outline().moved(shift)));
    }

    static Part part(Candidates.Shape shape, boolean byId, Likeness likeness) {
        return new Part(
                shape.key(), byId, likeness.move().shift(), likeness.move().angle(), likeness.overlap());
    }
}

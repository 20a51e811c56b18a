package jackwork.drawing;

import jackwork.geometry.Circle;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** Pairs the outlines and points of an old drawing with those of a new one. */
final class RedrawMatcher {

    /** A point that went farther than this from where it should be is another one, mm. */
    private static final double FARTHEST_POINT = 8;

    private final Map<String, Outline> outlines;
    private final Map<String, Circle> circles;
    private final Candidates now;
    private final Map<String, Redrawing.Part> parts = new LinkedHashMap<>();
    private final Map<String, Redrawing.Spot> points = new LinkedHashMap<>();
    private final Set<String> taken = new LinkedHashSet<>();
    private double cost;

    RedrawMatcher(Map<String, Outline> outlines, Map<String, Circle> circles, Candidates now) {
        this.outlines = outlines;
        this.circles = circles;
        this.now = now;
    }

    Redrawing match() {
        Point shift = shift();
        byId(shift);
        byShape(shift);
        pointsById();
        Redrawing soFar = new Redrawing(shift, parts, points, cost);
        pointsByPlace(soFar);
        return new Redrawing(shift, Map.copyOf(parts), Map.copyOf(points), cost);
    }

    /** The shift of the whole drawing under which most outlines stand where they stood; none when it has a say. */
    private Point shift() {
        boolean anchored = circles.containsKey(SvgReader.ORIGIN)
                && now.rounds().stream().anyMatch(round -> round.id().equals(SvgReader.ORIGIN));
        if (anchored) {
            return Point.ORIGIN;
        }
        List<Middle> before = outlines.values().stream().map(Middle::of).toList();
        List<Middle> after =
                now.shapes().stream().map(shape -> Middle.of(shape.outline())).toList();
        List<Point> votes = new ArrayList<>(List.of(Point.ORIGIN));
        for (Middle old : before) {
            after.stream().filter(old::isAlike).forEach(found -> votes.add(old.at.minus(found.at)));
        }
        return votes.stream()
                .limit(Redrawing.MOST_SHAPES)
                .max(Comparator.comparingLong((Point vote) -> standing(before, after, vote))
                        .thenComparing(vote -> -vote.length()))
                .orElse(Point.ORIGIN);
    }

    private static long standing(List<Middle> before, List<Middle> after, Point shift) {
        return before.stream()
                .filter(old -> after.stream()
                        .anyMatch(found ->
                                old.isAlike(found) && found.at.plus(shift).distance(old.at) < Redrawing.SAME_PLACE))
                .count();
    }

    /** What an outline is told apart by at first sight. */
    private record Middle(double area, Point at) {

        static Middle of(Outline outline) {
            return new Middle(outline.area(), outline.centroid());
        }

        boolean isAlike(Middle other) {
            return Math.min(area, other.area) > 0.97 * Math.max(area, other.area);
        }
    }

    private void byId(Point shift) {
        for (Map.Entry<String, Outline> old : outlines.entrySet()) {
            shape(shape -> shape.id().equals(old.getKey())).ifPresent(shape -> {
                Likeness likeness = Likeness.of(old.getValue(), shape.outline().moved(shift));
                pair(old.getKey(), shape, true, likeness);
            });
        }
    }

    private Optional<Candidates.Shape> shape(Predicate<Candidates.Shape> wanted) {
        return now.shapes().stream().filter(wanted).findFirst();
    }

    private void pair(String id, Candidates.Shape shape, boolean byId, Likeness likeness) {
        parts.put(id, Redrawing.part(shape, byId, likeness));
        taken.add(shape.key());
        cost += likeness.cost();
    }

    private void byShape(Point shift) {
        List<String> old =
                outlines.keySet().stream().filter(id -> !parts.containsKey(id)).toList();
        List<Candidates.Shape> free = now.shapes().stream()
                .filter(shape -> !taken.contains(shape.key()))
                .limit(Redrawing.MOST_SHAPES)
                .toList();
        Likeness[][] likeness = new Likeness[old.size()][free.size()];
        double[][] costs = new double[old.size()][free.size()];
        for (int i = 0; i < old.size(); i++) {
            Outline was = Objects.requireNonNull(outlines.get(old.get(i)));
            for (int j = 0; j < free.size(); j++) {
                likeness[i][j] = Likeness.of(was, free.get(j).outline().moved(shift));
                costs[i][j] = likeness[i][j].cost();
            }
        }
        int[] columns = Assignment.of(costs, Likeness.MOST);
        for (int i = 0; i < columns.length; i++) {
            if (columns[i] >= 0) {
                pair(old.get(i), free.get(columns[i]), false, likeness[i][columns[i]]);
            } else {
                cost += Likeness.MOST;
            }
        }
    }

    private void pointsById() {
        circles.keySet()
                .forEach(id -> now.rounds().stream()
                        .filter(round -> round.id().equals(id))
                        .findFirst()
                        .ifPresent(round -> {
                            points.put(id, new Redrawing.Spot(round.key(), true));
                            taken.add(round.key());
                        }));
    }

    /** A point is looked for where it was, and where the parts that it lay in have gone. */
    private void pointsByPlace(Redrawing soFar) {
        List<String> old = circles.keySet().stream()
                .filter(id -> !points.containsKey(id) && !id.equals(SvgReader.ORIGIN))
                .toList();
        List<Candidates.Round> free = now.rounds().stream()
                .filter(round -> !taken.contains(round.key()))
                .limit(Redrawing.MOST_SHAPES)
                .toList();
        double[][] costs = new double[old.size()][free.size()];
        for (int i = 0; i < old.size(); i++) {
            Circle circle = Objects.requireNonNull(circles.get(old.get(i)));
            List<Point> places = places(circle.centre(), soFar);
            for (int j = 0; j < free.size(); j++) {
                Circle other = free.get(j).circle();
                Point at = other.centre().plus(soFar.shift());
                double far = places.stream()
                        .mapToDouble(place -> place.distance(at))
                        .min()
                        .orElse(FARTHEST_POINT);
                costs[i][j] = far + 0.2 * Math.min(2, Math.abs(other.radius() - circle.radius()));
            }
        }
        int[] columns = Assignment.of(costs, FARTHEST_POINT);
        for (int i = 0; i < columns.length; i++) {
            if (columns[i] >= 0) {
                points.put(old.get(i), new Redrawing.Spot(free.get(columns[i]).key(), false));
            }
        }
    }

    private List<Point> places(Point was, Redrawing soFar) {
        List<Point> places = new ArrayList<>(List.of(was));
        outlines.forEach((id, outline) -> {
            if (outline.contains(was)) {
                places.add(soFar.carried(id, outline, was));
            }
        });
        return places;
    }
}

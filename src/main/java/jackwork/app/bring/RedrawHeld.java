package jackwork.app.bring;

import jackwork.app.wire.Pair;
import jackwork.drawing.Candidates;
import jackwork.drawing.Drawing;
import jackwork.drawing.Redrawing;
import jackwork.geometry.Circle;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** An old drawing and a new one, with what belongs together. */
final class RedrawHeld {

    /** Less than this is the same place, mm. */
    private static final double SAME_PLACE = 0.05;

    /** Overlap above which an outline is the same. */
    private static final double SAME_SHAPE = 0.998;

    private static final double SAME_ANGLE = Math.toRadians(0.2);

    private final Drawing old;
    private final Candidates now;
    private final Redrawing found;
    private final double scale;

    RedrawHeld(Drawing old, Candidates now, Redrawing found, double scale) {
        this.old = old;
        this.now = now;
        this.found = found;
        this.scale = scale;
    }

    /** With other pairs where the maker says so. */
    RedrawHeld as(Map<String, String> parts, Map<String, String> points) {
        return new RedrawHeld(old, now, found.as(old.outlines(), parts, points, now), scale);
    }

    Drawing old() {
        return old;
    }

    double scale() {
        return scale;
    }

    Redrawing found() {
        return found;
    }

    /** Whether the new file has every old id and stands where the old one stood: it can be kept as it is. */
    boolean isSameFile() {
        return scale == 1
                && found.shift().length() < 1e-6
                && found.parts().keySet().containsAll(old.outlines().keySet())
                && found.parts().values().stream().allMatch(Redrawing.Part::byId)
                && old.circles().keySet().stream()
                        .allMatch(id -> now.rounds().stream()
                                .anyMatch(round -> round.id().equals(id)))
                && found.points().values().stream().allMatch(Redrawing.Spot::byId);
    }

    Optional<Outline> outline(String key) {
        return now.shapes().stream()
                .filter(shape -> shape.key().equals(key))
                .map(shape -> shape.outline().moved(found.shift()))
                .findFirst();
    }

    Optional<Point> round(String key) {
        return now.rounds().stream()
                .filter(round -> round.key().equals(key))
                .map(round -> round.circle().centre().plus(found.shift()))
                .findFirst();
    }

    /** Circles that are cut out of a new outline, by their keys. */
    Map<String, Circle> cutOuts(String key) {
        Map<String, Circle> cut = new LinkedHashMap<>();
        now.rounds().stream()
                .filter(round -> round.key().matches(java.util.regex.Pattern.quote(key) + "h[0-9]+"))
                .forEach(round -> cut.put(round.key(), round.circle().moved(found.shift())));
        return cut;
    }

    List<Candidates.Open> lines() {
        return now.lines();
    }

    Redrawn.RedrawnPart part(String name) {
        Outline was = old.outline(name).orElseThrow();
        Redrawing.Part part = found.parts().get(name);
        if (part == null) {
            return new Redrawn.RedrawnPart(
                    name, Redrawn.Change.GONE, "", "not found; it stays as it was", rings(was), null);
        }
        Outline is = outline(part.key()).orElseThrow();
        List<String> words = new ArrayList<>();
        Redrawn.Change change = Redrawn.Change.SAME;
        if (part.overlap() < SAME_SHAPE) {
            change = Redrawn.Change.RESHAPED;
            words.add(String.format(Locale.ROOT, "reshaped, %.0f %% the same", 100 * part.overlap()));
        }
        if (Math.abs(part.angle()) > SAME_ANGLE) {
            change = change == Redrawn.Change.SAME ? Redrawn.Change.TURNED : change;
            words.add(String.format(Locale.ROOT, "turned by %.0f°", Math.toDegrees(part.angle())));
        }
        if (part.shift().length() > SAME_PLACE) {
            change = change == Redrawn.Change.SAME ? Redrawn.Change.MOVED : change;
            words.add(
                    String.format(Locale.ROOT, "moved by %.1f mm", part.shift().length()));
        }
        return new Redrawn.RedrawnPart(
                name,
                change,
                part.key(),
                words.isEmpty() ? "as it was" : String.join(", ", words),
                rings(was),
                rings(is));
    }

    Redrawn.RedrawnPoint point(String name) {
        Point was = old.circle(name).map(Circle::centre).orElseThrow();
        Redrawing.Spot spot = found.points().get(name);
        if (spot == null) {
            return new Redrawn.RedrawnPoint(
                    name, Redrawn.Change.GONE, "", "not drawn; it goes with its part", Pair.of(was), Pair.of(was));
        }
        Point is = round(spot.key()).orElseThrow();
        boolean same = was.distance(is) <= SAME_PLACE;
        return new Redrawn.RedrawnPoint(
                name,
                same ? Redrawn.Change.SAME : Redrawn.Change.MOVED,
                spot.key(),
                same ? "as it was" : String.format(Locale.ROOT, "moved by %.1f mm", was.distance(is)),
                Pair.of(was),
                Pair.of(is));
    }

    List<Redrawn.RedrawnShape> added() {
        Set<String> taken =
                found.parts().values().stream().map(Redrawing.Part::key).collect(Collectors.toSet());
        return now.shapes().stream()
                .filter(shape -> !taken.contains(shape.key()))
                .map(shape -> new Redrawn.RedrawnShape(
                        shape.key(), rings(shape.outline().moved(found.shift()))))
                .toList();
    }

    private static List<List<Pair>> rings(Outline outline) {
        List<List<Pair>> rings = new ArrayList<>();
        rings.add(Pair.ring(outline.outer()));
        outline.holes().forEach(hole -> rings.add(Pair.ring(hole)));
        return rings;
    }
}

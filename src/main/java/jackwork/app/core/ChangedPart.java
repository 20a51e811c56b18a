package jackwork.app.core;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.check.Sentence;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.parts.Hole;
import jackwork.parts.Part;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A part that two states of a design have differently.
 *
 * @param mark its number in their pictures
 * @param how it differs, in words
 */
public record ChangedPart(int mark, String part, Sentence how) {

    /** Nearer than this is the same place, mm: finer than a laser cuts. */
    private static final double SAME = 0.02;

    /** The name by which parts of two states are laid beside each other: a box and its figure may use one name. */
    static String name(Part part) {
        return (part.ofBox() ? "box: " : "") + part.name();
    }

    public static Map<String, Part> byName(List<Part> parts) {
        Map<String, Part> named = new LinkedHashMap<>();
        parts.forEach(part -> named.putIfAbsent(name(part), part));
        return named;
    }

    public static List<ChangedPart> between(List<Part> before, List<Part> after) {
        Map<String, Part> then = byName(before);
        Map<String, Part> now = byName(after);
        List<ChangedPart> changed = new ArrayList<>();
        now.forEach((name, part) -> {
            Sentence how = how(then.remove(name), part);
            if (!how.isEmpty()) {
                changed.add(new ChangedPart(changed.size() + 1, name, how));
            }
        });
        then.keySet().forEach(gone -> changed.add(new ChangedPart(changed.size() + 1, gone, say("gone"))));
        return List.copyOf(changed);
    }

    private static Sentence how(@Nullable Part then, Part now) {
        if (then == null) {
            return say("new");
        }
        List<Sentence> ways = new ArrayList<>();
        Point from = then.drawn().bounds().centre();
        Point to = now.drawn().bounds().centre();
        Point by = to.minus(from);
        if (!same(then, now, Point.ORIGIN)) {
            ways.add(
                    same(then, now, by)
                            ? say("moved by {}", mm(by.length()).to(2))
                            : holesOnly(then, now) ? say("other holes") : say("another outline"));
        }
        if (then.layer() != now.layer()) {
            ways.add(say("layer {}, was {}", now.layer(), then.layer()));
        }
        if (!then.stock().equals(now.stock())) {
            ways.add(say("of {}, was of {}", now.stock(), then.stock()));
        }
        if (!Objects.equals(then.paint(), now.paint())) {
            ways.add(say("painted otherwise"));
        }
        return ways.stream().reduce((one, more) -> say("{}; {}", one, more)).orElse(Sentence.NOTHING);
    }

    private static boolean holesOnly(Part then, Part now) {
        return same(then.drawn(), now.drawn(), Point.ORIGIN);
    }

    private static boolean same(Part then, Part now, Point by) {
        return same(then.drawn(), now.drawn(), by) && sameHoles(then.holes(), now.holes(), by);
    }

    private static boolean sameHoles(List<Hole> then, List<Hole> now, Point by) {
        return then.size() == now.size()
                && then.stream()
                        .allMatch(hole -> now.stream()
                                .anyMatch(other -> Math.abs(hole.circle().radius()
                                                        - other.circle().radius())
                                                < SAME
                                        && near(
                                                hole.circle().centre(),
                                                other.circle().centre(),
                                                by)));
    }

    private static boolean same(Outline then, Outline now, Point by) {
        if (then.holes().size() != now.holes().size() || !sameRing(then.outer(), now.outer(), by)) {
            return false;
        }
        return then.holes().stream()
                .allMatch(hole -> now.holes().stream().anyMatch(other -> sameRing(hole, other, by)));
    }

    /** Wherever the ring begins. */
    private static boolean sameRing(List<Point> then, List<Point> now, Point by) {
        return then.size() == now.size()
                && then.stream().allMatch(point -> now.stream().anyMatch(other -> near(point, other, by)));
    }

    private static boolean near(Point then, Point now, Point by) {
        return now.minus(then).minus(by).length() < SAME;
    }
}

package jackwork.drawing;

import jackwork.geometry.Bounds;
import jackwork.geometry.Circle;
import jackwork.geometry.Outline;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds what was drawn more than once where one thing is meant: a shape's fill and its line, a pivot's rim and its hole.
 * Two parts alike in one place are rare, and the maker can ask for a second one.
 */
final class Twins {

    /** Share of the common area that two outlines of one shape have at least. */
    private static final double ALIKE = 0.95;

    /** How far their sides may be apart, as a share of the longest side; a line's width besides, mm. */
    private static final double SIDES = 0.01;

    private static final double LINE = 1.2;

    /** How far the middles of two circles of one pivot may be apart, mm. */
    private static final double SAME_MIDDLE = 0.2;

    /** Points of outlines laid on each other, all in all: many that are almost alike are a texture, not parts. */
    private static final long MOST_POINTS = 10_000_000;

    private long points;

    private Twins() {}

    /** Every shape once: the painted one of two, and as far in front as the front one. */
    static List<Candidates.Shape> shapes(List<Candidates.Shape> drawn) {
        return new Twins().once(drawn);
    }

    private List<Candidates.Shape> once(List<Candidates.Shape> drawn) {
        List<Candidates.Shape> once = new ArrayList<>();
        for (Candidates.Shape shape : drawn) {
            Optional<Candidates.Shape> twin = once.stream()
                    .filter(other -> alike(other.outline(), shape.outline()))
                    .findFirst();
            if (twin.isPresent()) {
                once.remove(twin.get());
                once.add(together(twin.get(), shape));
            } else {
                once.add(shape);
            }
        }
        return List.copyOf(once);
    }

    private static Candidates.Shape together(Candidates.Shape first, Candidates.Shape second) {
        boolean front = first.paint().isEmpty() && second.paint().isPresent();
        Candidates.Shape kept = front ? second : first;
        Candidates.Shape other = front ? first : second;
        String id = kept.id().isEmpty() ? other.id() : kept.id();
        return new Candidates.Shape(kept.key(), id, kept.outline(), kept.paint(), first.twins() + second.twins() + 1);
    }

    private boolean alike(Outline a, Outline b) {
        Bounds first = a.bounds();
        Bounds second = b.bounds();
        double apart = Math.max(
                Math.max(Math.abs(first.minX() - second.minX()), Math.abs(first.minY() - second.minY())),
                Math.max(Math.abs(first.maxX() - second.maxX()), Math.abs(first.maxY() - second.maxY())));
        if (apart > LINE + SIDES * Math.max(first.width(), first.height())) {
            return false;
        }
        double areas = Math.min(a.area(), b.area()) / Math.max(a.area(), b.area());
        points += a.outer().size() + b.outer().size();
        if (areas < ALIKE || points > MOST_POINTS) {
            return false;
        }
        double shared = a.sharedArea(b);
        return shared >= ALIKE * (a.area() + b.area() - shared);
    }

    /** Every pivot once: the smaller of two circles about one middle. */
    static List<Candidates.Round> rounds(List<Candidates.Round> drawn) {
        List<Candidates.Round> once = new ArrayList<>();
        for (Candidates.Round round : drawn) {
            int at = -1;
            for (int i = 0; i < once.size() && at < 0; i++) {
                Circle other = once.get(i).circle();
                at = other.centre().distance(round.circle().centre()) <= SAME_MIDDLE ? i : -1;
            }
            if (at < 0) {
                once.add(round);
            } else {
                once.set(at, together(once.get(at), round));
            }
        }
        return List.copyOf(once);
    }

    private static Candidates.Round together(Candidates.Round first, Candidates.Round second) {
        Circle smaller = first.circle().radius() <= second.circle().radius() ? first.circle() : second.circle();
        return new Candidates.Round(first.key(), first.id().isEmpty() ? second.id() : first.id(), smaller);
    }
}

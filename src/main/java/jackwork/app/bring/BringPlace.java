package jackwork.app.bring;

import jackwork.design.BoxDrawn;
import jackwork.geometry.Bounds;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.parts.Slot;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** Finds where things go that the maker has not said: the figure on its box, a rod's end on the lever, a free layer. */
final class BringPlace {

    /** Wood wanted round a hole's middle, mm. */
    static final double WOOD = 4;

    /** Shorter than this, an arm of the lever moves nothing much, mm. */
    private static final double LEAST_ARM = 15;

    private static final double STEP = 1;
    /** How high above its feet a figure is still looked at for wood at the mounts, mm. */
    private static final double FEET = 60;
    /** Paper between a figure without feet and the box, mm. */
    private static final double ABOVE = 6;

    private static final double POST_WIDTH = 16;

    private static final int LAST_LAYER = 15;

    private final BoxDrawn box;
    private final Outline lever;

    BringPlace(BoxDrawn box) {
        this.box = box;
        this.lever = outline(box.box().lever().part());
    }

    private Outline outline(String part) {
        String drawn = BoxDrawn.drawn(box.box(), part);
        return box.drawing().outline(drawn).orElseThrow(() -> new IllegalStateException("the box lacks " + drawn));
    }

    Outline lever() {
        return lever;
    }

    /**
     * A shift by which the standing outlines have wood at all mounts, as much as they can up to what is wanted, and
     * stand as low as they can; none when they cover no such place.
     */
    Optional<Point> stand(List<Outline> standing) {
        Point first = box.mounts().values().iterator().next();
        Point best = null;
        double bestScore = Double.NEGATIVE_INFINITY;
        for (Outline outline : standing) {
            Bounds bounds = outline.bounds();
            double middle = (bounds.minX() + bounds.maxX()) / 2;
            for (double y = bounds.minY() + 1; y <= Math.min(bounds.maxY(), bounds.minY() + FEET); y += STEP) {
                for (double x = bounds.minX() + 1; x <= bounds.maxX(); x += STEP) {
                    Point shift = first.minus(new Point(x, y));
                    double wood = wood(standing, shift);
                    double score = 20 * wood - (y - bounds.minY()) - 0.01 * Math.abs(x - middle);
                    if (wood > 0 && score > bestScore) {
                        best = shift;
                        bestScore = score;
                    }
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** Least wood round any mount, mm, up to what is wanted; 0 where one has none. */
    private double wood(List<Outline> standing, Point shift) {
        double least = WOOD;
        for (Point mount : box.mounts().values()) {
            Point at = mount.minus(shift);
            double most = 0;
            for (Outline outline : standing) {
                if (outline.contains(at)) {
                    most = Math.max(most, outline.distanceToEdge(at));
                }
            }
            least = Math.min(least, most);
            if (least == 0) {
                return 0;
            }
        }
        return least;
    }

    /** A shift for a figure that stands on posts: in the middle over the mounts, just above the box. */
    Point above(Bounds figure, double middle) {
        double x =
                box.mounts().values().stream().mapToDouble(Point::x).average().orElse(0);
        double top = box.box().works().parts().keySet().stream()
                .mapToDouble(part -> outline(part).bounds().maxY())
                .max()
                .orElse(0);
        return new Point(x - middle, top + ABOVE - figure.minY());
    }

    /**
     * Where a rod from a point above meets the lever: nearest to straight beneath, with wood all round.
     *
     * @param from in the box's frame
     * @param lifts whether the end must go up when the lever is pressed, else down
     */
    Optional<Point> leverPoint(Point from, boolean lifts) {
        double side = Math.signum(box.press().x() - box.pivot().x()) * (lifts ? -1 : 1);
        Bounds bounds = lever.bounds();
        Point best = null;
        double bestCost = Double.POSITIVE_INFINITY;
        for (double x = bounds.minX(); x <= bounds.maxX(); x += STEP) {
            for (double y = bounds.minY(); y <= bounds.maxY(); y += STEP) {
                Point at = new Point(x, y);
                if ((x - box.pivot().x()) * side < LEAST_ARM || !lever.contains(at)) {
                    continue;
                }
                double wood = Math.min(lever.distanceToEdge(at), WOOD);
                double cost = Math.abs(x - from.x()) - 3 * wood;
                if (wood > 0.8 * WOOD && cost < bestCost) {
                    best = at;
                    bestCost = cost;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /**
     * The layer nearest to a wanted one in which nothing is in an outline's way.
     *
     * @param figure of which each has an outline and a layer
     * @param shift from the figure's frame to the box's
     */
    int freeLayer(Outline outline, int wanted, Collection<BringFigure.Made> figure, Point shift) {
        Outline room = outline.offset(2);
        Outline onBox = room.moved(shift);
        for (int off = 0; off < LAST_LAYER; off++) {
            for (int layer : new int[] {wanted - off, wanted + off}) {
                int here = layer;
                boolean free = here >= 1
                        && figure.stream()
                                .noneMatch(made ->
                                        made.layer() == here && made.outline().overlaps(room))
                        && box.box().works().parts().entrySet().stream()
                                .noneMatch(part -> part.getValue().layer() == here
                                        && outline(part.getKey()).overlaps(onBox));
                if (free) {
                    return here;
                }
            }
        }
        return Math.max(1, wanted);
    }

    /** A foot over the mounts and a bar up to each pivot. */
    Outline post(List<Point> pivots, Point shift) {
        List<Point> feet =
                box.mounts().values().stream().map(mount -> mount.minus(shift)).toList();
        double left = feet.stream().mapToDouble(Point::x).min().orElse(0) - POST_WIDTH / 2;
        double right = feet.stream().mapToDouble(Point::x).max().orElse(0) + POST_WIDTH / 2;
        double low = feet.stream().mapToDouble(Point::y).min().orElse(0) - POST_WIDTH / 2;
        double high = feet.stream().mapToDouble(Point::y).max().orElse(0) + POST_WIDTH / 2;
        Outline post = Outline.rectangle(left, low, right, high);
        for (Point pivot : pivots) {
            double x = Math.max(left + POST_WIDTH / 2, Math.min(right - POST_WIDTH / 2, pivot.x()));
            Point foot = new Point(x, (low + high) / 2);
            if (foot.distance(pivot) > 1) {
                post = post.with(Slot.along(foot, pivot, POST_WIDTH));
            }
        }
        return post;
    }
}

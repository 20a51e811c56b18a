package jackwork.motion.coin;

import jackwork.geometry.Point;
import jackwork.motion.model.FoldedFigure;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.MechanismCompiler;
import jackwork.motion.model.MechanismKind;
import jackwork.motion.model.Rows;
import jackwork.motion.rest.PoseSolver;
import jackwork.motion.time.TimeLimits;
import jackwork.parts.Assembly;
import jackwork.parts.Part;
import jackwork.parts.RodRun;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * A piece made ready for cycles with any coin: its outlines as cut, and the figure folded into the lever where that
 * can be. Immutable.
 */
public final class CycleRig {

    final Assembly assembly;
    /** mm/s². */
    final Point gravity;

    final Optional<FoldedFigure> figure;
    /** Where the lever's and figure's bodies rest, when that is not as drawn: x, y, angle of each but the ground. */
    final Optional<double[]> rest;

    /** Parts of the box that something may touch, and their outlines as cut. */
    private final Map<Part, List<Point>> outlines = new LinkedHashMap<>();

    private final List<Rod> rods;

    final Circumstances circumstances;

    /**
     * How one piece came out and where it stands. Joints have no play in the motion: what touches is moved aside, once and
     * for all.
     *
     * @param kerf by which every part is smaller than drawn, mm, half of it all round
     * @param tilt of the table in the mechanism's plane, rad, counter-clockwise
     * @param leverAside how far the lever lies beside where it is drawn, in the play of its hole and with that hole, mm
     * @param bucketAside likewise
     * @param slips how far parts of lever and bucket slipped when they were glued up, by their name, mm
     * @param stopRebound share of the approach speed that comes back from what stops lever and bucket
     * @param stiction friction at rest, in frictions of what slides; 1 where they are alike
     */
    public record Circumstances(
            double kerf,
            double tilt,
            Point leverAside,
            Point bucketAside,
            Map<String, Point> slips,
            double stopRebound,
            double stiction) {

        /** As drawn, on a table that leans. */
        static Circumstances asDrawn(double kerf, double tilt) {
            return new Circumstances(kerf, tilt, Point.ORIGIN, Point.ORIGIN, Map.of(), MechanismKind.WOOD_ON_WOOD, 1);
        }
    }

    private CycleRig(Assembly assembly, Circumstances circumstances, boolean folds) {
        this.assembly = assembly;
        this.circumstances = circumstances;
        double kerf = circumstances.kerf;
        // A table turned counter-clockwise is lower on its left: seen from it, gravity turns clockwise.
        this.gravity = new Point(0, -Mechanism.GRAVITY).turned(-circumstances.tilt);
        this.figure = folds ? FigureFolding.of(assembly, gravity) : Optional.empty();
        this.rest = figure.isPresent() ? Optional.empty() : restOf(assembly, gravity);
        this.rods = List.copyOf(rods());
        for (Part part : assembly.parts()) {
            if (part.ofBox() && mayTouch(part)) {
                int body = assembly.bodyOf(part.name());
                Point by = aside(body).plus(circumstances.slips.getOrDefault(part.name(), Point.ORIGIN));
                List<Point> cut = part.drawn().offset(-kerf / 2).outerWithin(CoinLimits.OUTLINE);
                outlines.put(part, by.equals(Point.ORIGIN) ? cut : moved(cut, by));
            }
        }
    }

    private Point aside(int body) {
        return body == assembly.lever().body()
                ? circumstances.leverAside
                : body == assembly.coinWorks().bucket() ? circumstances.bucketAside : Point.ORIGIN;
    }

    /**
     * A rod that stands free in the coin's layer.
     *
     * @param name as findings call it
     * @param body that holds it; of a pivot's rod that which stands, if one does; of a peg that which carries it
     */
    public record Rod(String name, int body, Point at, double radius) {}

    /** All that no part of that layer is bored for: what is bored covers them. Of the figure's only the mounts reach there. */
    private List<Rod> rods() {
        List<Rod> free = new ArrayList<>();
        int layer = assembly.coinWorks().layer();
        Map<String, Part> parts = new HashMap<>();
        assembly.parts().forEach(part -> parts.put(part.name(), part));
        for (RodRun rod : assembly.rods()) {
            List<Part> holders = rod.parts().stream()
                    .map(parts::get)
                    .filter(Objects::nonNull)
                    .filter(Part::ofBox)
                    .toList();
            boolean passes = rod.from() <= layer && layer <= rod.to();
            boolean isPeg = rod.kind() == RodRun.Kind.PEG;
            if (isPeg && !holders.contains(parts.get(rod.parts().get(0)))) {
                continue; // the figure carries it
            }
            if (passes && !holders.isEmpty() && holders.stream().noneMatch(part -> part.layer() == layer)) {
                int body = holders.stream()
                        .limit(isPeg ? 1 : holders.size())
                        .mapToInt(part -> assembly.bodyOf(part.name()))
                        .min()
                        .orElseThrow();
                Point at = rod.at().plus(aside(body));
                free.add(new Rod(rod.words(), body, at, rod.radius()));
            }
        }
        return free;
    }

    private static List<Point> moved(List<Point> outline, Point by) {
        return outline.stream().map(by::plus).toList();
    }

    /**
     * A string shorter than its path as drawn pulls what it holds to another rest; so does a lever stopped elsewhere, and a hole
     * that came out beside where it is drawn.
     */
    private static Optional<double[]> restOf(Assembly assembly, Point gravity) {
        int[] number = new int[assembly.bodies().size()];
        Mechanism mechanism = MechanismCompiler.figure(assembly, number, true)
                .gravity(gravity)
                .build();
        Rows rows = new Rows(mechanism);
        rows.at(mechanism.drawnPose());
        boolean strained = false;
        for (int r = 0; r < rows.count; r++) {
            strained |= mechanism.pushesOnly[r]
                    ? rows.gap[r] < -TimeLimits.CLOSED
                    : Math.abs(rows.gap[r]) > TimeLimits.CLOSED;
        }
        if (!strained && assembly.lever().rest() == 0) {
            return Optional.empty();
        }
        double[] solved = new PoseSolver(mechanism).pose();
        double[] rest = new double[3 * (number.length - 1)];
        Arrays.fill(rest, Double.NaN);
        for (int body = 1; body < number.length; body++) {
            if (number[body] >= 0) {
                System.arraycopy(solved, 3 * number[body], rest, 3 * (body - 1), 3);
            }
        }
        return Optional.of(rest);
    }

    /** What is in the coin's layer; and what of lever and bucket is in a layer that they share. */
    private boolean mayTouch(Part part) {
        int lever = assembly.lever().body();
        int bucket = assembly.coinWorks().bucket();
        int body = assembly.bodyOf(part.name());
        int other = body == lever ? bucket : lever;
        boolean shared = (body == lever || body == bucket)
                && assembly.body(other).parts().stream().anyMatch(of -> of.layer() == part.layer());
        return shared || part.layer() == assembly.coinWorks().layer();
    }

    /**
     * @param kerf by which every part is smaller than drawn, mm, half of it all round
     * @param tilt of the table in the mechanism's plane, rad, counter-clockwise
     */
    public static CycleRig of(Assembly assembly, double kerf, double tilt) {
        return of(assembly, Circumstances.asDrawn(kerf, tilt));
    }

    /** A piece as it came out. */
    public static CycleRig of(Assembly assembly, Circumstances circumstances) {
        return new CycleRig(assembly, circumstances, true);
    }

    /** Whether the figure is folded into the lever, and no body of its own. */
    public boolean folds() {
        return figure.isPresent();
    }

    /** What is in the coin's layer: it may touch all of that. */
    public List<Part> coinTouches() {
        int layer = assembly.coinWorks().layer();
        return outlines.keySet().stream().filter(part -> part.layer() == layer).toList();
    }

    /** What stands free in the coin's layer: it may touch that as well. */
    public List<Rod> coinRods() {
        return rods;
    }

    /** Part of the lever and part of the bucket in one layer: there tooth and strut meet. */
    public record Pair(Part ofLever, Part ofBucket) {}

    /** All such pairs. */
    public List<Pair> catchTouches() {
        List<Pair> pairs = new ArrayList<>();
        for (Part ofLever : outlines.keySet()) {
            for (Part ofBucket : outlines.keySet()) {
                if (ofLever.layer() == ofBucket.layer()
                        && assembly.bodyOf(ofLever.name()) == assembly.lever().body()
                        && assembly.bodyOf(ofBucket.name())
                                == assembly.coinWorks().bucket()) {
                    pairs.add(new Pair(ofLever, ofBucket));
                }
            }
        }
        return pairs;
    }

    /**
     * The least way between lever and bucket as they rest, mm: between tooth and strut. Negative where one is in the other, so
     * that the strut does not get under the tooth; infinite where nothing is near.
     */
    public double catchRoom() {
        return CycleScene.of(this, List.of()).catchRoom();
    }

    /** Everything that may touch something. */
    public Set<Part> touching() {
        return Collections.unmodifiableSet(outlines.keySet());
    }

    /** One of those as cut, without its holes. */
    public List<Point> outline(Part touching) {
        return Objects.requireNonNull(outlines.get(touching));
    }

    /** Height of the bucket's lowest point as drawn, mm: a coin below it is in the box. */
    public static double lowest(Assembly assembly) {
        return assembly.body(assembly.coinWorks().bucket()).parts().stream()
                .flatMap(part -> part.drawn().outer().stream())
                .mapToDouble(Point::y)
                .min()
                .orElse(0);
    }

    /** With every body of the figure by itself, whether or not it could be folded. */
    public static CycleRig unfolded(Assembly assembly, double kerf, double tilt) {
        return new CycleRig(assembly, Circumstances.asDrawn(kerf, tilt), false);
    }
}

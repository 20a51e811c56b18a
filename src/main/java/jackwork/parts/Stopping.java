package jackwork.parts;

import jackwork.design.Design;
import jackwork.geometry.AboutPivot;
import jackwork.geometry.Bounds;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.geometry.Pose;
import jackwork.geometry.TurnedMeeting;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What wood or rod a body meets first when it turns to an end of its way; looked for in the layers that both are in, as
 * drawn. Case, weights, pictures and cloth are not looked at, nor what a third body does in the way, nor what overlaps it at the
 * other end of its way already.
 *
 * @param met what it meets first, up to {@link #BEYOND} past the end; null when nothing
 */
public record Stopping(TurningEnd end, @Nullable Obstacle met) {

    /** An end that is off by more than this is another end, rad. */
    public static final double OFF = Math.toRadians(0.3);

    /** Nearer than this it is the end wished itself, rad: rounds are met as polygons, {@link Borings#RIM} off at the most. */
    private static final double SAME = Math.toRadians(0.01);

    /** What is met so near to the end wished is the stop meant, though not where it should be, rad. */
    private static final double MEANT = Math.toRadians(1.5);

    /** On a shorter arm, mm, a small error of an edge is a large one of the angle: common practice, no source. */
    public static final double LEAST_ARM = 5;

    /** Where the push is less square to the way, as a share of the arm, friction may wedge the two: common practice, no source. */
    private static final double SQUARE = Math.sqrt(0.5);

    /** What shares more than this at the beginning of the way lies in one another, mm²; less, and it touches. */
    private static final double IN_IT = 0.05;

    /** How far past the end a stop is looked for, rad. */
    private static final double BEYOND = Math.toRadians(60);

    /**
     * @param own part or rod of what turns
     * @param by part or rod in its way
     * @param rods how many of the two are rods
     */
    public record Obstacle(String own, String by, int layer, int rods, TurnedMeeting meeting) {}

    /** @param distance mm, 0 where they overlap */
    public record Nearby(String own, String by, int layer, double distance) {}

    /** What lies in a layer. */
    private record Solid(String name, int layer, boolean rod, Outline outline, AboutPivot about) {

        boolean mayMeet(Solid other) {
            return layer == other.layer && about.mayMeet(other.about);
        }
    }

    private record Rod(RodRun run, Outline disc) {}

    private static List<Rod> rods(List<RodRun> runs) {
        return runs.stream().map(run -> new Rod(run, run.disc())).toList();
    }

    /** Of every end of an assembly as wished: both of lever and bucket, then of each stop that is written. */
    static List<Stopping> of(Design design, Assembly assembly) {
        List<Rod> rods = rods(assembly.rods());
        Lever lever = assembly.lever();
        CoinWorks works = assembly.coinWorks();
        boolean wished = design.box().lever().turn() != null;
        Sides sides = Sides.of(assembly, rods, lever.body(), 0, lever.pivot());
        Stopping pressed = of(sides, TurningEnd.leverPressed(lever, wished));
        Stopping rests = of(sides, TurningEnd.leverRests(lever, pressed.angle()));
        wished = design.box().coinWorks().bucket().tip() != null;
        sides = Sides.of(assembly, rods, works.bucket(), 0, works.pivot());
        Stopping tipped = of(sides, TurningEnd.bucketTipped(works, wished));
        Stopping shut = of(sides, TurningEnd.bucketRests(works, tipped.angle()));
        List<Stopping> all = new ArrayList<>(List.of(rests, pressed, shut, tipped));
        for (Stop stop : assembly.stops()) {
            sides = Sides.of(assembly, rods, stop.a(), stop.b(), stop.at());
            all.add(of(sides, TurningEnd.from(stop)));
            all.add(of(sides, TurningEnd.to(stop)));
        }
        return List.copyOf(all);
    }

    /** All that turns, and all that stands in its way. */
    private record Sides(List<Solid> turning, List<Solid> standing) {

        static Sides of(Assembly assembly, List<Rod> rods, int body, int against, Point pivot) {
            List<Solid> turning = solids(assembly, rods, body, against, pivot);
            Set<Integer> layers = turning.stream().map(Solid::layer).collect(Collectors.toSet());
            List<Solid> standing = solids(assembly, rods, against, body, pivot);
            standing.removeIf(solid -> !layers.contains(solid.layer()));
            return new Sides(turning, standing);
        }
    }

    private static Stopping of(Sides sides, TurningEnd end) {
        double to = end.at() + (end.wished() ? end.sense() * BEYOND : 0);
        Obstacle met = null;
        for (Solid own : sides.turning()) {
            for (Solid by : sides.standing()) {
                if (!own.mayMeet(by)) {
                    continue;
                }
                Optional<TurnedMeeting> meeting = TurnedMeeting.first(own.about(), by.about(), end.from(), to);
                if (meeting.isPresent()
                        && (met == null || end.isBefore(meeting.get(), met.meeting()))
                        && !inIt(own, by, end)) {
                    int ofRods = (own.rod() ? 1 : 0) + (by.rod() ? 1 : 0);
                    met = new Obstacle(own.name(), by.name(), own.layer(), ofRods, meeting.get());
                }
            }
        }
        return new Stopping(end, met);
    }

    /** Whether it stands in the other's wood already where its way begins: then nothing tells where it would come out. */
    private static boolean inIt(Solid own, Solid by, TurningEnd end) {
        return own.outline().moved(Pose.about(end.pivot(), end.from())).sharedArea(by.outline()) > IN_IT;
    }

    /** What is nearest to it where its way ends, in one layer with it; nothing when nothing is in any. */
    public Optional<Nearby> nearest(Assembly assembly) {
        List<Rod> rods = rods(assembly.rods());
        Nearby nearest = null;
        Sides sides = Sides.of(assembly, rods, end.body(), end.against(), end.pivot());
        for (Solid own : sides.turning()) {
            Outline there = own.outline().moved(Pose.about(end.pivot(), angle()));
            Bounds around = there.bounds();
            for (Solid by : sides.standing()) {
                // Most rods stand far from most parts: the boxes around them tell.
                double apart = around.distance(by.outline().bounds());
                if (own.layer() == by.layer() && (nearest == null || apart < nearest.distance())) {
                    double distance = there.distance(by.outline());
                    if (nearest == null || distance < nearest.distance()) {
                        nearest = new Nearby(own.name(), by.name(), own.layer(), distance);
                    }
                }
            }
        }
        return Optional.ofNullable(nearest);
    }

    /** Outlines of a body, and of the rods that it holds where they pass a layer; a rod that both turn on is in nobody's way. */
    private static List<Solid> solids(Assembly assembly, List<Rod> rods, int body, int other, Point pivot) {
        List<Solid> solids = new ArrayList<>();
        Set<String> own = names(assembly, body);
        Set<String> others = names(assembly, other);
        for (Part part : assembly.body(body).parts()) {
            solids.add(
                    new Solid(part.name(), part.layer(), false, part.outline(), new AboutPivot(part.outline(), pivot)));
        }
        for (Rod of : rods) {
            RodRun rod = of.run();
            boolean peg = rod.kind() == RodRun.Kind.PEG;
            boolean held = peg
                    ? own.contains(rod.parts().get(0))
                    : rod.parts().stream().anyMatch(own::contains)
                            && rod.parts().stream().noneMatch(others::contains);
            if (held) {
                AboutPivot about = new AboutPivot(of.disc(), pivot);
                for (int layer = rod.from(); layer <= rod.to(); layer++) {
                    solids.add(new Solid(rod.words(), layer, true, of.disc(), about));
                }
            }
        }
        return solids;
    }

    private static Set<String> names(Assembly assembly, int body) {
        Set<String> names = new HashSet<>();
        assembly.body(body).parts().forEach(part -> names.add(part.name()));
        return names;
    }

    /** Whether that is the stop that the model takes for granted: met first, at its angle, and far enough from the pivot. */
    public boolean isProvided() {
        return holds() && (!end.wished() || Math.abs(off()) <= OFF);
    }

    /** Whether what is met is the stop meant, be it where it should be or not: the motion then ends there. */
    public boolean holds() {
        return isMeant() && arm() >= LEAST_ARM && !wedges();
    }

    /** Whether what is met is met about where an end is wished, if anything is. */
    public boolean isMeant() {
        return met != null && (!end.wished() || Math.abs(off()) <= MEANT);
    }

    /** Whether what is met lies so slanting to the way that the two may wedge. */
    public boolean wedges() {
        return met != null && lever() < SQUARE * arm();
    }

    /** Where the motion ends, rad from the position drawn: where it is stopped, else where that is wished. */
    public double angle() {
        boolean elsewhere = met != null && holds() && !(end.wished() && Math.abs(off()) < SAME);
        return met != null && elsewhere ? met.meeting().angle() : end.at();
    }

    /** How far past the end wished it is met, rad; NaN when nothing is. */
    public double off() {
        return met == null ? Double.NaN : (met.meeting().angle() - end.at()) * end.sense();
    }

    /** How far from the pivot they meet, mm; NaN when they do not. */
    public double arm() {
        return met == null ? Double.NaN : met.meeting().arm(end.pivot());
    }

    /** mm by which what stands in the way must draw back for the body to go one rad farther; NaN when nothing does. */
    public double lever() {
        return met == null
                ? Double.NaN
                : Math.abs(met.meeting()
                        .at()
                        .minus(end.pivot())
                        .cross(met.meeting().out()));
    }

    /** The same end, its stop drawn back by so much, mm. */
    Stopping drawnBack(double gap) {
        if (met == null) {
            return this;
        }
        TurnedMeeting before = met.meeting();
        double more = end.sense() * gap / lever();
        TurnedMeeting after = new TurnedMeeting(before.angle() + more, before.at(), before.out());
        return new Stopping(end, new Obstacle(met.own(), met.by(), met.layer(), met.rods(), after));
    }
}

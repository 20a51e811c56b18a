package jackwork.parts;

import jackwork.design.Design;
import jackwork.geometry.Bounds;
import jackwork.geometry.Circle;
import jackwork.geometry.Outline;
import jackwork.geometry.Pose;
import jackwork.geometry.TurnedMeeting;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What wood or rod a body meets first when it turns to an end of its way; looked for in the layers that both are in, as
 * drawn. Case, weights, pictures and cloth are not looked at, nor what a third body does in the way, nor what overlaps it at the
 * other end of its way already.
 *
 * @param met what it meets first, up to {@link #BEYOND} past the end; null when nothing
 * @param nearest what is nearest to it at the end, in one layer with it; null when nothing is in any
 */
public record Stopping(
        TurningEnd end, @Nullable Obstacle met, @Nullable Nearby nearest) {

    /** An end that is off by more than this is another end, rad. */
    private static final double OFF = Math.toRadians(0.3);

    /** On a shorter arm, mm, a small error of an edge is a large one of the angle: common practice, no source. */
    private static final double LEAST_ARM = 5;

    /** How far past the end a stop is looked for, rad. */
    private static final double BEYOND = Math.toRadians(60);

    /**
     * @param own part or rod of what turns
     * @param by part or rod in its way
     */
    public record Obstacle(String own, String by, int layer, TurnedMeeting meeting) {}

    /** @param distance mm, 0 where they overlap */
    public record Nearby(String own, String by, int layer, double distance) {}

    /** What lies in a layer. */
    private record Solid(String name, int layer, Outline outline) {}

    /** Of every end of a design's way. */
    public static List<Stopping> of(Design design, Assembly assembly) {
        List<RodRun> rods = RodRun.of(design, assembly);
        return TurningEnd.of(assembly).stream()
                .map(end -> of(assembly, rods, end))
                .toList();
    }

    private static Stopping of(Assembly assembly, List<RodRun> rods, TurningEnd end) {
        List<Solid> turning = solids(assembly, rods, end.body(), end.against());
        List<Solid> standing = solids(assembly, rods, end.against(), end.body());
        Obstacle met = null;
        Nearby nearest = null;
        for (Solid own : turning) {
            Outline there = own.outline().moved(Pose.about(end.pivot(), end.at()));
            Bounds around = there.bounds();
            for (Solid by : standing) {
                if (own.layer() != by.layer()) {
                    continue;
                }
                // Most rods stand far from most parts: the boxes around them tell.
                double apart = around.distance(by.outline().bounds());
                if (nearest == null || apart < nearest.distance()) {
                    double distance = there.distance(by.outline());
                    if (nearest == null || distance < nearest.distance()) {
                        nearest = new Nearby(own.name(), by.name(), own.layer(), distance);
                    }
                }
                Optional<TurnedMeeting> meeting = TurnedMeeting.first(
                        own.outline(), end.pivot(), by.outline(), end.from(), end.at() + end.sense() * BEYOND);
                if (meeting.isPresent() && (met == null || end.isBefore(meeting.get(), met.meeting()))) {
                    met = new Obstacle(own.name(), by.name(), own.layer(), meeting.get());
                }
            }
        }
        return new Stopping(end, met, nearest);
    }

    /** Outlines of a body, and of the rods that it holds where they pass a layer; a rod that both turn on is in nobody's way. */
    private static List<Solid> solids(Assembly assembly, List<RodRun> rods, int body, int other) {
        List<Solid> solids = new ArrayList<>();
        Set<String> own = names(assembly, body);
        Set<String> others = names(assembly, other);
        for (Part part : assembly.body(body).parts()) {
            solids.add(new Solid(part.name(), part.layer(), part.outline()));
        }
        for (RodRun rod : rods) {
            boolean peg = rod.kind() == RodRun.Kind.PEG;
            boolean held = peg
                    ? own.contains(rod.parts().get(0))
                    : rod.parts().stream().anyMatch(own::contains)
                            && rod.parts().stream().noneMatch(others::contains);
            if (held) {
                Outline disc = Outline.disc(new Circle(rod.at(), rod.radius()), Borings.RIM);
                for (int layer = rod.from(); layer <= rod.to(); layer++) {
                    solids.add(new Solid(rod.words(), layer, disc));
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
        return met != null && Math.abs(met.meeting().angle() - end.at()) <= OFF && arm(met) >= LEAST_ARM;
    }

    private double arm(Obstacle obstacle) {
        return obstacle.meeting().arm(end.pivot());
    }
}

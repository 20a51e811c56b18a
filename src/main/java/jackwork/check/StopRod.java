package jackwork.check;

import static jackwork.check.Sentence.say;

import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.geometry.TurnedMeeting;
import jackwork.parts.Assembly;
import jackwork.parts.Part;
import jackwork.parts.RodRun;
import jackwork.parts.Stopping;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A rod that stops what turns, and the edges that come onto it: all that do before the first is pressed in by
 * {@link RefusedPress#CRUSHED}.
 *
 * @param out of the rod, where it is met, unit
 */
record StopRod(PressedRod rod, List<Part> edges, Point at, Point out) {

    /** Empty when what stops it is no rod in the way of wood. */
    static Optional<StopRod> of(Assembly assembly, Stopping stopping) {
        Stopping.Obstacle met = stopping.met();
        if (met == null) {
            return Optional.empty();
        }
        Optional<RodRun> rod = assembly.rods().stream()
                .filter(run -> run.words().equals(met.by()))
                .findFirst();
        List<Part> edges = rod.map(run -> edges(assembly, stopping, met, run)).orElse(List.of());
        return edges.isEmpty()
                ? Optional.empty()
                : rod.map(run -> new StopRod(
                        new PressedRod(assembly, run.name(), run.at(), run.diameter(), edges),
                        edges,
                        met.meeting().at(),
                        met.meeting().out()));
    }

    private static List<Part> edges(Assembly assembly, Stopping stopping, Stopping.Obstacle met, RodRun run) {
        Point pivot = stopping.end().pivot();
        Outline disc = run.disc();
        TurnedMeeting first = met.meeting();
        double arm = Math.abs(first.at().minus(pivot).cross(first.out()));
        List<Part> edges = new ArrayList<>();
        for (Part part : assembly.body(stopping.end().body()).parts()) {
            if (part.layer() < run.from() || part.layer() > run.to()) {
                continue;
            }
            TurnedMeeting.first(
                            part.outline(),
                            pivot,
                            disc,
                            stopping.end().from(),
                            first.angle() + stopping.end().sense() * RefusedPress.CRUSHED / arm)
                    .ifPresent(meeting -> edges.add(part));
        }
        return edges;
    }

    /** In which ways rod, holes and edges may give. */
    List<Gives> gives(double force) {
        List<Gives> all = new ArrayList<>(rod.gives(force));
        all.add(crushed(force));
        return all;
    }

    /** Pressed in by the rod until it bears on its width. */
    private Gives crushed(double force) {
        double thick =
                edges.stream().mapToDouble(part -> part.thickness().value()).sum();
        Part weakest = PressedWood.weakest(edges);
        return new Gives(
                say("the edge of {} on {}", edges.get(0).name(), rod.name()),
                "crushes",
                force / (rod.diameter() * thick),
                weakest.kind().strength().edgewise(),
                "strength of " + weakest.kind().label() + " edgewise",
                Words.number(force) + " N / (d t), t = " + Words.number(thick) + " mm");
    }
}

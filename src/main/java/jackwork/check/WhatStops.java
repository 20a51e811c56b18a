package jackwork.check;

import static jackwork.check.Measure.degrees;
import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.geometry.Point;
import jackwork.parts.Assembly;
import jackwork.parts.Stopping;
import jackwork.parts.TurningEnd;
import java.util.List;
import java.util.Optional;

/**
 * Wood or a rod stops lever, bucket and every limited part where the motion ends: met first on the way there, in a layer that
 * both are in, within {@link Stopping#OFF} of where it is wished, on an arm of {@link Stopping#LEAST_ARM} and more. As drawn: what
 * kerf, rods and places do to it is drawn in the builds.
 */
final class WhatStops implements Question {

    private static final double OFF = Math.toDegrees(Stopping.OFF);

    @Override
    public List<Finding> ask(Subject subject) {
        return subject.assembly().ends().stream()
                .map(stopping -> finding(subject, stopping))
                .toList();
    }

    private static Finding finding(Subject subject, Stopping stopping) {
        TurningEnd end = stopping.end();
        boolean provided = stopping.isProvided();
        double off = Math.toDegrees(Math.abs(stopping.off()));
        boolean byArm = !end.wished() || stopping.arm() < Stopping.LEAST_ARM;
        double margin = byArm ? stopping.arm() - Stopping.LEAST_ARM : OFF - off;
        return Finding.ask(Topic.WHAT_STOPS, end.id(), question(end))
                .answer(
                        provided ? Status.PASS : Status.FAIL,
                        byArm ? stopping.arm() : off,
                        byArm ? Stopping.LEAST_ARM : OFF,
                        margin,
                        byArm ? "mm" : "deg")
                .at(new Where(end.name(), stroke(end), at(subject.assembly(), stopping)))
                .because(
                        why(subject, stopping),
                        provided ? Sentence.NOTHING : remedy(subject, stopping),
                        formula(stopping));
    }

    private static Sentence question(TurningEnd end) {
        return end.isWritten()
                ? say("Does something stop {} at its \"{}\"?", end.of(), end.when())
                : say("Does something stop the {}?", end.name());
    }

    private static double stroke(TurningEnd end) {
        return switch (end.kind()) {
            case LEVER_PRESSED, BUCKET_TIPPED, TO -> 1;
            case LEVER_RESTS, BUCKET_RESTS, FROM -> 0;
        };
    }

    private static Point at(Assembly assembly, Stopping stopping) {
        Stopping.Obstacle met = stopping.met();
        return met == null
                ? assembly.body(stopping.end().body()).centre()
                : met.meeting().at();
    }

    private static Sentence why(Subject subject, Stopping stopping) {
        Stopping.Obstacle met = stopping.met();
        if (met == null) {
            Optional<Stopping.Nearby> nearest = stopping.nearest(subject.assembly());
            return nearest.map(by -> say(
                            "nothing does; nearest to it there is {}, {} from {}",
                            by.by(),
                            mm(by.distance()),
                            by.own()))
                    .orElseGet(() -> say("nothing does, and nothing else is in its layers"));
        }
        double off = Math.toDegrees(stopping.off());
        if (stopping.arm() < Stopping.LEAST_ARM) {
            return say("{} does, {} from the pivot only", met.by(), mm(stopping.arm()));
        }
        if (stopping.wedges()) {
            return say("{} does, but so slanting to the way that the two may wedge", met.by());
        }
        if (stopping.isProvided()) {
            return say("{} does, {} from the pivot, in layer {}", met.by(), mm(stopping.arm()), met.layer());
        }
        return off > 0
                ? say("it is first stopped by {}, {} past where it should be", met.by(), degrees(off))
                : say("it is stopped by {} already {} before it gets there", met.by(), degrees(-off));
    }

    private static Sentence remedy(Subject subject, Stopping stopping) {
        Stopping.Obstacle met = stopping.met();
        if (met != null && (stopping.isMeant() || stopping.off() < 0)) {
            return say("Move {}, or the edge that meets it.", met.by());
        }
        String part = subject.assembly().body(stopping.end().body()).name();
        return say(
                "Set a post in its way: a circle in the drawing, and a pin of that name through parts that stand still, with"
                        + " stops: {part: {}, when: {}}; or move the circle of the one that is there nearer to its edge.",
                part,
                stopping.end().when());
    }

    private static String formula(Stopping stopping) {
        TurningEnd end = stopping.end();
        Stopping.Obstacle met = stopping.met();
        if (met == null) {
            return "no edge of its layers comes in its way as it turns about " + point(end.pivot())
                    + ", up to 60 deg past " + Words.number(Math.toDegrees(end.at())) + " deg";
        }
        return met.own() + " meets " + met.by() + " at "
                + Words.number(Math.toDegrees(met.meeting().angle())) + " deg"
                + (end.wished() ? ", wished " + Words.number(Math.toDegrees(end.at())) + " deg" : "") + ", arm "
                + Words.number(stopping.arm()) + " mm; within " + Words.number(OFF) + " deg on an arm of "
                + Words.number(Stopping.LEAST_ARM) + " mm and more it counts (common practice, no source)";
    }

    private static String point(Point at) {
        return "(" + Words.number(at.x()) + ", " + Words.number(at.y()) + ")";
    }
}

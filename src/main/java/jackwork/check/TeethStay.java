package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.design.Named;
import jackwork.design.RackEntry;
import jackwork.design.Works;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.parts.GearMesh;
import jackwork.parts.Link;
import jackwork.parts.Part;
import jackwork.parts.RackMesh;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Teeth run in teeth all along the run: gears keep their distance, and a rack has teeth, and wood behind them, as far as its
 * gear rolls. The motion takes both for granted.
 */
final class TeethStay implements Question {

    /** Teeth so much farther in or out, in modules, jam or jump: they are 2.25 modules deep. A guess. */
    private static final double DRIFT = 0.25;
    /** From a rack's pitch line to the feet of its teeth, in modules. */
    private static final double FOOT = 1.25;
    /** Where wood is looked for behind those, mm. */
    private static final double BEHIND = 0.3;

    /** @param margin mm, below 0 they do not stay */
    private record Hold(double value, double limit, double margin, double stroke, Sentence why, Sentence remedy) {}

    @Override
    public List<Finding> ask(Subject subject) {
        List<Finding> findings = new ArrayList<>();
        RunPoses run = new RunPoses(subject);
        Map<String, RackEntry> racks = new LinkedHashMap<>();
        for (Works works : List.of(
                subject.design().box().works(), subject.design().figure().works())) {
            racks.putAll(works.joints(RackEntry.class));
        }
        for (Link link : subject.assembly().links()) {
            if (run.count() > 0 && link instanceof GearMesh mesh) {
                findings.add(finding(mesh.name(), mesh.centreA(), List.of(distance(run, mesh))));
            } else if (run.count() > 0 && link instanceof RackMesh rack) {
                findings.add(finding(
                        rack.name(), rack.pitchPoint(), holds(subject, run, rack, Named.in(racks, rack.name()))));
            }
        }
        return findings;
    }

    private static Hold distance(RunPoses run, GearMesh mesh) {
        double drawn = mesh.centreA().distance(mesh.centreB());
        double most = 0;
        int at = 0;
        for (int i = 0; i < run.count(); i++) {
            double drift =
                    Math.abs(run.at(i, mesh.a(), mesh.centreA()).distance(run.at(i, mesh.b(), mesh.centreB())) - drawn);
            if (drift > most) {
                most = drift;
                at = i;
            }
        }
        return drift(most, mesh.gearA().module(), run.stroke(at));
    }

    private static Hold drift(double most, double module, double stroke) {
        double limit = DRIFT * module;
        return new Hold(
                most,
                limit,
                limit - most,
                stroke,
                say("as they run their teeth come {} nearer or farther than drawn", mm(most)),
                say("Turn both on pins that keep their distance, or guide the bar along its teeth."));
    }

    private static List<Hold> holds(Subject subject, RunPoses run, RackMesh rack, RackEntry entry) {
        Point out = rack.pitchPoint().minus(rack.centre());
        Point e = out.times(1 / out.length());
        Point t = new Point(-e.y(), e.x());
        double module = rack.gear().module();
        double pitch = Math.PI * module;
        double least = 0;
        double most = 0;
        double drift = 0;
        int atDrift = 0;
        int atMost = 0;
        for (int i = 0; i < run.count(); i++) {
            // The gear's middle as the bar sees it.
            Point seen = run.at(i, rack.a(), rack.centre());
            Point shift = run.at(i, rack.b(), Point.ORIGIN);
            Point moved = seen.minus(shift).turned(-run.angle(i, rack.b())).minus(rack.centre());
            double along = moved.dot(t);
            if (Math.abs(along) > Math.max(most, -least)) {
                atMost = i;
            }
            least = Math.min(least, along);
            most = Math.max(most, along);
            if (Math.abs(moved.dot(e)) > drift) {
                drift = Math.abs(moved.dot(e));
                atDrift = i;
            }
        }
        double way = Math.max(most, -least);
        double cut = entry.teeth() * pitch;
        List<Hold> holds = new ArrayList<>();
        holds.add(drift(drift, module, run.stroke(atDrift)));
        int needed = (int) Math.ceil(way / pitch - 1e-9);
        holds.add(new Hold(
                way,
                cut,
                cut - way,
                run.stroke(atMost),
                say("its gear rolls {} along the bar, and teeth reach {} from the place of touch", mm(way), mm(cut)),
                say("Cut {} teeth or more on either side: write teeth: {}.", needed, needed)));
        holds.add(wood(subject, rack, e, t, new double[] {least, most}, run.stroke(atMost)));
        return holds;
    }

    /** The bar's wood behind its teeth, as far as they are rolled on. */
    private static Hold wood(Subject subject, RackMesh rack, Point e, Point t, double[] way, double stroke) {
        double module = rack.gear().module();
        double behind = FOOT * module + BEHIND;
        double worst = 0;
        for (Part part : subject.assembly().parts()) {
            if (part.name().equals(rack.rackPart())) {
                Outline wood = part.drawn();
                for (double along = way[0]; along <= way[1]; along += module / 4) {
                    Point at = rack.pitchPoint().plus(e.times(behind)).plus(t.times(along));
                    worst = Math.max(worst, wood.contains(at) ? 0 : wood.distanceToEdge(at));
                }
            }
        }
        return new Hold(
                worst,
                BEHIND,
                BEHIND - worst,
                stroke,
                say("where its gear rolls the bar has no wood for teeth: it begins {} away", mm(worst)),
                say("Draw the bar up to its gear's teeth and as long as the gear rolls, or turn `toward` to it."));
    }

    private static Finding finding(String name, Point at, List<Hold> holds) {
        Hold worst =
                holds.stream().min(Comparator.comparingDouble(Hold::margin)).orElseThrow();
        boolean stay = worst.margin() >= -1e-9;
        return Finding.ask(
                        Topic.TEETH_STAY, name, say("Do the teeth of {} stay in each other all along the run?", name))
                .answer(stay ? Status.PASS : Status.FAIL, worst.value(), worst.limit(), worst.margin(), "mm")
                .at(new Where(name, worst.stroke(), at))
                .because(
                        stay
                                ? say(
                                        "nothing takes them apart: {} where {} is the limit",
                                        mm(worst.value()),
                                        mm(worst.limit()))
                                : worst.why(),
                        stay ? Sentence.NOTHING : worst.remedy(),
                        Words.number(worst.value()) + " mm against " + Words.number(worst.limit())
                                + " mm; drift at most a quarter of the module (a guess)");
    }
}

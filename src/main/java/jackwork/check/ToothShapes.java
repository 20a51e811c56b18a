package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.parts.GearMesh;
import jackwork.parts.InvoluteGear;
import jackwork.parts.Link;
import jackwork.parts.RackMesh;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Gear teeth are thick enough to cut, and the mate's tips do not dig into their feet. */
final class ToothShapes implements Question {

    /** Thinnest tooth that a laser leaves sound in plywood, mm: common practice, no source. */
    private static final double THINNEST = 0.8;

    @Override
    public List<Finding> ask(Subject subject) {
        List<Finding> findings = new ArrayList<>();
        for (Link link : subject.assembly().links()) {
            if (link instanceof GearMesh mesh) {
                boolean first = mesh.inside()
                        || mesh.gearA().tipThickness() < mesh.gearB().tipThickness();
                findings.add(thickness(
                        first ? mesh.partA() : mesh.partB(), first ? mesh.gearA() : mesh.gearB(), mesh.name()));
                findings.add(mesh.inside() ? insideMate(mesh) : feet(mesh));
            } else if (link instanceof RackMesh rack) {
                findings.add(thickness(rack.gearPart(), rack.gear(), rack.name()));
                findings.add(rackFeet(rack));
            }
        }
        return findings;
    }

    private static Finding thickness(String part, InvoluteGear gear, String mesh) {
        double tip = gear.tipThickness();
        double margin = tip - THINNEST;
        return Finding.ask(Topic.TEETH_THICK, mesh, say("Are the teeth of {} thick enough to cut?", mesh))
                .answer(margin > 0 ? Status.PASS : Status.FAIL, tip, THINNEST, margin, "mm")
                .at(new Where(part, null, null))
                .because(
                        say("a tooth of {} is {} wide at its tip", part, mm(tip)),
                        margin > 0 ? Sentence.NOTHING : say("Take fewer, larger teeth."),
                        String.format(
                                Locale.ROOT,
                                "2 r_a (π/2z + inv α − inv α_a), z = %d, module %.3f mm = %.2f mm",
                                gear.teeth(),
                                gear.module(),
                                tip));
    }

    private static Finding feet(GearMesh mesh) {
        double distance = mesh.centreA().distance(mesh.centreB());
        double onA = room(mesh.gearA(), mesh.gearB(), distance);
        double onB = room(mesh.gearB(), mesh.gearA(), distance);
        boolean first = onA < onB;
        return interference(
                mesh.name(),
                first ? mesh.partA() : mesh.partB(),
                Math.min(onA, onB),
                formula(first ? mesh.gearA() : mesh.gearB(), first ? mesh.gearB() : mesh.gearA()));
    }

    /** How far the mate's tip circle stays inside the end of the line of action on this gear's base circle, mm. */
    private static double room(InvoluteGear gear, InvoluteGear mate, double distance) {
        double working = Math.acos((gear.baseRadius() + mate.baseRadius()) / distance);
        double end = Math.hypot(mate.baseRadius(), distance * Math.sin(working));
        return end - mate.tipRadius();
    }

    private static String formula(InvoluteGear gear, InvoluteGear mate) {
        return String.format(
                Locale.ROOT, "√(r_b² + (a sin α)²) − r_a of the mate, z = %d on %d", mate.teeth(), gear.teeth());
    }

    /** Tips of an internal gear must stay outside the pinion's base tangent: r_a2 ≥ √(r_b2² + (a sin α)²). */
    private static Finding insideMate(GearMesh mesh) {
        double distance = mesh.centreA().distance(mesh.centreB());
        double working = Math.acos((mesh.gearB().baseRadius() - mesh.gearA().baseRadius()) / distance);
        double end = Math.hypot(mesh.gearB().baseRadius(), distance * Math.sin(working));
        // The hole's root circle is where the ring's tips stand.
        return interference(
                mesh.name(), mesh.partA(), mesh.gearB().rootRadius() - end, "r_a of the ring − √(r_b² + (a sin α)²)");
    }

    private static Finding rackFeet(RackMesh rack) {
        InvoluteGear gear = rack.gear();
        double room = gear.pitchRadius() * Math.pow(Math.sin(gear.pressureAngle()), 2) - gear.module();
        return interference(
                rack.name(), rack.gearPart(), room, String.format(Locale.ROOT, "r sin² α − m, z = %d", gear.teeth()));
    }

    private static Finding interference(String mesh, String part, double room, String formula) {
        return Finding.ask(Topic.TEETH_CLEAR, mesh, say("Do the teeth of {} clear each other's feet?", mesh))
                .answer(room > -1e-9 ? Status.PASS : Status.FAIL, room, 0.0, room, "mm")
                .at(new Where(part, null, null))
                .because(
                        room > -1e-9
                                ? say("the mate's tips leave the flanks of {} {} before they end", part, mm(room))
                                : say("the mate's tips reach {} past the true flanks of {}", mm(-room), part),
                        room > -1e-9 ? Sentence.NOTHING : say("Take more teeth, or a pressure angle of 25°."),
                        formula + " = " + Words.number(room) + " mm");
    }
}

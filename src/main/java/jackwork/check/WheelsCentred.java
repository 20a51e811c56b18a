package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.geometry.Point;
import jackwork.parts.Assembly;
import jackwork.parts.CamPair;
import jackwork.parts.GearMesh;
import jackwork.parts.Link;
import jackwork.parts.PinJoint;
import jackwork.parts.RackMesh;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Every gear and every cam that moves turns about its middle: a pin of its body is there. */
final class WheelsCentred implements Question {

    /** Teeth that run out of true by more jam, mm: a guess. */
    private static final double OFF = 0.1;

    private record Wheel(String part, Point centre, double off) {}

    @Override
    public List<Finding> ask(Subject subject) {
        Assembly assembly = subject.assembly();
        List<Wheel> wheels = new ArrayList<>();
        for (Link link : assembly.links()) {
            if (link instanceof GearMesh mesh) {
                add(wheels, assembly, mesh.a(), mesh.partA(), mesh.centreA());
                add(wheels, assembly, mesh.b(), mesh.partB(), mesh.centreB());
            } else if (link instanceof RackMesh rack) {
                add(wheels, assembly, rack.a(), rack.gearPart(), rack.centre());
            } else if (link instanceof CamPair cam) {
                add(wheels, assembly, cam.cam(), cam.camPart(), cam.centre());
            }
        }
        return wheels.stream().max(Comparator.comparingDouble(Wheel::off)).map(WheelsCentred::finding).stream()
                .toList();
    }

    private static void add(List<Wheel> wheels, Assembly assembly, int body, String part, Point centre) {
        if (body != 0) {
            double off = assembly.pins().stream()
                    .filter(pin -> pin.runner() == body || pin.holder() == body)
                    .map(PinJoint::at)
                    .mapToDouble(centre::distance)
                    .min()
                    .orElse(0);
            wheels.add(new Wheel(part, centre, off));
        }
    }

    private static Finding finding(Wheel wheel) {
        boolean centred = wheel.off() <= OFF;
        return Finding.ask(Topic.WHEELS_CENTRED, say("Does every gear and every cam turn about its middle?"))
                .answer(centred ? Status.PASS : Status.FAIL, wheel.off(), OFF, OFF - wheel.off(), "mm")
                .at(new Where(wheel.part(), 0.0, wheel.centre()))
                .because(
                        say("the middle of {} is {} from the pin that it turns about", wheel.part(), mm(wheel.off())),
                        centred
                                ? Sentence.NOTHING
                                : say(
                                        "Set the pin of {} in its middle: both name one point of the drawing.",
                                        wheel.part()),
                        "distance of the middle from the nearest pin of its body, greatest = "
                                + Words.number(wheel.off()) + " mm, at most " + Words.number(OFF) + " mm");
    }
}

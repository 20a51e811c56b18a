package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.geometry.Point;
import jackwork.parts.Assembly;
import jackwork.parts.DistanceLimit;
import jackwork.parts.Link;
import jackwork.parts.Part;
import jackwork.parts.RatchetPair;
import jackwork.parts.SpringLink;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Springs, bands and limits end on wood of the parts that they name, and a pawl's tip is on its pawl. */
final class EndsHeld implements Question {

    /** An end may be drawn so far off the wood that holds it, mm: a hook, an eye. */
    private static final double OFF = 3;

    private record End(String joint, String body, Point at, double off) {}

    @Override
    public List<Finding> ask(Subject subject) {
        Assembly assembly = subject.assembly();
        List<End> ends = new ArrayList<>();
        for (Link link : assembly.links()) {
            if (link instanceof SpringLink spring) {
                ends.add(end(assembly, spring.name(), spring.a(), spring.onA(), 0));
                ends.add(end(assembly, spring.name(), spring.b(), spring.onB(), 0));
            } else if (link instanceof DistanceLimit limit) {
                ends.add(end(assembly, limit.name(), limit.a(), limit.onA(), 0));
                ends.add(end(assembly, limit.name(), limit.b(), limit.onB(), 0));
            } else if (link instanceof RatchetPair pawl) {
                ends.add(end(assembly, pawl.name(), pawl.pawl(), pawl.tip(), pawl.radius()));
            }
        }
        return ends.stream().max(Comparator.comparingDouble(End::off)).map(EndsHeld::finding).stream()
                .toList();
    }

    /** @param round radius of a rounded end about the point, mm */
    private static End end(Assembly assembly, String joint, int body, Point at, double round) {
        double off = Double.POSITIVE_INFINITY;
        for (Part part : assembly.body(body).parts()) {
            off = Math.min(off, part.drawn().contains(at) ? 0 : part.drawn().distanceToEdge(at) - round);
        }
        return new End(joint, assembly.body(body).name(), at, Math.max(0, off));
    }

    private static Finding finding(End end) {
        boolean held = end.off() <= OFF;
        return Finding.ask(Topic.ENDS_HELD, say("Does every spring, band, limit and pawl end on wood?"))
                .answer(held ? Status.PASS : Status.FAIL, end.off(), OFF, OFF - end.off(), "mm")
                .at(new Where(end.joint(), 0.0, end.at()))
                .because(
                        held
                                ? say("an end of {} is farthest from its wood, {}", end.joint(), mm(end.off()))
                                : say(
                                        "an end of {} stands {} off {}: nothing holds it",
                                        end.joint(),
                                        mm(end.off()),
                                        end.body()),
                        held
                                ? Sentence.NOTHING
                                : say("Move the end onto {}, or name the part that it is fixed to.", end.body()),
                        "distance of an end from the wood that it names, greatest = " + Words.number(end.off())
                                + " mm, at most " + Words.number(OFF) + " mm");
    }
}

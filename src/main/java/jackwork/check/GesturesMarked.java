package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.design.GestureEntry;
import jackwork.geometry.Point;
import jackwork.parts.Part;
import java.util.ArrayList;
import java.util.List;

/** Each gesture watches a point of its part, or of what is glued to it, and wants it to go somewhere. */
final class GesturesMarked implements Question {

    /** A mark may be drawn so far off the edge that it marks, mm. */
    private static final double OFF = 2;

    @Override
    public List<Finding> ask(Subject subject) {
        List<Finding> findings = new ArrayList<>();
        subject.gestures().forEach((name, gesture) -> findings.add(find(subject, name, gesture)));
        return findings;
    }

    private static Finding find(Subject subject, String name, GestureEntry gesture) {
        Point mark = subject.watched(name);
        double off = Double.POSITIVE_INFINITY;
        for (Part part : subject.assembly()
                .body(subject.assembly().bodyOf(gesture.part()))
                .parts()) {
            boolean within = part.drawn().filled().contains(mark);
            off = Math.min(off, within ? 0 : part.drawn().distanceToEdge(mark));
        }
        boolean wanted = gesture.distance() > 0;
        boolean marked = off <= OFF;
        Sentence why;
        if (!marked) {
            why = say("its mark stands {} off {}, where nothing moves", mm(off), gesture.part());
        } else if (!wanted) {
            why = say("it wants {} to go {}, which anything does", name, mm(gesture.distance()));
        } else {
            why = say("its mark lies on {}", gesture.part());
        }
        return Finding.ask(
                        Topic.GESTURE_MARKED,
                        name,
                        say("Does {} watch a point that is there, and want it to move?", name))
                .answer(
                        marked && wanted ? Status.PASS : Status.FAIL,
                        marked && !wanted ? gesture.distance() : off,
                        marked && !wanted ? 0.0 : OFF,
                        marked && !wanted ? gesture.distance() : OFF - off,
                        "mm")
                .at(new Where(gesture.part(), 0.0, mark))
                .because(
                        why,
                        marked
                                ? wanted
                                        ? Sentence.NOTHING
                                        : say(
                                                "Want a distance above 0; where it should go the other way, turn `toward` round.")
                                : say("Move the mark onto {}, or name the part that it lies on.", gesture.part()),
                        "distance of the mark from the wood = " + Words.number(off) + " mm, at most "
                                + Words.number(OFF) + " mm; wanted " + Words.number(gesture.distance())
                                + " mm, more than 0");
    }
}

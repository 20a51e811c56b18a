package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.design.CaseEntry;
import jackwork.design.Named;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.parts.Assembly;
import jackwork.parts.Layers;
import jackwork.parts.Lever;
import jackwork.parts.Part;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A finger comes from outside to where the lever is pressed, at rest and all the way down. The case has openings for what
 * moves through its panels and none for a finger, so it is pressed beyond them; a box without a case is open where no plate
 * stands before or none behind; and nothing else stands over the place.
 */
final class PressReached implements Question {

    /** Half of what a child's fingertip touches, mm: common practice, no source. */
    private static final double TIP = 3;
    /** A finger comes down from so far above, and takes so much on either side of the lever's layer, mm. */
    private static final double ABOVE = 15;

    private static final double BESIDE = 5;
    private static final int STEPS = 8;

    /**
     * @param room mm from what is in the way, negative behind it
     * @param least that a finger takes there: as drawn, its tip; farther down it only must not be led behind a wall
     */
    private record Way(double room, double least, Sentence why, Sentence remedy) {

        double margin() {
            return room - least;
        }

        Way pressed() {
            return new Way(room, 0, why, remedy);
        }
    }

    @Override
    public List<Finding> ask(Subject subject) {
        List<Way> ways = new ArrayList<>();
        Lever lever = subject.assembly().lever();
        for (int i = 0; i <= STEPS; i++) {
            Point press = lever.press().turnedAbout(lever.pivot(), lever.turn() * i / STEPS);
            CaseEntry housing = subject.design().box().housing();
            Way way = housing == null ? betweenPlates(subject, press) : outside(subject, housing, press);
            ways.add(i == 0 ? way : way.pressed());
        }
        ways.add(fromAbove(subject));
        Way worst = ways.stream().min(Comparator.comparingDouble(Way::margin)).orElseThrow();
        boolean reached = worst.margin() >= 0;
        return List.of(Finding.ask(
                        Topic.PRESS_REACHED, say("Does a finger reach the place where the lever is pressed?"))
                .answer(reached ? Status.PASS : Status.FAIL, worst.room(), worst.least(), worst.margin(), "mm")
                .at(new Where("lever.press", 0.0, lever.press()))
                .because(
                        worst.why(),
                        reached ? Sentence.NOTHING : worst.remedy(),
                        "room beside lever.press " + (worst.least() > 0 ? "as drawn" : "on the way down") + " = "
                                + Words.number(worst.room()) + " mm; as drawn at least " + Words.number(TIP)
                                + " mm, half of a child's fingertip (common practice, no source); on the way down at least 0: it is"
                                + " not led behind a wall"));
    }

    /** Beyond a side wall's outer face, or above the lid's. */
    private static Way outside(Subject subject, CaseEntry housing, Point press) {
        double wall = Named.in(subject.design().workshop().sheets(), housing.stock())
                .thickness()
                .value();
        double left = housing.left() - wall - press.x();
        double right = press.x() - housing.left() - housing.width() - wall;
        double over = press.y() - housing.floor() - housing.height() - wall;
        double room = Math.max(over, Math.max(left, right));
        String panel = room == over ? "lid" : room == left ? "left wall" : "right wall";
        return new Way(
                room,
                TIP,
                room >= 0
                        ? say("lever.press stands {} outside the {}", mm(room), panel)
                        : say("lever.press lies inside the closed case, {} behind the {}", mm(-room), panel),
                say(
                        "Move lever.press to an end of the lever that stands {} or more outside the case, or draw the lever"
                                + " longer.",
                        mm(TIP)));
    }

    /** Between two plates of the box, before and behind the lever, no finger comes in from the front. */
    private static Way betweenPlates(Subject subject, Point press) {
        Assembly assembly = subject.assembly();
        int layer = layer(assembly);
        double before = Double.POSITIVE_INFINITY;
        double behind = Double.POSITIVE_INFINITY;
        for (Part part : assembly.body(0).parts()) {
            Outline drawn = part.drawn().filled();
            double off = drawn.distanceToEdge(press) * (drawn.contains(press) ? -1 : 1);
            if (part.ofBox() && part.layer() > layer) {
                before = Math.min(before, off);
            } else if (part.ofBox() && part.layer() < layer) {
                behind = Math.min(behind, off);
            }
        }
        double room = Math.min(ABOVE, Math.max(before, behind));
        return new Way(
                room,
                TIP,
                room >= 0
                        ? say("lever.press stands {} beside the plates of the box", mm(room))
                        : say("plates of the box stand before and behind lever.press, {} beyond it", mm(-room)),
                say("Move lever.press to an end of the lever that stands out of the box, or draw the lever longer."));
    }

    /** Straight down onto the lever as drawn: what stands over it in its layers and their neighbours. */
    private static Way fromAbove(Subject subject) {
        Assembly assembly = subject.assembly();
        Lever lever = assembly.lever();
        Point press = lever.press();
        Layers layers = Layers.of(assembly.parts());
        int layer = layer(assembly);
        Outline finger = Outline.rectangle(press.x() - TIP, press.y(), press.x() + TIP, press.y() + ABOVE);
        String over = "";
        for (Part part : assembly.parts()) {
            boolean near = layers.front(part.layer()) > layers.back(layer) - BESIDE
                    && layers.back(part.layer()) < layers.front(layer) + BESIDE;
            if (near
                    && assembly.bodyOf(part.name()) != lever.body()
                    && part.drawn().overlaps(finger)) {
                over = part.name();
            }
        }
        return new Way(
                over.isEmpty() ? ABOVE : 0,
                TIP,
                over.isEmpty()
                        ? say("nothing stands over lever.press")
                        : say("{} stands over lever.press, where the finger comes down", over),
                say("Move lever.press from under {}, or {} from over it.", over, over));
    }

    /** The lever's layer where it is pressed: that of its part nearest to the place. */
    private static int layer(Assembly assembly) {
        Lever lever = assembly.lever();
        return assembly.body(lever.body()).parts().stream()
                .min(Comparator.comparingDouble(part ->
                        part.drawn().contains(lever.press()) ? 0 : part.drawn().distanceToEdge(lever.press())))
                .map(Part::layer)
                .orElse(0);
    }
}

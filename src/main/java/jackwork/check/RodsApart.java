package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.parts.RodRun;
import java.util.List;

/**
 * No two rods stand in one place: where they pass the same layers, their axes are farther apart than their radii. Looked at
 * in the position drawn.
 */
final class RodsApart implements Question {

    private record Pair(RodRun a, RodRun b, double gap) {}

    @Override
    public List<Finding> ask(Subject subject) {
        List<RodRun> rods = subject.rods();
        Pair nearest = null;
        for (int i = 0; i < rods.size(); i++) {
            for (int j = 0; j < i; j++) {
                RodRun a = rods.get(j);
                RodRun b = rods.get(i);
                double gap = a.at().distance(b.at()) - a.radius() - b.radius();
                boolean one = a.isRodOf(b) || !a.passesLayerOf(b);
                if (!one && (nearest == null || gap < nearest.gap())) {
                    nearest = new Pair(a, b, gap);
                }
            }
        }
        return nearest == null ? List.of() : List.of(finding(nearest));
    }

    private static Finding finding(Pair pair) {
        String b = pair.b().name();
        boolean apart = pair.gap() > 0;
        return Finding.ask(Topic.RODS_APART, say("Has every rod a place that no other takes?"))
                .answer(apart ? Status.PASS : Status.FAIL, pair.gap(), 0.0, pair.gap(), "mm")
                .at(new Where(b, 0.0, pair.b().at()))
                .because(
                        apart
                                ? say(
                                        "{} and {} stand nearest, {} apart",
                                        pair.a().words(),
                                        pair.b().words(),
                                        mm(pair.gap()))
                                : say(
                                        "{}, {} thick, and {}, {} thick, would stand in one another: their axes are {} apart",
                                        pair.a().words(),
                                        mm(pair.a().diameter()),
                                        pair.b().words(),
                                        mm(pair.b().diameter()),
                                        mm(pair.a().at().distance(pair.b().at()))),
                        apart
                                ? Sentence.NOTHING
                                : say(
                                        "Move one of them, or make it thinner; where one rod is meant, write one pin with all the parts that it goes through."),
                        "distance of the axes − both radii = "
                                + Words.number(pair.a().at().distance(pair.b().at())) + " − "
                                + Words.number(pair.a().radius()) + " − "
                                + Words.number(pair.b().radius()) + " = " + Words.number(pair.gap())
                                + " mm, of rods that pass the same layer");
    }
}

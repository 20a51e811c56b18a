package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** Each weight lies on wood of its part, or in a pocket of it: what holds it otherwise? */
final class WeightsLie implements Question {

    /** A weight is wider than its middle: so far it may hang over, as into a gap between teeth, mm. */
    private static final double OVER = 0.5;

    private static final String QUESTION = "Does {} lie on its part?";
    /** Two weights of one part nearer than this take one place, mm. */
    private static final double ONE = 1;

    @Override
    public List<Finding> ask(Subject subject) {
        List<Finding> findings = new ArrayList<>();
        List<WeightPlace> weights = WeightPlace.of(subject);
        for (WeightPlace weight : weights) {
            weights.stream()
                    .filter(other -> !other.name().equals(weight.name())
                            && other.entry().on().equals(weight.entry().on())
                            && other.at().distance(weight.at()) < ONE)
                    .findFirst()
                    .ifPresentOrElse(other -> findings.add(twice(weight, other)), () -> findings.add(finding(weight)));
        }
        return findings;
    }

    private static Finding twice(WeightPlace weight, WeightPlace other) {
        double apart = weight.at().distance(other.at());
        return Finding.ask(Topic.WEIGHT_LIES, weight.name(), say(QUESTION, weight.name()))
                .answer(Status.FAIL, apart, ONE, apart - ONE, "mm")
                .at(new Where(weight.entry().on(), 0.0, weight.at()))
                .because(
                        say(
                                "{} and {} lie in one place of {}",
                                weight.name(),
                                other.name(),
                                weight.entry().on()),
                        say("Write one weight for both, or move one of them."),
                        "distance of the two = " + Words.number(apart) + " mm");
    }

    private static Finding finding(WeightPlace weight) {
        double inside = weight.on().stream()
                .mapToDouble(part -> inside(part.drawn().filled(), weight.at()))
                .max()
                .orElse(0);
        String on = weight.entry().on();
        boolean lies = inside >= -OVER;
        return Finding.ask(Topic.WEIGHT_LIES, weight.name(), say(QUESTION, weight.name()))
                .answer(lies ? Status.PASS : Status.FAIL, inside, 0.0, inside, "mm")
                .at(new Where(on, 0.0, weight.at()))
                .because(
                        inside >= 0
                                ? say("its middle lies {} within the edge of {}", mm(inside), on)
                                : say("its middle lies {} off {}: nothing holds it", mm(-inside), on),
                        lies
                                ? Sentence.NOTHING
                                : say("Move {} onto {}, or name the part that carries it.", weight.name(), on),
                        "distance of its middle from the edge of " + on + ", inward = " + Words.number(inside) + " mm");
    }

    private static double inside(Outline filled, Point at) {
        double edge = filled.distanceToEdge(at);
        return filled.contains(at) ? edge : -edge;
    }
}

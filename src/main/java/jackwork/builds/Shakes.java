package jackwork.builds;

import static jackwork.check.Sentence.say;

import jackwork.check.Finding;
import jackwork.check.Measure;
import jackwork.check.Sentence;
import jackwork.check.Status;
import jackwork.check.Topic;
import jackwork.check.Where;
import jackwork.check.Words;
import jackwork.motion.coin.CycleResult;
import jackwork.motion.time.Shake;
import java.util.ArrayList;
import java.util.List;

/** A box jiggled to and fro by someone who hopes that it opens, and presses all the while. */
final class Shakes implements Mishap {

    /** As hard as a box on a table is jiggled, mm/s²: 0.3 g, a guess. */
    private static final double HARD = 3000;

    private static final double[] FREQUENCIES = {1, 2, 3, 5, 8};

    /** The press comes when so much of a to and fro is over: at each end of its way, and between. */
    private static final double[] PHASES = {0, 0.25, 0.5, 0.75};

    @Override
    public List<Finding> ask(Visitor visitor) {
        List<Double> gives = new ArrayList<>();
        boolean computed = true;
        for (double frequency : FREQUENCIES) {
            for (double phase : PHASES) {
                CycleResult result = visitor.shakes(new Shake(HARD, frequency, phase));
                computed &= result.computed();
                if (result.computed() && !Visitor.isRefused(result)) {
                    gives.add(frequency);
                }
            }
        }
        Status status = gives.isEmpty() && computed ? Status.PASS : Status.DOUBTFUL;
        return List.of(
                Finding.ask(Topic.JIGGLE, say("Does it stay locked when jiggled?"))
                        .answer(status, null, HARD / 1000, null, "m/s²")
                        .at(new Where("strut", 0.0, visitor.assembly.coinWorks().strut()))
                        .because(
                                !gives.isEmpty()
                                        ? say(
                                                "jiggled at {} times a second it lets a press through",
                                                Measure.of(gives.get(0), "Hz").bare())
                                        : computed
                                                ? say("jiggled and pressed it stays locked")
                                                : say("not every jiggle could be computed"),
                                gives.isEmpty()
                                        ? Sentence.NOTHING
                                        : say(
                                                "Add to the counterweight, or bring the bucket's centre nearer its pivot."),
                                "to and fro with up to " + Words.number(HARD / 1000)
                                        + " m/s² (a guess), 1 to 8 times a second, pressed at four moments of it, in time, as numbered"));
    }
}

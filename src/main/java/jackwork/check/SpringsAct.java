package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Measure.newtons;
import static jackwork.check.Sentence.say;

import jackwork.parts.Link;
import jackwork.parts.SpringLink;
import java.util.ArrayList;
import java.util.List;

/** Every spring or band does something in some pose of the run: a band that is never taut only hangs there. */
final class SpringsAct implements Question {

    /** Weaker than this nothing is felt of it beside weight and friction, N: about a gram, common practice, no source. */
    private static final double FELT = 0.01;

    @Override
    public List<Finding> ask(Subject subject) {
        List<Finding> findings = new ArrayList<>();
        RunPoses run = new RunPoses(subject);
        for (Link link : subject.assembly().links()) {
            if (link instanceof SpringLink spring && run.count() > 0) {
                findings.add(finding(run, spring));
            }
        }
        return findings;
    }

    private static Finding finding(RunPoses run, SpringLink spring) {
        double most = -1;
        double longest = 0;
        int at = 0;
        for (int i = 0; i < run.count(); i++) {
            double length = run.at(i, spring.a(), spring.onA()).distance(run.at(i, spring.b(), spring.onB()));
            double stretch = length - spring.free();
            double force = spring.stiffness() * (spring.pullsOnly() ? Math.max(0, stretch) : Math.abs(stretch));
            longest = Math.max(longest, length);
            if (force > most) {
                most = force;
                at = i;
            }
        }
        boolean acts = most >= FELT;
        boolean slack = spring.pullsOnly() && longest <= spring.free();
        return Finding.ask(Topic.SPRING_ACTS, spring.name(), say("Does {} do anything?", spring.name()))
                .answer(acts ? Status.PASS : Status.DOUBTFUL, most, FELT, most - FELT, "N")
                .at(new Where(spring.name(), run.stroke(at), spring.onA()))
                .because(
                        slack
                                ? say(
                                        "{} is never taut: it is {} long when it bears nothing, and its ends stand at most {} apart",
                                        spring.name(),
                                        mm(spring.free()),
                                        mm(longest))
                                : say(
                                        "{} bears at most {}, at {}",
                                        spring.name(),
                                        newtons(most),
                                        Measure.stroke(run.stroke(at))),
                        acts
                                ? Sentence.NOTHING
                                : slack
                                        ? say(
                                                "Take a shorter {}, hold its ends farther apart, or leave it out.",
                                                spring.name())
                                        : say("Take a harder {}, or leave it out.", spring.name()),
                        "greatest of stiffness · stretch over the run = " + Words.number(most) + " N; less than "
                                + Words.number(FELT) + " N is not felt (common practice, no source)");
    }
}

package jackwork.check;

import static jackwork.check.Sentence.say;

import jackwork.design.Surfaces;
import java.util.List;

/** Every friction that the workshop gives is of surfaces that something in it has; else nothing is worked out with it. */
final class FrictionUsed implements Question {

    @Override
    public boolean appliesTo(Subject subject) {
        return !subject.design().workshop().friction().isEmpty();
    }

    @Override
    public List<Finding> ask(Subject subject) {
        return Surfaces.unused(subject.design().workshop()).stream()
                .map(FrictionUsed::finding)
                .toList();
    }

    private static Finding finding(Surfaces.Unused unused) {
        String path = "workshop." + unused.path();
        return Finding.ask(Topic.UNUSUAL, path, say("Is {} meant so?", path))
                .answer(Status.DOUBTFUL, null, null, null, "")
                .at(Where.nowhere())
                .because(
                        say("{} is {}, and nothing in workshop.yaml is of it", path, unused.surface()),
                        say(
                                "Name the stock that was measured, one of {}; or take the pair out.",
                                String.join(", ", unused.there())),
                        "");
    }
}

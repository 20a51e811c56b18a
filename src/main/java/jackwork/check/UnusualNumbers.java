package jackwork.check;

import static jackwork.check.Sentence.say;

import jackwork.design.Field;
import jackwork.design.Unusual;
import java.util.List;

/** Is any number of the files one that seldom stands there? A slip of the pen most often, and then the rest is about it. */
final class UnusualNumbers implements Question {

    @Override
    public List<Finding> ask(Subject subject) {
        return Unusual.of(subject.design()).stream()
                .map(UnusualNumbers::finding)
                .toList();
    }

    private static Finding finding(Unusual unusual) {
        Unusual.Wide wide = unusual.wide();
        if (wide != null) {
            return wide(unusual, wide);
        }
        Field field = unusual.field();
        boolean low = unusual.value() < field.usualFrom();
        double limit = low ? field.usualFrom() : field.usualTo();
        String unit = field.unit().equals("1") ? "" : field.unit();
        return Finding.ask(Topic.UNUSUAL, unusual.path(), say("Is {} meant so?", unusual.path()))
                .answer(Status.DOUBTFUL, unusual.value(), limit, -Math.abs(unusual.value() - limit), unit)
                .at(Where.nowhere())
                .because(
                        say(
                                "{} is {}, and usually {} to {}",
                                unusual.path(),
                                Measure.of(unusual.value(), unit),
                                Measure.of(field.usualFrom(), unit).bare(),
                                Measure.of(field.usualTo(), unit)),
                        say("Look at it once more. If it is meant, everything else here holds for it."),
                        "");
    }

    /** So wide an interval was guessed rather than measured, and every verdict that hangs on it is as vague. */
    private static Finding wide(Unusual unusual, Unusual.Wide wide) {
        String unit = unusual.field().unit().equals("1") ? "" : unusual.field().unit();
        double width = wide.high() - wide.low();
        return Finding.ask(
                        Topic.UNUSUAL,
                        unusual.path() + "/spread",
                        say("Is the interval of {} meant so?", unusual.path()))
                .answer(Status.DOUBTFUL, width, wide.usual(), wide.usual() - width, unit)
                .at(Where.nowhere())
                .because(
                        say(
                                "{} lies between {} and {}, and usually its interval is no wider than {}",
                                unusual.path(),
                                Measure.of(wide.low(), unit).bare(),
                                Measure.of(wide.high(), unit),
                                Measure.of(wide.usual(), unit)),
                        say("Measure it, and write between what and what it lay."),
                        "interval = " + Words.number(width) + "; usual up to " + Words.number(wide.usual())
                                + " (a share of the number: common practice, no source)");
    }
}

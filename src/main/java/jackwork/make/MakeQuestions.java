package jackwork.make;

import jackwork.check.Finding;
import jackwork.check.Subject;
import jackwork.design.Design;
import java.util.List;
import java.util.function.BiFunction;

/** Every question asked of whether a design can be made. A new one is one class and one line here. */
public final class MakeQuestions {

    private static final List<BiFunction<Design, Subject, List<Finding>>> ALL = List.of(
            (design, subject) -> FitsSheet.ask(subject.assembly()),
            (design, subject) -> ThinnestNeck.ask(subject.assembly()),
            (design, subject) -> SmallestPart.ask(subject.assembly()),
            CaseBars::ask,
            StandsFirm::ask,
            FingerGaps::ask,
            CaseOpens::ask);

    private MakeQuestions() {}

    /** All findings in the order of the list; asked on all cores. */
    public static List<Finding> ask(Design design, Subject subject) {
        return ALL.parallelStream()
                .flatMap(question -> question.apply(design, subject).stream())
                .toList();
    }
}

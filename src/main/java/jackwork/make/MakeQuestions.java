package jackwork.make;

import jackwork.check.Finding;
import jackwork.check.Subject;
import jackwork.design.Design;
import java.util.ArrayList;
import java.util.List;

/** Every question asked of whether a design can be made. A new one is one class and one line here. */
public final class MakeQuestions {

    private MakeQuestions() {}

    public static List<Finding> ask(Design design, Subject subject) {
        List<Finding> findings = new ArrayList<>();
        findings.addAll(FitsSheet.ask(subject.assembly()));
        findings.addAll(ThinnestNeck.ask(subject.assembly()));
        findings.addAll(SmallestPart.ask(subject.assembly()));
        findings.addAll(CaseBars.ask(design, subject));
        findings.addAll(CaseOpens.ask(design, subject));
        return findings;
    }
}

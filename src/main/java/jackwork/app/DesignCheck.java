package jackwork.app;

import jackwork.check.Finding;
import jackwork.check.Questions;
import jackwork.check.Status;
import jackwork.check.Subject;
import jackwork.design.Design;
import jackwork.make.FitsSheet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A design with the answers to every question asked of it, from all rooms, worst first. */
public record DesignCheck(Design design, Subject subject, List<Finding> findings) {

    /** @throws jackwork.motion.MechanismException when the lever does not decide where every part is */
    public static DesignCheck of(Design design) {
        Subject subject = Subject.of(design);
        List<Finding> findings = new ArrayList<>(Questions.ask(subject));
        findings.addAll(FitsSheet.ask(subject.assembly()));
        findings.sort(Comparator.comparing(Finding::status).reversed());
        return new DesignCheck(design, subject, List.copyOf(findings));
    }

    /** {@code works}, {@code doubtful} or {@code fails}: the worst of the findings. */
    public String verdict() {
        Status worst = findings.stream()
                .map(Finding::status)
                .max(Comparator.naturalOrder())
                .orElse(Status.PASS);
        return switch (worst) {
            case PASS -> "works";
            case DOUBTFUL -> "doubtful";
            case FAIL -> "fails";
        };
    }

    public boolean fails() {
        return verdict().equals("fails");
    }

    /** The report as one JSON object, pretty. */
    public String json() {
        return Json.pretty(ReportJson.of(this));
    }
}

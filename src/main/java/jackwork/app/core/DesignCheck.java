package jackwork.app.core;

import static jackwork.check.Sentence.say;

import jackwork.app.wire.Json;
import jackwork.builds.Adjuster;
import jackwork.builds.BearableDrag;
import jackwork.builds.BuildReport;
import jackwork.builds.BuildRun;
import jackwork.builds.Mishaps;
import jackwork.builds.ThrownClear;
import jackwork.check.Finding;
import jackwork.check.Questions;
import jackwork.check.Sentence;
import jackwork.check.Status;
import jackwork.check.Subject;
import jackwork.check.Topic;
import jackwork.check.Where;
import jackwork.check.Words;
import jackwork.design.Design;
import jackwork.make.MakeQuestions;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** A design with the answers to every question asked of it, from all rooms, worst first. */
public record DesignCheck(
        Design design,
        Subject subject,
        List<Finding> findings,
        @Nullable BuildReport builds) {

    /** Share of pieces that must work with every coin. */
    private static final double WANTED = 0.99;

    private static final String WORKS = "works";

    /** @throws jackwork.motion.model.MechanismException when the lever does not decide where every part is */
    public static DesignCheck of(Design design) {
        Subject subject = Subject.of(design);
        List<Supplier<List<Finding>>> rooms = List.of(
                () -> Questions.ask(subject),
                () -> MakeQuestions.ask(design, subject),
                () -> ThrownClear.ask(subject),
                () -> BearableDrag.ask(subject));
        List<Finding> findings = rooms.parallelStream()
                .flatMap(room -> room.get().stream())
                .sorted(Comparator.comparing(Finding::status).reversed())
                .toList();
        return new DesignCheck(design, subject, findings, null);
    }

    /** Virtual builds of the design, ready to run. */
    public static BuildRun builds(Subject subject, int builds, long seed) {
        return new BuildRun(subject.assembly(), subject.coins(), Adjuster.of(subject.design()), builds, seed);
    }

    /** The same with virtual builds, a finding of what came of them, and what visitors do besides. */
    public DesignCheck with(BuildReport report) {
        List<Finding> all = new ArrayList<>(findings);
        all.add(finding(report, beside("; it bears ")));
        all.addAll(Mishaps.ask(subject.assembly(), subject.coins()));
        all.sort(Comparator.comparing(Finding::status).reversed());
        return new DesignCheck(design, subject, List.copyOf(all), report);
    }

    private static Finding finding(BuildReport report, String beside) {
        // Pieces that could not be computed are neither: where they alone could turn it, nobody knows.
        boolean fails = report.worked() + report.notComputed() < WANTED * report.builds();
        Status status = fails && report.workedInterval().high() < WANTED
                ? Status.FAIL
                : report.workedRate() < WANTED ? Status.DOUBTFUL : Status.PASS;
        String cause = report.causes().keySet().stream()
                .findFirst()
                .map(first -> "Most often " + first.words() + ": look at one with `jackwork replay`.")
                .orElse("");
        return Finding.ask(Topic.BUILDS, say("Do 99 of 100 pieces work with every coin?"))
                .answer(status, report.workedRate(), WANTED, report.workedRate() - WANTED, "1")
                .at(new Where(null, null, null))
                .because(
                        Sentence.plain(report.words() + beside),
                        status == Status.PASS ? Sentence.NOTHING : Sentence.plain(cause),
                        "passes / builds = " + report.worked() + " / " + report.builds()
                                + "; lever and bucket lie to one side in the play of their holes: that they rattle on"
                                + " their way is left out");
    }

    /** {@code works}, {@code doubtful} or {@code fails}: the worst of the findings. */
    public String verdict() {
        return verdict(findings);
    }

    /** The same of some of them. */
    public static String verdict(List<Finding> findings) {
        Status worst = findings.stream()
                .map(Finding::status)
                .max(Comparator.naturalOrder())
                .orElse(Status.PASS);
        return switch (worst) {
            case PASS, OPEN -> WORKS;
            case DOUBTFUL -> "doubtful";
            case FAIL -> "fails";
        };
    }

    /**
     * The verdict in words. That nothing fails is no yes while no trial stands behind it; where builds were run, they say
     * how often it works.
     */
    public String words() {
        return builds != null && verdict().equals(WORKS)
                ? "works in " + builds.worked() + " of " + builds.builds() + " builds"
                        + (builds.card().isEmpty() ? "" : " once tuned, in " + builds.passes() + " at once")
                        + beside(", and bears ")
                : words(verdict());
    }

    /** How much drag it bears, as told beside what comes of builds; empty where that is not asked. */
    private String beside(String before) {
        return findings.stream()
                .filter(finding -> finding.topic() == Topic.BEARABLE_DRAG)
                .flatMap(finding -> Optional.ofNullable(finding.value()).stream())
                .map(times -> before + Words.number(times) + " times the drag expected")
                .findFirst()
                .orElse("");
    }

    /** A verdict that rests on findings alone, in words. */
    public static String words(String verdict) {
        return verdict.equals(WORKS) ? "nothing found against it" : verdict;
    }

    public boolean fails() {
        return verdict().equals("fails");
    }

    /** The report as one JSON object, pretty. */
    public String json() {
        return Json.pretty(ReportMaker.of(this));
    }
}

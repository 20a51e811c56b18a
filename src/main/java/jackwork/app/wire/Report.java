package jackwork.app.wire;

import jackwork.check.Sentence;
import jackwork.check.Topic;
import jackwork.geometry.Point;
import jackwork.motion.coin.CycleStage;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The report of {@code check --json} and of the page, described in docs/report.md; null means not computed or not finite.
 */
public record Report(
        int formatVersion,
        String design,
        Verdict verdict,
        List<Finding> findings,
        Motion motion,
        List<Coin> coins,
        @Nullable Builds builds,
        Hangs hangsOn,
        List<LeftOut> leftOut) {

    /** WORKS where nothing was found against it: no trial need stand behind it. */
    public enum Verdict {
        WORKS,
        DOUBTFUL,
        FAILS
    }

    public enum Status {
        PASS,
        OPEN,
        DOUBTFUL,
        FAIL
    }

    /**
     * One question's answer.
     *
     * @param id topic and about, {@code coin-trips/EUR-1}
     * @param restsOn what moves it, most first
     * @param margins the margin at both ends of all that moves it; null when nothing does
     * @param worded question, why and remedy once more, with their numbers as numbers
     */
    public record Finding(
            String id,
            Topic topic,
            String about,
            String question,
            Status status,
            @Places(9) @Nullable Double value,
            @Places(9) @Nullable Double limit,
            @Places(9) @Nullable Double margin,
            String unit,
            Where where,
            String why,
            String remedy,
            String formula,
            List<Ground> restsOn,
            @Nullable Margins margins,
            Worded worded) {

        public static Finding of(jackwork.check.Finding finding) {
            jackwork.check.Margins margins = finding.margins();
            return new Finding(
                    finding.id(),
                    finding.topic(),
                    finding.about(),
                    finding.question().toString(),
                    Status.valueOf(finding.status().name()),
                    finding.value(),
                    finding.limit(),
                    finding.margin(),
                    finding.unit(),
                    Where.of(finding.where()),
                    finding.why().toString(),
                    finding.remedy().toString(),
                    finding.formula(),
                    finding.restsOn().stream()
                            .map(ground -> new Ground(
                                    ground.name(),
                                    ground.number().value(),
                                    ground.number().low(),
                                    ground.number().high(),
                                    ground.number().unit(),
                                    ground.number().basis().words(),
                                    ground.number().source(),
                                    ground.drop(),
                                    ground.gain()))
                            .toList(),
                    margins == null ? null : new Margins(margins.low(), margins.high()),
                    new Worded(finding.question(), finding.why(), finding.remedy()));
        }
    }

    public record Margins(@Places(9) double low, @Places(9) double high) {}

    public record Worded(Sentence question, Sentence why, Sentence remedy) {}

    public record Where(
            @Nullable String part,
            @Nullable Double stroke,
            @Nullable Pair at) {

        static Where of(jackwork.check.Where where) {
            Point at = where.at();
            return new Where(where.part(), where.stroke(), at == null ? null : Pair.of(at));
        }
    }

    /**
     * @param drop how much of the margin its worse end takes away
     * @param gain how much its better end adds
     */
    public record Ground(
            String name,
            double value,
            double low,
            double high,
            String unit,
            String basis,
            String source,
            @Places(9) double drop,
            @Places(9) double gain) {}

    /**
     * What the verdict comes to when guesses are off.
     *
     * @param worst verdict with all guesses off to the bad side, to first order
     * @param best with all off to the good side
     * @param guesses that can turn it, most first; or those that come nearest to
     * @param measureFirst the short test that would settle most; empty when none can
     */
    public record Hangs(Verdict worst, Verdict best, List<Guess> guesses, String words, String measureFirst) {}

    /** What is not in the model, whatever the verdict, and what to do about it. */
    public record LeftOut(String what, String instead) {}

    /** @param share of what moves the findings that can turn; of its finding's margin when none can */
    public record Guess(String name, @Places(3) double share, String finding) {}

    public record Motion(Way pressing, Way returning) {}

    /** Over the stroke: the finger's force, N, and where every body is. */
    public record Way(List<Double> stroke, List<@Nullable Double> forceN, Map<String, List<PoseEntry>> parts) {}

    public record Coin(
            String coin,
            boolean fits,
            @Nullable Boolean trips,
            @Nullable Double tripMomentNmm,
            @Nullable Double needMomentNmm,
            @Nullable Cycle cycle) {}

    /** The design as numbered, its coin let go in the middle of the slot. */
    public record Cycle(
            boolean passes,
            boolean computed,
            List<Stage> stages,
            @Places(9) double closureMm,
            @Places(9) double residual,
            @Places(9) double energyFromNowhere) {}

    public record Stage(
            CycleStage stage,
            @Places(5) @Nullable Double atS,
            @Places(4) @Nullable Double nearest) {}

    public record Builds(
            String words,
            long seed,
            int builds,
            int passes,
            int notComputed,
            double rate,
            Interval interval95,
            Map<String, Integer> passesByCoin,
            List<CauseCount> causes,
            List<Integer> failing,
            Matters matters,
            List<Condition> conditions,
            int numbersDrawn,
            int guesses,
            @Nullable Tuning tuning) {}

    /** What tuning makes of them; null where the design has no adjuster. */
    public record Tuning(int works, double rate, Interval interval95, List<CardLine> card) {}

    /** One line of the tuning card; {@code set} is null where nothing helps in so many. */
    public record CardLine(
            jackwork.builds.Cause cause,
            String seen,
            @Nullable String set,
            int helps,
            int of) {}

    public record Interval(double low, double high) {}

    public record CauseCount(jackwork.builds.Cause cause, String words, int builds) {}

    public record Matters(
            String measure, List<Matter> numbers, @Nullable String measureFirst) {}

    public record Matter(String name, @Places(3) double correlation, boolean guess) {}

    public record Condition(String name, int builds, int passes) {}
}

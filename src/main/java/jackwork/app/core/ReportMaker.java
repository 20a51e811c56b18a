package jackwork.app.core;

import jackwork.app.wire.PoseEntry;
import jackwork.app.wire.Report;
import jackwork.builds.BuildReport;
import jackwork.builds.BuildRun;
import jackwork.builds.TuningCard;
import jackwork.check.CoinSlotPlay;
import jackwork.check.CoinTrips;
import jackwork.check.Finding;
import jackwork.check.Hanging;
import jackwork.check.NotInTheModel;
import jackwork.check.Status;
import jackwork.geometry.Point;
import jackwork.motion.coin.CycleResult;
import jackwork.motion.coin.CycleStage;
import jackwork.motion.model.Mechanism;
import jackwork.motion.rest.StrokeResult;
import jackwork.parts.Assembly;
import jackwork.parts.Body;
import jackwork.parts.CoinWorks;
import jackwork.stock.Coin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Makes the report of a check. */
public final class ReportMaker {

    private static final int FORMAT_VERSION = 1;
    /** Numbers of failing builds that are listed. */
    private static final int MOST_FAILING = 50;

    private ReportMaker() {}

    public static Report of(DesignCheck check) {
        Assembly assembly = check.subject().assembly();
        BuildReport builds = check.builds();
        return new Report(
                FORMAT_VERSION,
                check.design().name(),
                Report.Verdict.valueOf(check.verdict().toUpperCase(java.util.Locale.ROOT)),
                check.findings().stream().map(Report.Finding::of).toList(),
                motion(assembly, check.subject().stroke()),
                check.subject().coins().stream()
                        .map(coin -> coin(assembly, coin, builds != null))
                        .toList(),
                builds == null ? null : builds(builds),
                hangs(check.findings()),
                NotInTheModel.all().stream()
                        .map(one -> new Report.LeftOut(one.what(), one.instead()))
                        .toList());
    }

    /** The design as numbered, its coin let go in the middle of the slot. */
    private static Report.Cycle cycle(CycleResult cycle) {
        return new Report.Cycle(
                cycle.passes(),
                cycle.computed(),
                Arrays.stream(CycleStage.values())
                        .map(stage -> new Report.Stage(
                                stage, cycle.times().get(stage), cycle.nearest().get(stage)))
                        .toList(),
                cycle.closure(),
                cycle.residual(),
                cycle.energyFromNowhere());
    }

    static Report.Builds builds(BuildReport builds) {
        return new Report.Builds(
                builds.words(),
                builds.seed(),
                builds.builds(),
                builds.passes(),
                builds.notComputed(),
                builds.rate(),
                new Report.Interval(builds.interval().low(), builds.interval().high()),
                builds.passesByCoin(),
                builds.causes().entrySet().stream()
                        .map(cause -> new Report.CauseCount(
                                cause.getKey(), cause.getKey().words(), cause.getValue()))
                        .toList(),
                builds.results().stream()
                        .filter(result -> !result.passes())
                        .limit(MOST_FAILING)
                        .map(result -> result.number())
                        .toList(),
                new Report.Matters(
                        "Spearman's rank correlation with the build's margin",
                        builds.matters().stream()
                                .map(matter -> new Report.Matter(matter.name(), matter.correlation(), matter.guess()))
                                .toList(),
                        builds.measureFirst().orElse(null)),
                builds.conditions().stream()
                        .map(third -> new Report.Condition(third.name(), third.builds(), third.passes()))
                        .toList(),
                builds.unknowns(),
                builds.guesses(),
                builds.card().map(ReportMaker::tuning).orElse(null));
    }

    private static Report.Tuning tuning(TuningCard card) {
        return new Report.Tuning(
                card.passes(),
                card.rate(),
                new Report.Interval(card.interval().low(), card.interval().high()),
                card.lines().stream()
                        .map(line -> new Report.CardLine(
                                line.seen(),
                                line.seen().words(),
                                line.set().isEmpty() ? null : line.set(),
                                line.helps(),
                                line.of()))
                        .toList());
    }

    static Report.Hangs hangs(List<Finding> findings) {
        Hanging hanging = Hanging.of(findings);
        return new Report.Hangs(
                verdict(hanging.worst()),
                verdict(hanging.best()),
                hanging.guesses().stream()
                        .map(guess -> new Report.Guess(guess.name(), guess.share(), guess.finding()))
                        .toList(),
                hanging.words(),
                hanging.measureFirst());
    }

    private static Report.Verdict verdict(Status status) {
        return switch (status) {
            case PASS, OPEN -> Report.Verdict.WORKS;
            case DOUBTFUL -> Report.Verdict.DOUBTFUL;
            case FAIL -> Report.Verdict.FAILS;
        };
    }

    public static Report.Motion motion(Assembly assembly, StrokeResult stroke) {
        return new Report.Motion(
                way(assembly, stroke, stroke.pose(), stroke.pressForce()),
                way(assembly, stroke, stroke.returnPose(), stroke.returnForce()));
    }

    private static Report.Way way(Assembly assembly, StrokeResult result, double[][] solved, double[] force) {
        Map<String, List<PoseEntry>> parts = new LinkedHashMap<>();
        Mechanism mechanism = result.mechanism();
        for (int b = 0; b < mechanism.bodyCount(); b++) {
            int body = 3 * b;
            parts.put(
                    mechanism.bodyName(b),
                    Arrays.stream(solved)
                            .map(pose -> new PoseEntry(pose[body], pose[body + 1], Math.toDegrees(pose[body + 2])))
                            .toList());
        }
        putBucket(assembly, result, parts);
        List<@Nullable Double> newtons = new ArrayList<>();
        Arrays.stream(force).forEach(f -> newtons.add(f / 1e6));
        return new Report.Way(Arrays.stream(result.stroke()).boxed().toList(), newtons, parts);
    }

    /** The bucket rests at stroke 0; past it, it is shown tipped, for nothing moves without a coin. */
    private static void putBucket(Assembly assembly, StrokeResult result, Map<String, List<PoseEntry>> parts) {
        CoinWorks works = assembly.coinWorks();
        Body bucket = assembly.body(works.bucket());
        parts.put(
                bucket.name(),
                IntStream.range(0, result.stroke().length)
                        .mapToObj(i -> {
                            double tip = works.angle(i == 0 ? 0 : 1);
                            Point centre = bucket.centre().turnedAbout(works.pivot(), tip);
                            return new PoseEntry(centre.x(), centre.y(), Math.toDegrees(tip));
                        })
                        .toList());
    }

    private static Report.Coin coin(Assembly assembly, Coin coin, boolean withCycle) {
        CoinWorks works = assembly.coinWorks();
        Report.Cycle cycle = withCycle ? cycle(BuildRun.nominal(assembly, coin)) : null;
        boolean fits = CoinSlotPlay.of(works, coin) > 0;
        if (works.bridges()) {
            return new Report.Coin(coin.code(), fits, null, null, null, cycle);
        }
        CoinTrips.Balance balance = CoinTrips.balance(assembly, coin);
        return new Report.Coin(
                coin.code(), fits, balance.surplus() > 0, balance.tripMoment(), balance.needMoment(), cycle);
    }
}

package jackwork.app;

import jackwork.builds.BuildReport;
import jackwork.builds.BuildRun;
import jackwork.check.CoinSlotPlay;
import jackwork.check.CoinTrips;
import jackwork.check.Finding;
import jackwork.check.Ground;
import jackwork.check.Where;
import jackwork.geometry.Point;
import jackwork.motion.CycleResult;
import jackwork.motion.CycleStage;
import jackwork.motion.Mechanism;
import jackwork.motion.StrokeResult;
import jackwork.parts.Body;
import jackwork.parts.CoinWorks;
import jackwork.stock.Coin;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The report of {@code check --json}: one object with stable names, described in docs/report.md. */
final class ReportJson {

    private static final int FORMAT_VERSION = 1;
    /** Numbers of failing builds that are listed. */
    private static final int MOST_FAILING = 50;

    private ReportJson() {}

    static ObjectNode of(DesignCheck check) {
        ObjectNode report = Json.object();
        report.put("formatVersion", FORMAT_VERSION);
        report.put("design", check.design().name());
        report.put("verdict", check.verdict());
        ArrayNode findings = report.putArray("findings");
        check.findings().forEach(finding -> findings.add(finding(finding)));
        StrokeResult stroke = check.subject().stroke();
        ObjectNode motion = report.putObject("motion");
        motion.set("pressing", direction(check, stroke, stroke.pose(), stroke.pressForce()));
        motion.set("returning", direction(check, stroke, stroke.returnPose(), stroke.returnForce()));
        ArrayNode coins = report.putArray("coins");
        check.subject().coins().forEach(coin -> coins.add(coin(check, coin)));
        BuildReport builds = check.builds();
        if (builds == null) {
            report.putNull("builds");
        } else {
            report.set("builds", builds(builds));
        }
        return report;
    }

    /** The design as numbered, its coin let go in the middle of the slot. */
    private static ObjectNode cycle(CycleResult cycle) {
        ObjectNode node = Json.object();
        node.put("passes", cycle.passes());
        node.put("computed", cycle.computed());
        ArrayNode stages = node.putArray("stages");
        for (CycleStage stage : CycleStage.values()) {
            ObjectNode entry = stages.addObject().put("stage", stage.name().toLowerCase(java.util.Locale.ROOT));
            Json.put(entry, "atS", cycle.times().get(stage), 5);
            Json.put(entry, "nearest", cycle.nearest().get(stage), 4);
        }
        Json.put(node, "closureMm", cycle.closure(), 9);
        Json.put(node, "residual", cycle.residual(), 9);
        Json.put(node, "energyFromNowhere", cycle.energyFromNowhere(), 9);
        return node;
    }

    private static ObjectNode builds(BuildReport builds) {
        ObjectNode node = Json.object();
        node.put("words", builds.words());
        node.put("seed", builds.seed());
        node.put("builds", builds.builds());
        node.put("passes", builds.passes());
        node.put("notComputed", builds.notComputed());
        Json.put(node, "rate", builds.rate(), 6);
        ObjectNode interval = node.putObject("interval95");
        Json.put(interval, "low", builds.interval().low(), 6);
        Json.put(interval, "high", builds.interval().high(), 6);
        ObjectNode coins = node.putObject("passesByCoin");
        builds.passesByCoin().forEach(coins::put);
        ArrayNode causes = node.putArray("causes");
        builds.causes()
                .forEach((cause, count) -> causes.addObject()
                        .put("cause", cause.name().toLowerCase(java.util.Locale.ROOT))
                        .put("words", cause.words())
                        .put("builds", count));
        ArrayNode failing = node.putArray("failing");
        builds.results().stream()
                .filter(result -> !result.passes())
                .limit(MOST_FAILING)
                .forEach(result -> failing.add(result.number()));
        ObjectNode matters = node.putObject("matters");
        matters.put("measure", "Spearman's rank correlation with the build's margin");
        ArrayNode numbers = matters.putArray("numbers");
        for (BuildReport.Matter matter : builds.matters()) {
            ObjectNode entry = numbers.addObject().put("name", matter.name());
            Json.put(entry, "correlation", matter.correlation(), 3);
            entry.put("guess", matter.guess());
        }
        matters.put("measureFirst", builds.measureFirst().orElse(null));
        ArrayNode conditions = node.putArray("conditions");
        builds.conditions()
                .forEach(condition -> conditions
                        .addObject()
                        .put("name", condition.name())
                        .put("builds", condition.builds())
                        .put("passes", condition.passes()));
        node.put("numbersDrawn", builds.unknowns());
        node.put("guesses", builds.guesses());
        return node;
    }

    static ObjectNode finding(Finding finding) {
        ObjectNode node = Json.object();
        node.put("id", finding.id());
        node.put("question", finding.question());
        node.put("status", finding.status().word());
        Json.put(node, "value", finding.value(), 9);
        Json.put(node, "limit", finding.limit(), 9);
        Json.put(node, "margin", finding.margin(), 9);
        node.put("unit", finding.unit());
        node.set("where", where(finding.where()));
        node.put("why", finding.why());
        node.put("remedy", finding.remedy());
        node.put("formula", finding.formula());
        ArrayNode grounds = node.putArray("restsOn");
        for (Ground ground : finding.restsOn()) {
            ObjectNode entry = grounds.addObject();
            entry.put("name", ground.name());
            Json.put(entry, "value", ground.number().value(), 6);
            Json.put(entry, "low", ground.number().low(), 6);
            Json.put(entry, "high", ground.number().high(), 6);
            entry.put("unit", ground.number().unit());
            entry.put("basis", ground.number().basis().words());
            entry.put("source", ground.number().source());
        }
        return node;
    }

    private static ObjectNode where(Where where) {
        ObjectNode node = Json.object();
        node.put("part", where.part());
        Json.put(node, "stroke", where.stroke(), 6);
        Point at = where.at();
        if (at == null) {
            node.putNull("at");
        } else {
            node.set("at", Json.point(at));
        }
        return node;
    }

    private static ObjectNode direction(DesignCheck check, StrokeResult result, double[][] solved, double[] force) {
        ObjectNode node = Json.object();
        ArrayNode strokes = node.putArray("stroke");
        ArrayNode forces = node.putArray("forceN");
        for (int i = 0; i < result.stroke().length; i++) {
            Json.add(strokes, result.stroke()[i], 6);
            Json.add(forces, force[i] / 1e6, 6);
        }
        ObjectNode parts = node.putObject("parts");
        Mechanism mechanism = result.mechanism();
        for (int b = 0; b < mechanism.bodyCount(); b++) {
            ArrayNode poses = parts.putArray(mechanism.bodyName(b));
            for (double[] pose : solved) {
                poses.add(pose(pose[3 * b], pose[3 * b + 1], Math.toDegrees(pose[3 * b + 2])));
            }
        }
        putBucket(check, result, parts);
        return node;
    }

    /** The bucket rests at stroke 0; past it, it is shown tipped, for nothing moves without a coin. */
    private static void putBucket(DesignCheck check, StrokeResult result, ObjectNode parts) {
        CoinWorks works = check.subject().assembly().coinWorks();
        Body bucket = check.subject().assembly().body(works.bucket());
        ArrayNode poses = parts.putArray(bucket.name());
        for (int i = 0; i < result.stroke().length; i++) {
            double tip = i == 0 ? 0 : works.tip();
            Point centre = bucket.centre().turnedAbout(works.pivot(), tip);
            poses.add(pose(centre.x(), centre.y(), Math.toDegrees(tip)));
        }
    }

    private static ArrayNode pose(double x, double y, double degrees) {
        ArrayNode pose = Json.array();
        Json.add(pose, x, 6);
        Json.add(pose, y, 6);
        Json.add(pose, degrees, 6);
        return pose;
    }

    private static ObjectNode coin(DesignCheck check, Coin coin) {
        ObjectNode node = Json.object();
        node.put("coin", coin.code());
        node.put("fits", CoinSlotPlay.of(check.subject().assembly().coinWorks(), coin) > 0);
        if (check.subject().assembly().coinWorks().bridges()) {
            node.putNull("trips").putNull("tripMomentNmm").putNull("needMomentNmm");
        } else {
            CoinTrips.Balance balance = CoinTrips.balance(check.subject().assembly(), coin);
            node.put("trips", balance.surplus() > 0);
            Json.put(node, "tripMomentNmm", balance.tripMoment(), 6);
            Json.put(node, "needMomentNmm", balance.needMoment(), 6);
        }
        if (check.builds() == null) {
            node.putNull("cycle");
        } else {
            node.set("cycle", cycle(BuildRun.nominal(check.subject().assembly(), coin)));
        }
        return node;
    }
}

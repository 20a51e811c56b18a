package jackwork.motion.coin;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.DoubleSupplier;
import tools.jackson.databind.JsonNode;

/**
 * A coin's whole visit in the peer's world, each stage judged as docs/mechanism.md says, by the numbers printed; for works with a
 * bucket.
 */
final class LoneCycle {

    private final JsonNode limits;
    private final LoneDrop drop;
    private final LoneWorld world;
    private final double step;
    private final String lever;
    private final String bucket;
    private final double throwAngle;
    private final double[] leverPivot;
    private final double[] bucketPivot;
    private final double[] strut;
    private final double[] tooth;
    private final double lowest;
    private final double startHeight;
    private final double overlapAtRest;
    /** How long the finger takes to bring the lever down when nothing holds it back, s. */
    private final double pressing;

    private final Map<String, Double> times = new LinkedHashMap<>();
    private double time;

    private LoneCycle(JsonNode json, LoneDrop drop, LoneWorld.Solver solver) {
        JsonNode works = json.get("coinWorks");
        this.limits = json.get("cycle");
        this.drop = drop;
        this.world = new LoneWorld(json, drop, solver);
        this.step = solver.step();
        this.lever = json.get("lever").get("body").stringValue();
        this.bucket = works.get("body").stringValue();
        this.throwAngle = Math.toRadians(LoneWorld.number(json.get("lever"), "throwDeg"));
        this.leverPivot = pivot(json);
        this.bucketPivot = array(works.get("pivot"));
        this.strut = array(works.get("strut"));
        this.tooth = array(works.get("tooth"));
        this.lowest = LoneWorld.number(works, "lowest");
        this.startHeight = world.coin()[1];
        this.overlapAtRest = overlap();
        this.pressing =
                distance(array(json.get("lever").get("press")), leverPivot) * Math.abs(throwAngle) / drop.press();
    }

    /** @return when each stage was reached, s from letting go; without those that were not */
    static Map<String, Double> times(JsonNode json, LoneDrop drop, LoneWorld.Solver solver) {
        LoneCycle cycle = new LoneCycle(json, drop, solver);
        cycle.run();
        return cycle.times;
    }

    private void run() {
        if (frees() && acts() && returns()) {
            refuses();
        }
    }

    private boolean frees() {
        double end = limit("patience");
        double freed = Double.NaN;
        while (time < end) {
            advance();
            if (overlap() >= 0) {
                freed = Double.NaN;
            } else if (Double.isNaN(freed)) {
                freed = time;
            }
            if (time - freed >= limit("reaction")) {
                times.put("frees", freed);
                return true;
            }
        }
        return false;
    }

    private boolean acts() {
        world.push(drop.force(), drop.press());
        boolean down = waitFor("acts", this::stroke, limit("down"), pressing * (1 - stroke()));
        hold("acts");
        return down;
    }

    private boolean returns() {
        world.push(0, 0);
        boolean all = waitFor("thrown", this::fallen, 1, 0)
                && waitFor("returns", () -> 1 - stroke(), 1 - limit("back"), 0)
                && waitFor(
                        "locks", () -> stroke() <= limit("back") ? overlap() / overlapAtRest : 0, limit("locked"), 0);
        hold("locks");
        return all;
    }

    private void refuses() {
        world.push(drop.force(), drop.press());
        double end = time + Math.max(limit("secondPress"), pressing);
        double most = 0;
        while (time < end) {
            advance();
            most = Math.max(most, stroke());
        }
        if (overlap() > 0 && most < limit("held")) {
            times.put("refuses", time);
        }
    }

    private boolean waitFor(String stage, DoubleSupplier measure, double enough, double longer) {
        double end = time + limit("patience") + longer;
        while (!times.containsKey(stage) && measure.getAsDouble() < enough) {
            if (time >= end) {
                return false;
            }
            advance();
        }
        times.putIfAbsent(stage, time);
        return true;
    }

    private void hold(String stage) {
        while (times.containsKey(stage) && time < times.get(stage) + limit("hold")) {
            advance();
        }
    }

    private void advance() {
        world.step();
        time += step;
        if (world.touchesBody(bucket)) {
            times.putIfAbsent("lands", time);
        }
        if (times.containsKey("frees") && fallen() > 1) {
            times.putIfAbsent("thrown", time);
        }
    }

    private double limit(String name) {
        return LoneWorld.number(limits, name);
    }

    private double stroke() {
        return world.angle(lever) / throwAngle;
    }

    private double fallen() {
        return (startHeight - world.coin()[1]) / (startHeight - lowest);
    }

    /** By how much the strut stands beneath the tooth, mm. */
    private double overlap() {
        double angle = world.angle(bucket);
        double x = strut[0] - bucketPivot[0];
        double y = strut[1] - bucketPivot[1];
        double[] now = {
            bucketPivot[0] + Math.cos(angle) * x - Math.sin(angle) * y,
            bucketPivot[1] + Math.sin(angle) * x + Math.cos(angle) * y
        };
        double side = Math.signum(distance(strut, leverPivot) - distance(tooth, leverPivot));
        return side * (distance(now, leverPivot) - distance(tooth, leverPivot));
    }

    private static double distance(double[] a, double[] b) {
        return Math.hypot(a[0] - b[0], a[1] - b[1]);
    }

    private static double[] array(JsonNode point) {
        return new double[] {point.get(0).doubleValue(), point.get(1).doubleValue()};
    }

    private static double[] pivot(JsonNode json) {
        for (JsonNode pin : json.get("pins")) {
            if (pin.get("name").equals(json.get("lever").get("pin"))) {
                return array(pin.get("at"));
            }
        }
        throw new IllegalArgumentException("no pin is named as the lever's");
    }
}

package jackwork.app.work;

import jackwork.app.core.Scene;
import jackwork.app.wire.PoseEntry;
import jackwork.builds.Watched;
import jackwork.motion.coin.CoinCycle;
import jackwork.motion.coin.CycleResult;
import jackwork.motion.coin.CycleStage;
import jackwork.parts.Assembly;
import jackwork.stock.Coin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Takes pictures of a run, a little closer in time than a screen shows them. */
final class Film implements CoinCycle.Watcher {

    private static final double BETWEEN = 1.0 / 90;

    private final List<Double> times = new ArrayList<>();
    private final List<double[]> poses = new ArrayList<>();

    /** The newest picture, that the last moment may be shown as well. */
    private double[] newest = {};

    private double newestTime;

    @Override
    public void at(double time, double[] pose) {
        if (newest.length != pose.length) {
            newest = new double[pose.length];
        }
        System.arraycopy(pose, 0, newest, 0, pose.length);
        newestTime = time;
        if (times.isEmpty() || time - times.get(times.size() - 1) >= BETWEEN) {
            times.add(time);
            poses.add(pose.clone());
        }
    }

    /** @param scene of a piece that differs from the design as numbered */
    Playback developed(Assembly assembly, Coin coin, Watched watched, @Nullable Scene scene, @Nullable String across) {
        if (!times.isEmpty() && newestTime > times.get(times.size() - 1)) {
            times.add(newestTime);
            poses.add(newest);
        }
        Map<String, List<PoseEntry>> bodies = new LinkedHashMap<>();
        int last = assembly.bodies().size() - 1;
        for (int body = 0; body < last; body++) {
            bodies.put(assembly.body(body + 1).name(), of(body));
        }
        CycleResult cycle = watched.cycle().orElse(null);
        return new Playback(
                coin.code(),
                2 * coin.radius(),
                words(watched),
                watched.trial().passes(),
                times,
                bodies,
                of(last),
                cycle == null
                        ? List.of()
                        : Arrays.stream(CycleStage.values())
                                .filter(cycle.times()::containsKey)
                                .map(stage -> new Playback.Reached(
                                        stage, cycle.times().getOrDefault(stage, 0.0)))
                                .toList(),
                cycle == null ? null : cycle.firstMissed().orElse(null),
                scene,
                across);
    }

    private List<PoseEntry> of(int body) {
        return poses.stream()
                .map(pose -> new PoseEntry(pose[3 * body], pose[3 * body + 1], Math.toDegrees(pose[3 * body + 2])))
                .toList();
    }

    private static String words(Watched watched) {
        if (!watched.trial().computed()) {
            return "this run could not be computed; it counts for nothing";
        }
        return watched.trial()
                .cause()
                .map(cause -> cause.words())
                .orElse("the coin frees the lever, the figure acts, the coin is thrown, all locks again");
    }
}

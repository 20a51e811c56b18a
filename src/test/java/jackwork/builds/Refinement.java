package jackwork.builds;

import jackwork.check.Subject;
import jackwork.design.DesignReader;
import jackwork.motion.coin.CoinCycle;
import jackwork.motion.coin.CoinLimits;
import jackwork.motion.coin.CycleResult;
import jackwork.motion.coin.CycleRig;
import jackwork.motion.coin.CycleStage;
import jackwork.stock.Coin;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** Random builds of the heron at the step that all builds use and at a hundredth of it, each with one coin in turn. */
final class Refinement {

    /**
     * One build both ways.
     *
     * @param falling greatest distance between the coin's places until it first touches anything, mm
     * @param landing the same until it touches the bucket, after any rebound from what stands before it, mm
     */
    record Pair(int build, CycleResult coarse, CycleResult fine, double falling, double landing) {

        boolean flips() {
            return !outcome(coarse).equals(outcome(fine));
        }

        private static Optional<CycleStage> outcome(CycleResult result) {
            return result.firstMissed();
        }

        /** How much later the coarse run reaches a stage, s; NaN when either does not. */
        double late(CycleStage stage) {
            return coarse.times().getOrDefault(stage, Double.NaN) - fine.times().getOrDefault(stage, Double.NaN);
        }
    }

    /** mm/s². */
    private static final double G = 9806.65;

    private Refinement() {}

    static List<Pair> run(int builds, long seed) {
        Subject heron = Subject.of(DesignReader.read(Path.of("demo/heron")));
        BuildRun run = new BuildRun(heron.assembly(), heron.coins(), builds, seed);
        List<Coin> coins = heron.coins();
        return IntStream.range(0, builds)
                .parallel()
                .mapToObj(i -> pair(i, run.build(i), coins.get(i % coins.size())))
                .toList();
    }

    private static Pair pair(int number, Build build, Coin coin) {
        CycleRig rig = BuildTrial.rig(build);
        List<double[]> coarsePlaces = new ArrayList<>();
        List<double[]> finePlaces = new ArrayList<>();
        CycleResult coarse = run(rig, build, coin, CoinLimits.STEP, coarsePlaces);
        CycleResult fine = run(rig, build, coin, CoinLimits.STEP / 100, finePlaces);
        double landed = fine.times().getOrDefault(CycleStage.LANDS, 0.0);
        return new Pair(
                number,
                coarse,
                fine,
                apart(coarsePlaces, finePlaces, touched(build, finePlaces)),
                apart(coarsePlaces, finePlaces, landed));
    }

    private static double apart(List<double[]> coarse, List<double[]> fine, double until) {
        double most = 0;
        for (double[] place : coarse) {
            if (place[0] < until) {
                most = Math.max(most, distance(place, fine));
            }
        }
        return most;
    }

    /** When the coin leaves the path of free fall, s. */
    private static double touched(Build build, List<double[]> places) {
        double[] start = places.get(0);
        double tilt = Math.toRadians(build.tilt);
        for (double[] place : places) {
            double t = place[0];
            double x = start[1] + G * Math.sin(-tilt) * t * t / 2;
            double y = start[2] - build.dropSpeed * t - G * Math.cos(tilt) * t * t / 2;
            if (Math.hypot(place[1] - x, place[2] - y) > 1e-6) {
                return t;
            }
        }
        return 0;
    }

    private static CycleResult run(CycleRig rig, Build build, Coin coin, double step, List<double[]> places) {
        return CoinCycle.run(rig, BuildTrial.drop(build, coin), BuildTrial.press(build), step, (time, pose) -> {
            int at = pose.length - 3;
            places.add(new double[] {time, pose[at], pose[at + 1]});
        });
    }

    /** From where the fine run has the coin at the same time, between its steps. */
    private static double distance(double[] place, List<double[]> fine) {
        int k = 1;
        while (k < fine.size() - 1 && fine.get(k)[0] < place[0]) {
            k++;
        }
        double[] a = fine.get(k - 1);
        double[] b = fine.get(k);
        double share = (place[0] - a[0]) / (b[0] - a[0]);
        return Math.hypot(a[1] + share * (b[1] - a[1]) - place[1], a[2] + share * (b[2] - a[2]) - place[2]);
    }

    /** What {@code docs/benchmarks/refinement.md} tells: 200 builds. */
    public static void main(String[] arguments) {
        List<Pair> pairs = run(arguments.length > 0 ? Integer.parseInt(arguments[0]) : 200, 7);
        System.out.printf(
                "%d builds; coin within %.1e mm until it touches, until it lands within 0.1 mm in %d, most %.2g mm%n",
                pairs.size(),
                falling(pairs),
                pairs.stream().filter(pair -> pair.landing() <= 0.1).count(),
                pairs.stream().mapToDouble(Pair::landing).max().orElse(0));
        for (CycleStage stage : CycleStage.values()) {
            double[] late = pairs.stream()
                    .mapToDouble(pair -> Math.abs(pair.late(stage)))
                    .filter(Double::isFinite)
                    .sorted()
                    .toArray();
            if (late.length > 0) {
                System.out.printf(
                        "%-8s in %d; within 1 ms %d, median %.2g ms, 9 of 10 within %.2g ms, most %.2g ms%n",
                        stage,
                        late.length,
                        java.util.Arrays.stream(late).filter(l -> l <= 1e-3).count(),
                        1e3 * late[late.length / 2],
                        1e3 * late[late.length * 9 / 10],
                        1e3 * late[late.length - 1]);
            }
        }
        Map<CycleStage, Integer> misses = new EnumMap<>(CycleStage.class);
        pairs.stream().filter(Pair::flips).forEach(pair -> {
            System.out.println("flips: build " + pair.build() + " " + pair.coarse() + "\n   " + pair.fine());
            pair.coarse()
                    .firstMissed()
                    .or(() -> pair.fine().firstMissed())
                    .ifPresent(s -> misses.merge(s, 1, Integer::sum));
        });
        System.out.println(misses.values().stream().mapToInt(n -> n).sum() + " outcomes flip " + misses);
    }

    static double falling(List<Pair> pairs) {
        return pairs.stream().mapToDouble(Pair::falling).max().orElse(0);
    }
}

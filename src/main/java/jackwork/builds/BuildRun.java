package jackwork.builds;

import jackwork.geometry.Wanted;
import jackwork.motion.coin.CoinCycle;
import jackwork.motion.coin.CycleResult;
import jackwork.motion.coin.CycleRig;
import jackwork.parts.Assembly;
import jackwork.stock.Coin;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.IntConsumer;

/**
 * Draws builds and tries them. Seeded; the same numbers whatever the number of threads, since each build's numbers
 * hang on the seed and its own number alone.
 */
public final class BuildRun {

    /** Independent Latin hypercubes: their means' scatter gives the interval. */
    static final int REPLICATES = 10;

    private final Assembly assembly;
    private final List<Coin> coins;
    private final List<Unknown> unknowns;
    private final double[][] quantiles;
    private final int builds;
    private final long seed;
    private final AtomicBoolean cancelled = new AtomicBoolean();
    /** What is done so far, by number. */
    private final AtomicReferenceArray<BuildResult> tried;

    private final List<Adjuster> adjusters;

    /** @param builds at least {@value #REPLICATES}; taken up to a multiple of that */
    public BuildRun(Assembly assembly, List<Coin> coins, int builds, long seed) {
        this(assembly, coins, List.of(), builds, seed);
    }

    /** @param adjusters that a build which fails is tuned by, one at a time */
    public BuildRun(Assembly assembly, List<Coin> coins, List<Adjuster> adjusters, int builds, long seed) {
        this.assembly = assembly;
        this.adjusters = List.copyOf(adjusters);
        this.coins = List.copyOf(coins);
        this.unknowns = Unknowns.of(assembly);
        int each = Math.max(1, (builds + REPLICATES - 1) / REPLICATES);
        this.builds = each * REPLICATES;
        this.seed = seed;
        this.tried = new AtomicReferenceArray<>(this.builds);
        this.quantiles = new double[this.builds][];
        for (int r = 0; r < REPLICATES; r++) {
            double[][] sample = LatinHypercube.sample(each, unknowns.size(), seed * 1_000_003L + r);
            for (int i = 0; i < each; i++) {
                // Interleaved, so that the first builds of a run come from all replicates.
                quantiles[i * REPLICATES + r] = sample[i];
            }
        }
    }

    public int size() {
        return builds;
    }

    /**
     * @param progress told how many builds are done, from any thread
     * @throws InterruptedException when the thread is interrupted, or {@link #cancel} was called
     */
    public BuildReport run(int threads, IntConsumer progress) throws InterruptedException {
        AtomicInteger done = new AtomicInteger();
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            List<Future<BuildResult>> waiting = new ArrayList<>();
            for (int i = 0; i < builds; i++) {
                int number = i;
                waiting.add(pool.submit(() -> {
                    if (cancelled.get()) {
                        throw new InterruptedException();
                    }
                    BuildResult result = BuildTrial.run(number, build(number), coins);
                    if (result.cause().isPresent()) {
                        result = new BuildResult(number, result.coins(), tuned(number));
                    }
                    tried.set(number, result);
                    progress.accept(done.incrementAndGet());
                    return result;
                }));
            }
            List<BuildResult> results = new ArrayList<>();
            for (Future<BuildResult> future : waiting) {
                results.add(future.get());
            }
            return BuildReport.of(seed, coins, unknowns, quantiles, results, adjusters);
        } catch (java.util.concurrent.ExecutionException e) {
            if (e.getCause() instanceof InterruptedException stopped) {
                throw stopped;
            }
            throw new IllegalStateException("a virtual build failed to run", e.getCause());
        } finally {
            pool.shutdownNow();
        }
    }

    /**
     * What came of the builds that are done, while the others still run: of as many from the first as come evenly from
     * all replicates. Empty before the first such lot.
     */
    public Optional<BuildReport> soFar() {
        List<BuildResult> results = new ArrayList<>();
        for (int i = 0; i < builds && tried.get(i) != null; i++) {
            results.add(tried.get(i));
        }
        List<BuildResult> even = results.subList(0, results.size() / REPLICATES * REPLICATES);
        return even.isEmpty()
                ? Optional.empty()
                : Optional.of(BuildReport.of(seed, coins, unknowns, quantiles, List.copyOf(even), adjusters));
    }

    /** Stops a run from another thread. */
    public void cancel() {
        cancelled.set(true);
    }

    /** The least turn of one adjuster that makes a build work with every coin; in the order of the design where two do. */
    private Optional<Adjuster.Turn> tuned(int number) {
        int most = adjusters.stream()
                .flatMap(adjuster -> adjuster.settings().stream())
                .mapToInt(setting -> Math.abs(setting.steps()))
                .max()
                .orElse(0);
        for (int far = 1; far <= most; far++) {
            for (Adjuster adjuster : adjusters) {
                for (Adjuster.Setting setting : adjuster.settings()) {
                    if (Math.abs(setting.steps()) == far && works(build(number, setting.assembly()))) {
                        return Optional.of(new Adjuster.Turn(adjuster.name(), setting.steps()));
                    }
                }
            }
        }
        return Optional.empty();
    }

    private boolean works(Build build) {
        CycleRig rig = BuildTrial.rig(build);
        for (Coin coin : coins) {
            Wanted.goOn();
            if (!BuildTrial.trial(build, rig, coin, CoinCycle.NOBODY).passes()) {
                return false;
            }
        }
        return true;
    }

    /** The piece that a build's number stands for. */
    Build build(int number) {
        return build(number, assembly);
    }

    private Build build(int number, Assembly drawn) {
        Build build = new Build(drawn);
        for (int d = 0; d < unknowns.size(); d++) {
            Unknown unknown = unknowns.get(d);
            unknown.put().accept(build, unknown.at(quantiles[number][d]));
        }
        build.settle();
        return build;
    }

    /** Runs one build with one coin again, watched. */
    public BuildResult.Trial replay(int number, Coin coin, CoinCycle.Watcher watcher) {
        return watch(number, coin, watcher).trial();
    }

    /** The same, with what was measured on the way. */
    public Watched watch(int number, Coin coin, CoinCycle.Watcher watcher) {
        Build build = build(number);
        return BuildTrial.watch(build, BuildTrial.rig(build), coin, watcher);
    }

    /** The design as numbered with any coin, watched. */
    public static Watched watchNominal(Assembly assembly, Coin coin, CoinCycle.Watcher watcher) {
        Build build = new Build(assembly);
        return BuildTrial.watch(build, BuildTrial.rig(build), coin, watcher);
    }

    /** A picture of a build out of the mechanism's plane, where its cause lies there. */
    public Optional<String> across(int number, Coin coin, Cause cause, String caption) {
        return switch (cause) {
            case SLOT -> Optional.of(AcrossView.slot(build(number), coin, caption));
            case GAP -> Optional.of(AcrossView.gap(build(number), coin, caption));
            case BEARING, TWIST -> Optional.of(AcrossView.bucket(build(number), caption));
            default -> Optional.empty();
        };
    }

    /** The cycle of the design as numbered, without any spread. */
    public static CycleResult nominal(Assembly assembly, Coin coin) {
        Build build = new Build(assembly);
        return BuildTrial.cycle(build, BuildTrial.rig(build), coin, CoinCycle.NOBODY);
    }

    /** The assembly of a build, as it came out. */
    public Assembly assemblyOf(int number) {
        return build(number).assembly;
    }
}

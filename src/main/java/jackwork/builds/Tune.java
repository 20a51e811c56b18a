package jackwork.builds;

import jackwork.design.Design;
import jackwork.design.DesignEdit;
import jackwork.design.DesignException;
import jackwork.design.DesignReader;
import jackwork.motion.coin.CycleStage;
import jackwork.motion.model.MechanismException;
import jackwork.parts.Assembler;
import jackwork.parts.PartException;
import jackwork.stock.Coin;
import jackwork.stock.Coins;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.hipparchus.analysis.MultivariateFunction;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleBounds;
import org.hipparchus.optim.SimpleValueChecker;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.CMAESOptimizer;
import org.hipparchus.random.Well19937c;

/**
 * Varies what the maker leaves free to raise the worst margins over the spreads (design centring): the mean of the
 * worst quarter of a few builds, always the same ones. One number is looked for on a grid, more closely among those
 * as good as the best, and set in their middle; several by CMA-ES (Hansen), from a general library. The answer is tried
 * on fresh builds.
 */
public final class Tune {

    /** Builds by which proposals are compared. */
    private static final int COMPARED = 20;
    /** Builds by which those are compared that the few cannot tell apart. */
    private static final int CLOSER = 100;

    private static final int GRID = 8;
    private static final int REFINED = 4;
    /** Margins that differ by less are as good as each other. */
    private static final double EQUAL = 0.01;

    private static final int MOST_EVALUATIONS = 60;
    private static final double WORTHLESS = -100;

    private final Path design;
    private final String text;
    private final List<FreeNumber> free;
    private final long seed;
    private final int threads;
    private final Consumer<String> progress;
    private final Runnable between;
    private final Map<Compared, Double> known = new LinkedHashMap<>();

    /** @param progress told each proposal and how it does */
    public Tune(Path design, List<FreeNumber> free, long seed, int threads, Consumer<String> progress) {
        this(design, free, seed, threads, progress, () -> {});
    }

    /** @param between done by each thread between two builds */
    public Tune(
            Path design, List<FreeNumber> free, long seed, int threads, Consumer<String> progress, Runnable between) {
        this.design = design;
        this.text = DesignReader.text(design);
        this.free = List.copyOf(free);
        this.seed = seed;
        this.threads = threads;
        this.progress = progress;
        this.between = between;
    }

    /** Numbers by path, and by how many builds they were judged. */
    private record Compared(Map<String, Double> numbers, int builds) {}

    /**
     * What tuning proposes.
     *
     * @param numbers by path
     * @param text of the design file with them
     */
    public record Proposal(Map<String, Double> numbers, String text, BuildReport before, BuildReport after) {}

    /**
     * @param builds on which before and after are told
     * @throws DesignException when the design as it stands, or with a free number within its limits, cannot be read
     */
    public Proposal run(int builds) throws InterruptedException {
        DesignReader.read(design, DesignEdit.with(text, numbers(middle())));
        Map<String, Double> best = free.size() == 1 ? alongOne() : among();
        String proposed = DesignEdit.with(text, best);
        return new Proposal(best, proposed, report(text, builds, seed + 1), report(proposed, builds, seed + 1));
    }

    private double[] middle() {
        return free.stream().mapToDouble(f -> (f.low() + f.high()) / 2).toArray();
    }

    private Map<String, Double> numbers(double[] values) {
        Map<String, Double> numbers = new LinkedHashMap<>();
        for (int i = 0; i < values.length; i++) {
            numbers.put(free.get(i).path(), free.get(i).at(values[i]));
        }
        return numbers;
    }

    /**
     * On a grid, first by a few builds, then those that are as good as the best by many; the middle of what is still as
     * good then, else more finely about the best.
     */
    private Map<String, Double> alongOne() {
        FreeNumber only = free.get(0);
        double step = (only.high() - only.low()) / GRID;
        int[] wide = plateau(only, step, 0, GRID, COMPARED);
        if (wide[1] > wide[0]) {
            int[] narrow = plateau(only, step, wide[0], wide[1], CLOSER);
            return numbers(new double[] {only.low() + (narrow[0] + narrow[1]) / 2.0 * step});
        }
        double value = only.low() + wide[0] * step;
        for (int i = 0; i < REFINED && !only.isCount(); i++) {
            step /= 2;
            double from = value;
            value = better(value, from - step, only);
            value = better(value, from + step, only);
        }
        return numbers(new double[] {value});
    }

    /** The first place that none is better than, and the last of those after it that are as good. */
    private int[] plateau(FreeNumber only, double step, int from, int to, int builds) {
        int best = from;
        for (int i = from; i <= to; i++) {
            if (worth(only, i, step, builds) > worth(only, best, step, builds) + EQUAL) {
                best = i;
            }
        }
        int last = best;
        while (last < to && worth(only, last + 1, step, builds) > worth(only, best, step, builds) - EQUAL) {
            last++;
        }
        return new int[] {best, last};
    }

    private double worth(FreeNumber only, int place, double step, int builds) {
        return worth(new double[] {only.low() + place * step}, builds);
    }

    private double better(double best, double next, FreeNumber only) {
        boolean within = next >= only.low() && next <= only.high();
        return within && worth(new double[] {next}, COMPARED) > worth(new double[] {best}, COMPARED) ? next : best;
    }

    private Map<String, Double> among() {
        int n = free.size();
        double[] low = free.stream().mapToDouble(FreeNumber::low).toArray();
        double[] high = free.stream().mapToDouble(FreeNumber::high).toArray();
        double[] third = new double[n];
        for (int i = 0; i < n; i++) {
            third[i] = (high[i] - low[i]) / 3;
        }
        CMAESOptimizer optimizer = new CMAESOptimizer(
                MOST_EVALUATIONS, 1, true, 0, 1, new Well19937c(seed), false, new SimpleValueChecker(1e-3, 1e-3));
        MultivariateFunction worth = values -> worth(values, COMPARED);
        try {
            optimizer.optimize(
                    new MaxEval(MOST_EVALUATIONS),
                    new ObjectiveFunction(worth),
                    GoalType.MAXIMIZE,
                    new InitialGuess(middle()),
                    new SimpleBounds(low, high),
                    new CMAESOptimizer.Sigma(third),
                    new CMAESOptimizer.PopulationSize(4 + (int) (3 * Math.log(n))));
        } catch (org.hipparchus.exception.MathIllegalStateException e) {
            progress.accept("stopped after " + known.size() + " proposals");
        }
        return known.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(entry -> entry.getKey().numbers())
                .orElseThrow();
    }

    /** As if the coin never got as far as into the works. */
    private static final double NOT_COMPUTED = -CycleStage.values().length;

    /** Mean of the worst quarter of the margins. */
    private double worth(double[] values, int builds) {
        Map<String, Double> numbers = numbers(values);
        Compared compared = new Compared(numbers, builds);
        Double already = known.get(compared);
        if (already != null) {
            return already;
        }
        double worth = WORTHLESS;
        try {
            BuildReport report = report(DesignEdit.with(text, numbers), builds, seed);
            double[] margins = report.results().stream()
                    // What cannot be computed is nothing to aim at.
                    .mapToDouble(result -> Double.isNaN(result.margin()) ? NOT_COMPUTED : result.margin())
                    .sorted()
                    .limit(builds / 4)
                    .toArray();
            worth = java.util.Arrays.stream(margins).average().orElse(WORTHLESS);
            progress.accept(numbers + ": " + report.passes() + " of " + report.builds() + " pass, worst margins "
                    + DesignEdit.words(worth));
        } catch (DesignException | MechanismException | PartException e) {
            progress.accept(numbers + ": " + e.getMessage());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        known.put(compared, worth);
        return worth;
    }

    private BuildReport report(String designText, int builds, long from) throws InterruptedException {
        Design read = DesignReader.read(design, designText);
        List<Coin> coins = new ArrayList<>();
        read.file()
                .coins()
                .forEach(code -> coins.add(Coins.catalogue().find(code).orElseThrow()));
        return new BuildRun(Assembler.assemble(read), coins, builds, from).run(threads, done -> between.run());
    }
}

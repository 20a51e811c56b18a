package jackwork.builds;

import static jackwork.check.Sentence.say;

import jackwork.check.CoinSeat;
import jackwork.check.Finding;
import jackwork.check.Measure;
import jackwork.check.PivotDrag;
import jackwork.check.Sentence;
import jackwork.check.Status;
import jackwork.check.Subject;
import jackwork.check.Topic;
import jackwork.check.Where;
import jackwork.check.Words;
import jackwork.geometry.Wanted;
import jackwork.motion.coin.CoinCycle;
import jackwork.motion.coin.CycleResult;
import jackwork.parts.Assembly;
import jackwork.stock.Coin;
import jackwork.stock.Uncertain;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;

/**
 * How much its bearings may drag: all of them at once as much as is expected of each, times the number at which the
 * cycle dies with the first coin, in time and by bisection. Real pieces die of that: layers that rub, a drop of paint
 * or glue in a hole, a rod that swells.
 */
public final class BearableDrag {

    /** Half of what it bears is kept for what the expected drag may be off by. */
    static final double WANTED = 2;

    /** More than so often the expected is not tried: nothing drags so. */
    private static final double MOST = 64;

    /** The number is told within so much. */
    private static final double CLOSE = 1.04;

    private static final int MOST_NAMED = 3;

    /** The piece with so many expected drags in every bearing. */
    private final DoubleFunction<Build> piece;

    private BearableDrag(DoubleFunction<Build> piece) {
        this.piece = piece;
    }

    /**
     * Where it dies.
     *
     * @param times the most expected drags that it still bears; 0 when it does not run without any
     * @param coin with which it dies first
     * @param cause what does not happen a little beyond; nothing when it bears all that is tried
     * @param computed whether every run was; where one was not, that counts as the end
     */
    record Found(double times, Coin coin, Optional<Cause> cause, boolean computed) {

        /** Whether all that is tried is borne. */
        boolean atLeast() {
            return computed && cause.isEmpty();
        }
    }

    /** One finding; none when the workshop expects no drag. */
    public static List<Finding> ask(Subject subject) {
        Uncertain expected = PivotDrag.expected(subject.assembly());
        if (!(expected.value() > 0) || subject.coins().isEmpty()) {
            return List.of();
        }
        Found found = find(subject.assembly(), subject.coins());
        return List.of(finding(subject, found, expected));
    }

    /** With the coin that bears least; without the spread of anything. */
    static Found find(Assembly assembly, List<Coin> coins) {
        double each = PivotDrag.expected(assembly).value();
        return find(times -> new Build(assembly.withDrags(pin -> times * each)), coins);
    }

    /** The same of a piece as it came out. */
    static Found find(DoubleFunction<Build> piece, List<Coin> coins) {
        BearableDrag drag = new BearableDrag(piece);
        // The lightest has least to give: of the others it is mostly enough to see that they bear as much.
        List<Coin> lightestFirst =
                coins.stream().sorted(Comparator.comparingDouble(Coin::mass)).toList();
        Found least = drag.find(lightestFirst.get(0), MOST);
        for (Coin coin : lightestFirst.subList(1, coins.size())) {
            if (least.times > 0 && dies(drag.run(coin, least.times))) {
                least = drag.find(coin, least.times);
            }
        }
        return least;
    }

    /** @param most so many are tried at the most */
    private Found find(Coin coin, double most) {
        CycleResult without = run(coin, 0);
        if (dies(without)) {
            return new Found(0, coin, without.firstMissed().map(Cause::of), without.computed());
        }
        double bears = 0;
        double tried = Math.min(WANTED, most);
        CycleResult last = run(coin, tried);
        while (!dies(last) && tried < most) {
            bears = tried;
            tried = Math.min(2 * tried, most);
            last = run(coin, tried);
        }
        if (!dies(last)) {
            return new Found(tried, coin, Optional.empty(), true);
        }
        double dies = tried;
        while (dies - bears > (CLOSE - 1) * dies) {
            double middle = (bears + dies) / 2;
            CycleResult result = run(coin, middle);
            if (dies(result)) {
                dies = middle;
                last = result;
            } else {
                bears = middle;
            }
        }
        return new Found(bears, coin, last.firstMissed().map(Cause::of), last.computed());
    }

    private static boolean dies(CycleResult result) {
        return !result.computed() || !result.passes();
    }

    private CycleResult run(Coin coin, double times) {
        Wanted.goOn();
        Build build = piece.apply(times);
        return BuildTrial.cycle(build, BuildTrial.rig(build), coin, CoinCycle.NOBODY);
    }

    private static Finding finding(Subject subject, Found found, Uncertain expected) {
        Status status = found.times >= WANTED
                ? Status.PASS
                : !found.computed ? Status.OPEN : found.times >= 1 ? Status.DOUBTFUL : Status.FAIL;
        PivotDrag.Back back = PivotDrag.back(subject.assembly(), subject.stroke());
        double grams = found.times * back.drag() / CoinSeat.weight(1);
        return Finding.ask(Topic.BEARABLE_DRAG, say("How much may its bearings drag?"))
                .answer(status, found.times, WANTED, found.times - WANTED, "1")
                .at(new Where(
                        null,
                        found.cause.isPresent() ? back.stroke() : 0.0,
                        subject.assembly().lever().press()))
                .because(why(found, expected, grams), remedy(status, found), formula(found, expected, back));
    }

    private static Sentence why(Found found, Uncertain expected, double grams) {
        if (!found.computed && found.times < WANTED) {
            return say("not every run could be computed");
        }
        if (found.times == 0) {
            return say("it does not run even where nothing drags: {}, with {}", words(found), found.coin.code());
        }
        String felt =
                Double.isNaN(grams) ? "" : ", felt as " + Measure.of(grams, "g").words() + " at the lever";
        String most = Measure.of(found.times, "1").words() + " times what is expected, "
                + Measure.newtonMillimetres(found.times * expected.value()).words() + " each" + felt;
        if (!found.computed) {
            return say("all bearings may drag {}; what more of it does could not be computed", most);
        }
        return found.atLeast()
                ? say("all bearings may drag {} and more", most)
                : say("all bearings may drag {}; with more {}, first with {}", most, words(found), found.coin.code());
    }

    private static String words(Found found) {
        return found.cause.map(Cause::words).orElse("it stops");
    }

    private static Sentence remedy(Status status, Found found) {
        if (status == Status.PASS || status == Status.OPEN) {
            return Sentence.NOTHING;
        }
        if (found.times == 0) {
            return say("See first to what else is found against it; then look at the cycle step by step.");
        }
        return switch (found.cause.orElse(Cause.RETURNS)) {
            case FREES -> say("Take weight off the counterweight, or move the bucket's floor farther from its pivot.");
            case LOCKS, REFUSES -> say("Add weight to the counterweight, or move it farther out.");
            case ACTS -> say("Let the lever reach farther from its pivot, so that a press has more to push with.");
            default -> say("Add weight to what brings it back, or take away bearings that turn far.");
        };
    }

    private static String formula(Found found, Uncertain expected, PivotDrag.Back back) {
        String alone = back.alone().entrySet().stream()
                .sorted(Map.Entry.comparingByValue())
                .limit(MOST_NAMED)
                .map(entry -> entry.getKey() + " " + Words.number(entry.getValue()))
                .collect(Collectors.joining(", "));
        return "in time, every bearing dragging " + Words.number(expected.value()) + " N·mm (" + expected.source()
                + ") times one number: it runs at " + Words.number(found.times)
                + (found.atLeast() ? ", the most that is tried" : "")
                + byForces(back)
                + (alone.isEmpty() ? "" : "; one alone, N·mm: " + alone);
    }

    private static String byForces(PivotDrag.Back back) {
        if (Double.isNaN(back.times())) {
            return "; by forces nothing is told where parts are free of the lever";
        }
        return "; by forces over the way back, without coin: "
                + (Double.isFinite(back.times())
                        ? Words.number(back.force()) + " N against " + Words.number(back.drag()) + " N, "
                                + Words.number(back.times()) + " times, at " + Words.stroke(back.stroke())
                        : "nothing turns");
    }
}

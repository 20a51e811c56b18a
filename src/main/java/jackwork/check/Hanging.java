package jackwork.check;

import jackwork.stock.Basis;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * What a verdict hangs on: how it would turn out with all guesses off to one side, each tried by itself at both its ends (drops and gains of a
 * margin added as a root sum of squares, JCGM 100:2008, 5.1.2), and which guess moves it most.
 *
 * @param worst of the findings, guesses off to the bad side
 * @param best of the findings, guesses off to the good side
 * @param guesses that can turn it, most first; when none can, those that come nearest to
 * @param words in a sentence
 * @param measureFirst the short measurement that would settle most; empty when no guess can turn it
 */
public record Hanging(Status worst, Status best, List<Guess> guesses, String words, String measureFirst) {

    private static final int MOST_NAMED = 5;
    /** Answered in time, their numbers as they are: no guess was put to its ends. */
    private static final Set<Topic> IN_TIME = EnumSet.of(
            Topic.COIN_THROWN_CLEAR,
            Topic.BEARABLE_DRAG,
            Topic.BUILDS,
            Topic.LEANS_FIRST,
            Topic.SHOVE,
            Topic.JIGGLE,
            Topic.TWO_COINS,
            Topic.OTHER);

    /** Guesses that take less of a margin are not worth naming. */
    private static final double NAMED = 0.02;

    /**
     * @param share of all that moves the findings that can turn; when none can, of its finding's margin
     * @param finding the question that it moves most
     */
    public record Guess(String name, double share, String finding) {}

    /** One finding at both ends of what guesses may do to it. */
    private record Range(Finding finding, Status worst, Status best) {

        static Range of(Finding finding) {
            Double margin = finding.margin();
            if (margin == null || finding.restsOn().stream().noneMatch(Range::isGuess)) {
                return new Range(finding, finding.status(), finding.status());
            }
            if (finding.status() == Status.FAIL) {
                // It may fail for more than its margin says; then no number saves it.
                double high = margin + rootOfSquares(finding, Range::isGuess, Ground::gain);
                return new Range(finding, Status.FAIL, margin <= 0 && high > 0 ? Status.PASS : Status.FAIL);
            }
            double low = margin - rootOfSquares(finding, Range::isGuess, Ground::drop);
            double known = rootOfSquares(finding, ground -> !isGuess(ground), Ground::drop);
            Status best = margin > known ? Status.PASS : finding.status();
            return new Range(finding, low > 0 ? finding.status() : Status.FAIL, best);
        }

        boolean canTurn() {
            return worst != best;
        }

        static boolean isGuess(Ground ground) {
            return ground.number().basis() == Basis.GUESS;
        }

        /** What a guess can do to it: spoil it, or save it where it fails. */
        double moved(Ground ground) {
            return finding.status() == Status.FAIL ? ground.gain() : ground.drop();
        }

        private static double rootOfSquares(Finding finding, Predicate<Ground> which, ToDoubleFunction<Ground> of) {
            return Math.sqrt(finding.restsOn().stream()
                    .filter(which)
                    .mapToDouble(ground -> of.applyAsDouble(ground) * of.applyAsDouble(ground))
                    .sum());
        }
    }

    /** Of all findings of a design. */
    public static Hanging of(List<Finding> findings) {
        List<Range> ranges = findings.stream()
                .filter(finding -> finding.status() != Status.OPEN)
                .map(Range::of)
                .toList();
        Status worst =
                ranges.stream().map(Range::worst).max(Comparator.naturalOrder()).orElse(Status.PASS);
        Status best =
                ranges.stream().map(Range::best).max(Comparator.naturalOrder()).orElse(Status.PASS);
        List<Range> turning = ranges.stream().filter(Range::canTurn).toList();
        if (worst == best || turning.isEmpty()) {
            List<Range> deciding = ranges.stream()
                    .filter(range -> range.finding().status() == worst)
                    .toList();
            List<Guess> nearest = nearest(deciding);
            String words = worst == Status.PASS
                    ? settled(worst, nearest)
                    : untried(deciding).orElseGet(() -> settled(worst, nearest));
            return new Hanging(worst, best, nearest, words, "");
        }
        List<Guess> guesses = sharing(turning);
        String words = turns(worst, best) + ", as " + (guesses.size() == 1 ? "one guess turns" : "guesses turn")
                + " out: "
                + guesses.stream()
                        .map(guess -> guess.name() + percent(guess.share()))
                        .collect(Collectors.joining(", "))
                + ".";
        return new Hanging(
                worst,
                best,
                guesses,
                words,
                guesses.isEmpty() ? "" : Measurement.first(guesses.get(0).name()));
    }

    /** Each guess's share of the squares that move the findings that can turn, the findings counted alike. */
    private static List<Guess> sharing(List<Range> turning) {
        Map<String, Double> shares = new LinkedHashMap<>();
        Map<String, String> most = new LinkedHashMap<>();
        Map<String, Double> high = new LinkedHashMap<>();
        for (Range range : turning) {
            List<Ground> guesses =
                    range.finding().restsOn().stream().filter(Range::isGuess).toList();
            double all = guesses.stream()
                    .mapToDouble(ground -> range.moved(ground) * range.moved(ground))
                    .sum();
            for (Ground ground : guesses) {
                double share = all > 0 ? range.moved(ground) * range.moved(ground) / all / turning.size() : 0;
                shares.merge(ground.name(), share, Double::sum);
                if (share > high.getOrDefault(ground.name(), 0.0)) {
                    high.put(ground.name(), share);
                    most.put(ground.name(), range.finding().question().toString());
                }
            }
        }
        return named(shares, most);
    }

    /** Each guess's largest share of any margin. */
    private static List<Guess> nearest(List<Range> ranges) {
        Map<String, Double> shares = new LinkedHashMap<>();
        Map<String, String> most = new LinkedHashMap<>();
        for (Range range : ranges) {
            Double margin = range.finding().margin();
            if (margin == null || margin == 0) {
                continue;
            }
            for (Ground ground : range.finding().restsOn()) {
                double share = range.moved(ground) / Math.abs(margin);
                if (Range.isGuess(ground) && share > shares.getOrDefault(ground.name(), 0.0)) {
                    shares.put(ground.name(), share);
                    most.put(ground.name(), range.finding().question().toString());
                }
            }
        }
        return named(shares, most);
    }

    private static List<Guess> named(Map<String, Double> shares, Map<String, String> most) {
        return shares.entrySet().stream()
                .filter(entry -> entry.getValue() > NAMED)
                .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
                .limit(MOST_NAMED)
                .map(entry -> new Guess(entry.getKey(), entry.getValue(), most.getOrDefault(entry.getKey(), "")))
                .toList();
    }

    /** Of what decides it but was not tried with its guesses otherwise nobody knows whether one can turn it. */
    private static Optional<String> untried(List<Range> deciding) {
        // One that no guess turns settles it, whatever the others do.
        boolean settled = deciding.stream()
                .anyMatch(range -> !IN_TIME.contains(range.finding().topic()) && !range.canTurn());
        return deciding.stream()
                .filter(range -> !settled)
                .map(Range::finding)
                .filter(finding -> IN_TIME.contains(finding.topic()))
                .findFirst()
                .map(finding -> "Whether a guess can turn it is not known: \"" + finding.question()
                        + "\" is answered in time, and its guesses were not tried at their ends.");
    }

    private static String settled(Status verdict, List<Guess> nearest) {
        String none = verdict == Status.FAIL
                ? "No guess can save it"
                : verdict == Status.PASS ? "No guess alone or with others turns it" : "No guess decides it";
        if (nearest.isEmpty()) {
            return none + ".";
        }
        Guess first = nearest.get(0);
        String tried = none + ", each number tried at both its ends; ";
        if (first.share() >= 1) {
            return tried + "the " + first.name() + " could turn \"" + first.finding() + "\", but not all that fails";
        }
        return tried + "nearest comes the " + first.name() + ", which moves" + percent(first.share())
                + " of the margin of \"" + first.finding() + "\"";
    }

    private static String turns(Status worst, Status best) {
        if (best == Status.PASS) {
            return worst == Status.FAIL ? "It passes or fails" : "It passes, for certain or not";
        }
        return "It is doubtful or fails";
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, " %.0f %%", 100 * share);
    }
}

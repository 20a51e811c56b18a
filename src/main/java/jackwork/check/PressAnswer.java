package jackwork.check;

import static jackwork.check.Measure.newtons;
import static jackwork.check.Sentence.say;

import jackwork.parts.Assembly;
import jackwork.stock.Uncertain;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * An answer about the strongest press: what gives first, and whether that press gets so far.
 *
 * @param friction that the forces hang on; null when they do not
 * @param ways in which something may give, by that friction
 * @param when it is pressed: {@code without a coin}
 * @param beside said at the end of the formula
 */
record PressAnswer(
        Assembly assembly,
        Topic topic,
        String about,
        Sentence question,
        @Nullable Uncertain friction,
        DoubleFunction<List<Gives>> ways,
        Sentence when,
        String beside) {

    /** About the press that is refused: at both ends of what friction may be. */
    static PressAnswer refused(
            RefusedPress press, String about, Sentence question, Function<RefusedPress.Loads, List<Gives>> ways) {
        Uncertain friction = press.assembly().coinWorks().catchFriction().coefficient();
        double normal = press.loads(friction.value()).stream()
                .mapToDouble(RefusedPress.Loads::normal)
                .max()
                .orElse(0);
        return new PressAnswer(
                press.assembly(),
                Topic.REFUSED_PRESS,
                about,
                question,
                friction,
                other -> press.loads(other).stream()
                        .flatMap(loads -> ways.apply(loads).stream())
                        .toList(),
                say("without a coin"),
                "square to the strut's face up to " + Words.number(normal) + " N, friction either way up to µ = "
                        + Words.number(friction.value()));
    }

    private List<Gives> gives(double given) {
        return ways.apply(given).stream().filter(gives -> gives.stress() > 0).toList();
    }

    /** Nothing where no load comes to what is asked about. */
    List<Finding> ask(Where where, BiFunction<Gives, Double, Sentence> remedy) {
        Uncertain strongest = assembly.workshop().finger().strongest();
        List<Gives> all = gives(friction == null ? 0 : friction.value());
        if (all.isEmpty()) {
            return List.of();
        }
        Gives first = Gives.first(all);
        double force = strongest.value();
        Spread spread = new Spread(first.at() - force).add("strongest press", strongest, other -> first.at() - other);
        if (friction != null) {
            spread.add("friction of the catch", friction, other -> margin(gives(other), force));
        }
        Map<String, Uncertain> strengths = new LinkedHashMap<>();
        all.forEach(gives -> strengths.putIfAbsent(gives.of(), gives.strength()));
        strengths.forEach((name, strength) -> spread.add(
                name,
                strength,
                other -> margin(
                        all.stream().map(gives -> gives.with(name, other)).toList(), force)));
        boolean passes = spread.status() == Status.PASS;
        return List.of(Finding.ask(topic, about, question)
                .answer(spread.status(), force, first.at(), first.at() - force, "N")
                .at(where)
                .because(
                        say(
                                "{} {} {} first, at {} of the finger, where people press with {} at the most",
                                when,
                                first.part(),
                                first.how(),
                                newtons(first.at()),
                                newtons(force)),
                        passes ? Sentence.NOTHING : remedy.apply(first, strongest.high()),
                        formula(first),
                        spread));
    }

    private static double margin(List<Gives> all, double force) {
        return all.isEmpty() ? Double.NaN : Gives.first(all).at() - force;
    }

    private String formula(Gives first) {
        return Words.number(first.strength().value()) + " N/mm² ("
                + first.strength().source() + ") / "
                + Words.number(first.stress()) + " N/mm² for 1 N of the finger; " + first.formula() + ", each for 1 N; "
                + beside;
    }
}

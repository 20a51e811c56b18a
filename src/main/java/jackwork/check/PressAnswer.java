package jackwork.check;

import static jackwork.check.Measure.newtons;
import static jackwork.check.Sentence.say;

import jackwork.parts.Assembly;
import jackwork.stock.Uncertain;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;

/** An answer about the refused press: what gives first, and whether the strongest press gets so far. */
record PressAnswer(
        RefusedPress press,
        Assembly assembly,
        String about,
        Sentence question,
        Function<RefusedPress.Loads, List<Gives>> ways) {

    private Uncertain friction() {
        return assembly.coinWorks().catchFriction().coefficient();
    }

    /** At both ends of the cone, whatever bears anything. */
    private List<Gives> gives(double friction) {
        List<Gives> all = new ArrayList<>();
        for (RefusedPress.Loads loads : press.loads(friction)) {
            ways.apply(loads).stream().filter(gives -> gives.stress() > 0).forEach(all::add);
        }
        return all;
    }

    /** Nothing where no load comes to what is asked about. */
    List<Finding> ask(Where where, BiFunction<Gives, Double, Sentence> remedy) {
        Uncertain strongest = assembly.workshop().finger().strongest();
        List<Gives> all = gives(friction().value());
        if (all.isEmpty()) {
            return List.of();
        }
        Gives first = Gives.first(all);
        double force = strongest.value();
        Spread spread = new Spread(first.at() - force)
                .add("strongest press", strongest, other -> first.at() - other)
                .add("friction of the catch", friction(), other -> margin(gives(other), force));
        Map<String, Uncertain> strengths = new LinkedHashMap<>();
        all.forEach(gives -> strengths.putIfAbsent(gives.of(), gives.strength()));
        strengths.forEach((name, strength) -> spread.add(
                name,
                strength,
                other -> margin(
                        all.stream().map(gives -> gives.with(name, other)).toList(), force)));
        boolean passes = spread.status() == Status.PASS;
        return List.of(Finding.ask(Topic.REFUSED_PRESS, about, question)
                .answer(spread.status(), force, first.at(), first.at() - force, "N")
                .at(where)
                .because(
                        say(
                                "without a coin {} {} first, at {} of the finger, where people press with {} at the most",
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
        double normal = press.loads(friction().value()).stream()
                .mapToDouble(RefusedPress.Loads::normal)
                .max()
                .orElse(0);
        return Words.number(first.strength().value()) + " N/mm² ("
                + first.strength().source() + ") / "
                + Words.number(first.stress()) + " N/mm² for 1 N of the finger; " + first.formula()
                + ", each for 1 N; square to the strut's face up to " + Words.number(normal)
                + " N, friction either way up to µ = " + Words.number(friction().value());
    }
}

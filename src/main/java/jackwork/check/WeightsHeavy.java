package jackwork.check;

import static jackwork.check.Sentence.say;

import jackwork.parts.Assembly;
import jackwork.parts.Body;
import jackwork.parts.Lump;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A weight is in proportion to what it moves: all of the figure's wood and rods that move, or the bucket's with its coin.
 * Most balances take no more than the wood itself weighs; many times that is a slip of the pen, or strains every pin.
 */
final class WeightsHeavy implements Question {

    /** In weights of what it moves: a guess. */
    private static final double MOST = 3;

    @Override
    public List<Finding> ask(Subject subject) {
        List<Finding> findings = new ArrayList<>();
        Assembly assembly = subject.assembly();
        for (WeightPlace weight : WeightPlace.of(subject)) {
            int body = assembly.bodyOf(weight.entry().on());
            double mass = assembly.body(body).lumps().stream()
                    .filter(lump -> lump.name().equals(weight.name()))
                    .mapToDouble(Lump::mass)
                    .sum();
            if (body != 0) {
                findings.add(finding(weight, mass, moved(subject, body)));
            }
        }
        return findings;
    }

    /** g of the wood and rods that move with it. */
    private static double moved(Subject subject, int number) {
        Assembly assembly = subject.assembly();
        Set<String> weights =
                WeightPlace.of(subject).stream().map(WeightPlace::name).collect(Collectors.toSet());
        boolean ofBucket = number == assembly.coinWorks().bucket();
        double moved = 0;
        for (int i = 1; i < assembly.bodies().size(); i++) {
            if (ofBucket == (i == assembly.coinWorks().bucket())) {
                moved += bare(assembly.body(i), weights);
            }
        }
        return moved;
    }

    private static double bare(Body body, Set<String> weights) {
        return body.mass()
                - body.lumps().stream()
                        .filter(lump -> weights.contains(lump.name()))
                        .mapToDouble(Lump::mass)
                        .sum();
    }

    private static Finding finding(WeightPlace weight, double mass, double moved) {
        double limit = MOST * moved;
        boolean fits = mass <= limit;
        return Finding.ask(
                        Topic.WEIGHT_HEAVY, weight.name(), say("Is {} in proportion to what it moves?", weight.name()))
                .answer(fits ? Status.PASS : Status.DOUBTFUL, mass, limit, limit - mass, "g")
                .at(new Where(weight.entry().on(), 0.0, weight.at()))
                .because(
                        say(
                                "{} weighs {}, wood and rods that move with it {}",
                                weight.name(),
                                Measure.of(mass, "g"),
                                Measure.of(moved, "g")),
                        fits
                                ? Sentence.NOTHING
                                : say(
                                        "Look at the mass of {} once more; a lighter one set farther from the pivot does the same.",
                                        weight.name()),
                        "mass " + Words.number(mass) + " g; usually at most " + Words.number(MOST)
                                + " times what it moves, " + Words.number(limit) + " g (a guess)");
    }
}

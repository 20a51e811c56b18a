package jackwork.app.bench;

import jackwork.app.wire.Json;
import jackwork.bench.Timing;
import jackwork.builds.Cause;
import jackwork.design.WorkshopFile;
import jackwork.stock.Coins;
import jackwork.stock.FrictionPair;
import jackwork.stock.Frictions;
import jackwork.stock.Operations;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * What there is to choose from when something is logged.
 *
 * @param operations that can be timed: the stages of the work, and what was timed before
 * @param surfaces that can slide on each other
 */
record BenchChoices(
        List<String> coins,
        List<CauseChoice> causes,
        List<String> operations,
        List<String> sheets,
        List<String> rods,
        List<String> surfaces) {

    /** @param words as a sentence about the piece */
    record CauseChoice(String cause, String words) {}

    static BenchChoices of(WorkshopFile workshop, List<Timing> timed) {
        TreeSet<String> surfaces = new TreeSet<>();
        for (FrictionPair pair : Frictions.catalogue().all()) {
            surfaces.add(pair.a());
            surfaces.add(pair.b());
        }
        return new BenchChoices(
                Coins.catalogue().names(),
                everyCause(),
                operationsWith(timed),
                List.copyOf(workshop.sheets().keySet()),
                List.copyOf(workshop.rods().keySet()),
                List.copyOf(surfaces));
    }

    /** In the order of a coin's way. */
    static List<CauseChoice> everyCause() {
        List<CauseChoice> causes = new ArrayList<>();
        for (Cause cause : Cause.values()) {
            causes.add(new CauseChoice(Json.word(cause), cause.words()));
        }
        causes.add(new CauseChoice("other", "something else"));
        return causes;
    }

    static List<String> operationsWith(List<Timing> timed) {
        Set<String> operations = new LinkedHashSet<>();
        Operations.catalogue().all().forEach(operation -> operations.add(operation.stage()));
        timed.forEach(timing -> operations.add(timing.operation()));
        return List.copyOf(operations);
    }
}

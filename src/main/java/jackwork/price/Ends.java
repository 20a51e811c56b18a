package jackwork.price;

import jackwork.stock.Uncertain;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * One number at both ends of its interval, all others left as they are: what a piece costs then. Worked out once, for
 * every answer that is asked of it.
 *
 * @param name its path in workshop.yaml
 */
record Ends(String name, Uncertain number, Costing low, Costing high) {

    /** Of the finished piece; other ways of selling, and steps that it does not take, move nothing of it. */
    static List<Ends> ofPiece(Costing costing) {
        Set<String> steps = costing.tasks().stream()
                .map(task -> "times." + task.operation())
                .collect(Collectors.toSet());
        return of(
                costing,
                name -> name.startsWith("times.")
                        ? steps.contains(name)
                        : !name.startsWith("ways.") && !name.startsWith("quicker."));
    }

    static List<Ends> of(Costing costing, Predicate<String> which) {
        List<Ends> ends = new ArrayList<>();
        Rates rates = costing.rates();
        rates.all().forEach((name, number) -> {
            if (number.low() < number.high() && which.test(name)) {
                ends.add(new Ends(
                        name,
                        number,
                        costing.with(rates.with(name, number.low())),
                        costing.with(rates.with(name, number.high()))));
            }
        });
        return ends;
    }
}

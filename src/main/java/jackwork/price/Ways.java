package jackwork.price;

import java.math.BigDecimal;
import java.util.List;

/** All ways of selling, side by side. */
final class Ways {

    private static final int MOST = 4;

    private static final List<Way> ALL = List.of(
            new Finished(),
            new SaleOrReturn(),
            new Kit(),
            new Plans(),
            new MadeToOrder(),
            new WorkshopDay(),
            new WithCharity());

    private Ways() {}

    static List<WayResult> of(Costing costing, BigDecimal price, WayFacts facts, int places) {
        return ALL.stream()
                .map(way -> way.of(costing, price, facts).shown(places).hangingOn(swings(way, costing, price, facts)))
                .toList();
    }

    /** Which of its own numbers move what it leaves, most first. */
    private static List<Swing> swings(Way way, Costing costing, BigDecimal price, WayFacts facts) {
        List<Ends> numbers = Ends.of(costing, name -> name.startsWith(way.numbers()));
        return Swing.of(numbers, other -> way.of(other, price, facts).left(), facts.places()).stream()
                .limit(MOST)
                .toList();
    }
}

package jackwork.price;

import java.math.BigDecimal;
import java.util.List;

/** All ways of selling, side by side. */
final class Ways {

    private static final int MOST = 4;

    /** @param numbers how the paths of those numbers begin that are its own */
    private record Listed(String numbers, Way way) {}

    private static final List<Listed> ALL = List.of(
            new Listed("vat.", Finished::of),
            new Listed(SaleOrReturn.AT, SaleOrReturn::of),
            new Listed(Kit.AT, Kit::of),
            new Listed(Plans.AT, Plans::of),
            new Listed(MadeToOrder.AT, MadeToOrder::of),
            new Listed(WorkshopDay.AT, WorkshopDay::of),
            new Listed(WithCharity.AT, WithCharity::of));

    private Ways() {}

    static List<WayResult> of(Costing costing, BigDecimal price, WayFacts facts, int places) {
        return ALL.stream()
                .map(listed -> listed.way()
                        .of(costing, price, facts)
                        .shown(places)
                        .hangingOn(swings(listed, costing, price, facts)))
                .toList();
    }

    /** Which of its own numbers move what it leaves, most first. */
    private static List<Swing> swings(Listed listed, Costing costing, BigDecimal price, WayFacts facts) {
        List<Ends> numbers = Ends.of(costing, name -> name.startsWith(listed.numbers()));
        return Swing.of(numbers, other -> listed.way().of(other, price, facts).left(), facts.places()).stream()
                .limit(MOST)
                .toList();
    }
}

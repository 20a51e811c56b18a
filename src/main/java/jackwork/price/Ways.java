package jackwork.price;

import java.math.BigDecimal;
import java.util.List;

/** All ways of selling, side by side. */
final class Ways {

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
                .map(way -> way.of(costing, price, facts).shown(places))
                .toList();
    }
}

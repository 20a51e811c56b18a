package jackwork.price;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What must be paid before a batch can begin: whole sheets, spools and bags, less what is on the shelf.
 *
 * @param need of the bill's unit, with what will be spoiled
 * @param have on the shelf
 * @param packs to buy
 * @param amount as paid
 */
public record CashLine(String item, double need, double have, String unit, int packs, BigDecimal amount) {

    static List<CashLine> of(Costing costing) {
        List<CashLine> lines = new ArrayList<>();
        Batch batch = costing.batch();
        Map<String, Double> have = batch.have();
        for (Item item : batch.items()) {
            double into = costing.yields().into(Stage.ofStock(item.kind()));
            double each = item.amount() / batch.pieces();
            double need = each * costing.pieces() * into + item.testing();
            double shelf = have.getOrDefault(item.item(), 0.0);
            int packs = Money.divided(
                            Money.of(Math.max(0, need - shelf)),
                            costing.prices().holds(item))
                    .setScale(6, RoundingMode.HALF_UP)
                    .setScale(0, RoundingMode.CEILING)
                    .intValueExact();
            BigDecimal amount = costing.prices().pack(item).multiply(BigDecimal.valueOf(packs));
            lines.add(new CashLine(item.item(), need, shelf, item.unit(), packs, amount));
        }
        return lines;
    }

    static BigDecimal sum(List<CashLine> lines) {
        return lines.stream().map(CashLine::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}

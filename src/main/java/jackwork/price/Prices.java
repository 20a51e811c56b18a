package jackwork.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** What stock costs: by its own name where the workshop has a price for it, else by its kind. */
final class Prices {

    private final Rates rates;
    private final Batch batch;

    Prices(Rates rates, Batch batch) {
        this.rates = rates;
        this.batch = batch;
    }

    /** What is paid for what is bought at once: a sheet, a spool, a bag. */
    BigDecimal pack(Item item) {
        String own = "prices." + item.item() + ".price";
        if (rates.has(own)) {
            return rates.money(own);
        }
        BigDecimal kind = rates.money("prices." + item.kind() + ".price");
        return item.kind().equals("sheet") ? kind.multiply(Money.of(area(item))) : kind;
    }

    /** The numbers that its cost rests on. */
    List<String> restsOn(Item item) {
        List<String> paths = new ArrayList<>();
        String own = "prices." + item.item();
        String kind = "prices." + item.kind();
        paths.add(rates.has(own + ".price") ? own + ".price" : kind + ".price");
        if (rates.has(own + ".holds")) {
            paths.add(own + ".holds");
        } else if (!item.kind().equals("sheet")) {
            paths.add(kind + ".holds");
        } else {
            paths.add("offcut");
        }
        return paths;
    }

    /** How much of the bill's unit that is. */
    BigDecimal holds(Item item) {
        String own = "prices." + item.item() + ".holds";
        if (rates.has(own)) {
            return rates.money(own);
        }
        return item.kind().equals("sheet") ? BigDecimal.ONE : rates.money("prices." + item.kind() + ".holds");
    }

    /** Paid for one of the bill's unit. */
    BigDecimal each(Item item) {
        return Money.divided(pack(item), holds(item));
    }

    private double area(Item item) {
        return batch.sheets().stream()
                .filter(sheet -> sheet.stock().equals(item.item()))
                .mapToDouble(LaidSheet::area)
                .findFirst()
                .orElse(0);
    }

    /** What of it is really used up: of sheets, less what the strips that are kept are worth. */
    double used(Item item) {
        if (!item.kind().equals("sheet")) {
            return item.amount();
        }
        double worth = rates.number("offcut") / 100;
        return batch.sheets().stream()
                .filter(sheet -> sheet.stock().equals(item.item()))
                .mapToDouble(sheet -> 1 - worth * sheet.kept())
                .sum();
    }
}

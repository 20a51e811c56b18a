package jackwork.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * What a batch of so many costs a piece.
 *
 * @param minutes of hands for a piece
 * @param floor for a piece
 * @param cash for the whole batch, before it begins
 * @param shelves what the buyer pays, by channel
 * @param wages what an hour of hands earns at the asked price, by channel
 */
public record BatchSize(
        int pieces,
        double minutes,
        BigDecimal floor,
        BigDecimal cash,
        Map<String, BigDecimal> shelves,
        Map<String, BigDecimal> wages) {

    private static final List<Integer> SIZES = List.of(1, 2, 3, 5, 10, 20, 50, 100);
    /** Nobody glues up more at once. */
    private static final int MOST = 1000;

    static List<BatchSize> of(Costing costing, BigDecimal asked, int places) {
        TreeSet<Integer> sizes = new TreeSet<>(SIZES);
        sizes.add(costing.pieces());
        List<BatchSize> all = new ArrayList<>();
        for (int pieces : sizes) {
            all.add(of(costing.with(pieces), pieces, asked, places));
        }
        return all;
    }

    private static BatchSize of(Costing costing, int pieces, BigDecimal asked, int places) {
        Map<String, BigDecimal> shelves = new LinkedHashMap<>();
        Map<String, BigDecimal> wages = new LinkedHashMap<>();
        BigDecimal net = Ladder.net(costing.floor(), costing.rates());
        for (Channel channel : costing.channels()) {
            if (channel.possible()) {
                shelves.put(channel.name(), Money.shown(channel.shelf(net), places));
                wages.put(channel.name(), Money.shown(Backwards.paysWage(costing, channel, asked), places));
            }
        }
        return new BatchSize(
                pieces,
                costing.minutes(),
                Money.shown(costing.floor(), places),
                Money.shown(CashLine.sum(CashLine.of(costing)), places),
                shelves,
                wages);
    }

    /** The smallest batch of which a piece may cost what a price leaves; null when none up to a thousand is. */
    static @Nullable Integer turns(Costing costing, Channel channel, BigDecimal asked) {
        BigDecimal mayCost = Backwards.mayCost(channel.net(asked), costing.rates());
        if (costing.with(MOST).floor().compareTo(mayCost) > 0) {
            return null;
        }
        int low = 1;
        int high = MOST;
        while (low < high) {
            int middle = (low + high) / 2;
            if (costing.with(middle).floor().compareTo(mayCost) <= 0) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }
}

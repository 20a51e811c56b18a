package jackwork.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * From the floor to the shelf in one channel.
 *
 * @param net the maker's price W
 * @param shelf what the buyer pays, with VAT and postage where there is any
 * @param band of the maker's own that it falls in; null beyond the dearest
 * @param rungs from the floor up, rounded so that they add up
 * @param breakEven pieces that pay for a day at the stall, at this price and at the asked one; null elsewhere or never
 */
public record Ladder(
        String channel,
        String kind,
        BigDecimal floor,
        BigDecimal net,
        BigDecimal shelf,
        @Nullable String band,
        List<Rung> rungs,
        String formula,
        @Nullable BigDecimal breakEven,
        @Nullable BigDecimal breakEvenAsked) {

    /** W with the maker's profit p in it: floor / (1 − p). */
    static BigDecimal net(BigDecimal floor, Rates rates) {
        return Money.divided(floor, BigDecimal.ONE.subtract(rates.share("profit")));
    }

    static List<Ladder> of(Costing costing, Bands bands, BigDecimal asked, int places) {
        List<Ladder> ladders = new ArrayList<>();
        for (Channel channel : costing.channels()) {
            if (channel.possible()) {
                ladders.add(of(channel, costing, bands, asked, places));
            }
        }
        return ladders;
    }

    private static Ladder of(Channel channel, Costing costing, Bands bands, BigDecimal asked, int places) {
        BigDecimal floor = costing.floor();
        BigDecimal net = net(floor, costing.rates());
        BigDecimal shelf = channel.shelf(net);
        List<Rung> exact = new ArrayList<>();
        exact.add(new Rung("floor", floor, floor));
        exact.add(Rung.to("profit", floor, net));
        exact.addAll(channel.above(net));
        List<Rung> shown = new ArrayList<>();
        BigDecimal before = BigDecimal.ZERO;
        for (Rung rung : exact) {
            BigDecimal reaches = Money.shown(rung.reaches(), places);
            shown.add(Rung.to(rung.name(), before, reaches));
            before = reaches;
        }
        boolean fair = channel.kind().equals("fair");
        FairDay day = fair ? FairDay.of(costing.rates(), channel.name()) : null;
        BigDecimal price = Money.shown(shelf, places);
        return new Ladder(
                channel.name(),
                channel.kind(),
                Money.shown(floor, places),
                Money.shown(net, places),
                price,
                bands.of(price),
                shown,
                channel.formula(),
                day == null ? null : day.wholePieces(shelf, floor).orElse(null),
                day == null ? null : day.wholePieces(asked, floor).orElse(null));
    }
}

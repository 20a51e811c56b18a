package jackwork.price;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** docs/pay-by-hand.md: other ways of selling a piece that costs 20, takes 60 minutes and is sold at 50. */
@Tag("quick")
class WaysByHandTest {

    private static final BigDecimal PRICE = BigDecimal.valueOf(50);
    private static final WayFacts NOTHING = new WayFacts(null, null, 2);
    private static final String RATES = """
            times: {put-on: 48, pack: 12}
            pay:
              wage: 12
              on-costs: 25
              productive: 75
              overhead: 0
              learning: {rate: 100}
              prices: {all-else: {price: 5, holds: 1}}
              yields: {cut: 100, print: 100, dress: 100, build: 100, first-time: 100}
              design: {hours: 0}
              ways:
                return: {share: 40, sold: 80, back: 2, refurbish: 3, loss: 5, months: 4, later: 2}
                kit: {price: 60, picking: 6, works: 18, support: 3, missing: 10, replacement: 4}
                plans: {price: 10, fee: 10, fixed: 0.50, sold: 30, support: 3, hours: 6}
                order: {surcharge: 20, talk: 30}
                day: {people: 6, fee: 50, room: 36, hours: 6, preparing: 4}
                charity: {visitors: 1520, give: 5, gift: 1.50, coins: 2, uptime: 80, host: 10, banking: 5, theft: 5,
                  plain-give: 2, plain-gift: 1, fee: 60, visits: 1, visit: 4, visit-minutes: 20, counting: 10,
                  repairs: 3, loss: 1}
            """;

    private static Costing costing(boolean withStock) {
        List<Item> items = withStock ? List.of(new Item("all-else", "carton", 10, 0, "pieces")) : List.of();
        Batch batch = new Batch(10, List.of(), items, 0, Map.of("put-on", 10.0, "pack", 10.0), Map.of());
        return Costing.of(batch, Cases.rates(RATES), 10);
    }

    private static WayResult way(Way way, WayFacts facts) {
        return way.of(costing(false), PRICE, facts);
    }

    private static void leaves(Way way, String byHand) {
        assertThat(Money.shown(way(way, NOTHING).left(), 6)).isEqualByComparingTo(byHand);
    }

    @Test
    void thePiece() {
        assertThat(costing(false).floor()).isEqualByComparingTo("20");
        assertThat(costing(false).minutes()).isEqualTo(60);
        assertThat(Money.shown(costing(false).outlay(), 20)).isEqualByComparingTo("0");
    }

    @Test
    void whatEachLeaves() {
        leaves(Finished::of, "30");
        leaves(SaleOrReturn::of, "6");
        leaves(Kit::of, "16.60");
        leaves(Plans::of, "105");
        leaves(MadeToOrder::of, "30");
        leaves(WorkshopDay::of, "40");
    }

    /** Each unit of wage costs 1.25 / 0.75 in an hour that goes into pieces: 12 + 6 / (0.8 · 5/3), and 12 + 30 / (5/3). */
    @Test
    void whatAnHourEarns() {
        assertThat(hour(SaleOrReturn::of)).isCloseTo(16.5, within(1e-9));
        assertThat(hour(Finished::of)).isCloseTo(30, within(1e-9));
        assertThat(way(SaleOrReturn::of, NOTHING).lines()).hasSize(4);
        assertThat(way(SaleOrReturn::of, NOTHING).tiedUp()).isEqualByComparingTo("0");
        assertThat(way(Finished::of, NOTHING).tiedUp()).isNull();
    }

    private static double hour(Way way) {
        BigDecimal hour = way(way, NOTHING).anHour();
        assertThat(hour).isNotNull();
        return hour.doubleValue();
    }

    @Test
    void cashByMonth() {
        assertThat(SaleOrReturn.months(
                                costing(false),
                                SaleOrReturn.payout(costing(false).rates(), PRICE))
                        .stream()
                        .map(month -> Money.shown(month, 2).intValueExact()))
                .containsExactly(0, 0, 0, 60, 50, 60, 60);
        List<BigDecimal> months = SaleOrReturn.months(
                costing(true), SaleOrReturn.payout(costing(true).rates(), PRICE));
        assertThat(Money.shown(months.get(0), 2)).isEqualByComparingTo("-50");
        assertThat(Money.shown(SaleOrReturn.peak(months), 2)).isEqualByComparingTo("50");
    }

    @Test
    void bothPurses() {
        WayResult placed = way(WithCharity::of, new WayFacts(38.0, null, 2));
        assertThat(WithCharity.everyDays(costing(false).rates(), 38)).isCloseTo(9.5, within(1e-9));
        assertThat(placed.left().doubleValue()).isCloseTo(12, within(1e-9));
        assertThat(placed.purses().get(0).left()).isEqualByComparingTo("72.96");
        assertThat(placed.purses().get(1).left()).isEqualByComparingTo("42.56");
        assertThat(placed.words()).first().asString().contains("1.7 months");
        assertThat(way(WithCharity::of, new WayFacts(1000.0, null, 2)).left().doubleValue())
                .isCloseTo(42.80, within(1e-9));
    }

    @Test
    void aPieceThatNeverPaysBackSaysSo() {
        Costing poor = costing(false).with(costing(false).rates().with("ways.charity.fee", 0));
        assertThat(WithCharity.of(poor, PRICE, NOTHING).words())
                .first()
                .asString()
                .contains("never");
    }
}

package jackwork.price;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Common practice, no source: two hours of assembly at about 15 an hour, and about 10 for machines, stock and packing, is
 * about 40; with a shop's markup of half, about 60 on the shelf; at a commission of half, 80. These figures stand here
 * alone.
 */
@Tag("quick")
class CommonPracticeTest {

    private static final String RATES = """
            times: {put-on: 120}
            pay:
              wage: 15
              on-costs: 0
              productive: 100
              overhead: 0
              profit: 0
              learning: {rate: 100}
              prices: {all-else: {price: 10, holds: 1}}
              yields: {cut: 100, print: 100, dress: 100, build: 100, first-time: 100}
              design: {hours: 0}
              channels:
                outright: {shop: {markup: 50, vat: 0}}
                commission: {gallery: {share: 50}}
            """;

    private static final Batch BATCH = new Batch(
            1, List.of(), List.of(new Item("all-else", "carton", 1, 0, "pieces")), 0, Map.of("put-on", 1.0), Map.of());

    private static Costing costing() {
        return Costing.of(BATCH, Cases.rates(RATES), 1);
    }

    private static Channel channel(String name) {
        return Channels.of(costing().rates()).stream()
                .filter(channel -> channel.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void twoHoursAndTenIsForty() {
        assertThat(costing().minutes()).isEqualTo(120);
        assertThat(costing().floor()).isEqualByComparingTo("40");
    }

    @Test
    void withHalfOnTopItIsSixtyOnTheShelf() {
        assertThat(channel("shop").shelf(costing().floor())).isEqualByComparingTo("60");
    }

    @Test
    void withHalfKeptItIsEighty() {
        assertThat(channel("gallery").shelf(costing().floor())).isEqualByComparingTo("80");
    }

    /** 35 on the shelf at the same markup leaves 23.33; 10 of it are not time; the rest is 53 minutes. */
    @Test
    void aLowerShelfPriceGivesTheMinutesLeft() {
        List<Backwards> back = Backwards.of(costing(), new BigDecimal("35"), 2, "EUR");
        assertThat(back.get(0).net()).isEqualByComparingTo("23.33");
        assertThat(back.get(0).mayTake()).isEqualByComparingTo("53.3");
        assertThat(back.get(0).paysWage()).isEqualByComparingTo("6.67");
        assertThat(back.get(0).words()).contains("may take 53 minutes; it takes 120");
    }
}

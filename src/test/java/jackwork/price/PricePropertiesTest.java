package jackwork.price;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold whatever the numbers: drawn anew by each seed, from what the workshop's file may say. */
class PricePropertiesTest {

    private static final int PLACES = 2;
    private static final BigDecimal CENT = new BigDecimal("0.01");

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 200);
    }

    private static Rates rates(Random random) {
        Rates rates = Cases.rates("");
        for (String name : List.copyOf(rates.all().keySet())) {
            var number = rates.known(name);
            rates = rates.with(name, number.low() + random.nextDouble() * (number.high() - number.low()));
        }
        return random.nextBoolean() ? rates.with("vat.registered", 1) : rates;
    }

    private static Costing costing(Random random) {
        Map<String, Double> work = new LinkedHashMap<>();
        for (String operation :
                List.of("clean-part", "glue-layer", "pivot", "paint-part", "try", "pack", "set-up-bench")) {
            work.put(operation, 1.0 + random.nextInt(60));
        }
        int pieces = 1 + random.nextInt(40);
        Batch batch = new Batch(
                pieces,
                List.of(new LaidSheet("ply", 0.12, 600 + random.nextInt(3000), random.nextDouble())),
                List.of(
                        new Item("ply", "sheet", 1, 0.05, "sheets"),
                        new Item("filament", "filament", random.nextInt(500), 0, "g")),
                random.nextInt(500),
                work,
                Map.of());
        return Costing.of(batch, rates(random), pieces);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theLadderNeverCrosses(long seed) {
        Costing costing = costing(new Random(seed));
        for (Ladder ladder : Ladder.of(costing, Bands.of(List.of()), BigDecimal.valueOf(100), PLACES)) {
            BigDecimal before = BigDecimal.ZERO;
            for (Rung rung : ladder.rungs()) {
                assertThat(rung.reaches())
                        .as(ladder.channel() + ": " + rung.name())
                        .isGreaterThanOrEqualTo(before);
                assertThat(before.add(rung.adds())).isEqualByComparingTo(rung.reaches());
                before = rung.reaches();
            }
            assertThat(before).isEqualByComparingTo(ladder.shelf());
        }
        for (Channel channel : Channels.of(costing.rates())) {
            BigDecimal net = costing.floor();
            assertThat(channel.shelf(net.add(CENT))).isGreaterThan(channel.shelf(net));
            assertThat(channel.shelf(net)).isGreaterThanOrEqualTo(net);
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void moneyAddsUpToTheCent(long seed) {
        Random random = new Random(seed);
        Costing costing = costing(random);
        List<BigDecimal> exact = new ArrayList<>();
        costing.lines().forEach(line -> exact.add(line.amount()));
        assertAddsUp(exact, costing.floor());
        for (WayResult way :
                Ways.of(costing, BigDecimal.valueOf(20 + random.nextInt(200)), new WayFacts(null, null, 2), PLACES)) {
            assertThat(WayResult.sum(way.lines())).isEqualByComparingTo(way.left());
            assertThat(way.left().scale()).isEqualTo(PLACES);
        }
    }

    private static void assertAddsUp(List<BigDecimal> exact, BigDecimal sum) {
        List<BigDecimal> shown = Money.shown(exact, PLACES);
        assertThat(shown.stream().reduce(BigDecimal.ZERO, BigDecimal::add))
                .isEqualByComparingTo(Money.shown(sum, PLACES));
        for (int i = 0; i < exact.size(); i++) {
            assertThat(shown.get(i).subtract(exact.get(i)).abs()).isLessThanOrEqualTo(CENT);
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void backwardsUndoesForwards(long seed) {
        Random random = new Random(seed);
        Costing costing = costing(random);
        BigDecimal net = Ladder.net(costing.floor(), costing.rates());
        for (Channel channel : Channels.of(costing.rates())) {
            BigDecimal shelf = channel.shelf(net);
            assertThat(channel.net(shelf).doubleValue()).isCloseTo(net.doubleValue(), within(1e-12));
            BigDecimal mayCost = Backwards.mayCost(channel.net(shelf), costing.rates());
            assertThat(Backwards.mayTake(costing, mayCost).doubleValue())
                    .as(channel.name() + ": minutes")
                    .isCloseTo(costing.minutes(), within(1e-9));
            assertThat(Backwards.paysWage(costing, channel, shelf).doubleValue())
                    .as(channel.name() + ": wage")
                    .isCloseTo(costing.rates().number("wage"), within(1e-9));
        }
    }

    /** A longer batch never costs more a piece; where it is said to turn, it does. */
    @ParameterizedTest
    @MethodSource("seeds")
    void largerBatchesAreNoDearer(long seed) {
        Random random = new Random(seed);
        Costing costing = costing(random);
        BigDecimal asked = BigDecimal.valueOf(10 + random.nextInt(400));
        Channel channel = Channels.of(costing.rates()).get(random.nextInt(4));
        assertThat(costing.with(7).floor()).isLessThanOrEqualTo(costing.with(6).floor());
        Integer turns = BatchSize.turns(costing, channel, asked);
        BigDecimal mayCost = Backwards.mayCost(channel.net(asked), costing.rates());
        if (turns == null) {
            assertThat(costing.with(1000).floor()).isGreaterThan(mayCost);
        } else {
            assertThat(costing.with(turns).floor()).isLessThanOrEqualTo(mayCost);
            if (turns > 1) {
                assertThat(costing.with(turns - 1).floor()).isGreaterThan(mayCost);
            }
        }
    }
}

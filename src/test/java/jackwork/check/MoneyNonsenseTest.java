package jackwork.check;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.check.Nonsense.Verdict;
import jackwork.stock.Coin;
import jackwork.stock.Coins;
import java.io.IOException;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Coins, and what the workshop counts and rubs, of which one goes ill with another. */
class MoneyNonsenseTest {

    @Test
    void coinsAreOfOneMoneyAndOfTheWorkshops() throws IOException {
        Random random = new Random(99);
        List<Coin> all = Coins.catalogue().all();
        int mixed = 0;
        for (int i = 0; i < 30; i++) {
            List<Coin> some = random.ints(1 + random.nextInt(3), 0, all.size())
                    .distinct()
                    .mapToObj(all::get)
                    .filter(coin -> random.nextBoolean() || coin.currency().equals("EUR"))
                    .toList();
            if (some.isEmpty()) {
                continue;
            }
            String codes = some.stream().map(Coin::code).collect(Collectors.joining(", "));
            boolean euro = some.stream().allMatch(coin -> coin.currency().equals("EUR"));
            assertThat(Nonsense.ask(
                            new CoinMoney(),
                            () -> Nonsense.replaced(
                                    "heron",
                                    "heron/design.yaml",
                                    "coins: [EUR-0.20, EUR-0.50, EUR-1, EUR-2]",
                                    "coins: [" + codes + "]")))
                    .as(codes)
                    .isEqualTo(euro ? Verdict.PASSES : Verdict.DOUBTFUL);
            mixed += euro ? 0 : 1;
        }
        assertThat(mixed).isBetween(5, 29);
    }

    @ParameterizedTest
    @CsvSource({
        "acrylic, DOUBTFUL",
        "brass, DOUBTFUL",
        "card, DOUBTFUL",
        "bamboo, PASSES",
        "steel, PASSES",
        "coin, PASSES"
    })
    void frictionIsOfWhatTheWorkshopHas(String surface, Verdict verdict) throws IOException {
        assertThat(Nonsense.ask(
                        new FrictionUsed(),
                        () -> Nonsense.replaced(
                                "heron",
                                "workshop.yaml",
                                "friction: []",
                                "friction: [{between: [" + surface + ", wood], coefficient: 0.3}]")))
                .isEqualTo(verdict);
    }
}

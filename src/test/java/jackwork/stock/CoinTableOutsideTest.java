package jackwork.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.Published;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The coin catalogue against figures set down apart from it, source in each row of the table.
 *
 * <p>Reach: nominal diameter, thickness and mass; thickness in the euro regulation is indicative
 * only; nothing here of wear or tolerance.
 */
@Tag("outside")
@Tag("quick")
class CoinTableOutsideTest {

    static Stream<List<String>> published() {
        return Published.rows("/jackwork/stock/coins-published.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("published")
    void agrees(List<String> row) {
        Coin coin = Coins.catalogue().find(row.get(0)).orElseThrow();
        assertThat(coin.diameter()).isEqualTo(Double.parseDouble(row.get(1)));
        assertThat(coin.thickness()).isEqualTo(Double.parseDouble(row.get(2)));
        assertThat(coin.mass()).isEqualTo(Double.parseDouble(row.get(3)));
    }

    @Test
    void everyCoinOfTheCatalogueIsThere() {
        assertThat(published().map(row -> row.get(0)).toList())
                .containsExactlyInAnyOrderElementsOf(Coins.catalogue().names());
    }

    /**
     * A coin's mass over its enclosing cylinder stays under the density of its densest metal, 8.96
     * g/cm³ for copper (handbook), and above half of it: rims and relief leave air.
     */
    @Test
    void massesFitTheirSizes() {
        for (Coin coin : Coins.catalogue().all()) {
            if (coin.round()) {
                assertThat(coin.apparentDensity()).as(coin.code()).isBetween(4.5, 8.96);
            }
        }
    }

    /** EN 315:2000, sanded: +(0.2 + 0.03 t) / −(0.4 + 0.03 t); producers' tables print 3 mm as +0.29 / −0.49. */
    @Test
    void plywoodLimits() {
        Uncertain three = Sheets.catalogue().find("birch-ply").orElseThrow().thickness(3);
        assertThat(three.high() - 3).isCloseTo(0.29, within(1e-12));
        assertThat(3 - three.low()).isCloseTo(0.49, within(1e-12));
        Uncertain acrylic =
                Sheets.catalogue().find("cast-acrylic").orElseThrow().thickness(3);
        assertThat(acrylic.high() - 3).isCloseTo(0.7, within(1e-12));
    }
}

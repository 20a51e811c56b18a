package jackwork.design;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.stock.Uncertain;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a workshop says that nothing can be made with: refused with its place, or told to be unusual. */
class WorkshopNonsenseTest {

    private static final String TEXT = WorkshopReader.text(Path.of("demo"));

    private final Random random = new Random(4711);

    private static Optional<String> complaint(String text) {
        try {
            WorkshopReader.parse(text);
            return Optional.empty();
        } catch (DesignException e) {
            return Optional.of(String.valueOf(e.getMessage()));
        }
    }

    private static String with(String from, String to) {
        assertThat(TEXT).contains(from);
        return TEXT.replace(from, to);
    }

    private static List<Unusual> unusual(String text) {
        Path workshop = Path.of("demo/workshop.yaml").toAbsolutePath().normalize();
        return Unusual.of(DesignReader.read(Path.of("demo/heron"), Map.of(workshop, text))).stream()
                .filter(unusual -> unusual.wide() != null)
                .toList();
    }

    @Test
    void anIntervalThatSaysNothingIsRefused() {
        assertThat(complaint(with("value: 3.0, low: 2.95, high: 3.05", "value: 3, low: 1, high: 6")))
                .hasValueSatisfying(told -> assertThat(told)
                        .contains("workshop.yaml:26:15: read 3 with an interval from 1 to 6 mm")
                        .contains("expected one at most 3 mm wide"));
        assertThat(unusual(with("value: 3.0, low: 2.95, high: 3.05", "value: 3, low: 2.2, high: 3.9")))
                .extracting(Unusual::path)
                .containsExactly("workshop.rods.bamboo-3.diameter");
        assertThat(unusual(TEXT)).isEmpty();
    }

    /** Every number of the workshop that has an interval, with one of any width about it. */
    @Test
    void everyIntervalIsHeldAgainstItsNumber() {
        Map<String, Word> words = new HashMap<>();
        Map<String, Uncertain> numbers = new HashMap<>();
        Walk.over(WorkshopReader.parse(TEXT), "", (path, entry, word, value) -> {
            if (value instanceof Uncertain number && word.quantity().isPresent()) {
                words.put(path, word);
                numbers.put(path, number);
            }
        });
        int refused = 0;
        int told = 0;
        int fine = 0;
        for (String path : words.keySet().stream().sorted().toList()) {
            Word word = words.get(path);
            Range range = Range.of(word).orElseThrow();
            double value = numbers.get(path).value();
            IntervalWidth spread = IntervalWidth.of(word, value);
            for (int i = 0; i < 12; i++) {
                double width = spread.most() * Math.exp(3 * random.nextDouble() - 2);
                double share = random.nextDouble();
                double low = value - share * width;
                double high = low + width;
                if (!range.holds(low) || !range.holds(high) || low <= 0 && range.least() >= 0) {
                    continue;
                }
                String written = String.format(Locale.ROOT, "{value: %.6f, low: %.6f, high: %.6f}", value, low, high);
                String text;
                try {
                    text = WorkshopSplice.value(TEXT, path, written);
                } catch (DesignException e) {
                    assertThat(width).as(path + " " + written).isGreaterThan(0.99 * spread.most());
                    assertThat(e.getMessage())
                            .containsPattern("workshop\\.yaml:\\d+:\\d+: ")
                            .contains("interval from");
                    refused++;
                    continue;
                }
                assertThat(width).as(path + " " + written).isLessThan(1.01 * spread.most());
                boolean unusual =
                        unusual(text).stream().anyMatch(one -> one.path().endsWith(path));
                assertThat(unusual).as(path + " " + written).isEqualTo(width > spread.usual());
                told += unusual ? 1 : 0;
                fine += unusual ? 0 : 1;
            }
        }
        assertThat(refused).isGreaterThan(3);
        assertThat(told).isGreaterThan(10);
        assertThat(fine).isGreaterThan(20);
    }

    @Test
    void eachPairRubsOnce() {
        List<String> surfaces = new ArrayList<>(Surfaces.known());
        assertThat(surfaces).contains("wood", "bamboo", "coin", "cord", "steel");
        for (int i = 0; i < 40; i++) {
            String a = surfaces.get(random.nextInt(surfaces.size()));
            String b = surfaces.get(random.nextInt(surfaces.size()));
            String c = surfaces.get(random.nextInt(surfaces.size()));
            String d = surfaces.get(random.nextInt(surfaces.size()));
            boolean twice = a.equals(c) && b.equals(d) || a.equals(d) && b.equals(c);
            Optional<String> told = complaint(friction(a + ", " + b, c + ", " + d));
            assertThat(told.isPresent()).as(a + b + c + d).isEqualTo(twice);
            assertThat(complaint(friction(a + ", " + b, b + ", " + a)))
                    .hasValueSatisfying(words -> assertThat(words)
                            .containsPattern("workshop\\.yaml:\\d+:\\d+: ")
                            .contains("a second time"));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"unobtainium, wood", "wood, birch-3", "gold, gold", "Wood, bamboo", "bambo, wood"})
    void onlyWhatThereIsRubs(String pair) {
        assertThat(complaint(friction(pair, "coin, wood")))
                .hasValueSatisfying(told -> assertThat(told)
                        .containsPattern("workshop\\.yaml:\\d+:\\d+: read ")
                        .contains("a surface that stock, coins or cords have"));
    }

    private static String friction(String one, String other) {
        return with(
                "friction: []",
                "friction: [{between: [" + one + "], coefficient: 0.3}, {between: [" + other + "], coefficient: 0.2}]");
    }

    @ParameterizedTest
    @ValueSource(strings = {"gold", "birch3", "screw-m3", "screw-m7x12", "weight of gold", "sheet", "nut-m7"})
    void onlyWhatIsBoughtIsOnTheShelf(String name) {
        assertThat(complaint(with("finger:", "have: {" + name + ": 3}\nfinger:")))
                .hasValueSatisfying(
                        told -> assertThat(told).containsPattern("workshop\\.yaml:\\d+:\\d+: read \"" + name + "\""));
    }

    /** Whatever a shopping list of the demo names may be on the shelf. */
    @Test
    void whatAShoppingListNamesIsOnTheShelf() {
        String[] names = {
            "birch-3",
            "bamboo-3",
            "thread",
            "nut-m6",
            "screw-m3x12",
            "screw-m3x36",
            "washer-m3",
            "filament",
            "wood glue",
            "weight of 28.0 g",
            "paper",
            "paint",
            "cloth",
            "carton"
        };
        for (String name : names) {
            assertThat(complaint(with("finger:", "have: {" + name + ": 3}\nfinger:")))
                    .as(name)
                    .isEmpty();
        }
        for (String kind : List.of("sheet", "rod", "glue", "weight", "fastener", "cord")) {
            assertThat(complaint(with("bamboo-3: {price: 2.90", kind + ": {price: 2.90")))
                    .as(kind)
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"ABC", "EUX", "eur", "QQQ"})
    void aCurrencyIsOneThatThereIs(String code) {
        assertThat(complaint(with("currency: EUR", "currency: " + code)))
                .hasValueSatisfying(told -> assertThat(told).startsWith("workshop.yaml:5:11: read \"" + code + "\""));
    }

    @ParameterizedTest
    @ValueSource(strings = {"GBP", "USD", "CHF", "PLN", "JPY"})
    void anyCurrencyMayBeCounted(String code) {
        assertThat(complaint(with("currency: EUR", "currency: " + code))).isEmpty();
    }
}

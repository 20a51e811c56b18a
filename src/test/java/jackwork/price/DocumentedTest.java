package jackwork.price;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.design.PathNumbers;
import jackwork.design.WorkshopFile;
import jackwork.stock.PayNumbers;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What docs/design-file.md shows of times and money can be read, and no number is kept from the maker. */
@Tag("quick")
class DocumentedTest {

    private static String shown() throws IOException {
        String text = Files.readString(Path.of("docs/design-file.md"));
        int from = text.indexOf("```yaml workshop.yaml\ncurrency: EUR\ntimes:");
        assertThat(from).isPositive();
        return text.substring(text.indexOf("times:", from), text.indexOf("```", from + 3));
    }

    @Test
    void everyNumberIsShown() throws IOException {
        WorkshopFile workshop = Cases.workshop(shown());
        Set<String> paths = PathNumbers.of(workshop.payOrNothing()).keySet().stream()
                .map(path -> path.replaceFirst("^(channels\\.[a-z]+)\\..*\\.([a-z-]+)$", "$1.$2"))
                .collect(Collectors.toSet());
        assertThat(PayNumbers.catalogue().names().stream()
                        .filter(name -> !name.startsWith("prices."))
                        .toList())
                .allSatisfy(name -> assertThat(paths).contains(name));
    }

    /** Only what the workshop leaves out is ours. */
    @Test
    void theWorkshopsOwnNumbersReplaceTheGuesses() throws IOException {
        Rates rates = Rates.of(Cases.workshop(shown().replace("wage: 14 ", "wage: 17 ")));
        assertThat(rates.number("wage")).isEqualTo(17);
        assertThat(rates.number("times.pivot")).isEqualTo(0.8);
        assertThat(rates.number("channels.commission.mill-gallery.share")).isEqualTo(35);
        assertThat(rates.channels("outright")).containsExactly("hut-shop");
        assertThat(Rates.of(Cases.workshop("")).channels("outright")).containsExactly("shop");
    }

    @Test
    void anyCurrency() {
        assertThat(Money.places("EUR")).isEqualTo(2);
        assertThat(Money.places("JPY")).isZero();
        assertThat(Money.places("KWD")).isEqualTo(3);
        assertThat(Money.places("shells")).isEqualTo(2);
    }
}

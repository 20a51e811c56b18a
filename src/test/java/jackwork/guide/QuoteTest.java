package jackwork.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A quote that is not so is found out. */
class QuoteTest {

    private static final List<String> FOUND = List.of("one", "  two", "", "three", "four");

    private static String missing(String... quoted) {
        return new Quote("page", "command", List.of(quoted), FOUND).missing();
    }

    @Test
    void linesInTheirOrderAreThere() {
        assertThat(missing("one", "two", "", "three")).isEmpty();
        assertThat(missing("two", "...", "four")).isEmpty();
        assertThat(missing("...", "four", "...")).isEmpty();
    }

    @Test
    void anotherLineIsMissed() {
        assertThat(missing("one", "2")).isEqualTo("2");
        assertThat(missing("three", "...", "one")).isEqualTo("one");
    }

    @Test
    void whatIsLeftOutMustBeSaid() {
        assertThat(missing("one", "three")).isEqualTo("three");
        assertThat(missing("one", "two", "three")).isEqualTo("three");
        assertThat(missing("one", "")).startsWith("an empty line");
    }
}

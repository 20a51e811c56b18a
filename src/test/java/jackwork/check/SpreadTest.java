package jackwork.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.DemoCopy;
import jackwork.design.DesignReader;
import jackwork.stock.Basis;
import jackwork.stock.Uncertain;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The margins that are told are those that the status is decided on. */
class SpreadTest {

    private static final Uncertain NUMBER = new Uncertain(0, -1, 1, "1", Basis.GUESS, "");

    /** A hundred numbers, each too small to be named, take a tenth of the margin together: root of 100 · 0.0098². */
    @Test
    void whatIsTooSmallToBeNamedStillCounts() {
        Spread spread = new Spread(0.99);
        for (int i = 0; i < 100; i++) {
            spread.add("number " + i, NUMBER, value -> 0.99 + 0.0098 * value);
        }
        assertThat(spread.grounds()).isEmpty();
        Margins margins = spread.margins();
        assertThat(margins).isNotNull();
        assertThat(margins.low()).isCloseTo(0.99 - 0.098, within(1e-9));
        assertThat(margins.high()).isCloseTo(0.99 + 0.098, within(1e-9));
    }

    @Test
    void nothingMovesWhatRestsOnNothing() {
        assertThat(new Spread(1).margins()).isNull();
    }

    /** What cannot be computed at a number's end counts as if as much were missing there as is to spare; it wins nothing. */
    @Test
    void whatCannotBeComputedCountsAsLost() {
        Spread spread = new Spread(2).add("number", NUMBER, value -> value < 0 ? Double.NaN : 2.5);
        assertThat(spread.status()).isEqualTo(Status.DOUBTFUL);
        Margins margins = spread.margins();
        assertThat(margins).isNotNull();
        assertThat(margins.low()).isCloseTo(-2, within(1e-12));
        assertThat(margins.high()).isCloseTo(2.5, within(1e-12));
        Spread other = new Spread(2).add("number", NUMBER, value -> value > 0 ? Double.NaN : 1.5);
        assertThat(other.status()).isEqualTo(Status.DOUBTFUL);
        Margins without = other.margins();
        assertThat(without).isNotNull();
        assertThat(without.low()).isCloseTo(-2, within(1e-12));
        assertThat(without.high()).isCloseTo(2, within(1e-12));
    }

    /** Just enough is not enough. */
    @Test
    void noMarginFails() {
        assertThat(new Spread(0).status()).isEqualTo(Status.FAIL);
        assertThat(new Spread(1).add("number", NUMBER, value -> 1 + value).status())
                .isEqualTo(Status.DOUBTFUL);
        assertThat(new Spread(1).add("number", NUMBER, value -> 1 + 0.9 * value).status())
                .isEqualTo(Status.PASS);
    }

    @ParameterizedTest
    @ValueSource(strings = {"heron", "lamplighter", "windmill", "cobbler"})
    void marginsAndStatusAgree(String name, @TempDir Path folder) throws Exception {
        Path workshop = DemoCopy.at(folder.resolve("hut"));
        assertThat(Questions.ask(Subject.of(DesignReader.read(workshop.resolve(name)))))
                .filteredOn(finding -> finding.margins() != null && finding.status() != Status.FAIL)
                .filteredOn(finding -> finding.topic() != Topic.HEAP) // A nuisance, never a failure.
                .isNotEmpty()
                .allSatisfy(finding -> assertThat(finding.margins().low() > 0)
                        .as(finding.id())
                        .isEqualTo(finding.status() == Status.PASS));
    }
}

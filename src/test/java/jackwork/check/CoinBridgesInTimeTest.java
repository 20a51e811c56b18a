package jackwork.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.design.DesignReader;
import jackwork.motion.coin.CoinCycle;
import jackwork.motion.coin.CycleResult;
import jackwork.motion.coin.CycleRig;
import jackwork.motion.coin.CycleStage;
import jackwork.motion.model.CoinDrop;
import jackwork.motion.time.Press;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The coin as a bridge: what geometry says of it, and what the whole cycle in time does. */
@Tag("quick")
class CoinBridgesInTimeTest {

    private static final Subject COBBLER = Subject.of(DesignReader.read(Path.of("demo/cobbler")));
    /** The same box under a figure that folds: sixteen cycles take no time. */
    private static final String BRIDGED = """
            format: 2
            name: Bridged
            box: ../boxes/reed-box/box.yaml
            figure: ../heron/figure.yaml
            coins: [EUR-0.50, EUR-1]
            """;

    private static CycleResult run(Subject subject, double radius) {
        CoinDrop drop = new CoinDrop(7.5, radius, 0, 60, 0.35, 0.3, 0.3);
        return CoinCycle.run(CycleRig.of(subject.assembly(), 0, 0), drop, new Press(6, 150), CoinCycle.NOBODY);
    }

    @Test
    void bothCoinsGoThroughEveryStage() {
        for (double radius : new double[] {24.25 / 2, 23.25 / 2}) {
            CycleResult result = run(COBBLER, radius);
            assertThat(result.passes()).as("%s", result).isTrue();
            // Landed and at rest before the visitor presses; free before the lever is down.
            assertThat(result.times().get(CycleStage.FREES))
                    .isBetween(
                            result.times().get(CycleStage.LANDS), result.times().get(CycleStage.ACTS));
        }
    }

    /** Whatever its weight, a coin that is too small does not reach the gate. */
    @ParameterizedTest
    @CsvSource({"19.75", "16.25"})
    void tooSmallACoinIsRefused(double diameter) {
        CycleResult result = run(COBBLER, diameter / 2);
        assertThat(result.computed()).isTrue();
        assertThat(result.firstMissed()).contains(CycleStage.FREES);
    }

    /** The smallest disc that takes the strut away, by the finding's geometry and in time: within 2 %. */
    @ParameterizedTest
    @CsvSource({"box.lever.throw, 14", "box.lever.throw, 13"})
    void theSmallestThatFrees(String path, String value, @TempDir Path folder) throws Exception {
        Path workshop = jackwork.DemoCopy.at(folder.resolve("workshop"));
        Files.createDirectories(workshop.resolve("bridged"));
        Files.writeString(
                workshop.resolve("bridged/design.yaml"), BRIDGED + "change:\n  " + path + ": " + value + "\n");
        Subject bridged = Subject.of(DesignReader.read(workshop.resolve("bridged")));
        double low = 19;
        double high = 24;
        while (high - low > 0.01) {
            double middle = (low + high) / 2;
            if (run(bridged, middle / 2).times().containsKey(CycleStage.FREES)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        double geometry = CoinBridges.smallest(bridged.assembly());
        assertThat(high).isCloseTo(geometry, within(0.02 * geometry));
    }
}

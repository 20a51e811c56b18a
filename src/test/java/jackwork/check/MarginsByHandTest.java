package jackwork.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.DemoCopy;
import jackwork.design.DesignReader;
import jackwork.geometry.Point;
import jackwork.motion.coin.CycleResult;
import jackwork.motion.coin.CycleStage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Margins of verdicts, subtracted by hand: a sign wrong there turns a no into a yes. */
@Tag("quick")
class MarginsByHandTest {

    private static final Subject HERON = Subject.of(DesignReader.read(Path.of("demo/heron")));

    private static double number(Double value) {
        return value == null ? Double.NaN : value;
    }

    private static Subject changed(Path folder, String design, String change) throws IOException {
        Path hut = DemoCopy.with(folder.resolve(design), design);
        Path file = hut.resolve(design).resolve("design.yaml");
        Files.writeString(file, Files.readString(file) + "\nchange:\n  " + change + "\n");
        return Subject.of(DesignReader.read(file.getParent()));
    }

    /** The tooth's least distance from the tipped strut, less what the pins' play takes of it. */
    @Test
    void theCatchFreesByWhatPlayLeaves() {
        Finding finding = new CatchFrees().ask(HERON).get(0);
        var works = HERON.assembly().coinWorks();
        var lever = HERON.assembly().lever();
        Point strut = works.strut().turnedAbout(works.pivot(), works.tip());
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= 6000; i++) {
            Point tooth = works.tooth().turnedAbout(lever.pivot(), lever.turn() * i / 6000);
            least = Math.min(least, works.sense() * (tooth.x() - strut.x()));
        }
        assertThat(number(finding.value())).isCloseTo(least, within(1e-3));
        assertThat(number(finding.limit())).isPositive();
        assertThat(number(finding.margin()))
                .isCloseTo(number(finding.value()) - number(finding.limit()), within(1e-12));
    }

    /** Short of the end is less than nothing to spare. */
    @Test
    void aStrokeThatEndsEarlyLacksTheRest(@TempDir Path folder) throws IOException {
        Finding finding = new FullStroke()
                .ask(changed(folder, "lamplighter", "figure.strings.open.slack: 3"))
                .get(0);
        assertThat(finding.status()).isEqualTo(Status.FAIL);
        assertThat(number(finding.value())).isBetween(0.5, 0.95);
        assertThat(number(finding.margin())).isCloseTo(number(finding.value()) - 1, within(1e-12));
    }

    /** Thickness decides where the slot is tight across, diameter where it is tight along; the other has room. */
    @Test
    void theTighterWayOfTheSlotDecides(@TempDir Path folder) throws IOException {
        Subject thin = changed(folder.resolve("a"), "heron", "box.coin-works.slot.width: 2.5");
        for (int i = 0; i < thin.coins().size(); i++) {
            Finding finding = new CoinFitsSlot().ask(thin).get(i);
            assertThat(finding.value()).isEqualTo(thin.coins().get(i).thickness());
            assertThat(finding.limit()).isEqualTo(2.5);
        }
        Subject narrow = changed(folder.resolve("b"), "heron", "box.coin-works.slot.length: 26");
        int largest = narrow.coins().size() - 1;
        Finding finding = new CoinFitsSlot().ask(narrow).get(largest);
        assertThat(finding.value()).isEqualTo(25.75);
        assertThat(number(finding.margin())).isCloseTo(0.25, within(1e-9));
    }

    private static CycleResult result(Map<CycleStage, Double> times, boolean computed) {
        return new CycleResult(times, Map.of(), Map.of(), computed, 0, 0, 0, 1);
    }

    /** A cycle passes by every stage and no fewer; the stage that takes longest tells what time was left. */
    @Test
    void aCyclePassesByEveryStage() {
        Map<CycleStage, Double> all = new EnumMap<>(CycleStage.class);
        double at = 0;
        for (CycleStage stage : CycleStage.values()) {
            at += stage == CycleStage.THROWN ? 0.6 : 0.1;
            all.put(stage, at);
        }
        assertThat(result(all, true).passes()).isTrue();
        assertThat(result(all, false).passes()).isFalse();
        assertThat(result(all, true).timeLeft()).isBetween(0.01, 0.99);
        Map<CycleStage, Double> slower = new EnumMap<>(all);
        slower.replaceAll((stage, time) -> stage.compareTo(CycleStage.THROWN) >= 0 ? time + 0.2 : time);
        double lost = result(all, true).timeLeft() - result(slower, true).timeLeft();
        double whole = result(all, true).timeLeft() + 3 * lost;
        assertThat(whole).as("0.6 s are three times 0.2 s of the same whole").isCloseTo(1, within(1e-9));
        for (CycleStage stage : List.of(CycleStage.values())) {
            Map<CycleStage, Double> one = new EnumMap<>(all);
            one.remove(stage);
            assertThat(result(one, true).passes()).as("without %s", stage).isFalse();
        }
    }
}

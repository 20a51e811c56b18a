package jackwork.check;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.check.Nonsense.Verdict;
import java.io.IOException;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What works once and never again, or only on paper: teeth too long for a press, lids far above their slot, a figure on one rod. */
class SecondPressTest {

    private final Random random = new Random(20261130);

    /** The windmill's wheel turns by some 30° a press: twelve teeth and more are taken one by one, fewer are not. */
    @Test
    void aPawlThatPassesLessThanAToothTurnsItsWheelOnce() throws IOException {
        for (int i = 0; i < 5; i++) {
            int few = 6 + random.nextInt(5);
            assertThat(ask("windmill", "figure.pawls.ratchet.teeth: " + few))
                    .as(few + " teeth")
                    .isEqualTo(Verdict.FAILS);
        }
        for (int many = 14; many < 19; many += 2) {
            assertThat(ask("windmill", "figure.pawls.ratchet.teeth: " + many))
                    .as(many + " teeth")
                    .isEqualTo(Verdict.PASSES);
        }
    }

    private static Verdict ask(String design, String change) throws IOException {
        return Nonsense.ask(new PawlSteps(), () -> Nonsense.changed(design, change));
    }

    @Test
    void aLidFarAboveItsSlotLeadsNoCoin() throws IOException {
        for (int i = 0; i < 10; i++) {
            double higher = 12 + 80 * random.nextDouble();
            String height = String.format(Locale.ROOT, "box.case.height: %.1f", 114.6 + higher);
            assertThat(Nonsense.ask(new SlotPlaced(), () -> Nonsense.changed("heron", height)))
                    .as(height)
                    .isEqualTo(Verdict.FAILS);
            String usual = String.format(Locale.ROOT, "box.case.height: %.1f", 114.6 + 5 * random.nextDouble());
            assertThat(Nonsense.ask(new SlotPlaced(), () -> Nonsense.changed("heron", usual)))
                    .as(usual)
                    .isEqualTo(Verdict.PASSES);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"heel: bucket-rise, rise: bucket-heel", "heel: bucket-heel, rise: bucket-heel"})
    void aRiseStandsAboveTheFloor(String words) throws IOException {
        String[] marks = words.split(", ", -1);
        assertThat(Nonsense.ask(
                        new WorksOrdered(),
                        () -> Nonsense.replaced(
                                "heron",
                                "boxes/marsh-box/box.yaml",
                                "    heel: bucket-heel\n    rise: bucket-rise\n",
                                "    " + marks[0] + "\n    " + marks[1] + "\n")))
                .isEqualTo(Verdict.FAILS);
    }

    @Test
    void oneRodHoldsNoFigure() throws IOException {
        String figure = "heron/figure.yaml";
        String right = "  mount-right: {parts: [leg-near, leg-far], rod: bamboo-3}\n";
        assertThat(Nonsense.ask(new WorksOrdered(), () -> Nonsense.replaced("heron", figure, right, "")))
                .isEqualTo(Verdict.REFUSED);
    }

    @Test
    void aSlotFromAPlaceToItselfIsNone() throws IOException {
        for (int i = 0; i < 5; i++) {
            double x = 20 * random.nextDouble();
            double off = 0.4 * random.nextDouble();
            String from = "figure.slides.rack-guide-low.from: " + Nonsense.place(x, 10);
            String to = "figure.slides.rack-guide-low.to: " + Nonsense.place(x + off, 10);
            assertThat(Nonsense.ask(new PegsInSlots(), () -> Nonsense.changed("cobbler", from, to)))
                    .isEqualTo(Verdict.REFUSED);
        }
    }
}

package jackwork.check;

import static jackwork.check.Nonsense.changed;
import static jackwork.check.Nonsense.isNo;
import static jackwork.check.Nonsense.number;
import static jackwork.check.Nonsense.place;
import static jackwork.check.Nonsense.replaced;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jackwork.design.DesignException;
import jackwork.parts.PartException;
import java.io.IOException;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Pegs, teeth, pawls, bands and weights whose numbers are each sensible, and together are not. */
class JointsNonsenseTest {

    private final Random random = new Random(52);

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /** The peg stands at (45.6, 134), 8 mm above the middle of a slot that goes from (45.6, 126) up to 146. */
    @Test
    void aPegLiesOnItsSlotsLine() throws IOException {
        Subject subject = changed("cobbler", "box.lever.throw: 14");
        var slide = subject.assembly().slides().stream()
                .filter(one -> one.name().equals("rack-guide-low"))
                .findFirst()
                .orElseThrow();
        double shiftX = subject.design().figureShift().x();
        double shiftY = subject.design().figureShift().y();
        assertThat(isNo(slot("[0, 0]"))).isTrue();
        for (int i = 0; i < 8; i++) {
            double off = (random.nextBoolean() ? 1 : -1) * between(0.5, 3);
            // Both ends aside, the slot still within its wood or beyond it.
            String from = place(slide.from().x() - shiftX + off, slide.from().y() - shiftY);
            String to = place(slide.to().x() - shiftX + off, slide.to().y() - shiftY);
            assertThat(isNo(Nonsense.ask(
                            new PegsInSlots(),
                            () -> changed(
                                    "cobbler",
                                    "figure.slides.rack-guide-low.from: " + from,
                                    "figure.slides.rack-guide-low.to: " + to))))
                    .as("%s aside", off)
                    .isTrue();
            double shorter = between(0, 1);
            String near = place(slide.from().x() - shiftX, slide.from().y() - shiftY + shorter);
            assertThat(slot(near)).as("from %s", near).isIn(Nonsense.Verdict.PASSES);
        }
    }

    private static Nonsense.Verdict slot(String from) throws IOException {
        return Nonsense.ask(new PegsInSlots(), () -> changed("cobbler", "figure.slides.rack-guide-low.from: " + from));
    }

    /** The cobbler's pinion rolls 7.2 mm on teeth of 6.28 mm. */
    @Test
    void aRackHasTeethAsFarAsItsGearRolls() throws IOException {
        assertThat(isNo(rack("teeth: 1"))).isTrue();
        for (int teeth : new int[] {2, 3, 4}) {
            assertThat(rack("teeth: " + teeth)).as("%s teeth", teeth).isEqualTo(Nonsense.Verdict.PASSES);
        }
        for (double toward : new double[] {0, 90, 270}) {
            assertThat(isNo(rack("toward: " + toward))).as("toward %s", toward).isTrue();
        }
    }

    private static Nonsense.Verdict rack(String change) throws IOException {
        return Nonsense.ask(new TeethStay(), () -> changed("cobbler", "figure.racks.lifting." + change));
    }

    /** Held against how far the pinion turns, whose radius is 12 mm. */
    @Test
    void howFarAGearRollsIsItsTurnTimesItsRadius() throws IOException {
        for (int i = 0; i < 4; i++) {
            double turn = between(6, 14);
            Subject subject = changed("cobbler", "box.lever.throw: " + number(turn), "figure.racks.lifting.teeth: 1");
            int pinion = subject.assembly().bodyOf("pinion");
            RunPoses run = new RunPoses(subject);
            double most = 0;
            for (int k = 0; k < run.count(); k++) {
                most = Math.max(most, Math.abs(run.angle(k, pinion)) * 12);
            }
            Finding finding = new TeethStay().ask(subject).get(0);
            assertThat(finding.status()).isEqualTo(most > 2 * Math.PI ? Status.FAIL : Status.PASS);
        }
    }

    @Test
    void aPairMeshesOnceAndAGearHasOneSetOfTeeth() {
        for (int i = 0; i < 6; i++) {
            String pair = random.nextBoolean() ? "[wheel, pinion]" : "[pinion, wheel]";
            double angle = i == 0 ? 25 : between(15, 30);
            assertThatThrownBy(() -> windmill(
                            "meshes:\n",
                            "meshes:\n  again: {between: " + pair + ", pressure-angle: " + number(angle) + "}\n"))
                    .isInstanceOf(DesignException.class)
                    .hasMessageContaining("joins the same two as meshes.");
        }
        assertThatThrownBy(() -> windmill("gears:\n", "gears:\n  twin: {part: wheel, at: axle, teeth: 20}\n"))
                .isInstanceOf(DesignException.class)
                .hasMessageContaining("the outline of \"wheel\" is made from gears.twin already");
        assertThatThrownBy(
                        () -> replaced(
                                "cobbler",
                                "cobbler/figure.yaml",
                                "racks:\n",
                                "racks:\n  more: {gear: pinion, part: link, toward: 180, module: 2.5, teeth: 3, pressure-angle: 20}\n"))
                .isInstanceOf(DesignException.class)
                .hasMessageContaining("expected one size for all that run together")
                .hasMessageContaining("expected one pressure angle for all that run together");
    }

    private static Subject windmill(String from, String to) throws IOException {
        return replaced("windmill", "windmill/figure.yaml", from, to);
    }

    /** What is wrong is said where it is: at the mesh, and not at the gear that the mesh should have named. */
    @Test
    void gearsOnOneCentreAreToldAsThat() {
        assertThatThrownBy(() -> windmill("between: [wheel, pinion]", "between: [wheel, wheel]"))
                .isInstanceOf(DesignException.class)
                .hasMessageContaining("read \"wheel\" twice")
                .hasMessageNotContaining("no mesh and no rack");
        assertThatThrownBy(() -> changed("windmill", "figure.gears.pinion.at: axle"))
                .isInstanceOf(DesignException.class)
                .hasMessageContaining("which have one centre")
                .hasMessageNotContaining("play");
        for (int i = 0; i < 6; i++) {
            double apart = between(0.05, 5);
            assertThatThrownBy(() -> changed("windmill", "figure.gears.pinion.at: " + place(66 + apart, 150)))
                    .as("%s apart", apart)
                    .isInstanceOf(PartException.class)
                    .hasMessageContaining(String.format(Locale.ROOT, "their centres are %.2f mm apart", apart))
                    .hasMessageNotContaining("play");
        }
    }

    @Test
    void twoPawlsSayTheSameOfTheirRatchet() throws IOException {
        String[] words = {"teeth", "radius", "depth", "first"};
        double[] said = {16, 16, 2.5, 85};
        for (int i = 0; i < 8; i++) {
            int other = i % words.length;
            StringBuilder entry = new StringBuilder("pawls:\n  second: {tip: {part: pawl, at: pawl-tip}, tip-radius: 1,"
                    + " wheel: ratchet, at: axle, clockwise: true");
            for (int k = 0; k < words.length; k++) {
                double value = said[k] + (k == other ? 1 + random.nextInt(3) : 0);
                entry.append(", ").append(words[k]).append(": ").append(k == 0 ? "" + (int) value : "" + value);
            }
            String second = entry.append("}\n").toString();
            assertThatThrownBy(() -> windmill("pawls:\n", second))
                    .as(second)
                    .isInstanceOf(DesignException.class)
                    .hasMessageContaining(words[other] + " is not what pawls.second says of the same ratchet");
        }
        assertThat(windmill(
                                "pawls:\n",
                                "pawls:\n  second: {tip: {part: pawl, at: pawl-tip}, tip-radius: 1, wheel: ratchet, at:"
                                        + " axle, clockwise: true, teeth: 16, radius: 16, depth: 2.5, first: 85}\n")
                        .assembly()
                        .links())
                .isNotEmpty();
    }

    /** Every tooth of sixteen is as good as the next: so is a first that is whole pitches off. */
    @Test
    void aPawlLiesInAGap() throws IOException {
        assertThat(isNo(pawl(-85))).isTrue();
        for (int i = 0; i < 8; i++) {
            double pitches = 22.5 * (random.nextInt(15) - 7);
            double first = Math.IEEEremainder(85 + pitches, 360);
            assertThat(pawl(first)).as("first %s", first).isEqualTo(Nonsense.Verdict.PASSES);
            double dug = Math.IEEEremainder(first - between(8, 16), 360);
            assertThat(isNo(pawl(dug))).as("first %s", dug).isTrue();
        }
    }

    private static Nonsense.Verdict pawl(double first) throws IOException {
        return Nonsense.ask(new PawlMeets(), () -> changed("windmill", "figure.pawls.ratchet.first: " + number(first)));
    }

    /** The ends stand 61 mm apart at most. */
    @Test
    void aBandIsTautSomewhere() throws IOException {
        for (int i = 0; i < 8; i++) {
            double free = between(62, 300);
            double taut = between(20, 55);
            assertThat(band("free: " + number(free) + ", band: true"))
                    .as("free %s", free)
                    .isEqualTo(Nonsense.Verdict.DOUBTFUL);
            assertThat(band("free: " + number(taut) + ", band: true"))
                    .as("free %s", taut)
                    .isEqualTo(Nonsense.Verdict.PASSES);
            // A spring pushes as well.
            assertThat(band("free: " + number(free))).as("free %s", free).isEqualTo(Nonsense.Verdict.PASSES);
        }
    }

    private static Nonsense.Verdict band(String words) throws IOException {
        return Nonsense.ask(
                new SpringsAct(),
                () -> replaced(
                        "heron",
                        "heron/figure.yaml",
                        "pins:\n",
                        "springs:\n  pull: {from: {part: body, at: tail}, to: {part: leg-near, at: knee}, stiffness:"
                                + " 0.02, " + words + "}\npins:\n"));
    }

    @Test
    void aWeightIsInProportionToWhatItMoves() throws IOException {
        String[][] weights = {
            {"windmill", "figure.weights.rod-weight.mass", "20"},
            {"heron", "figure.weights.tail.mass", "28"},
            {"cobbler", "figure.weights.rack-weight.mass", "25"},
            {"lamplighter", "figure.weights.door-weight.mass", "4"},
        };
        for (String[] weight : weights) {
            double heavy = between(100, 400);
            double usual = Double.parseDouble(weight[2]) * between(0.3, 1.5);
            assertThat(Nonsense.ask(new WeightsHeavy(), () -> changed(weight[0], weight[1] + ": " + number(heavy))))
                    .as("%s %s g", weight[1], heavy)
                    .isEqualTo(Nonsense.Verdict.DOUBTFUL);
            assertThat(Nonsense.ask(new WeightsHeavy(), () -> changed(weight[0], weight[1] + ": " + number(usual))))
                    .as("%s %s g", weight[1], usual)
                    .isEqualTo(Nonsense.Verdict.PASSES);
        }
    }
}

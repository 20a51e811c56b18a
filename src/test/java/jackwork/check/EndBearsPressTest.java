package jackwork.check;

import static jackwork.check.Nonsense.changed;
import static jackwork.check.Nonsense.replaced;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The press that goes all the way down: by hand on the heron's box, on all demos, and where the stop is spoiled. */
@Tag("quick")
class EndBearsPressTest {

    private static final Question ASKED = new EndBearsPress();

    private static Finding ask(Subject subject) {
        List<Finding> findings = ASKED.ask(subject);
        assertThat(findings).hasSize(1);
        return findings.get(0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"heron", "windmill", "lamplighter", "cobbler"})
    void theDemosStandIt(String design) throws IOException {
        Finding finding = ask(changed(design, "box.name: Box"));
        assertThat(finding.status()).isEqualTo(Status.PASS);
        assertThat(finding.id()).isEqualTo("pressed-home");
        assertThat(finding.limit()).isGreaterThan(100);
    }

    /**
     * The rod stands 64.0 to the right and 23.5 beneath the lever's pivot, 68.2 mm off; the lever lies on it 2 mm of rod nearer,
     * so square to its edge some 66 mm from the pivot, and the finger pushes at 78 cos 17° = 74.6: 1.13 N on the rod for one of
     * the finger. Its plates' middles are 30.4 mm apart and the lever comes to within 15 of one: on a skewer of 100 N/mm² no more
     * than 100 · π 3³ / 32 / (1.13 · 15 · 15.4 / 30.4) = 31 N where the force is at one place, a little more as it is spread.
     */
    @Test
    void aSkewerBends() throws IOException {
        Finding finding = ask(changed("heron", "box.pins.lever-end.rod: bamboo-3"));
        assertThat(finding.status()).isEqualTo(Status.FAIL);
        assertThat(finding.formula()).endsWith("on its stop 1.13 N");
        assertThat(finding.limit()).isBetween(31.0, 38.0);
        assertThat(finding.why().toString())
                .contains("pressed all the way down the rod of lever-end bends first")
                .contains("where people press with 60.0 N at the most");
        assertThat(finding.remedy().toString()).contains("Take steel-4 for lever-end");
    }

    @Test
    void theNearerTheFingerTheMoreItBears() throws IOException {
        Finding near = ask(
                replaced("heron", "boxes/marsh-box/box.svg", "cx=\"154\" cy=\"61.5\"", "cx=\"154.5\" cy=\"61.66\""));
        assertThat(near.limit())
                .isGreaterThan(ask(changed("heron", "box.name: Box")).limit());
    }

    @ParameterizedTest
    @CsvSource({"10,PASSES", "400,FAILS"})
    void itRestsOnWhoPresses(String force, Nonsense.Verdict expected) throws IOException {
        assertThat(Nonsense.ask(ASKED, () -> Nonsense.pressed("heron", force))).isEqualTo(expected);
    }

    /** Without that rod the kicker comes to the one that the bucket tips to, near to the pivot: five times the finger's force. */
    @Test
    void whateverEndsItIsAsked() throws IOException {
        Finding finding = ask(replaced(
                "heron",
                "boxes/marsh-box/box.yaml",
                "  lever-end:       {parts: [back, front], rod: steel-4, stops: {part: lever, when: pressed}}\n",
                ""));
        assertThat(finding.status()).isEqualTo(Status.FAIL);
        assertThat(finding.why().toString()).contains("the rod of bucket-end bends first, at 7");
    }
}

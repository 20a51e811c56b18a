package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Nonsense.changed;
import static jackwork.check.Nonsense.number;
import static jackwork.check.Nonsense.replaced;
import static jackwork.check.Sentence.say;
import static org.assertj.core.api.Assertions.assertThat;

import jackwork.parts.RodRun;
import java.io.IOException;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What is told of a failure is so. */
class TrueSentencesTest {

    private static final String HIP = "leg-far, body], rod: bamboo-3}";

    private final Random random = new Random(53);

    private static Subject shoulder(double diameter) throws IOException {
        return replaced("heron", "heron/figure.yaml", HIP, HIP.replace("}", ", shoulder: " + number(diameter) + "}"));
    }

    /** A sleeve is as long as what turns on it: it meets what is beside the body, and not the rods in front of it. */
    @Test
    void aShoulderIsToldAsOneAndIsNoLongerThanItsRunner() throws IOException {
        Subject subject = shoulder(40);
        RodRun sleeve = subject.rods().stream()
                .filter(rod -> rod.kind() == RodRun.Kind.SHOULDER)
                .findFirst()
                .orElseThrow();
        assertThat(sleeve.parts()).containsExactly("body");
        assertThat(sleeve.from()).isEqualTo(3);
        assertThat(sleeve.to()).isEqualTo(3);
        Finding apart = new RodsApart().ask(subject).get(0);
        assertThat(apart.status()).isEqualTo(Status.FAIL);
        assertThat(apart.why().toString())
                .contains("the shoulder of hip, 40.0 mm thick", "the rod of crank, 3.00 mm thick", "16.0 mm apart");
        assertThat(new RodsPass().ask(subject).get(0).status()).isEqualTo(Status.PASS);
        for (int i = 0; i < 6; i++) {
            // crank's axis is 16.03 mm from the hip's.
            double diameter = 5 + 35 * random.nextDouble();
            Finding finding = new RodsApart().ask(shoulder(diameter)).get(0);
            assertThat(finding.status())
                    .as("shoulder %s", diameter)
                    .isEqualTo(diameter / 2 + 1.5 < 16.03 ? Status.PASS : Status.FAIL);
        }
    }

    /** Whoever reads that something fails sees by how much. */
    @Test
    void whatFailsByLittleIsToldWithItsDecimals() throws IOException {
        for (int i = 0; i < 8; i++) {
            double little = Math.pow(10, -3.4 - 3 * random.nextDouble());
            double running = 0.05 - little;
            Finding finding = new RodsTurn()
                    .ask(replaced(
                            "heron",
                            "workshop.yaml",
                            "running: {value: 0.20, low: 0.10, high: 0.30",
                            "running: {value: " + String.format(java.util.Locale.ROOT, "%.8f", running)
                                    + ", low: 0.01, high: 0.10"))
                    .get(0);
            assertThat(finding.status()).isEqualTo(Status.FAIL);
            assertThat(finding.why().toString()).as("%s", running).doesNotContain(" 0.050 mm");
            assertThat(finding.formula()).contains("more exactly 0.04", "against 0.0500");
        }
    }

    @Test
    void numbersThatDifferReadDifferently() {
        Sentence alike = say("{} where {} is the limit", mm(0.15004), mm(0.15));
        assertThat(alike.toString()).isEqualTo("0.150 mm where 0.150 mm is the limit");
        assertThat(alike.tellingApart(0.15004, 0.15).toString()).isEqualTo("0.15004 mm where 0.15000 mm is the limit");
        assertThat(alike.tellingApart(0.15, 0.15)).isEqualTo(alike);
        assertThat(say("{}", mm(2)).tellingApart(2, 3)).isEqualTo(say("{}", mm(2)));
    }

    /** Without a seat nothing is computed, and it is said why, not of how many N·mm. */
    @Test
    void whatIsNotComputedIsNotToldAsANumber() throws IOException {
        for (int i = 0; i < 5; i++) {
            double low = 12 + 7 * random.nextDouble();
            Subject subject = changed("heron", "box.coin-works.bucket.lip: [46, " + number(low) + "]");
            for (Question question : List.of(new CoinTrips(), new CoinLands())) {
                for (Finding finding : question.ask(subject)) {
                    if (finding.status() == Status.FAIL) {
                        assertThat(finding.why().toString())
                                .doesNotContain("NaN", "not computed N·mm", "not computed mm")
                                .contains("cannot be told");
                    }
                }
            }
        }
    }
}

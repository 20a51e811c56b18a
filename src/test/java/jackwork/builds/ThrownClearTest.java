package jackwork.builds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.DemoCopy;
import jackwork.check.Finding;
import jackwork.check.Status;
import jackwork.check.Subject;
import jackwork.design.DesignReader;
import jackwork.geometry.Point;
import jackwork.motion.coin.CoinCycle;
import jackwork.motion.coin.CycleResult;
import jackwork.motion.coin.CycleRig;
import jackwork.motion.coin.CycleStage;
import jackwork.motion.time.Press;
import jackwork.parts.Assembly;
import jackwork.stock.Coin;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The slowest press that throws a coin, against whole cycles of presses one after the other. */
class ThrownClearTest {

    @TempDir
    private Path folder;

    private Path hut;

    @BeforeEach
    void copy() throws IOException {
        hut = DemoCopy.at(folder.resolve("hut"));
    }

    private Subject heron(String coin, String change) throws IOException {
        return Subject.asNumbered(DesignReader.read(DemoCopy.heron(hut, coin, change)));
    }

    private static Finding asked(Subject subject) {
        List<Finding> found = ThrownClear.ask(subject);
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    /** Kicker drawn back by all its play, lip by all of its: the heron's kicker comes from the right. */
    private static boolean isThrown(Subject subject, double speed) {
        Assembly assembly = subject.assembly();
        Build build = new Build(assembly);
        build.leverSide = 1;
        build.bucketSide = -1;
        build.settle();
        CycleRig rig = CycleRig.of(
                build.assembly,
                new CycleRig.Circumstances(
                        0,
                        0,
                        new Point(assembly.leverBearing().play(), 0),
                        new Point(-assembly.bucketBearing().play(), 0),
                        Map.of(),
                        build.stopRebound,
                        1));
        Coin coin = subject.coins().get(0);
        CycleResult result =
                CoinCycle.run(rig, BuildTrial.drop(build, coin), new Press(build.pressForce, speed), CoinCycle.NOBODY);
        assertThat(result.computed()).isTrue();
        return result.times().containsKey(CycleStage.THROWN);
    }

    /** Throws, coins and kickers at random: what is told as the slowest does, and a tenth slower does not. */
    @Test
    void wholeCyclesSayTheSame() throws IOException {
        SplittableRandom random = new SplittableRandom(21);
        String[] coins = {"EUR-0.20", "EUR-0.50", "EUR-1", "EUR-2"};
        int told = 0;
        for (int i = 0; i < 10; i++) {
            double turn = Math.rint(100 * random.nextDouble(7.5, 13)) / 100;
            Subject subject = heron(coins[random.nextInt(4)], "box.lever.throw: " + turn);
            Finding finding = asked(subject);
            if (finding.status() == Status.FAIL && finding.value() != null) {
                double slowest = finding.value();
                assertThat(isThrown(subject, slowest)).as("%s", finding.why()).isTrue();
                assertThat(isThrown(subject, slowest / 1.1))
                        .as("%s", finding.why())
                        .isFalse();
                assertThat(finding.margin()).isCloseTo(60 - slowest, within(1e-9));
                told++;
            } else if (finding.value() == null) {
                assertThat(isThrown(subject, 300)).as("%s", finding.why()).isFalse();
            } else {
                // Less is against it then: it throws as numbered whatever it throws with all against it.
                assertThat(isThrown(subject, 60)).as("%s", finding.why()).isTrue();
            }
        }
        assertThat(told).isGreaterThan(2);
    }

    /** Room in the holes is room that the kicker lacks. */
    @Test
    void moreRoomInTheHolesWantsAQuickerPress() throws IOException {
        Path workshop = hut.resolve("workshop.yaml");
        String yaml = Files.readString(workshop);
        double before = 0;
        for (String fit : List.of("0.10", "0.25", "0.40", "0.55")) {
            double half = Double.parseDouble(fit) / 4;
            Files.writeString(
                    workshop,
                    yaml.replace(
                            "running: {value: 0.20, low: 0.10, high: 0.30",
                            "running: {value: %s, low: %.3f, high: %.3f".formatted(fit, 3 * half, 5 * half)));
            Finding finding = asked(heron("EUR-1", "box.lever.throw: 9"));
            assertThat(finding.value()).as("%s", finding.why()).isGreaterThanOrEqualTo(before);
            before = finding.value();
        }
        assertThat(before).isGreaterThan(60);
    }

    /** A post that stands where the coin comes down over the lip keeps it in, whatever the press. */
    @Test
    void aPostInTheWayOutKeepsItIn() throws IOException {
        assertThat(asked(heron("EUR-1", "box.lever.throw: 14")).status()).isEqualTo(Status.PASS);
        Path box = hut.resolve("boxes/marsh-box/box.yaml");
        Files.writeString(
                box,
                Files.readString(box)
                        .replace("\nweights:", "  in-the-way: {parts: [back, front], rod: bamboo-3}\n\nweights:"));
        Path drawing = hut.resolve("boxes/marsh-box/box.svg");
        String svg = Files.readString(drawing);
        Files.writeString(
                drawing,
                svg.replace(
                        "<circle id=\"origin\"",
                        "<circle id=\"in-the-way\" cx=\"48\" cy=\"87\" r=\"1.5\"/>\n    <circle id=\"origin\""));
        Finding finding = asked(heron("EUR-1", "box.lever.throw: 14"));
        assertThat(finding.status()).as("%s", finding.why()).isEqualTo(Status.FAIL);
    }

    /** What never frees the lever is not thrown either, and that is said. */
    @Test
    void whatComesBeforeIsNamed() throws IOException {
        Finding finding = asked(heron("EUR-0.20", "box.weights.counterweight.count: 5"));
        assertThat(finding.status()).isEqualTo(Status.FAIL);
        assertThat(finding.value()).isNull();
        assertThat(finding.why().toString()).contains(Cause.FREES.words());
        assertThat(finding.remedy().toString()).contains("what happens before");
    }
}

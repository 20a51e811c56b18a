package jackwork.builds;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.DemoCopy;
import jackwork.check.Finding;
import jackwork.check.Status;
import jackwork.check.Subject;
import jackwork.design.DesignReader;
import jackwork.motion.coin.CycleResult;
import jackwork.motion.coin.CycleStage;
import jackwork.motion.time.Shake;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What visitors do besides dropping one coin and pressing. */
class MishapsTest {

    @TempDir
    private Path folder;

    private static final Subject HERON = Subject.of(DesignReader.read(Path.of("demo/heron")));

    private static Map<String, Finding> ask(Subject subject) {
        List<Finding> findings = Mishaps.ask(subject.assembly(), subject.coins());
        return findings.stream().collect(Collectors.toMap(Finding::id, Function.identity()));
    }

    private static Visitor visitor() {
        return new Visitor(HERON.assembly(), HERON.coins());
    }

    @Test
    void theHeronTakesTwoCoinsAndAShoveAndAJiggle() {
        Map<String, Finding> found = ask(HERON);
        for (String id : List.of(
                "shove", "jiggle", "two-coins/EUR-0.20", "two-coins/EUR-0.50", "two-coins/EUR-1", "two-coins/EUR-2")) {
            assertThat(found.get(id).status()).as(id).isEqualTo(Status.PASS);
        }
        assertThat(found.get("other/a-washer-M12").why()).contains("like a coin");
        // Too light to tip the bucket: one lies in the next coin's way, the other goes with it.
        assertThat(found.get("other/a-washer-M8").status()).isEqualTo(Status.DOUBTFUL);
        assertThat(found.get("other/a-trouser-button").why()).contains("both are thrown");
    }

    /** Nothing but two coins on top of each other: the cobbler's kicker leaves one of two euros in. */
    @Test
    void theCobblerKeepsOneOfTwo() {
        Subject cobbler = Subject.of(DesignReader.read(Path.of("demo/cobbler")));
        Visitor visitor = new Visitor(cobbler.assembly(), cobbler.coins());
        List<Finding> found = new TwoCoins().ask(visitor);
        assertThat(found)
                .anyMatch(finding -> finding.status() == Status.DOUBTFUL
                        && finding.why().toString().contains("stays"));
    }

    /** The force under which a coin no longer frees the lever lies between nothing and a comfortable press. */
    @Test
    void aFingerThatPressesTooSoonHoldsTheStrut() {
        Visitor visitor = visitor();
        var coin = visitor.drop(visitor.lightest());
        assertThat(visitor.leans(0, coin).times()).containsKey(CycleStage.FREES);
        assertThat(visitor.leans(6, coin).times()).doesNotContainKey(CycleStage.FREES);
        Finding found = new LeansFirst().ask(visitor).get(0);
        assertThat(found.value()).isNotNull();
        assertThat(visitor.leans(found.value() * 0.98, coin).times()).containsKey(CycleStage.FREES);
    }

    /**
     * With a counterweight just heavy enough, and jiggled three times as hard as anybody would, it lets a press through
     * that comes at the far end of the way: the question can be answered with no.
     */
    @Test
    void aBoxShakenHardEnoughGivesWay() throws IOException {
        Path hut = DemoCopy.with(folder.resolve("hut"), "heron");
        Path box = hut.resolve("boxes/marsh-box/box.yaml");
        Files.writeString(
                box,
                Files.readString(box)
                        .replace("{on: bucket-core, what: nut-m6, count: 2}", "{on: bucket-core, mass: 1.75}"));
        Subject light = Subject.of(DesignReader.read(hut.resolve("heron")));
        Visitor visitor = new Visitor(light.assembly(), light.coins());
        assertThat(Visitor.isRefused(visitor.shakes(new Shake(1, 1, 0.75)))).isTrue();
        CycleResult shaken = visitor.shakes(new Shake(10_000, 1, 0.75));
        assertThat(shaken.computed()).isTrue();
        assertThat(Visitor.isRefused(shaken)).isFalse();
    }

    /** A box that only stands while it is shaken exchanges no energy but rounding: that is computed as well. */
    @ParameterizedTest
    @ValueSource(strings = {"heron", "lamplighter", "cobbler"})
    void whatStandsWhileItIsJiggledIsComputed(String design) {
        Subject subject = Subject.of(DesignReader.read(Path.of("demo", design)));
        Visitor standing = new Visitor(subject.assembly(), subject.coins());
        for (double acceleration : new double[] {500, 3000, 15_000}) {
            assertThat(standing.shakes(new Shake(acceleration, 3, 0)).computed())
                    .as("%s at %s mm/s²", design, acceleration)
                    .isTrue();
        }
    }
}

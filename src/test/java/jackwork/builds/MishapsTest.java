package jackwork.builds;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.check.Finding;
import jackwork.check.Status;
import jackwork.check.Subject;
import jackwork.design.DesignReader;
import jackwork.motion.coin.CycleStage;
import jackwork.motion.time.Shake;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What visitors do besides dropping one coin and pressing. */
class MishapsTest {

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
        // Too light to tip the bucket, and in the next coin's way.
        assertThat(found.get("other/a-trouser-button").status()).isEqualTo(Status.DOUBTFUL);
    }

    /** Nothing but two coins on top of each other: the windmill's kicker leaves one of two euros in. */
    @Test
    void theWindmillKeepsOneOfTwo() {
        Subject windmill = Subject.of(DesignReader.read(Path.of("demo/windmill")));
        Visitor visitor = new Visitor(windmill.assembly(), windmill.coins());
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

    /** Jiggled ten times as hard as anybody would, it lets a press through: the question can be answered with no. */
    @Test
    void aBoxShakenHardEnoughGivesWay() {
        assertThat(Visitor.isRefused(visitor().shakes(new Shake(30_000, 3)))).isFalse();
    }
}

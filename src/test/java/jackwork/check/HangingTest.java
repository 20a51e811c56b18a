package jackwork.check;

import static jackwork.check.Sentence.say;
import static org.assertj.core.api.Assertions.assertThat;

import jackwork.stock.Basis;
import jackwork.stock.Uncertain;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What a verdict hangs on, on findings with round numbers. */
@Tag("quick")
class HangingTest {

    private static Ground ground(String name, Basis basis, double drop, double gain) {
        return new Ground(name, new Uncertain(1, 0, 2, "1", basis, ""), drop, gain);
    }

    private static Finding finding(String question, Status status, double margin, Ground... grounds) {
        return Finding.ask(Topic.HEAP, question, say(question))
                .answer(status, 0.0, 0.0, margin, "mm")
                .at(new Where(null, null, null))
                .because(Sentence.NOTHING, Sentence.NOTHING, "", List.of(grounds), null);
    }

    /** Nobody tried what a guess does to it: that none could save it were made up. */
    @Test
    void whatIsAnsweredInTimeIsNotSaidToBeBeyondSaving() {
        Finding thrown = Finding.ask(Topic.COIN_THROWN_CLEAR, "EUR-1", say("Thrown?"))
                .answer(Status.FAIL, 63.0, 60.0, -3.0, "mm/s")
                .at(new Where(null, null, null))
                .because(Sentence.NOTHING, Sentence.NOTHING, "");
        assertThat(Hanging.of(List.of(thrown)).words())
                .contains("not known", "Thrown?")
                .doesNotContain("No guess");
        assertThat(Hanging.of(List.of(finding("Wide?", Status.FAIL, -1))).words())
                .isEqualTo("No guess can save it.");
    }

    @Test
    void whatPassesOverItsWholeSpreadNoGuessTurns() {
        Hanging hanging = Hanging.of(List.of(
                finding("Wide?", Status.PASS, 10, ground("kerf", Basis.GUESS, 1, 1)),
                finding("Tight?", Status.PASS, 2, ground("friction of bamboo on wood", Basis.GUESS, 1, 1))));
        assertThat(hanging.worst()).isEqualTo(Status.PASS);
        assertThat(hanging.best()).isEqualTo(Status.PASS);
        assertThat(hanging.measureFirst()).isEmpty();
        assertThat(hanging.words()).contains("nearest comes the friction of bamboo on wood", "50 %", "Tight?");
    }

    /** Squares 9 and 16 of 25; margin 4 less 5 is lost, so it works or fails as the two turn out. */
    @Test
    void aDoubtIsSharedAmongItsGuesses() {
        Hanging hanging = Hanging.of(List.of(finding(
                "Tight?",
                Status.DOUBTFUL,
                4,
                ground("friction of coin on wood", Basis.GUESS, 4, 0),
                ground("kerf", Basis.GUESS, 3, 0))));
        assertThat(hanging.worst()).isEqualTo(Status.FAIL);
        assertThat(hanging.best()).isEqualTo(Status.PASS);
        assertThat(hanging.guesses()).extracting(Hanging.Guess::share).containsExactly(16 / 25.0, 9 / 25.0);
        assertThat(hanging.measureFirst()).startsWith("Measure the friction of coin on wood first: lay one on");
    }

    /** Pressed all the way, and not a hair further: nothing that is guessed moves that. */
    @Test
    void aMarginOfNothingIsNoDoubt() {
        Hanging hanging = Hanging.of(List.of(
                finding("All the way?", Status.PASS, 0),
                finding("Wide?", Status.PASS, 10, ground("kerf", Basis.GUESS, 1, 1))));
        assertThat(hanging.worst()).isEqualTo(Status.PASS);
        assertThat(hanging.words()).contains("nearest comes the kerf");
    }

    @Test
    void whatWasMeasuredIsNoGuess() {
        Hanging hanging =
                Hanging.of(List.of(finding("Tight?", Status.DOUBTFUL, 4, ground("thickness", Basis.MEASURED, 5, 0))));
        assertThat(hanging.worst()).isEqualTo(Status.DOUBTFUL);
        assertThat(hanging.best()).isEqualTo(Status.DOUBTFUL);
        assertThat(hanging.guesses()).isEmpty();
    }

    @Test
    void aFailureMayStillBeSaved() {
        Finding saved = finding("Near?", Status.FAIL, -1, ground("kerf", Basis.GUESS, 2, 2));
        Finding lost = finding("Far?", Status.FAIL, -9, ground("kerf", Basis.GUESS, 2, 2));
        assertThat(Hanging.of(List.of(saved)).best()).isEqualTo(Status.PASS);
        assertThat(Hanging.of(List.of(saved)).worst()).isEqualTo(Status.FAIL);
        Hanging both = Hanging.of(List.of(saved, lost));
        assertThat(both.best()).isEqualTo(Status.FAIL);
        assertThat(both.words()).startsWith("No guess can save it");
        Hanging unknown = Hanging.of(List.of(Finding.ask(Topic.HEAP, say("x"))
                .answer(Status.FAIL, null, null, null, "")
                .at(Where.nowhere())
                .because(Sentence.NOTHING, Sentence.NOTHING, "")));
        assertThat(unknown.best()).isEqualTo(Status.FAIL);
    }
}

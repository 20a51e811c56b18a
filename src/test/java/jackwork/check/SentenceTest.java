package jackwork.check;

import static jackwork.check.Measure.degrees;
import static jackwork.check.Measure.mm;
import static jackwork.check.Measure.newtons;
import static jackwork.check.Measure.stroke;
import static jackwork.check.Sentence.say;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Sentences that keep their numbers. */
@Tag("quick")
class SentenceTest {

    @Test
    void numbersAreWordedWithNoMoreFiguresThanAMakerUses() {
        assertThat(mm(123.456).words()).isEqualTo("123 mm");
        assertThat(mm(12.3456).words()).isEqualTo("12.3 mm");
        assertThat(mm(-1.23456).words()).isEqualTo("-1.23 mm");
        assertThat(mm(-0.0001).words()).isEqualTo("0.000 mm");
        assertThat(newtons(Double.NaN).words()).isEqualTo("a force that is not computed");
        assertThat(degrees(30).words()).isEqualTo("30.0°");
        assertThat(Measure.of(0.25, "1").words()).isEqualTo("0.250");
        assertThat(mm(7.125).to(1).words()).isEqualTo("7.1 mm");
        assertThat(mm(7.125).bare().words()).isEqualTo("7.13");
    }

    /** From the number itself: 0.31 mm are 0.0122 in, and 0.0122 in said as 0.012 in come from no other rounding. */
    @Test
    void inchesComeFromTheNumberNotFromItsWords() {
        assertThat(mm(25.4).inches()).isEqualTo("1 in");
        assertThat(mm(12.749).inches()).isEqualTo("0.502 in"); // 12.7 mm, as it is said, would be 0.5 in
        assertThat(mm(254).inches()).isEqualTo("10 in");
        assertThat(mm(0.012).inches()).isEqualTo("0.0005 in"); // not nothing
        assertThat(mm(Double.NaN).inches()).isEqualTo("a length that is not computed");
        assertThat(newtons(2).inches()).isEqualTo("2.00 N");
        assertThat(mm(25.4).bare().inches()).isEqualTo("1");
    }

    @Test
    void aSentenceIsItsWordsAndKeepsItsNumbers() {
        Sentence moves = say("{} moves {} by {}", "beak", mm(25.4), stroke(0.5));
        assertThat(moves).hasToString("beak moves 25.4 mm by " + stroke(0.5).words());
        assertThat(moves.inches()).isEqualTo("beak moves 1 in by " + stroke(0.5).words());
        assertThat(moves.pieces()).extracting(Sentence.Said::value).containsExactly(null, 25.4, null, 50.0);
        assertThat(moves.pieces()).extracting(Sentence.Said::unit).containsExactly(null, "mm", null, "% of the stroke");
        assertThat(say("{}; {}", moves, "so")).hasToString(moves + "; so");
        assertThat(Sentence.NOTHING).isEmpty();
    }

    /** A name may look like anything: it is told as it stands. */
    @Test
    void namesAreNoPlaces() {
        assertThat(say("{} pulls {}", "a {} b", newtons(1))).hasToString("a {} b pulls 1.00 N");
        assertThat(Sentence.plain("12 mm {}").inches()).isEqualTo("12 mm {}");
    }

    @Test
    void moreOrLessToldThanThereArePlacesIsOurMistake() {
        assertThatThrownBy(() -> say("{} and {}", "one")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> say("{}", "one", "two")).isInstanceOf(IllegalArgumentException.class);
    }
}

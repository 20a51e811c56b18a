package jackwork.check;

import static jackwork.check.Sentence.say;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One question's answer.
 *
 * @param topic what it is about
 * @param about which coin, gesture or string; empty when there is one such finding
 * @param value what was found, null when it could not be computed
 * @param limit what it is held against
 * @param margin how far it is on the good side, positive passes
 * @param unit of the three
 * @param why one sentence
 * @param remedy one sentence; empty when nothing needs doing
 * @param formula with this design's numbers in it, in the units of the files
 * @param restsOn what moves it, most first
 * @param margins the margin at both ends of all that moves it; null when nothing does
 */
public record Finding(
        Topic topic,
        String about,
        Sentence question,
        Status status,
        @Nullable Double value,
        @Nullable Double limit,
        @Nullable Double margin,
        String unit,
        Where where,
        Sentence why,
        Sentence remedy,
        String formula,
        List<Ground> restsOn,
        @Nullable Margins margins) {

    private static final String MORE_EXACTLY = "; more exactly ";

    /** Nobody reads that 0.050 is less than 0.050: what fails by little is told with the decimals that show it. */
    public Finding {
        boolean told = formula.contains(MORE_EXACTLY);
        if (!told && status != Status.PASS && value != null && limit != null && readAlike(value, limit)) {
            why = why.tellingApart(value, limit);
            int decimals = Measure.decimalsApart(value, limit);
            formula += MORE_EXACTLY + new Measure(value, "1", decimals, false).words() + " against "
                    + new Measure(limit, "1", decimals, false).words();
        }
    }

    private static boolean readAlike(double value, double limit) {
        return Words.number(value).equals(Words.number(limit))
                && Measure.decimalsApart(value, limit) > Measure.decimals(value);
    }

    /** Begins a finding, of which there is one. */
    public static Asked ask(Topic topic, Sentence question) {
        return ask(topic, "", question);
    }

    /** Begins a finding of which there are more than one: this one is about a coin, a gesture, a string. */
    public static Asked ask(Topic topic, String about, Sentence question) {
        return new Asked(topic, about, question);
    }

    /** A question that is not answered yet. */
    public record Asked(Topic topic, String about, Sentence question) {

        /** @param unit of the three numbers; they are null where nothing could be computed */
        public Answered answer(
                Status status, @Nullable Double value, @Nullable Double limit, @Nullable Double margin, String unit) {
            return new Answered(this, status, value, limit, margin, unit);
        }
    }

    /** An answer of which it is not said yet where. */
    public record Answered(
            Asked asked,
            Status status,
            @Nullable Double value,
            @Nullable Double limit,
            @Nullable Double margin,
            String unit) {

        public Placed at(Where where) {
            return new Placed(this, where);
        }
    }

    /** An answer with its place, of which it is not said yet why. */
    public record Placed(Answered answered, Where where) {

        /** A finding that no doubtful number moves. */
        public Finding because(Sentence why, Sentence remedy, String formula) {
            return because(why, remedy, formula, List.of(), null);
        }

        /** A finding with what its numbers' spread does to it. */
        public Finding because(Sentence why, Sentence remedy, String formula, Spread spread) {
            return because(why, remedy, formula + spread.reserves(), spread.grounds(), spread.margins());
        }

        public Finding because(
                Sentence why, Sentence remedy, String formula, List<Ground> restsOn, @Nullable Margins margins) {
            Asked asked = answered.asked;
            return new Finding(
                    asked.topic,
                    asked.about,
                    asked.question,
                    answered.status,
                    answered.value,
                    answered.limit,
                    answered.margin,
                    answered.unit,
                    where,
                    why,
                    remedy,
                    formula,
                    restsOn,
                    margins);
        }
    }

    /** Stable name; per coin {@code coin-trips/EUR-1}. */
    public String id() {
        return topic.id(about);
    }

    Finding withRemedy(String more) {
        return new Finding(
                topic,
                about,
                question,
                status,
                value,
                limit,
                margin,
                unit,
                where,
                why,
                say("{}{}", remedy, more),
                formula,
                restsOn,
                margins);
    }
}

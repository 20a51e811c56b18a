package jackwork.app.bench;

import jackwork.app.core.TimedWork;
import jackwork.app.wire.Payload;
import jackwork.app.wire.Report;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The bench log as the page shows it; times are UTC, ISO 8601, money is decimal text.
 *
 * @param state another word once anything was logged ({@link BenchPulse})
 * @param design that revisions and entries are of; empty for all
 * @param since what of that design stands otherwise than in its last revision; null for all, or where it cannot be read
 * @param timed work on that design; none for all
 * @param older entries that are not among these
 */
record BenchView(
        String state,
        String currency,
        String design,
        List<KnownDesign> designs,
        List<Frozen> revisions,
        List<TimedWork> timed,
        @Nullable Since since,
        List<MadePiece> pieces,
        List<MoneySum> takings,
        List<MoneySum> sales,
        List<MeasuredThing> measured,
        List<LoggedEntry> entries,
        int older,
        BenchChoices choices)
        implements Payload {

    /** @param frozen number of its last revision; 0 when it has none */
    record KnownDesign(String id, String title, int frozen, boolean there) {}

    /**
     * A revision with what is known of it.
     *
     * @param coins that it takes
     */
    record Frozen(
            String design,
            int number,
            String title,
            String at,
            String note,
            List<String> coins,
            ScoreView all,
            List<CoinScore> scores,
            @Nullable Predicted prediction) {}

    /**
     * @param rate null before the first try
     * @param cleanCoinsNeeded until the wish is shown, if none fails
     */
    record ScoreView(
            int tries,
            int passes,
            @Nullable Double rate,
            Report.Interval interval95,
            List<CauseTries> failures,
            int cleanCoinsNeeded) {}

    /** @param predicted builds that fail so, of the prediction's; null when there is none */
    record CauseTries(
            String cause, String words, int tries, @Nullable Integer predicted) {}

    /**
     * One coin's tries beside the builds.
     *
     * @param predicted builds that pass, of {@code builds}; null when there is no prediction
     * @param predicted95 where the builds' share lies, were they plain draws
     * @param gapWords what the chance of such a gap means
     */
    record CoinScore(
            String coin,
            ScoreView measured,
            @Nullable Integer predicted,
            int builds,
            Report.@Nullable Interval predicted95,
            @Nullable Double gapChance,
            String gapWords) {}

    record Predicted(String at, int builds, int passes, int numbersDrawn, int guesses, List<CauseTries> causes) {}

    /** @param changed line by line, in words */
    record Since(int number, List<String> changed) {}

    record MadePiece(
            String serial,
            String design,
            int revision,
            String batch,
            String where,
            String who,
            String since,
            int repairs,
            int spares,
            int returns,
            List<MoneySum> takings) {}

    record MoneySum(String amount, String currency) {}

    /** @param value null when there are too few readings; then {@code why} */
    record MeasuredThing(
            String name,
            String kind,
            String about,
            String place,
            int measurements,
            @Nullable ValueView value,
            String why) {}

    record ValueView(double value, double low, double high, String unit, String source) {}

    /** @param struck why it does not count; null when it does */
    record LoggedEntry(
            String kind,
            long number,
            String key,
            String at,
            String words,
            String note,
            @Nullable String struck) {}
}

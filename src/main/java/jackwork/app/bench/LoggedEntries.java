package jackwork.app.bench;

import jackwork.app.wire.Json;
import jackwork.bench.BenchLog;
import jackwork.bench.Happening;
import jackwork.bench.Kinds;
import jackwork.bench.LogKind;
import jackwork.bench.Logged;
import jackwork.bench.Measured;
import jackwork.bench.Money;
import jackwork.bench.Piece;
import jackwork.bench.Prediction;
import jackwork.bench.RevisionName;
import jackwork.bench.Stamp;
import jackwork.bench.Stamped;
import jackwork.bench.Taking;
import jackwork.bench.Timing;
import jackwork.bench.Trial;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Entries of all kinds in words, newest first.
 *
 * @param older how many are left out
 */
record LoggedEntries(List<BenchView.LoggedEntry> newest, int older) {

    private static final int MOST = 200;

    /** @param design those of its revisions and pieces, and what is of none; empty for all */
    static LoggedEntries of(BenchLog log, String design) {
        Map<String, String> pieces = new HashMap<>();
        log.list(Kinds.PIECES)
                .forEach(piece -> pieces.put(
                        piece.entry().serial(), piece.entry().revision().design()));
        Predicate<RevisionName> its = name -> design.isEmpty() || name.design().equals(design);
        Predicate<String> itsPiece = serial -> design.isEmpty() || design.equals(pieces.get(serial));
        List<BenchView.LoggedEntry> all = new ArrayList<>();
        add(all, log, Kinds.TRIALS, trial -> its.test(trial.revision()), LoggedEntries::words);
        add(all, log, Kinds.TIMINGS, timing -> its.test(timing.revision()), LoggedEntries::words);
        add(all, log, Kinds.MEASURED, measured -> true, LoggedEntries::words);
        add(all, log, Kinds.PIECES, piece -> its.test(piece.revision()), LoggedEntries::words);
        add(all, log, Kinds.HAPPENINGS, happening -> itsPiece.test(happening.serial()), LoggedEntries::words);
        add(all, log, Kinds.TAKINGS, taking -> itsPiece.test(taking.serial()), LoggedEntries::words);
        add(all, log, Kinds.PREDICTIONS, made -> its.test(made.revision()), LoggedEntries::words);
        all.sort(Comparator.comparing(BenchView.LoggedEntry::at)
                .thenComparing(BenchView.LoggedEntry::number)
                .reversed());
        List<BenchView.LoggedEntry> newest = List.copyOf(all.subList(0, Math.min(MOST, all.size())));
        return new LoggedEntries(newest, all.size() - newest.size());
    }

    private static <T extends Stamped> void add(
            List<BenchView.LoggedEntry> all,
            BenchLog log,
            LogKind<T> kind,
            Predicate<T> wanted,
            Function<T, String> words) {
        for (Logged<T> logged : log.list(kind)) {
            if (wanted.test(logged.entry())) {
                Stamp stamp = logged.entry().stamp();
                all.add(new BenchView.LoggedEntry(
                        kind.name(),
                        logged.number(),
                        stamp.key(),
                        stamp.at().toString(),
                        words.apply(logged.entry()),
                        stamp.note(),
                        logged.struck()));
            }
        }
    }

    private static String words(Trial trial) {
        String causes = trial.failures().entrySet().stream()
                .map(cause -> cause.getKey() + " " + cause.getValue())
                .collect(Collectors.joining(", "));
        return of(trial.revision()) + piece(trial.piece()) + ", " + trial.coin() + ": " + trial.passes() + " of "
                + trial.tries() + " passed" + (causes.isEmpty() ? "" : "; failed: " + causes);
    }

    private static String of(RevisionName name) {
        return name.design() + ", revision " + name.number();
    }

    private static String piece(@Nullable String serial) {
        return serial == null ? "" : ", piece " + serial;
    }

    private static String words(Timing timing) {
        return of(timing.revision()) + ": " + timing.operation() + ", " + plain(timing.minutes()) + " minutes for "
                + (timing.pieces() == 1 ? "a piece" : timing.pieces() + " pieces");
    }

    private static String words(Measured measured) {
        return measured.kind()
                + (measured.about().isEmpty() ? "" : " " + measured.about().replace(",", " on ")) + ": "
                + measured.readings().stream()
                        .map(reading -> reading.name() + " " + plain(reading.value()))
                        .collect(Collectors.joining(", "));
    }

    private static String words(Piece piece) {
        return "piece " + piece.serial() + " of " + of(piece.revision())
                + (piece.batch().isEmpty() ? "" : ", batch " + piece.batch());
    }

    private static String words(Happening happening) {
        Money money = happening.money();
        return "piece " + happening.serial() + ": " + happening.what().word()
                + (happening.who().isEmpty() ? "" : ", " + happening.who()) + (money == null ? "" : ", " + money);
    }

    private static String words(Taking taking) {
        return "piece " + taking.serial() + ": " + taking.money() + " taken out, counted by " + taking.countedBy()
                + " and " + taking.witnessedBy() + ", seal " + taking.seal();
    }

    private static String words(Prediction made) {
        return of(made.revision()) + ": " + made.passes() + " of " + made.builds() + " builds pass, seed "
                + made.seed();
    }

    private static String plain(double value) {
        return Json.array().add(value).get(0).asString().replaceFirst("\\.0$", "");
    }
}

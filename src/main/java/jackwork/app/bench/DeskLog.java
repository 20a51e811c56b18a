package jackwork.app.bench;

import jackwork.app.wire.BadRequestException;
import jackwork.bench.BenchLog;
import jackwork.bench.BucketForm;
import jackwork.bench.Kinds;
import jackwork.bench.LogKind;
import jackwork.bench.Measured;
import jackwork.bench.Stamp;
import jackwork.bench.Stamped;
import jackwork.bench.TypedEntry;
import jackwork.design.Design;
import jackwork.design.NearestWord;
import jackwork.design.WorkshopFile;
import jackwork.design.WorkshopReader;
import jackwork.parts.Assembler;
import jackwork.stock.Coins;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.Collection;
import java.util.Map;
import java.util.function.Function;

/**
 * Logs what the page sends: any kind of entry by its fields, and that one is struck. The same id again is the same entry
 * ({@link EntryAnswers}).
 */
final class DeskLog {

    /** A bucket's weights need its design to be worked out. */
    private static final String BUCKET = "bucket";

    private static final String STRIKE = "strike";

    private final Bench bench;
    private final Function<String, Design> designs;

    DeskLog(Bench bench, Function<String, Design> designs) {
        this.bench = bench;
        this.designs = designs;
    }

    EntryAnswers log(ForLogging request) {
        if (request.entries().size() > EntryAnswers.MOST) {
            throw new BadRequestException(
                    request.entries().size() + " entries at once, expected " + EntryAnswers.MOST + " at most");
        }
        if (request.entries().contains(null)
                || request.entries().stream().anyMatch(typed -> typed.fields().containsValue(null))) {
            throw new BadRequestException("read null, expected entries whose fields are texts");
        }
        return EntryAnswers.of(request.entries(), ForLogging.Typed::id, this::log);
    }

    private void log(ForLogging.Typed typed) {
        if (typed.kind().equals(STRIKE)) {
            strike(typed.fields());
            return;
        }
        Stamp stamp = new Stamp("page-" + typed.id(), at(typed.at()), typed.note());
        if (typed.kind().equals(BUCKET)) {
            EntryAnswers.once(bench.log(), Kinds.MEASURED, stamp, () -> bucket(stamp, typed.fields()));
            return;
        }
        LogKind<?> kind = Kinds.named(typed.kind())
                .filter(named -> named != Kinds.PREDICTIONS)
                .orElseThrow(() -> new IllegalArgumentException(
                        "read the kind \"" + typed.kind() + "\", expected one of " + String.join(", ", Kinds.names())));
        add(kind, stamp, typed.fields());
    }

    private <T extends Stamped> void add(LogKind<T> kind, Stamp stamp, Map<String, String> fields) {
        EntryAnswers.once(bench.log(), kind, stamp, () -> {
            check(kind, fields);
            return TypedEntry.of(kind, stamp, fields).entry();
        });
    }

    /** What a CSV file may say of other workshops, but nobody at this bench. */
    private void check(LogKind<?> kind, Map<String, String> fields) {
        if (kind == Kinds.TRIALS) {
            known("coin", fields.getOrDefault("coin", ""), Coins.catalogue().names());
        } else if (kind == Kinds.MEASURED) {
            checkMeasured(fields);
        }
    }

    private void checkMeasured(Map<String, String> fields) {
        WorkshopFile workshop = WorkshopReader.read(bench.workshop());
        String about = fields.getOrDefault("about", "");
        switch (fields.getOrDefault("kind", "")) {
            case "sheet" -> known("sheet", about, workshop.sheets().keySet());
            case "rod" -> known("rod", about, workshop.rods().keySet());
            default -> {
                // The others' forms look at it themselves.
            }
        }
    }

    private static void known(String what, String name, Collection<String> names) {
        if (!names.contains(name)) {
            throw new IllegalArgumentException("read the " + what + " \"" + name + "\", expected one that is known"
                    + NearestWord.hint(name, names));
        }
    }

    /** Something measured, as typed; not logged. */
    Measured measured(Stamp stamp, String kind, Map<String, String> fields) {
        if (kind.equals(BUCKET)) {
            return bucket(stamp, fields);
        }
        checkMeasured(fields);
        return TypedEntry.of(Kinds.MEASURED, stamp, fields).entry();
    }

    private Measured bucket(Stamp stamp, Map<String, String> fields) {
        return BucketForm.entry(
                stamp,
                Assembler.assemble(designs.apply(fields.getOrDefault("design", ""))),
                number(fields, "tips"),
                number(fields, "falls-back"),
                number(fields, "arm"),
                number(fields, "step"));
    }

    private static double number(Map<String, String> fields, String name) {
        String text = fields.getOrDefault(name, "").strip();
        if (!text.matches("-?\\d{1,9}(\\.\\d{1,9})?")) {
            throw new IllegalArgumentException(name + " reads \"" + text + "\", expected a number, as in 4.2");
        }
        return Double.parseDouble(text);
    }

    private void strike(Map<String, String> fields) {
        LogKind<?> kind = Kinds.named(fields.getOrDefault("of", ""))
                .orElseThrow(() -> new IllegalArgumentException("read the kind \"" + fields.getOrDefault("of", "")
                        + "\", expected one of " + String.join(", ", Kinds.names())));
        BenchLog log = bench.log();
        log.strike(kind, fields.getOrDefault("key", ""), fields.getOrDefault("why", ""));
    }

    private static Instant at(String text) {
        try {
            return Instant.parse(text);
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException(
                    "read the time \"" + text + "\", expected one as in 2026-03-01T09:30:00Z", e);
        }
    }
}

package jackwork.fuzz;

import jackwork.bench.Archive;
import jackwork.bench.BenchException;
import jackwork.bench.BenchLog;
import jackwork.bench.Kinds;
import jackwork.bench.RevisionName;
import jackwork.bench.Stamp;
import jackwork.bench.Trial;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A {@code workshop.db} that came with a workshop: all of it read, taken out as files, one more entry logged. Where the
 * input's first line is {@code # journal}, the rest is the journal beside a log that is whole, and {@code {outside}} in it
 * stands for a file outside.
 *
 * <p>Whatever it is: all that lies outside the workshop stays as it is, and one that cannot be read stays as well.
 */
public final class LogReading extends Reading {

    private static final LogReading READING = new LogReading();
    private static final Pattern NAMES = Pattern.compile("workshop\\.db|the log|revision");
    private static final byte[] JOURNAL = "# journal\n".getBytes(StandardCharsets.US_ASCII);
    /** Where a file of SQLite's has its user_version. */
    private static final int VERSION = 63;

    private final Path root = folder("log");
    /** As deep as names in it may lead up. */
    private final Path home = root.resolve("a/b/c/d");

    private final Path hut = home.resolve("hut");
    private final Path out = home.resolve("out");
    private final Path file = hut.resolve(BenchLog.FILE);
    private final byte[] whole;
    private final Map<Path, String> canary;

    private LogReading() {
        try {
            Files.createDirectories(hut);
            Files.writeString(root.resolve("letters"), "Dear Anna,\n");
            BenchLog log = BenchLog.in(hut);
            log.freeze(
                    "heron",
                    "Heron",
                    Instant.parse("2026-03-01T09:30:00Z"),
                    "",
                    new TreeMap<>(Map.of("a", new byte[9])));
            whole = Files.readAllBytes(file);
            canary = outside();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Asked by the fuzzer. */
    public static void fuzzerTestOneInput(byte[] input) {
        READING.once(input);
    }

    private Map<Path, String> outside() throws IOException {
        Map<Path, String> state = state(root);
        state.keySet().removeIf(each -> each.startsWith(hut) || each.startsWith(out));
        return state;
    }

    @Override
    protected void read(byte[] input) throws IOException {
        boolean journal =
                input.length >= JOURNAL.length && Arrays.equals(input, 0, JOURNAL.length, JOURNAL, 0, JOURNAL.length);
        Files.write(file, journal ? whole : input);
        if (journal) {
            String text = new String(input, JOURNAL.length, input.length - JOURNAL.length, StandardCharsets.ISO_8859_1)
                    .replace("{outside}", root.resolve("letters").toString());
            Files.write(hut.resolve(BenchLog.FILE + "-journal"), text.getBytes(StandardCharsets.ISO_8859_1));
        }
        BenchLog log = BenchLog.in(hut);
        try {
            try {
                Archive.write(log, out);
            } catch (BenchException e) {
                boolean older = input.length > VERSION && input[VERSION] != 2;
                if (!journal && !older && !Arrays.equals(Files.readAllBytes(file), input)) {
                    throw new AssertionError("a log that cannot be read was changed", e);
                }
                throw e;
            }
            log.add(
                    Kinds.TRIALS,
                    new Trial(
                            Stamp.of(Instant.parse("2026-03-01T09:30:00Z"), ""),
                            new RevisionName("heron", 1),
                            null,
                            "EUR-1",
                            1,
                            Map.of()));
            log.state();
        } finally {
            Map<Path, String> now = outside();
            delete(hut);
            Files.createDirectories(hut);
            if (Files.exists(out)) {
                delete(out);
            }
            if (!now.equals(canary)) {
                throw new AssertionError("something outside was changed: " + now + " instead of " + canary);
            }
        }
    }

    @Override
    protected @Nullable String complaint(Exception thrown) {
        return thrown instanceof BenchException ? thrown.getMessage() : null;
    }

    @Override
    protected Pattern names() {
        return NAMES;
    }
}

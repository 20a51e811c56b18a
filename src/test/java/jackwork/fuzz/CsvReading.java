package jackwork.fuzz;

import jackwork.bench.Archive;
import jackwork.bench.BenchException;
import jackwork.bench.BenchLog;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A table for the bench log. The input's first line names it, {@code trials} where it does not; the rest is the file. What
 * is taken over once must be there when the same file comes again; what is refused leaves the log as it was.
 */
public final class CsvReading extends Reading {

    private static final CsvReading READING = new CsvReading();
    private static final Pattern NAMES = Pattern.compile("\\.csv\\b");
    private static final List<String> TABLES =
            List.of("trials", "timings", "measured", "pieces", "takings", "happenings", "predictions");

    private final Path workshop = folder("csv");
    private final Path files = folder("csv-files");
    private final Path fresh = files.resolve("fresh.db");
    private final BenchLog log = BenchLog.in(workshop);

    private CsvReading() {
        log.freeze(
                "heron", "Heron", Instant.parse("2026-03-01T09:30:00Z"), "", new TreeMap<>(Map.of("a", new byte[9])));
        try {
            Path pieces = Files.writeString(
                    files.resolve("pieces.csv"),
                    "at,serial,design,revision,batch\n2026-03-01T09:30:00Z,H-1,heron,1,1\n");
            Archive.read(log, pieces);
            Files.copy(workshop.resolve(BenchLog.FILE), fresh);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Asked by the fuzzer. */
    public static void fuzzerTestOneInput(byte[] input) {
        READING.once(input);
    }

    @Override
    protected void read(byte[] input) throws IOException {
        int end = 0;
        while (end < input.length && input[end] != '\n') {
            end++;
        }
        String said = new String(input, 0, Math.min(end, 20), StandardCharsets.ISO_8859_1).strip();
        boolean told = TABLES.contains(said);
        Path file = files.resolve((told ? said : TABLES.get(0)) + ".csv");
        Files.write(file, told ? Arrays.copyOfRange(input, Math.min(end + 1, input.length), input.length) : input);
        Map<Path, String> before = state(workshop);
        boolean taken = false;
        try {
            Archive.Taken first = Archive.read(log, file);
            taken = first.added() > 0;
            Archive.Taken again = Archive.read(log, file);
            if (again.added() != 0) {
                throw new AssertionError("the same file was logged twice: " + first + " then " + again);
            }
        } finally {
            if (taken) {
                Files.copy(fresh, workshop.resolve(BenchLog.FILE), StandardCopyOption.REPLACE_EXISTING);
            } else {
                requireUntouched(before, workshop);
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

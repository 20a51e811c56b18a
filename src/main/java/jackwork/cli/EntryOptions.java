package jackwork.cli;

import jackwork.bench.Stamp;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What every entry of the log may say besides. */
final class EntryOptions {

    @Option(names = "--note", paramLabel = "TEXT", description = "in your own words")
    private String note = "";

    @Option(
            names = "--on",
            paramLabel = "DAY",
            description = "when it happened, 2026-03-01 or 2026-03-01T09:30:00Z; now when absent")
    private @Nullable String on;

    Stamp stamp() {
        return BadInputException.unless(() -> Stamp.of(at(), note));
    }

    Instant at() {
        return on == null ? Instant.now() : instant("--on", on);
    }

    static Instant instant(String option, String text) {
        try {
            return text.matches("\\d{4}-\\d{2}-\\d{2}")
                    ? LocalDate.parse(text).atStartOfDay(ZoneOffset.UTC).toInstant()
                    : Instant.parse(text);
        } catch (DateTimeParseException e) {
            throw new BadInputException(option + " reads \"" + text
                    + "\", expected a day or a time as in 2026-03-01 or 2026-03-01T09:30:00Z");
        }
    }
}

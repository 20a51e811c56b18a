package jackwork.cli;

import jackwork.bench.Score;
import jackwork.stock.Uncertain;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** The bench's numbers in words. */
final class BenchWords {

    private BenchWords() {}

    static String score(Score score) {
        if (score.tries() == 0) {
            return "no tries yet";
        }
        String failures = score.failures().isEmpty()
                ? ""
                : "; failed: "
                        + score.failures().entrySet().stream()
                                .map((Map.Entry<String, Integer> entry) -> entry.getKey() + " " + entry.getValue())
                                .collect(Collectors.joining(", "));
        return String.format(
                Locale.ROOT,
                "%d of %d passed, %.1f %% (95 %% interval %.1f to %.1f %%, Clopper and Pearson)%s",
                score.passes(),
                score.tries(),
                100 * score.rate(),
                100 * score.interval().low(),
                100 * score.interval().high(),
                failures);
    }

    static String value(Uncertain value) {
        String unit = value.unit().equals("1") ? "" : " " + value.unit();
        return String.format(Locale.ROOT, "%.3f (%.3f to %.3f)%s", value.value(), value.low(), value.high(), unit);
    }
}

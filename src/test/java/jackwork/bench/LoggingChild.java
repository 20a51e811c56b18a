package jackwork.bench;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;

/** A program that logs one trial after the other and says of each that it is logged; for tests to kill. */
final class LoggingChild {

    private LoggingChild() {}

    /** @param arguments workshop, prefix of the keys, how many */
    public static void main(String[] arguments) {
        BenchLog log = BenchLog.in(Path.of(arguments[0]));
        int most = Integer.parseInt(arguments[2]);
        try {
            for (int i = 0; i < most; i++) {
                String key = arguments[1] + "-" + i;
                Stamp stamp = new Stamp(key, Instant.parse("2026-03-01T09:30:00Z"), "noted ".repeat(i % 50));
                log.add(
                        Kinds.TRIALS,
                        new Trial(
                                stamp,
                                new RevisionName("heron", 1),
                                null,
                                "EUR-1",
                                20,
                                Map.of("lands", 1, "thrown", 2)));
                System.out.println(key);
            }
        } catch (BenchException e) {
            System.out.println("! " + e.getMessage());
        }
    }
}

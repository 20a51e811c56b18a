package jackwork.motion.coin;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** The hundred visits of {@link PeerCases}, engine beside peer, as a table; run {@link #main} to renew it (three minutes). */
final class PeerCycleTable {

    static final Path FILE = Path.of("docs", "benchmarks", "peer-cycle.md");

    /** Rounds of the peer that show how its blow settles. */
    private static final int[] ROUNDS = {40, 160, 640, 2560, 8000};

    /** A line of the table: how long a stage takes since another, or since the coin was let go. */
    private record Line(String stage, @Nullable String since) {}

    private static final List<Line> LINES = List.of(
            new Line("lands", null),
            new Line("frees", null),
            new Line("acts", null),
            new Line("thrown", null),
            new Line("returns", null),
            new Line("locks", null),
            new Line("acts", "frees"),
            new Line("thrown", "acts"),
            new Line("returns", "acts"),
            new Line("locks", "returns"));

    /** Finer and finer steps of the peer, s, rounds enough at each. */
    private static final List<LoneWorld.Solver> STEPS = List.of(
            PeerCases.USUAL,
            new LoneWorld.Solver(1e-4, 160),
            new LoneWorld.Solver(5e-5, 160),
            new LoneWorld.Solver(2.5e-5, 160));

    /** What the peer may be told wrongly, by what that does to the printed mechanism. */
    private static final Map<String, Consumer<JsonNode>> WRONGS = wrongs();

    private static Map<String, Consumer<JsonNode>> wrongs() {
        Map<String, Consumer<JsonNode>> wrongs = new LinkedHashMap<>();
        wrongs.put("pins without friction", json -> scale(json, List.of("pins"), "friction", 0));
        wrongs.put("pins with twice the friction", json -> scale(json, List.of("pins"), "friction", 2));
        wrongs.put("nothing rebounds", json -> scale(json, List.of("contacts", "ends"), "rebound", 0));
        wrongs.put("all rebounds twice as high", json -> scale(json, List.of("contacts", "ends"), "rebound", 2));
        wrongs.put("bodies three times as hard to turn", json -> scale(json, List.of("bodies"), "inertia", 3));
        wrongs.put("bodies half as heavy", json -> scale(json, List.of("bodies"), "mass", 0.5));
        return wrongs;
    }

    private static void scale(JsonNode json, List<String> lists, String key, double factor) {
        for (String list : lists) {
            for (JsonNode entry : json.get(list)) {
                if (entry.has(key)) {
                    ((ObjectNode) entry).put(key, factor * entry.get(key).doubleValue());
                }
            }
        }
    }

    private PeerCycleTable() {}

    public static void main(String[] arguments) throws IOException {
        List<PeerCases.Judged> all =
                PeerCases.all().stream().map(PeerCases.Judged::of).toList();
        Files.writeString(FILE, text(all) + seen(all) + refined() + finer());
    }

    private static String text(List<PeerCases.Judged> all) {
        List<PeerCases.Judged> left =
                all.stream().filter(one -> one.visit().isOnMargin()).toList();
        List<PeerCases.Judged> judged =
                all.stream().filter(one -> !left.contains(one)).toList();
        List<PeerCases.Judged> off =
                judged.stream().filter(one -> !one.agrees()).toList();
        Map<String, Long> outcomes = all.stream()
                .collect(Collectors.groupingBy(PeerCases.Judged::outcome, TreeMap::new, Collectors.counting()));
        StringBuilder text = new StringBuilder(String.format(
                Locale.ROOT,
                """
                # The coin's visit, beside a general physics library

                %d visits, fixed by a seed, to the heron and three of its spoiled copies, each run by the engine and by dyn4j 6.0.0, which is
                fed from what `jackwork mechanism` prints and from nothing else (`LoneWorld`, `LoneCycle` among the tests). Made by
                `jackwork.motion.coin.PeerCycleTable` on %s (%s %s, Java %s, %d cores); `PeerCycleTest` holds every fifth of them in each check, and all
                with `./check deep peer`. Peer: steps of %.2f ms, %d rounds.

                - First stage missed, by the engine: %s.
                - On a margin, and left out: %d. (With the coin's mass, the finger's force or its speed 5 %% more or less the engine itself
                  says something else.)
                - The same first stage missed, or none, of the other %d: **%d**.

                | stage | since | in both | takes, median ms | difference, median ms | 9 of 10 within | most |
                |---|---|--:|--:|--:|--:|--:|
                """,
                all.size(),
                LocalDate.now(),
                System.getProperty("os.name"),
                System.getProperty("os.arch"),
                System.getProperty("java.version"),
                Runtime.getRuntime().availableProcessors(),
                1e3 * PeerCases.USUAL.step(),
                PeerCases.USUAL.rounds(),
                outcomes.entrySet().stream()
                        .map(entry -> entry.getKey() + " " + entry.getValue())
                        .collect(Collectors.joining(", ")),
                left.size(),
                judged.size(),
                judged.size() - off.size()));
        LINES.forEach(line -> text.append(row(line, judged)));
        text.append("""

                Differences of 100 ms and more are a swing of the bucket more or less, after a blow at two places at once; those of the return, a blow that few
                rounds pass on badly ([why, and what finer steps change](../decisions/0047-a-visit-from-what-is-printed.md)).
                """);
        text.append("\nLeft out (visit | engine | peer):\n\n");
        left.forEach(one -> text.append("- ").append(one.words()).append('\n'));
        text.append("\nDisagreeing: ").append(off.isEmpty() ? "none.\n" : "\n\n");
        off.forEach(one -> text.append("- ").append(one.words()).append('\n'));
        return text.toString();
    }

    private static String row(Line line, List<PeerCases.Judged> judged) {
        List<PeerCases.Judged> both = judged.stream()
                .filter(one -> Double.isFinite(one.late(line.stage(), line.since())))
                .toList();
        double[] late = both.stream()
                .mapToDouble(one -> 1e3 * Math.abs(one.late(line.stage(), line.since())))
                .sorted()
                .toArray();
        double[] took = both.stream()
                .mapToDouble(one -> 1e3 * one.took(line.stage(), line.since()))
                .sorted()
                .toArray();
        return String.format(
                        Locale.ROOT,
                        "| %s | %s | %d | %.0f | %.2f | %.1f | %.1f |%n",
                        line.stage(),
                        line.since() == null ? "let go" : line.since(),
                        late.length,
                        took[took.length / 2],
                        late[late.length / 2],
                        late[late.length * 9 / 10],
                        Arrays.stream(late).max().orElse(Double.NaN))
                .replace("\r", "");
    }

    /** What a number that is wrong by much does to the outcomes: what it leaves alone they do not prove. */
    private static String seen(List<PeerCases.Judged> all) {
        List<PeerCases.Judged> judged =
                all.stream().filter(one -> !one.visit().isOnMargin()).toList();
        StringBuilder text = new StringBuilder("""

                ## What the outcomes can see

                The same visits by the peer, told one thing wrongly, beside the engine as it is. Where nearly all outcomes stay, they do not prove
                that the two have that number alike: what a coin does at rest decides most of them. Friction, rebound, inertia and mass are held by the times
                of two visits, within two hundredths (`PeerCycleTest`).

                | the peer is told | same outcome |
                |---|--:|
                """);
        WRONGS.forEach((wrong, spoil) -> {
            Map<String, PeerCases.Subject> subjects = new HashMap<>();
            long same = judged.stream()
                    .filter(one -> one.visit()
                            .of(subjects.computeIfAbsent(
                                    one.visit().subject().name(),
                                    name -> one.visit().subject().spoiled(spoil)))
                            .peersOutcome(one.outcome()))
                    .count();
            text.append("| ")
                    .append(wrong)
                    .append(" | ")
                    .append(same)
                    .append(" of ")
                    .append(judged.size())
                    .append(" |\n");
        });
        return text.toString();
    }

    /** When the bucket comes free, by steps of the peer. */
    private static String finer() {
        PeerCases.Subject heron = PeerCases.Subject.of("heron");
        StringBuilder text = new StringBuilder("""

                ## Finer steps

                When the bucket of the heron as numbered comes free, ms. At the peer's usual steps two of four coins are a swing of the bucket late.

                | solved by | EUR-0.20 | EUR-0.50 | EUR-1 | EUR-2 |
                |---|--:|--:|--:|--:|
                """);
        List<PeerCases.Case> coins = List.of("EUR-0.20", "EUR-0.50", "EUR-1", "EUR-2").stream()
                .map(code -> PeerCases.Case.asNumbered(heron, code))
                .toList();
        for (LoneWorld.Solver solver : STEPS) {
            text.append(String.format(Locale.ROOT, "| peer, %.3f ms, %d rounds", 1e3 * solver.step(), solver.rounds()));
            coins.forEach(coin -> text.append(frees(coin.peers(solver))));
            text.append(" |\n");
        }
        text.append("| engine");
        coins.forEach(coin -> text.append(frees(coin.oursUnfolded())));
        return text.append(" |\n").toString();
    }

    private static String frees(Map<String, Double> times) {
        return String.format(Locale.ROOT, " | %.1f", 1e3 * times.getOrDefault("frees", Double.NaN));
    }

    /** One visit, solved more and more finely by the peer. */
    private static String refined() {
        PeerCases.Subject heron = PeerCases.Subject.of("heron");
        PeerCases.Case euro = new PeerCases.Case(0, heron, "EUR-1", new LoneDrop(7.5, 11.625, 0, 60, 0.35, 6, 150));
        StringBuilder text = new StringBuilder("""

                ## The peer refined

                The heron as numbered with 1 euro, every body of its figure by itself in both. Few rounds pass the lever's blow on its stop too slowly on
                through the figure's light links, and the lever comes off with another speed than 0.3 of what it came with: it is that
                bounce which decides when the catch counts as locked. Times in ms.

                | solved by | frees | acts since frees | thrown since acts | returns since acts | locks since returns |
                |---|--:|--:|--:|--:|--:|
                """);
        for (int rounds : ROUNDS) {
            text.append(refined(
                    "peer, " + rounds + " rounds", euro.peers(new LoneWorld.Solver(PeerCases.USUAL.step(), rounds))));
        }
        return text.append(refined("engine", euro.oursUnfolded())).toString();
    }

    private static String refined(String by, Map<String, Double> times) {
        StringBuilder row = new StringBuilder("| ").append(by);
        for (Line line : List.of(
                new Line("frees", null),
                new Line("acts", "frees"),
                new Line("thrown", "acts"),
                new Line("returns", "acts"),
                new Line("locks", "returns"))) {
            double since = line.since() == null ? 0 : times.getOrDefault(line.since(), Double.NaN);
            row.append(String.format(
                    Locale.ROOT, " | %.1f", 1e3 * (times.getOrDefault(line.stage(), Double.NaN) - since)));
        }
        return row.append(" |\n").toString();
    }
}

package jackwork.fuzz;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Fuzzes one reader after the other, guided by which branches of the program each input reaches, and tells how often it
 * ran and what was found. Inputs that reached something new stay in {@code target/fuzz} for the next time. Ends with 1
 * when a promise was broken, an input took too long or too much memory.
 */
public final class Fuzz {

    private static final String FUZZER = "com.code_intelligence.jazzer.Jazzer";
    private static final Path WORK = Path.of("target", "fuzz");
    private static final Pattern RUNS = Pattern.compile("stat::number_of_executed_units: *(\\d+)");
    private static final Pattern EDGES = Pattern.compile("\\bcov: (\\d+)");
    private static final int USUAL_SECONDS = 60;

    /** What one run came to. */
    private record Told(long runs, long edges, int exit) {}

    private Fuzz() {}

    /** @param words a reader's name, {@code --seconds N}, both, or nothing */
    public static void main(String[] words) throws IOException, InterruptedException {
        List<Kept> readers = List.of(Kept.values());
        int seconds = USUAL_SECONDS;
        for (int i = 0; i < words.length; i++) {
            if (words[i].equals("--seconds") && i + 1 < words.length) {
                seconds = seconds(words[++i]);
            } else {
                readers = List.of(reader(words[i]));
            }
        }
        boolean broken = false;
        for (Kept reader : readers) {
            System.err.println(reader.word() + ": " + seconds + " s; the whole log is in " + log(reader));
            long start = System.nanoTime();
            Told told = run(reader, seconds);
            long took = (System.nanoTime() - start) / 1_000_000_000;
            System.out.printf(
                    Locale.ROOT,
                    "%-8s %,9d executions in %d s, %,6d edges reached, %s%n",
                    reader.word(),
                    told.runs(),
                    took,
                    told.edges(),
                    told.exit() == 0 ? "nothing found" : "BROKEN: see " + log(reader));
            broken |= told.exit() != 0;
        }
        if (broken) {
            System.err.println(
                    "The inputs found are in " + WORK.resolve("found") + ". Mend the fault, and keep the input: "
                            + "copy it under a telling name to " + Kept.FOLDER + "/READER");
            System.exit(1);
        }
    }

    private static int seconds(String word) {
        if (!word.matches("[1-9]\\d{0,5}")) {
            throw usage("read --seconds " + word + ", expected 1 to 999999");
        }
        return Integer.parseInt(word);
    }

    private static Kept reader(String word) {
        for (Kept reader : Kept.values()) {
            if (reader.word().equals(word)) {
                return reader;
            }
        }
        throw usage("read \"" + word + "\", expected one of "
                + List.of(Kept.values()).stream().map(Kept::word).collect(Collectors.joining(", "))
                + ", or --seconds N");
    }

    private static RuntimeException usage(String words) {
        System.err.println("./check fuzz: " + words);
        System.exit(2);
        return new IllegalArgumentException(words);
    }

    private static Path log(Kept reader) {
        return WORK.resolve(reader.word() + ".log");
    }

    /** A program of its own: it may run out of memory, hang or die. */
    private static Told run(Kept reader, int seconds) throws IOException, InterruptedException {
        Path found = Files.createDirectories(WORK.resolve("found"));
        Path corpus = Files.createDirectories(WORK.resolve(reader.word()));
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-Xmx" + reader.heap() + "m",
                "-XX:-OmitStackTraceInFastThrow",
                "-cp",
                System.getProperty("java.class.path"),
                FUZZER,
                "--target_class=" + reader.target().getName(),
                "--instrumentation_includes=jackwork.**:org.snakeyaml.**",
                "--custom_hook_excludes=jackwork.fuzz.**",
                "--reproducer_path=" + found));
        if (reader == Kept.HTTP) {
            // It watches for connections made; asking a server is what this one is for.
            command.add("--disabled_hooks=com.code_intelligence.jazzer.sanitizers.ServerSideRequestForgery");
        }
        command.addAll(List.of(
                "-max_total_time=" + seconds,
                "-timeout=" + reader.timeout(),
                "-rss_limit_mb=" + (reader.heap() + 1024),
                "-max_len=65536",
                "-print_final_stats=1",
                "-artifact_prefix=" + found + "/" + reader.word() + "-",
                corpus.toString(),
                reader.seeds().toString()));
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        long runs = 0;
        long edges = 0;
        try (BufferedReader out = process.inputReader(StandardCharsets.UTF_8);
                var log = Files.newBufferedWriter(log(reader))) {
            for (String line = out.readLine(); line != null; line = out.readLine()) {
                log.write(line + "\n");
                runs = Math.max(runs, number(RUNS, line));
                edges = Math.max(edges, number(EDGES, line));
            }
        }
        return new Told(runs, edges, process.waitFor());
    }

    private static long number(Pattern pattern, String line) {
        Matcher matcher = pattern.matcher(line);
        return matcher.find() ? Long.parseLong(matcher.group(1)) : 0;
    }
}

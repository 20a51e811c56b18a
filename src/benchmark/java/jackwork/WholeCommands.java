package jackwork;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Whole commands, each in a fresh process by {@code ./jackwork} as a maker starts it: by the clock from the command to its
 * end, with the most memory that it held. Linux alone tells that; elsewhere it is left out.
 */
final class WholeCommands {

    private static final int TIMES = 5;
    private static final int POLL_MILLISECONDS = 4;
    private static final int ANSWERS = 200;
    /** Where the demo heron has it, mm from the left. */
    private static final double HIP = 66;

    private static final Pattern PEAK = Pattern.compile("VmHWM:\\s+(\\d+) kB");
    private static final Pattern VERSION = Pattern.compile("\"version\":\"([^\"]+)\"");

    /**
     * @param aim s; 0 without one
     * @param seconds the median
     * @param slowest of them, s
     * @param mebibytes the most of any; 0 where it is not told
     */
    record Row(String what, double aim, int times, double seconds, double slowest, double mebibytes) {}

    private record Once(double seconds, double mebibytes) {}

    private interface Run {
        Once run() throws IOException, InterruptedException;
    }

    private WholeCommands() {}

    static List<Row> all() throws IOException, InterruptedException {
        Path out = Files.createTempDirectory("jackwork-speed");
        List<Row> rows = new ArrayList<>();
        // Builds what is to be built, and the class archive.
        command("coins");
        rows.add(row("`check demo/heron`, without builds", 1, TIMES, () -> command("check", "demo/heron")));
        rows.add(row("`open demo`, to the first page", 0.8, TIMES, WholeCommands::firstPage));
        rows.add(row(
                "`pack demo/heron`",
                5,
                TIMES,
                () -> command("pack", "demo/heron", "-o", out.resolve("1").toString())));
        rows.add(row(
                "`price demo/heron --quantity 5`", 0, TIMES, () -> command("price", "demo/heron", "--quantity", "5")));
        rows.add(row(
                "`check demo/heron --builds 1000`, four coins each, visitors' mishaps as well",
                60,
                1,
                () -> command("check", "demo/heron", "--builds", "1000", "--seed", "7")));
        rows.add(answers());
        try (Stream<Path> files = Files.walk(out)) {
            files.sorted((a, b) -> b.compareTo(a)).forEach(file -> file.toFile().delete());
        }
        return rows;
    }

    static String page(List<Row> rows) {
        StringBuilder text = new StringBuilder(
                "| whole command | aim, s | median, s | slowest, s | runs | peak memory, MiB |\n|---|--:|--:|--:|--:|--:|\n");
        for (Row row : rows) {
            text.append("| %s | %s | %.3f | %.3f | %d | %s |\n"
                    .formatted(
                            row.what(),
                            row.aim() == 0 ? "–" : "%s".formatted(row.aim()),
                            row.seconds(),
                            row.slowest(),
                            row.times(),
                            row.mebibytes() == 0 ? "–" : "%.0f".formatted(row.mebibytes())));
        }
        return text.toString();
    }

    private static Row row(String what, double aim, int times, Run run) throws IOException, InterruptedException {
        double[] seconds = new double[times];
        double most = 0;
        for (int i = 0; i < times; i++) {
            Once once = run.run();
            seconds[i] = once.seconds();
            most = Math.max(most, once.mebibytes());
        }
        Arrays.sort(seconds);
        return new Row(what, aim, times, seconds[times / 2], seconds[times - 1], most);
    }

    private static Process start(String... words) throws IOException {
        List<String> command = new ArrayList<>(List.of("./jackwork"));
        command.addAll(List.of(words));
        return new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    private static Once command(String... words) throws IOException, InterruptedException {
        long began = System.nanoTime();
        Process process = start(words);
        // Read to its end, so that nothing waits for room.
        Thread reader = new Thread(() -> {
            try {
                process.getInputStream().readAllBytes();
            } catch (IOException e) {
                throw new IllegalStateException(e);
            }
        });
        reader.start();
        double peak = 0;
        while (process.isAlive()) {
            peak = Math.max(peak, peak(process.pid()));
            Thread.sleep(POLL_MILLISECONDS);
        }
        double seconds = (System.nanoTime() - began) / 1e9;
        reader.join();
        if (process.exitValue() > 1) {
            throw new IllegalStateException(
                    "./jackwork " + String.join(" ", words) + " ended with " + process.exitValue());
        }
        return new Once(seconds, peak);
    }

    /** MiB; 0 where the system does not tell. */
    private static double peak(long pid) {
        try {
            Matcher told = PEAK.matcher(Files.readString(Path.of("/proc/" + pid + "/status")));
            return told.find() ? Double.parseDouble(told.group(1)) / 1024 : 0;
        } catch (IOException e) {
            return 0;
        }
    }

    private static URI address(Process process) throws IOException {
        BufferedReader said =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        String line = said.readLine();
        if (line == null) {
            throw new IllegalStateException("./jackwork open said no address");
        }
        return URI.create(line.strip());
    }

    private static Once firstPage() throws IOException, InterruptedException {
        long began = System.nanoTime();
        Process process = start("open", "demo", "--no-browser", "--port", "0");
        try {
            URI address = address(process);
            HttpResponse<String> page = HttpClient.newHttpClient()
                    .send(HttpRequest.newBuilder(address).build(), HttpResponse.BodyHandlers.ofString());
            double seconds = (System.nanoTime() - began) / 1e9;
            if (page.statusCode() != 200) {
                throw new IllegalStateException("the page answered " + page.statusCode());
            }
            return new Once(seconds, peak(process.pid()));
        } finally {
            process.destroy();
            process.waitFor();
        }
    }

    /** What the program takes of a dragged pivot's answer; the browser draws besides. */
    private static Row answers() throws IOException, InterruptedException {
        Process process = start("open", "demo", "--no-browser", "--port", "0");
        try {
            URI address = address(process);
            HttpClient client = HttpClient.newHttpClient();
            String view = client.send(
                            HttpRequest.newBuilder(address.resolve("/api/designs/heron"))
                                    .build(),
                            HttpResponse.BodyHandlers.ofString())
                    .body();
            Matcher version = VERSION.matcher(view);
            if (!version.find()) {
                throw new IllegalStateException("the design has no version");
            }
            double[] seconds = new double[ANSWERS];
            for (int i = 0; i < 2 * ANSWERS; i++) {
                String body =
                        "{\"base\":\"%s\",\"label\":\"\",\"steps\":[{\"kind\":\"set\",\"path\":\"figure.pins.hip.at\",\"value\":\"[%.2f, 165]\"}]}"
                                .formatted(version.group(1), HIP + 0.05 * (i % 40));
                HttpRequest request = HttpRequest.newBuilder(address.resolve("/api/glimpse/heron"))
                        .header("Content-Type", "application/json")
                        .header("Origin", address.toString().replaceAll("/$", ""))
                        .POST(HttpRequest.BodyPublishers.ofString(body))
                        .build();
                long began = System.nanoTime();
                HttpResponse<String> answer = client.send(request, HttpResponse.BodyHandlers.ofString());
                seconds[i % ANSWERS] = (System.nanoTime() - began) / 1e9;
                if (answer.statusCode() != 200) {
                    throw new IllegalStateException("a dragged pivot was answered: " + answer.body());
                }
            }
            Arrays.sort(seconds);
            return new Row(
                    "a dragged pivot of the heron, answered (the browser draws besides)",
                    0.03,
                    ANSWERS,
                    seconds[ANSWERS / 2],
                    seconds[ANSWERS - 1],
                    peak(process.pid()));
        } finally {
            process.destroy();
            process.waitFor();
        }
    }
}

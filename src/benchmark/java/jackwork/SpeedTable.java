package jackwork;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;

/** Each benchmark's time beside its peer's. */
final class SpeedTable {

    private static final List<String> HEADINGS =
            List.of("benchmark", "Jackwork, µs", "aim, µs", "peer, µs", "peer ÷ Jackwork");
    /** Share of the times' quotient by which both errors together may put it out. */
    private static final double SETTLED = 0.25;

    private static final String ERRORS = """
            Time of one operation, mean ± half the width of its 99.9 % confidence interval within this run; on a
            shared machine two runs can differ by more. Where both errors together exceed a quarter, the times
            were too unsteady for a ratio: "unsettled".
            """;

    private final List<Pair> pairs;

    private SpeedTable(List<Pair> pairs) {
        this.pairs = pairs;
    }

    /** A benchmark class's two results; {@code peer} may be null, and {@code ours} in a run of some. */
    private static final class Pair {
        private final String name;
        private final Compared compared;
        private Result<?> ours;
        private Result<?> peer;

        Pair(String name, Compared compared) {
            this.name = name;
            this.compared = compared;
        }

        List<String> cells() {
            return List.of(name, time(ours), aim(), time(peer), ratio());
        }

        private String aim() {
            return compared.aim() == 0 ? "–" : "%.0f".formatted(compared.aim());
        }

        private String ratio() {
            if (ours == null || peer == null) {
                return "–";
            }
            boolean settled = error(ours) + error(peer) <= SETTLED;
            return settled ? "%.1f".formatted(peer.getScore() / ours.getScore()) : "unsettled";
        }

        private static double error(Result<?> result) {
            return result.getScoreError() / result.getScore();
        }

        private static String time(Result<?> result) {
            if (result == null) {
                return "–";
            }
            double time = result.getScore();
            String form = time < 10 ? "%.3f ± %.3f" : time < 1000 ? "%.1f ± %.1f" : "%.0f ± %.0f";
            return form.formatted(time, result.getScoreError());
        }
    }

    static SpeedTable of(Collection<RunResult> results) {
        Map<String, Pair> pairs = new TreeMap<>();
        for (RunResult result : results) {
            BenchmarkParams benchmark = result.getParams();
            String method = benchmark.getBenchmark();
            int dot = method.lastIndexOf('.');
            String type = method.substring(0, dot);
            Pair pair = pairs.computeIfAbsent(name(type, benchmark), name -> new Pair(name, compared(type)));
            switch (method.substring(dot + 1)) {
                case "ours" -> pair.ours = result.getPrimaryResult();
                case "peer" -> pair.peer = result.getPrimaryResult();
                default -> throw new IllegalStateException(method + ": a benchmark is called ours or peer");
            }
        }
        return new SpeedTable(new ArrayList<>(pairs.values()));
    }

    /** "Pose" for jackwork.motion.PoseBenchmark, with its parameters when it has some. */
    private static String name(String type, BenchmarkParams benchmark) {
        StringBuilder name =
                new StringBuilder(type.substring(type.lastIndexOf('.') + 1).replaceFirst("Benchmark$", ""));
        for (String key : benchmark.getParamsKeys()) {
            name.append(", ").append(key).append(' ').append(benchmark.getParam(key));
        }
        return name.toString();
    }

    static Compared compared(String type) {
        try {
            Compared compared = Class.forName(type).getAnnotation(Compared.class);
            if (compared == null) {
                throw new IllegalStateException(type + " does not say what it compares");
            }
            return compared;
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(e);
        }
    }

    /** For a terminal: aligned columns. */
    String plain() {
        List<List<String>> rows = rows();
        StringBuilder text = new StringBuilder();
        for (List<String> row : rows) {
            for (int c = 0; c < row.size(); c++) {
                int column = c;
                int width = rows.stream()
                        .mapToInt(r -> r.get(column).length())
                        .max()
                        .orElse(1);
                text.append((c == 0 ? "%-" + width + "s" : "  %" + width + "s").formatted(row.get(c)));
            }
            text.append('\n');
        }
        return text.append('\n').append(ERRORS).toString();
    }

    /** For docs: a Markdown table, then what each row compares. */
    String page() {
        StringBuilder text = new StringBuilder();
        List<List<String>> rows = rows();
        for (int r = 0; r < rows.size(); r++) {
            text.append("| ").append(String.join(" | ", rows.get(r))).append(" |\n");
            text.append(r == 0 ? "|---|--:|--:|--:|--:|\n" : "");
        }
        text.append('\n').append(ERRORS).append('\n');
        for (Pair pair : pairs) {
            text.append("- **")
                    .append(pair.name)
                    .append("**: ")
                    .append(pair.compared.what())
                    .append('.');
            if (!pair.compared.peer().isEmpty()) {
                text.append(" Peer: ").append(pair.compared.peer()).append('.');
            }
            text.append('\n');
        }
        return text.toString();
    }

    private List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>(List.of(HEADINGS));
        pairs.forEach(pair -> rows.add(pair.cells()));
        return rows;
    }
}

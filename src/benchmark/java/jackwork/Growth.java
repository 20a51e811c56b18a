package jackwork;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.results.RunResult;

/** Curves of growth, one picture for each benchmark that has a parameter to grow over. */
final class Growth {

    private Growth() {}

    /**
     * Writes the pictures.
     *
     * @return Markdown that shows them
     */
    static String draw(Collection<RunResult> results, Path folder) throws IOException {
        Map<String, List<RunResult>> byClass = new TreeMap<>();
        for (RunResult result : results) {
            String method = result.getParams().getBenchmark();
            if (method.endsWith(".ours")) {
                byClass.computeIfAbsent(method.substring(0, method.lastIndexOf('.')), name -> new ArrayList<>())
                        .add(result);
            }
        }
        StringBuilder page = new StringBuilder();
        for (Map.Entry<String, List<RunResult>> one : byClass.entrySet()) {
            Compared compared = SpeedTable.compared(one.getKey());
            if (!compared.grows().isEmpty()) {
                String name = "growth-by-" + compared.grows() + ".svg";
                Files.writeString(
                        folder.resolve(name),
                        GrowthPicture.of(
                                "By " + compared.grows(), compared.grows(), series(one.getValue(), compared.grows())));
                page.append("![Time of ")
                        .append(compared.what())
                        .append("](")
                        .append(name)
                        .append(")\n\n");
            }
        }
        return page.toString();
    }

    private static Map<String, List<GrowthPicture.At>> series(List<RunResult> results, String grows) {
        Map<String, List<GrowthPicture.At>> series = new LinkedHashMap<>();
        for (RunResult result : results) {
            BenchmarkParams params = result.getParams();
            List<String> others = new ArrayList<>();
            for (String key : params.getParamsKeys()) {
                if (!key.equals(grows)) {
                    others.add(key + " " + params.getParam(key));
                }
            }
            series.computeIfAbsent(String.join(", ", others), name -> new ArrayList<>())
                    .add(new GrowthPicture.At(
                            Double.parseDouble(params.getParam(grows)),
                            result.getPrimaryResult().getScore() / 1000));
        }
        series.values().forEach(points -> points.sort((a, b) -> Double.compare(a.number(), b.number())));
        return series;
    }
}

package jackwork.builds;

import jackwork.chance.Interval;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What tuning makes of builds that fail, and what the maker reads off it: by what is seen, what to set and how far.
 *
 * @param passes builds that pass at once or after one adjuster was set
 * @param rate share of all builds
 * @param interval of that share
 * @param lines what is seen most often first, and of each what helps most often first
 */
public record TuningCard(int passes, double rate, Interval interval, List<Line> lines) {

    /**
     * One thing to do about one thing that is seen.
     *
     * @param set what to set and how far, the step that most needed, in words; empty where nothing helps
     * @param helps in so many of the builds that show it this setting, or as little more, was enough
     * @param of so many builds that show it
     */
    public record Line(Cause seen, String set, int helps, int of) {}

    static TuningCard of(List<Adjuster> adjusters, List<BuildResult> results) {
        int passes = (int) results.stream().filter(BuildResult::passesTuned).count();
        Map<Cause, List<BuildResult>> failing = new EnumMap<>(Cause.class);
        for (BuildResult result : results) {
            result.cause()
                    .ifPresent(cause -> failing.computeIfAbsent(cause, c -> new ArrayList<>())
                            .add(result));
        }
        List<Line> lines = new ArrayList<>();
        failing.entrySet().stream()
                .sorted(Comparator.comparingInt((Map.Entry<Cause, List<BuildResult>> entry) ->
                        -entry.getValue().size()))
                .forEach(entry -> lines.addAll(lines(entry.getKey(), entry.getValue(), adjusters)));
        return new TuningCard(
                passes,
                (double) passes / results.size(),
                ReplicateInterval.of(results, BuildRun.REPLICATES, BuildResult::passesTuned),
                List.copyOf(lines));
    }

    private static List<Line> lines(Cause cause, List<BuildResult> failing, List<Adjuster> adjusters) {
        List<Line> lines = new ArrayList<>();
        int helped = 0;
        for (Adjuster adjuster : adjusters) {
            for (int sign : new int[] {1, -1}) {
                Map<Integer, Integer> bySteps = new TreeMap<>();
                failing.stream()
                        .flatMap(result -> result.tuned().stream())
                        .filter(turn -> turn.adjuster().equals(adjuster.name()) && turn.steps() * sign > 0)
                        .forEach(turn -> bySteps.merge(turn.steps(), 1, Integer::sum));
                int helps =
                        bySteps.values().stream().mapToInt(Integer::intValue).sum();
                if (helps > 0) {
                    int most = bySteps.entrySet().stream()
                            .max(Map.Entry.comparingByValue())
                            .orElseThrow()
                            .getKey();
                    lines.add(new Line(cause, adjuster.words(most), helps, failing.size()));
                    helped += helps;
                }
            }
        }
        lines.sort(Comparator.comparingInt((Line line) -> -line.helps));
        if (helped < failing.size()) {
            lines.add(new Line(cause, "", failing.size() - helped, failing.size()));
        }
        return lines;
    }
}

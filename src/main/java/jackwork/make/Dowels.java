package jackwork.make;

import jackwork.design.CsvCell;
import jackwork.design.Design;
import jackwork.design.WorkshopFile;
import jackwork.geometry.Point;
import jackwork.parts.Assembly;
import jackwork.parts.Hole;
import jackwork.parts.Layers;
import jackwork.parts.Part;
import jackwork.parts.RodRun;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Every rod to be cut: pivots, pegs, and dowels that pin layers. Each reaches from the hindmost to the foremost of the parts
 * that have its hole or its slot, or ride on it, through every layer between, and stands out a little at either end to be
 * trimmed or headed.
 */
public final class Dowels {

    /** Stands out at each end, mm: common practice, no source. */
    private static final double OVER = 1;

    /**
     * One rod.
     *
     * @param name of the pin or joint
     * @param rod the workshop's name for it
     * @param from hindmost layer
     * @param to foremost layer
     * @param length to cut, mm
     * @param at where it goes through, in the position drawn
     */
    public record Dowel(String name, String rod, int from, int to, double length, Point at) {}

    private Dowels() {}

    static List<Dowel> of(Design design, Assembly assembly) {
        List<RodRun> runs = assembly.rods();
        Layers layers = Layers.of(assembly.parts());
        Map<String, List<Part>> holding = new LinkedHashMap<>();
        Map<String, Double> narrowest = new LinkedHashMap<>();
        Map<String, Point> places = new LinkedHashMap<>();
        for (Part part : assembly.parts()) {
            for (Hole hole : part.holes()) {
                holding.computeIfAbsent(hole.joint(), name -> new ArrayList<>()).add(part);
                places.putIfAbsent(hole.joint(), hole.circle().centre());
                narrowest.merge(hole.joint(), hole.circle().diameter(), Math::min);
            }
        }
        List<Dowel> dowels = new ArrayList<>();
        holding.forEach((name, parts) -> {
            List<RodRun> meets = ends(runs, name);
            int from = IntStream.concat(
                            parts.stream().mapToInt(Part::layer), meets.stream().mapToInt(RodRun::from))
                    .min()
                    .orElse(0);
            int to = IntStream.concat(
                            parts.stream().mapToInt(Part::layer), meets.stream().mapToInt(RodRun::to))
                    .max()
                    .orElse(0);
            double length = layers.front(to) - layers.back(from) + 2 * OVER;
            dowels.add(new Dowel(
                    name,
                    rod(assembly.workshop(), narrowest.getOrDefault(name, 0.0)),
                    from,
                    to,
                    length,
                    places.getOrDefault(name, Point.ORIGIN)));
        });
        return dowels;
    }

    /** What the rod of a joint is there for: a peg is bored in its holder alone, and has to reach what it meets. */
    private static List<RodRun> ends(List<RodRun> runs, String name) {
        List<RodRun> own = runs.stream()
                .filter(run -> run.name().equals(name)
                        && run.kind() != RodRun.Kind.SHOULDER
                        && run.kind() != RodRun.Kind.SCREW)
                .toList();
        return runs.stream()
                .filter(run -> run.kind() != RodRun.Kind.SHOULDER
                        && own.stream().anyMatch(mine -> mine.equals(run) || mine.isRodOf(run)))
                .toList();
    }

    /** The rod that the tightest of its holes was bored for. */
    private static String rod(WorkshopFile workshop, double hole) {
        String nearest = "";
        double least = Double.POSITIVE_INFINITY;
        for (Map.Entry<String, WorkshopFile.RodEntry> rod : workshop.rods().entrySet()) {
            double off = Math.abs(hole - rod.getValue().diameter().value());
            if (off < least) {
                least = off;
                nearest = rod.getKey();
            }
        }
        return nearest;
    }

    /** As CSV after RFC 4180, for a number of pieces; the last rows say how much of each rod that is. */
    static String csv(List<Dowel> dowels, int quantity) {
        StringBuilder csv = new StringBuilder("dowel,rod,from layer,to layer,length mm,how many\r\n");
        Map<String, Double> total = new LinkedHashMap<>();
        for (Dowel dowel : dowels) {
            csv.append(String.format(
                    Locale.ROOT,
                    "%s,%s,%d,%d,%.1f,%d\r\n",
                    CsvCell.written(dowel.name()),
                    CsvCell.written(dowel.rod()),
                    dowel.from(),
                    dowel.to(),
                    dowel.length(),
                    quantity));
            total.merge(dowel.rod(), quantity * dowel.length(), Double::sum);
        }
        total.forEach((rod, length) -> csv.append(String.format(
                Locale.ROOT, "%s,%s,,,%.0f,\r\n", CsvCell.written("all of " + rod), CsvCell.written(rod), length)));
        return csv.toString();
    }
}

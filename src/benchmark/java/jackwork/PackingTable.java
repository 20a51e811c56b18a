package jackwork;

import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.layout.Effort;
import jackwork.layout.LayoutResult;
import jackwork.layout.Layouts;
import jackwork.layout.Piece;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * The layout search on the instances of irregular strip packing that ESICUP collects, read where they are and never kept
 * here, beside the best densities published between 2006 and 2013 (as the folder's own table has them: from memory).
 */
final class PackingTable {

    private static final int THREADS = 2;
    private static final long SEED = 1;

    private PackingTable() {}

    /** Prints a row as soon as an instance is done. */
    private static void print(Path folder, double seconds) throws IOException {
        Map<String, Double> widths = new LinkedHashMap<>();
        for (String[] row : rows(folder.resolve("packing_instances.csv"))) {
            widths.put(row[0], Double.valueOf(row[1]));
        }
        Map<String, Double> published = new LinkedHashMap<>();
        for (String[] row : rows(folder.resolve("packing_best_known.csv"))) {
            published.merge(row[0], Double.valueOf(row[7]), Math::max);
        }
        System.out.printf(Locale.ROOT, "%.0f s each on %d threads, seed %d%n", seconds, THREADS, SEED);
        System.out.println("instance   pieces       length   density published     share   overlap");
        double sum = 0;
        for (Map.Entry<String, Double> instance : widths.entrySet()) {
            String name = instance.getKey();
            double best = published.getOrDefault(name, 100.0);
            sum += row(name, pieces(folder, name), instance.getValue(), best, seconds);
        }
        System.out.printf(Locale.ROOT, "mean share of the published best: %.1f%%%n", 100 * sum / widths.size());
    }

    /** Gives the density as a share of the published best. */
    private static double row(String name, List<Piece> pieces, double width, double best, double seconds) {
        LayoutResult result = Layouts.onStrip(pieces, width, Effort.seconds(seconds, THREADS, SEED));
        double area =
                pieces.stream().mapToDouble(piece -> piece.outline().area()).sum();
        double density = 100 * area / (result.length() * width);
        System.out.printf(
                Locale.ROOT,
                "%-10s %6d %12.3f %8.2f%% %8.2f%% %8.1f%%   %.1e%n",
                name,
                pieces.size(),
                result.length(),
                density,
                best,
                100 * density / best,
                overlap(pieces, result) / area);
        return density / best;
    }

    /** What pieces share, by the outlines' own intersection rather than by the search's tests, mm². */
    private static double overlap(List<Piece> pieces, LayoutResult result) {
        List<Outline> lying = new ArrayList<>();
        result.placed()
                .forEach(
                        placed -> lying.add(pieces.get(placed.piece()).outline().moved(placed.pose())));
        double shared = 0;
        for (int i = 0; i < lying.size(); i++) {
            for (int j = 0; j < i; j++) {
                shared += lying.get(i).sharedArea(lying.get(j));
            }
        }
        return shared;
    }

    private static List<Piece> pieces(Path folder, String instance) throws IOException {
        Map<Integer, List<Point>> rings = new TreeMap<>();
        Map<Integer, String[]> first = new TreeMap<>();
        for (String[] row : rows(folder.resolve("packing_vertices.csv"))) {
            if (row[0].equals(instance)) {
                int type = Integer.parseInt(row[1]);
                first.putIfAbsent(type, row);
                rings.computeIfAbsent(type, key -> new ArrayList<>())
                        .add(new Point(Double.parseDouble(row[5]), Double.parseDouble(row[6])));
            }
        }
        List<Piece> pieces = new ArrayList<>();
        rings.forEach((type, ring) -> {
            String[] row = first.get(type);
            List<Double> turns =
                    Arrays.stream(row[3].split("\\|")).map(Double::valueOf).toList();
            for (int copy = 0; copy < Integer.parseInt(row[2]); copy++) {
                pieces.add(new Piece(instance + "-" + type, Outline.of(ring), turns));
            }
        });
        return pieces;
    }

    /** Rows of a CSV without its heading; quoted fields may hold commas. */
    private static List<String[]> rows(Path file) throws IOException {
        List<String[]> rows = new ArrayList<>();
        for (String line : Files.readAllLines(file).stream().skip(1).toList()) {
            List<String> fields = new ArrayList<>();
            StringBuilder field = new StringBuilder();
            boolean quoted = false;
            for (char c : line.toCharArray()) {
                if (c == '"') {
                    quoted = !quoted;
                } else if (c == ',' && !quoted) {
                    fields.add(field.toString());
                    field.setLength(0);
                } else {
                    field.append(c);
                }
            }
            fields.add(field.toString());
            rows.add(fields.toArray(String[]::new));
        }
        return rows;
    }

    /** {@code FOLDER [--seconds N]}. */
    public static void main(String[] words) throws IOException {
        boolean timed = words.length == 3 && words[1].equals("--seconds");
        if (words.length != 1 && !timed) {
            wrong("read \"" + String.join(" ", words) + "\"; expected --packing FOLDER, then --seconds N or nothing");
        }
        Path folder = Path.of(words[0]);
        for (String part : List.of("instances", "vertices", "best_known")) {
            if (!Files.isReadable(folder.resolve("packing_" + part + ".csv"))) {
                wrong("found no packing_" + part + ".csv in " + folder
                        + "; expected the folder with the three packing tables");
            }
        }
        double seconds = 60;
        if (timed) {
            try {
                seconds = Double.parseDouble(words[2]);
            } catch (NumberFormatException e) {
                seconds = Double.NaN;
            }
            if (!(seconds > 0) || seconds > 86_400) {
                wrong("read \"" + words[2] + "\" after --seconds; expected how long to search each instance, as 60");
            }
        }
        print(folder, seconds);
    }

    private static void wrong(String message) {
        System.err.println("./check speed: " + message);
        System.exit(2);
    }
}

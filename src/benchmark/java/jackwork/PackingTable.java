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

    /** @param seconds of search for each instance */
    static String of(Path folder, double seconds, String only) throws IOException {
        Map<String, Double> widths = new LinkedHashMap<>();
        for (String[] row : rows(folder.resolve("packing_instances.csv"))) {
            widths.put(row[0], Double.valueOf(row[1]));
        }
        Map<String, Double> published = new LinkedHashMap<>();
        for (String[] row : rows(folder.resolve("packing_best_known.csv"))) {
            published.merge(row[0], Double.valueOf(row[7]), Math::max);
        }
        StringBuilder table = new StringBuilder(String.format(
                Locale.ROOT,
                "%-10s %6s %12s %9s %9s %9s  (%.0f s on %d threads, seed %d)%n",
                "instance",
                "pieces",
                "length",
                "density",
                "published",
                "share",
                seconds,
                THREADS,
                SEED));
        double sum = 0;
        int count = 0;
        for (Map.Entry<String, Double> instance : widths.entrySet()) {
            if (!instance.getKey().matches(only)) {
                continue;
            }
            List<Piece> pieces = pieces(folder, instance.getKey());
            LayoutResult result = Layouts.onStrip(pieces, instance.getValue(), Effort.seconds(seconds, THREADS, SEED));
            double area =
                    pieces.stream().mapToDouble(piece -> piece.outline().area()).sum();
            double density = 100 * area / (result.length() * instance.getValue());
            double best = published.getOrDefault(instance.getKey(), 100.0);
            String row = String.format(
                    Locale.ROOT,
                    "%-10s %6d %12.3f %8.2f%% %8.2f%% %8.1f%%  overlap %.1e%n",
                    instance.getKey(),
                    pieces.size(),
                    result.length(),
                    density,
                    best,
                    100 * density / best,
                    overlap(pieces, result) / area);
            System.err.print(row);
            table.append(row);
            sum += density / best;
            count++;
        }
        return table.append(String.format(Locale.ROOT, "mean share of the published best: %.1f%%%n", 100 * sum / count))
                .toString();
    }

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

    /** {@code FOLDER [--seconds N] [--only REGEX]}. */
    public static void main(String[] words) throws IOException {
        double seconds = 60;
        String only = ".*";
        for (int i = 1; i + 1 < words.length; i += 2) {
            switch (words[i]) {
                case "--seconds" -> seconds = Double.parseDouble(words[i + 1]);
                case "--only" -> only = words[i + 1];
                default ->
                    throw new IllegalArgumentException("read \"" + words[i]
                            + "\"; expected FOLDER, then --seconds N or --only REGULAR-EXPRESSION");
            }
        }
        System.out.print(of(Path.of(words[0]), seconds, only));
    }
}

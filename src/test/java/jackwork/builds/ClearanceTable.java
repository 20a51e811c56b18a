package jackwork.builds;

import jackwork.DemoCopy;
import jackwork.check.Finding;
import jackwork.check.Questions;
import jackwork.check.Subject;
import jackwork.design.Design;
import jackwork.design.DesignReader;
import jackwork.parts.Assembler;
import jackwork.parts.Assembly;
import jackwork.stock.Coin;
import jackwork.stock.Coins;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** How many builds of the heron pass at one running fit after the other, as a table; run {@link #main} to renew it. */
final class ClearanceTable {

    static final Path FILE = Path.of("docs", "benchmarks", "clearance.md");
    static final int BUILDS = 200;

    private static final long SEED = 7;
    private static final String WRITTEN = "running: {value: 0.20, low: 0.10, high: 0.30";
    private static final double HALF = 0.10;

    /**
     * The heron at one fit.
     *
     * @param clearance of the bucket's hole as numbered, mm
     * @param twist that finding
     */
    record Row(double fit, double clearance, Finding twist, int passes, int builds, Map<Cause, Integer> causes) {}

    private ClearanceTable() {}

    public static void main(String[] arguments) throws IOException, InterruptedException {
        Path folder = DemoCopy.at(Files.createTempDirectory("clearance"));
        Files.writeString(FILE, table(rows(folder, BUILDS)));
    }

    /**
     * From 0.20 to 0.60 mm by 0.05 mm.
     *
     * @param workshop a copy of the demo
     */
    static List<Row> rows(Path workshop, int builds) throws IOException, InterruptedException {
        List<Row> rows = new ArrayList<>();
        for (int hundredths = 20; hundredths <= 60; hundredths += 5) {
            rows.add(row(heron(workshop, hundredths / 100.0), hundredths / 100.0, builds));
        }
        return rows;
    }

    /** The heron in a copy of the demo whose workshop bores its running holes so much wider, give or take as much as ever. */
    static Design heron(Path workshop, double fit) throws IOException {
        Path file = workshop.resolve("workshop.yaml");
        String text = Files.readString(Path.of("demo", "workshop.yaml"));
        Files.writeString(
                file,
                text.replace(
                        WRITTEN,
                        String.format(
                                Locale.ROOT,
                                "running: {value: %.2f, low: %.2f, high: %.2f",
                                fit,
                                fit - HALF,
                                fit + HALF)));
        return DesignReader.read(workshop.resolve("heron"));
    }

    private static Row row(Design design, double fit, int builds) throws InterruptedException {
        List<Coin> coins = design.file().coins().stream()
                .map(code -> Coins.catalogue().find(code).orElseThrow())
                .toList();
        Assembly assembly = Assembler.assemble(design);
        BuildReport report = new BuildRun(assembly, coins, builds, SEED)
                .run(Runtime.getRuntime().availableProcessors(), done -> {});
        Finding twist = Questions.ask(Subject.of(design)).stream()
                .filter(finding -> finding.id().equals("bucket-twist"))
                .findFirst()
                .orElseThrow();
        return new Row(
                fit, assembly.bucketBearing().clearance(), twist, report.passes(), report.builds(), report.causes());
    }

    static String table(List<Row> rows) {
        StringBuilder text = new StringBuilder("""
                # One clearance a hole

                The heron, at running fits (`fits.running` of the workshop, each give or take 0.10 mm) that nothing but the
                workshop can tell: the bucket's hole is bored for it, and the finding, the picture and the builds take their
                clearance from that hole. Builds are %d with seed %d, with all four coins each. Made by the program
                itself (`jackwork.builds.ClearanceTable`), and held by a test with fewer builds.

                | `fits.running` | clearance | far end shifts | of | twist | builds that pass | why others do not |
                |--:|--:|--:|--:|---|--:|---|
                """.formatted(BUILDS, SEED));
        rows.forEach(row -> text.append(line(row)));
        return text.toString();
    }

    static String line(Row row) {
        return String.format(
                Locale.ROOT,
                "| %.2f | %.2f | %.2f | %.2f | %s | %.1f %% | %s |\n",
                row.fit(),
                row.clearance(),
                row.twist().value(),
                row.twist().limit(),
                row.twist().status().name().toLowerCase(Locale.ROOT),
                100.0 * row.passes() / row.builds(),
                causes(row));
    }

    private static String causes(Row row) {
        return row.causes().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(entry -> entry.getKey().words() + " (" + entry.getValue() + ")")
                .collect(Collectors.joining(", "));
    }
}

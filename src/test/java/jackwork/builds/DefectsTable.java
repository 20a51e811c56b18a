package jackwork.builds;

import jackwork.DemoCopy;
import jackwork.app.core.DesignCheck;
import jackwork.check.Finding;
import jackwork.check.PivotDrag;
import jackwork.check.Status;
import jackwork.check.Subject;
import jackwork.design.DesignReader;
import jackwork.geometry.Point;
import jackwork.motion.coin.CoinCycle;
import jackwork.motion.coin.CycleRig;
import jackwork.parts.Assembly;
import jackwork.parts.Stopping;
import jackwork.parts.TurningEnd;
import jackwork.parts.Variation;
import jackwork.stock.Coin;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/**
 * Ten things that go wrong at a bench, each put into a heron by hand: what the cycle does, how much drag is still borne,
 * what setting the adjuster does, and what the findings say of a design that is so. Run {@link #main} to renew the table.
 */
final class DefectsTable {

    static final Path FILE = Path.of("docs", "benchmarks", "defects.md");

    /**
     * @param put into the piece
     * @param file of the workshop whose text would say so, and what to write there; empty where no file can
     */
    private record Defect(String words, Consumer<Build> put, String file, String text, String instead) {

        static Defect ofPiece(String words, Consumer<Build> put) {
            return new Defect(words, put, "", "", "");
        }
    }

    private static List<Defect> defects(Assembly heron) {
        String pressed = end(heron, TurningEnd.Kind.LEVER_PRESSED);
        return List.of(
                Defect.ofPiece("as drawn", build -> {}),
                Defect.ofPiece("the lever's hole 0.3 mm low", build -> build.leverPlace = new Point(0, -0.3)),
                Defect.ofPiece("the bucket's hole 0.3 mm to the right", build -> build.bucketPlace = new Point(0.3, 0)),
                Defect.ofPiece(
                        "the kicker slipped 0.3 mm back from the coin",
                        build -> build.slips.put("kicker", new Point(0.3, 0))),
                Defect.ofPiece(
                        "the bucket's layers slipped up into the tooth by 1.1 mm",
                        build -> build.slips.put("bucket-core", new Point(0, 1.1))),
                Defect.ofPiece("the hole at the nape 0.3 mm off", build -> build.holes.put("nape", new Point(0.3, 0))),
                Defect.ofPiece(
                        "the bucket rubs with 0.8 N·mm",
                        build -> build.drags.put(heron.bucketBearing().pin().name(), 0.8)),
                new Defect(
                        "44 g of steel in the tail for 50",
                        build -> build.heavier.put("tail", -6.0 / 50),
                        "heron/figure.yaml",
                        "mass: 50",
                        "mass: 44"),
                new Defect(
                        "the sheets swollen by a tenth",
                        build -> build.assembly = Variation.damper(build.assembly, 1.1, 1.1),
                        "workshop.yaml",
                        "{value: 2.95, low: 2.85, high: 3.05",
                        "{value: 3.245, low: 3.145, high: 3.345"),
                new Defect(
                        "rods 0.22 mm too thick",
                        build -> thicker(build, 0.22),
                        "workshop.yaml",
                        "{value: 3.0, low: 2.95, high: 3.05",
                        "{value: 3.22, low: 3.17, high: 3.27"),
                Defect.ofPiece("what ends the press stands 1.5 mm early", build -> build.drawnBack.put(pressed, -1.5)));
    }

    private static void thicker(Build build, double by) {
        Variation.ofHoles(build.assembly, false).stream()
                .filter(variation -> variation.name().startsWith("diameter of "))
                .forEach(variation -> build.assembly = variation
                        .with()
                        .apply(build.assembly, variation.number().value() + by));
    }

    private static String end(Assembly heron, TurningEnd.Kind kind) {
        return heron.ends().stream()
                .map(Stopping::end)
                .filter(end -> end.kind() == kind)
                .findFirst()
                .orElseThrow()
                .id();
    }

    private DefectsTable() {}

    public static void main(String[] arguments) throws IOException {
        Files.writeString(FILE, table(Files.createTempDirectory("defects")));
    }

    /** @param folder for copies of the demo */
    static String table(Path folder) throws IOException {
        Subject heron = Subject.of(DesignReader.read(Path.of("demo/heron")));
        List<Adjuster> adjusters = Adjuster.of(heron.design());
        StringBuilder text = new StringBuilder("""
                # Ten things that go wrong at a bench

                Each put into one heron by hand, all else as numbered. *Bears*: how many times the drag expected all bearings may
                have besides, until the cycle dies with some coin; asked are two. *Set*: the least turn of the adjuster in the design with which
                every coin passes. *Findings*: what `check` says of a workshop or figure whose file says so; where no
                number of a file is so, findings cannot know, and what they keep in hand must do. Holes are bored for the rods and sheets that
                the workshop says it has, so those are no fault there. Made by the program
                (`jackwork.builds.DefectsTable` among the tests), and held by a test.

                | what went wrong | four coins | bears | set | findings |
                |---|---|--:|---|---|
                """);
        int number = 0;
        for (Defect defect : defects(heron.assembly())) {
            text.append(line(heron, adjusters, defect, folder.resolve("" + number++)));
        }
        return text.toString();
    }

    private static String line(Subject heron, List<Adjuster> adjusters, Defect defect, Path folder) throws IOException {
        List<Coin> coins = heron.coins();
        List<String> causes = causes(piece(heron.assembly(), defect, 0), coins);
        BearableDrag.Found bears = BearableDrag.find(times -> piece(heron.assembly(), defect, times), coins);
        return "| " + defect.words + " | " + (causes.isEmpty() ? "run" : String.join(", ", causes)) + " | "
                + (causes.isEmpty() ? String.format(Locale.ROOT, "%.2f", bears.times()) : "–") + " | "
                + (causes.isEmpty() ? "" : set(adjusters, defect, coins)) + " | " + findings(defect, folder) + " |\n";
    }

    private static Build piece(Assembly assembly, Defect defect, double times) {
        Build build = new Build(assembly);
        double each = times * PivotDrag.expected(assembly).value();
        defect.put.accept(build);
        assembly.pins().forEach(pin -> build.drags.merge(pin.name(), each, Double::sum));
        build.settle();
        return build;
    }

    /** What does not happen, and with which coins. */
    private static List<String> causes(Build build, List<Coin> coins) {
        List<String> causes = new ArrayList<>();
        CycleRig rig = BuildTrial.rig(build);
        for (Coin coin : coins) {
            BuildResult.Trial trial = BuildTrial.trial(build, rig, coin, CoinCycle.NOBODY);
            String words = trial.computed() ? trial.cause().map(Cause::words).orElse("") : "not computed";
            if (!words.isEmpty()) {
                causes.add(words + ": " + coin.code());
            }
        }
        boolean alike =
                causes.stream().map(cause -> cause.split(": ")[0]).distinct().count() == 1;
        return alike && causes.size() == coins.size() ? List.of(causes.get(0).split(": ")[0]) : causes;
    }

    private static String set(List<Adjuster> adjusters, Defect defect, List<Coin> coins) {
        for (Adjuster adjuster : adjusters) {
            for (Adjuster.Setting setting : adjuster.settings()) {
                if (causes(piece(setting.assembly(), defect, 0), coins).isEmpty()) {
                    return adjuster.words(setting.steps());
                }
            }
        }
        return "nothing helps";
    }

    private static String findings(Defect defect, Path folder) throws IOException {
        if (defect.file.isEmpty()) {
            return defect.words.equals("as drawn") ? told(Path.of("demo/heron")) : "not asked";
        }
        Path demo = DemoCopy.at(folder);
        Path file = demo.resolve(defect.file);
        String text = Files.readString(file);
        if (!text.contains(defect.text)) {
            throw new IllegalStateException(defect.file + " has no " + defect.text);
        }
        Files.writeString(file, text.replace(defect.text, defect.instead));
        return told(demo.resolve("heron"));
    }

    private static String told(Path design) {
        List<Finding> findings = DesignCheck.of(DesignReader.read(design)).findings().stream()
                .filter(finding -> finding.status() == Status.FAIL || finding.status() == Status.DOUBTFUL)
                .toList();
        return findings.isEmpty()
                ? "nothing against it"
                : findings.stream()
                                .map(finding -> "`" + finding.id() + "` "
                                        + finding.status().name().toLowerCase(Locale.ROOT))
                                .limit(4)
                                .collect(Collectors.joining(", "))
                        + Optional.of(findings.size())
                                .filter(n -> n > 4)
                                .map(n -> ", " + (n - 4) + " more")
                                .orElse("");
    }
}

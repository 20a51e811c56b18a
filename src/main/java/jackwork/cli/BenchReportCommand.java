package jackwork.cli;

import jackwork.app.bench.Bench;
import jackwork.app.bench.BenchJson;
import jackwork.app.bench.BenchReport;
import jackwork.bench.Prediction;
import jackwork.bench.Score;
import java.nio.file.Path;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import tools.jackson.databind.node.ObjectNode;

/** {@code jackwork bench report [DESIGN]}. */
@Command(name = "report", description = "What the log says, beside what was predicted.")
final class BenchReportCommand extends Subcommand {

    @Parameters(paramLabel = "DESIGN", arity = "0..1", description = "the design's folder; all when absent")
    private @Nullable Path design;

    @Option(names = "--rate", paramLabel = "R", description = "of success, to be proved; 0.99 when absent")
    private double rate = 0.99;

    @Option(names = "--confidence", paramLabel = "C", description = "with which; 0.95 when absent")
    private double confidence = 0.95;

    @Option(names = "--json", description = "one JSON object on stdout")
    private boolean json;

    @Mixin
    private WorkshopOption workshop = new WorkshopOption();

    @Override
    public Integer call() {
        if (!(rate > 0 && rate <= 0.99999 && confidence > 0 && confidence <= 0.99999)) {
            throw new BadInputException("--rate " + rate + " and --confidence " + confidence
                    + ": expected both between 0 and 0.99999, as in 0.99 and 0.95");
        }
        Bench bench = design == null ? workshop.bench() : Bench.in(design);
        BenchReport report = BenchReport.of(
                bench.log(), design == null ? null : bench.id(design), new BenchReport.Wish(rate, confidence));
        if (json) {
            System.out.print(BenchJson.report(report, bench.log()));
            return Outcome.FINE;
        }
        report.revisions().forEach(revision -> print(revision, report.wish()));
        for (BenchReport.OfMeasured measured : report.measured()) {
            System.out.println(measured.place() + ", measured " + measured.measurements() + " times: "
                    + (measured.value() == null ? measured.why() : BenchWords.value(measured.value())));
        }
        if (design == null) {
            BenchJson.pieces(bench.log()).forEach(piece -> System.out.println(words(piece)));
        }
        return Outcome.FINE;
    }

    private static void print(BenchReport.OfRevision revision, BenchReport.Wish wish) {
        System.out.println(revision.revision().name() + ", frozen "
                + revision.revision().at()
                + (revision.revision().note().isEmpty()
                        ? ""
                        : ": " + revision.revision().note()));
        System.out.println("    all coins: " + BenchWords.score(revision.all()) + needed(revision.all(), wish));
        for (BenchReport.OfCoin coin : revision.coins()) {
            System.out.println(
                    "    " + coin.coin() + ": " + BenchWords.score(coin.score()) + needed(coin.score(), wish));
            if (coin.predicted() != null) {
                System.out.println("        predicted: " + coin.predicted() + " of " + coin.builds() + " builds"
                        + gap(coin.gapChance()));
            }
        }
        Prediction prediction = revision.prediction();
        if (prediction != null) {
            System.out.println("    (predicted under spreads of which " + prediction.guesses() + " of "
                    + prediction.numbers() + " are guesses; tries of one piece are not as many pieces)");
        }
        for (BenchReport.OfOperation operation : revision.operations()) {
            System.out.printf(
                    Locale.ROOT,
                    "    %s: %.1f minutes a piece, over %d pieces%n",
                    operation.operation(),
                    operation.minutes(),
                    operation.pieces());
        }
    }

    private static String needed(Score score, BenchReport.Wish wish) {
        int needed = score.cleanNeeded(wish.rate(), wish.confidence());
        String goal = String.format(Locale.ROOT, "%s %% at %s %%", percent(wish.rate()), percent(wish.confidence()));
        return needed == 0 ? "; " + goal + " is shown" : "; " + needed + " clean coins more show " + goal;
    }

    private static String percent(double share) {
        return new java.math.BigDecimal(String.valueOf(share))
                .movePointRight(2)
                .stripTrailingZeros()
                .toPlainString();
    }

    private static String gap(@Nullable Double chance) {
        return chance == null
                ? ""
                : String.format(
                        Locale.ROOT,
                        "; by chance alone as far apart in %.1f of 100 cases (Fisher's exact test)",
                        100 * chance);
    }

    static String words(ObjectNode piece) {
        StringBuilder words = new StringBuilder(piece.get("serial").asString());
        words.append("  ")
                .append(piece.get("design").asString())
                .append(", revision ")
                .append(piece.get("revision"));
        words.append("  ").append(piece.get("where").asString());
        if (!piece.get("who").asString().isEmpty()) {
            words.append(", ").append(piece.get("who").asString());
        }
        words.append(", since ").append(piece.get("since").asString(), 0, 10);
        piece.get("takings")
                .properties()
                .forEach(entry -> words.append("; took in ")
                        .append(entry.getValue().asString())
                        .append(' ')
                        .append(entry.getKey()));
        int repairs = piece.get("repairs").asInt();
        return words + (repairs == 0 ? "" : "; repaired " + repairs + " times");
    }
}

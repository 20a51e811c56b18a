package jackwork.cli;

import jackwork.app.core.DesignCheck;
import jackwork.builds.BuildReport;
import jackwork.builds.BuildRun;
import jackwork.builds.TuningCard;
import jackwork.check.Finding;
import jackwork.check.Ground;
import jackwork.check.NotInTheModel;
import jackwork.check.Status;
import jackwork.check.Words;
import jackwork.design.Design;
import jackwork.design.DesignReader;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code jackwork check DESIGN}. */
@Command(name = "check", description = "Will it work? Findings, worst first.")
final class CheckCommand extends DesignCommand {

    @Option(
            names = "--coins",
            paramLabel = "LIST",
            description = "coins to ask about, instead of the design's own: EUR-1,EUR-2")
    private List<String> coins = List.of();

    @Option(names = "--builds", paramLabel = "N", description = "try so many virtual builds as well, 10 to 100000")
    private int builds;

    @Option(names = "--seed", paramLabel = "S", description = "of the virtual builds; 1 when absent")
    private long seed = 1;

    @Option(names = "--threads", paramLabel = "T", description = "for the virtual builds; all cores when absent")
    private int threads = Runtime.getRuntime().availableProcessors();

    @Option(names = "--json", description = "one JSON object on stdout")
    private boolean json;

    @Option(names = "--left-out", description = "say as well what is not in the model, and what to do about it")
    private boolean leftOut;

    @Option(
            names = "--measured",
            paramLabel = "STOCK=MM",
            description = "thickness of the sheet in hand: birch-2=1.87; may be given again")
    private Map<String, Double> measured = Map.of();

    @Override
    public Integer call() throws InterruptedException {
        if (builds != 0 && (builds < 10 || builds > 100_000)) {
            throw new BadInputException("--builds reads " + builds + ", expected 10 to 100000");
        }
        if (threads < 1 || threads > 256) {
            throw new BadInputException("--threads reads " + threads + ", expected 1 to 256");
        }
        Design read = DesignReader.read(design).withMeasured(measured);
        DesignCheck check = DesignCheck.of(coins.isEmpty() ? read : read.withCoins(codes()));
        if (builds > 0) {
            BuildRun run = DesignCheck.builds(check.subject(), builds, seed);
            check = check.with(run.run(threads, done -> progress(done, run.size())));
        }
        if (json) {
            System.out.print(check.json());
        } else {
            print(check);
            if (leftOut) {
                printLeftOut();
            } else {
                System.out.println();
                System.out.println("What is not in the model, and what a maker can do about it: add --left-out.");
            }
        }
        return check.fails() ? Outcome.FAILS : Outcome.FINE;
    }

    private List<String> codes() {
        List<String> codes = coins.stream()
                .flatMap(list -> Stream.of(list.split(",", -1)))
                .map(String::strip)
                .filter(code -> !code.isEmpty())
                .toList();
        if (codes.isEmpty()) {
            throw new BadInputException("--coins reads \"" + String.join(",", coins)
                    + "\", which names no coin; expected codes as in EUR-1,EUR-2: `jackwork coins` lists them");
        }
        return codes;
    }

    static void progress(int done, int all) {
        if (done % Math.max(1, all / 20) == 0) {
            System.err.println("  " + done + " of " + all + " builds");
        }
    }

    private static void print(DesignCheck check) {
        System.out.println(check.design().name() + ": " + check.words());
        for (Finding finding : check.findings()) {
            System.out.println();
            System.out.println(mark(finding.status()) + finding.question());
            System.out.println("    " + finding.why() + ".");
            if (!finding.remedy().isEmpty()) {
                System.out.println("    " + finding.remedy());
            }
            System.out.println("    " + finding.formula());
            if (finding.status() != Status.PASS && !finding.restsOn().isEmpty()) {
                System.out.println("    rests on " + grounds(finding.restsOn()));
            }
        }
        BuildReport report = check.builds();
        if (report != null) {
            print(report);
        }
    }

    private static void print(BuildReport report) {
        System.out.println();
        System.out.println("Virtual builds: " + report.words() + ".");
        report.passesByCoin()
                .forEach((coin, passes) ->
                        System.out.println("    " + coin + " passes in " + passes + " of " + report.builds()));
        report.causes().forEach((cause, count) -> System.out.println("    in " + count + ": " + cause.words()));
        report.card().ifPresent(CheckCommand::print);
        report.conditions()
                .forEach(condition -> System.out.println(
                        "    of " + condition.name() + " pass " + condition.passes() + " of " + condition.builds()));
        report.results().stream()
                .filter(result -> !result.passes())
                .findFirst()
                .ifPresent(result -> System.out.println("    the first that fails is build " + result.number()));
        report.matters()
                .forEach(matter -> System.out.println("    what matters: " + matter.name() + " ("
                        + String.format(java.util.Locale.ROOT, "%+.2f", matter.correlation())
                        + (matter.guess() ? ", a guess)" : ")")));
        System.out.println("    (Spearman's rank correlation of each number with the build's margin)");
        report.measureFirst().ifPresent(words -> System.out.println("    " + words));
    }

    private static void print(TuningCard card) {
        System.out.println("    tuning card, one thing set at a time:");
        card.lines()
                .forEach(line -> System.out.println("      " + line.seen().words() + ": "
                        + (line.set().isEmpty() ? "nothing here helps" : line.set()) + " (" + line.helps() + " of "
                        + line.of() + ")"));
    }

    private static void printLeftOut() {
        System.out.println();
        System.out.println("Not in the model, whatever the verdict:");
        for (NotInTheModel one : NotInTheModel.all()) {
            System.out.println();
            System.out.println("    " + one.what());
            System.out.println("      " + one.instead());
        }
    }

    private static String mark(Status status) {
        return switch (status) {
            case PASS -> "pass      ";
            case OPEN -> "open      ";
            case DOUBTFUL -> "doubtful  ";
            case FAIL -> "FAIL      ";
        };
    }

    private static String grounds(List<Ground> grounds) {
        return String.join(
                "; ",
                grounds.stream()
                        .map(g -> g.name() + " " + Words.number(g.number().value()) + " ("
                                + Words.number(g.number().low()) + " to "
                                + Words.number(g.number().high()) + ", "
                                + g.number().basis().words() + ")")
                        .toList());
    }
}

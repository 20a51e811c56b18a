package jackwork.cli;

import jackwork.app.DesignCheck;
import jackwork.check.Finding;
import jackwork.check.Ground;
import jackwork.check.Status;
import jackwork.design.Design;
import jackwork.design.DesignReader;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code jackwork check DESIGN}. */
@Command(name = "check", mixinStandardHelpOptions = true, description = "Will it work? Findings, worst first.")
final class CheckCommand implements Callable<Integer> {

    @Parameters(paramLabel = "DESIGN", description = "the design's folder")
    private Path design = Path.of("");

    @Option(
            names = "--coins",
            paramLabel = "LIST",
            split = ",",
            description = "coins to ask about, instead of the design's own: EUR-1,EUR-2")
    private List<String> coins = List.of();

    @Option(names = "--json", description = "one JSON object on stdout")
    private boolean json;

    @Override
    public Integer call() {
        Design read = DesignReader.read(design);
        DesignCheck check = DesignCheck.of(coins.isEmpty() ? read : read.withCoins(coins));
        if (json) {
            System.out.print(check.json());
        } else {
            print(check);
        }
        return check.fails() ? Outcome.FAILS : Outcome.FINE;
    }

    private static void print(DesignCheck check) {
        System.out.println(check.design().name() + ": " + check.verdict());
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
    }

    private static String mark(Status status) {
        return switch (status) {
            case PASS -> "pass      ";
            case DOUBTFUL -> "doubtful  ";
            case FAIL -> "FAIL      ";
        };
    }

    private static String grounds(List<Ground> grounds) {
        return String.join(
                "; ",
                grounds.stream()
                        .map(g -> g.name() + " " + g.number().value() + " ("
                                + g.number().low() + " to " + g.number().high() + ", "
                                + g.number().basis().words() + ")")
                        .toList());
    }
}

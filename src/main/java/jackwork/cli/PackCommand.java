package jackwork.cli;

import jackwork.app.core.DesignCheck;
import jackwork.check.Finding;
import jackwork.check.Status;
import jackwork.design.Design;
import jackwork.design.DesignReader;
import jackwork.drawing.Paper;
import jackwork.make.Pack;
import jackwork.make.SheetSearch;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code jackwork pack DESIGN -o DIR}. */
@Command(name = "pack", description = "Can I make it? Every file needed to make it.")
final class PackCommand extends DesignCommand {

    @Option(
            names = "-o",
            paramLabel = "DIR",
            description = "where to write; a folder named pack beside you when absent")
    private Path out = Path.of("pack");

    @Option(names = "--quantity", paramLabel = "N", description = "how many pieces; 1 when absent")
    private int quantity = 1;

    @Option(
            names = "--measured",
            paramLabel = "STOCK=MM",
            description = "thickness of the sheet in hand: birch-2=1.87; may be given again")
    private Map<String, Double> measured = Map.of();

    @Option(names = "--paper", paramLabel = "A4|A3|Letter", description = "in the printer; the workshop's when absent")
    private @Nullable String paper;

    @Option(
            names = "--search",
            paramLabel = "SECONDS",
            description = "look for tighter sheets for so long; Enter takes the best so far")
    private double search;

    @Override
    public Integer call() throws IOException {
        if (quantity < 1 || quantity > 1000) {
            throw new BadInputException("--quantity reads " + quantity + ", expected 1 to 1000");
        }
        Design read = DesignReader.read(design).withMeasured(measured);
        List<Path> written = Pack.write(
                read, out, new Pack.Wish(quantity, paper(read), search()), name -> System.err.println("  " + name));
        System.out.println(written.size() + " files in " + out);
        warn(DesignCheck.of(read));
        return Outcome.FINE;
    }

    /** The files are made all the same: a maker may want to see them, or cut one part of them. */
    private static void warn(DesignCheck check) {
        List<Finding> failing = check.findings().stream()
                .filter(finding -> finding.status() == Status.FAIL)
                .toList();
        if (!failing.isEmpty()) {
            System.err.println("Do not cut it yet, it fails:");
            failing.forEach(finding -> System.err.println("  " + finding.question() + " " + finding.why() + "."));
            System.err.println("`jackwork check` says what to do.");
        }
    }

    private SheetSearch search() {
        if (search == 0) {
            return SheetSearch.usual();
        }
        if (!(search >= 1 && search <= 86_400)) {
            throw new BadInputException("--search reads " + search + ", expected 1 to 86400 seconds");
        }
        System.err.println("  looking for tighter sheets; Enter takes the best so far");
        return new SheetSearch(search, PackCommand::entered, words -> System.err.println("  " + words));
    }

    private static boolean entered() {
        try {
            return System.in.available() > 0;
        } catch (IOException e) {
            // Nobody is there to press it.
            return false;
        }
    }

    private Paper paper(Design read) {
        return paper == null
                ? read.workshop().paperOrUsual()
                : Paper.named(paper)
                        .orElseThrow(() ->
                                new BadInputException("--paper reads \"" + paper + "\", expected " + Paper.NAMES));
    }
}

package jackwork.cli;

import jackwork.app.pay.Pricing;
import jackwork.design.WholeFile;
import jackwork.price.PriceReport;
import jackwork.price.Timed;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code jackwork price DESIGN}. */
@Command(
        name = "price",
        description = "Will it pay? Times, cost, the ladder to the shelf and back, other ways of selling.")
final class PriceCommand extends DesignCommand {

    @Option(
            names = {"--quantity", "--batch"},
            paramLabel = "N",
            description = "good pieces in a batch; 10 when absent")
    private int quantity = 10;

    @Option(names = "--shelf", paramLabel = "AMOUNT", description = "the price it must sell at: 35 or 34.90")
    private @Nullable String shelf;

    @Option(names = "--wage", paramLabel = "AMOUNT", description = "for an hour of hands; the workshop's when absent")
    private @Nullable String wage;

    @Option(
            names = "--time",
            paramLabel = "OPERATION=MINUTES",
            description = "as timed, for one piece: build=95 or pivot=22; may be given again; before what the log has")
    private Map<String, Double> times = Map.of();

    @Option(names = "--supposed", description = "minutes as supposed, though the bench's log has some timed")
    private boolean supposed;

    @Option(
            names = "--builds",
            paramLabel = "N",
            description = "take the share that passes from so many virtual builds, 10 to 100000")
    private int builds;

    @Option(names = "--seed", paramLabel = "S", description = "of the virtual builds; 1 when absent")
    private long seed = 1;

    @Option(names = "--again", description = "ask every question again of quicker ways that are edits of the design")
    private boolean again;

    @Option(names = "--chart", paramLabel = "FILE", description = "write which number moves the cost most, as SVG")
    private @Nullable Path chart;

    @Option(names = "--json", description = "one JSON object on stdout")
    private boolean json;

    @Override
    public Integer call() throws IOException, InterruptedException {
        if (quantity < 1 || quantity > 1000) {
            throw new BadInputException("--quantity reads " + quantity + ", expected 1 to 1000");
        }
        if (builds != 0 && (builds < 10 || builds > 100_000)) {
            throw new BadInputException("--builds reads " + builds + ", expected 10 to 100000");
        }
        times.forEach((operation, minutes) -> {
            if (!(minutes > 0 && minutes < 100_000)) {
                throw new BadInputException("--time reads " + minutes + " for " + operation
                        + ", expected minutes, more than 0 and less than 100000");
            }
        });
        BigDecimal paid = amount("--wage", wage, false);
        Map<String, Double> numbers = paid == null ? Map.of() : Map.of("wage", paid.doubleValue());
        BigDecimal onShelf = amount("--shelf", shelf, true);
        Pricing pricing = Pricing.of(design, quantity, PriceCommand::tell);
        Pricing.Ask ask = new Pricing.Ask(quantity, onShelf, null, numbers, timed(pricing));
        if (again) {
            pricing.again(PriceCommand::tell);
        }
        if (builds > 0) {
            int lot = Math.max(1, builds / 10);
            Pricing.Draw draw =
                    new Pricing.Draw(builds, seed, Runtime.getRuntime().availableProcessors());
            pricing.draw(draw, done -> {
                if (done % lot == 0) {
                    tell(done + " builds tried, of this workshop's and as many of beginners'");
                }
            });
        }
        PriceReport report = pricing.answer(ask);
        report.unused()
                .forEach(name -> System.err.println("  " + name
                        + ": timed, but no operation is called so, nor a stage; `jackwork stock` lists them"));
        Path to = chart;
        if (to != null) {
            save(to, report.sensitivity().get(0).picture());
        }
        System.out.print(json ? Pricing.json(report) : PriceWords.of(report));
        return report.verdict().equals("fails") ? Outcome.FAILS : Outcome.FINE;
    }

    /** What the log has timed, unless it is not wanted, and above it what is said here. */
    private Map<String, Timed> timed(Pricing pricing) {
        Map<String, Timed> timed = new LinkedHashMap<>();
        if (!supposed) {
            pricing.timed().forEach(work -> {
                timed.put(work.operation(), work.forPrice());
                tell(work.operation() + " as timed at the bench: " + work.words());
            });
        }
        times.forEach((operation, minutes) -> timed.put(operation, Timed.said(minutes, "as timed")));
        return timed;
    }

    private static void tell(String line) {
        System.err.println("  " + line);
    }

    private static @Nullable BigDecimal amount(String option, @Nullable String word, boolean more) {
        if (word == null) {
            return null;
        }
        BigDecimal amount = Pricing.amount(word);
        if (amount != null && (!more || amount.signum() > 0)) {
            return amount;
        }
        throw new BadInputException(option + " reads \"" + word + "\", expected an amount"
                + (more ? " more than 0" : "") + " with four places at most, less than 1000000000, as in 35 or 34.90");
    }

    private static void save(Path file, String text) throws IOException {
        WholeFile.write(file, text);
        System.err.println("  " + file);
    }
}

package jackwork.cli;

import jackwork.app.bench.Bench;
import jackwork.bench.Kinds;
import jackwork.bench.Money;
import jackwork.bench.Taking;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code jackwork bench takings SERIAL --amount 41.20 --counted-by ADA --witnessed-by BEN --seal 00123}. */
@Command(name = "takings", description = "Logs an emptying of a piece's cash box, counted by two.")
final class BenchTakings extends Subcommand {

    @Parameters(paramLabel = "SERIAL", description = "the piece's")
    private String serial = "";

    @Option(names = "--amount", paramLabel = "AMOUNT", required = true, description = "as in 41.20")
    private String amount = "";

    @Option(names = "--currency", paramLabel = "XXX", description = "the workshop's when absent")
    private @Nullable String currency;

    @Option(names = "--counted-by", paramLabel = "NAME", required = true)
    private String countedBy = "";

    @Option(names = "--witnessed-by", paramLabel = "NAME", required = true, description = "the second who counted")
    private String witnessedBy = "";

    @Option(names = "--seal", paramLabel = "NUMBER", required = true, description = "of the seal that was broken")
    private String seal = "";

    @Mixin
    private WorkshopOption workshop = new WorkshopOption();

    @Mixin
    private EntryOptions entry = new EntryOptions();

    @Override
    public Integer call() {
        Bench bench = workshop.bench();
        String unit = currency == null ? BenchPiece.currency(bench) : currency;
        Taking taking = BadInputException.unless(() -> new Taking(
                entry.stamp(), bench.piece(serial).serial(), Money.of(amount, unit), countedBy, witnessedBy, seal));
        bench.log().add(Kinds.TAKINGS, taking);
        System.out.println("Piece " + serial + ": " + taking.money() + ", seal " + seal);
        return Outcome.FINE;
    }
}

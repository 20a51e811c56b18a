package jackwork.cli;

import jackwork.app.bench.Bench;
import jackwork.app.bench.BenchJson;
import jackwork.bench.Happening;
import jackwork.bench.Kinds;
import jackwork.bench.Money;
import jackwork.bench.Piece;
import jackwork.bench.RevisionName;
import jackwork.design.WorkshopReader;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import tools.jackson.databind.node.ObjectNode;

/** {@code jackwork bench piece}: pieces that were made, and what became of them. */
@Command(
        name = "piece",
        mixinStandardHelpOptions = true,
        description = "Logs pieces by their serial, and where they went.")
final class BenchPiece {

    @Command(name = "add", description = "a piece that was made")
    int add(
            @Mixin RevisionOption which,
            @Option(names = "--serial", paramLabel = "SERIAL", required = true, description = "no other piece's")
                    String serial,
            @Option(
                            names = "--batch",
                            paramLabel = "WORD",
                            defaultValue = "",
                            description = "made together with others")
                    String batch,
            @Mixin EntryOptions entry) {
        Bench bench = which.bench();
        RevisionName revision = which.revision(bench).name();
        bench.log()
                .add(Kinds.PIECES, BadInputException.unless(() -> new Piece(entry.stamp(), serial, revision, batch)));
        System.out.println("Piece " + serial + " of " + revision);
        return Outcome.FINE;
    }

    @Command(name = "sold", description = "to someone")
    int sold(
            @Parameters(paramLabel = "SERIAL") String serial,
            @Option(names = "--to", paramLabel = "WHO", required = true) String to,
            @Option(names = "--for", paramLabel = "AMOUNT", description = "as in 35.00") @Nullable String amount,
            @Mixin WorkshopOption workshop,
            @Mixin EntryOptions entry) {
        return happened(workshop.bench(), serial, Happening.What.SOLD, to, amount, entry);
    }

    @Command(name = "lent", description = "to someone")
    int lent(
            @Parameters(paramLabel = "SERIAL") String serial,
            @Option(names = "--to", paramLabel = "WHO", required = true) String to,
            @Mixin WorkshopOption workshop,
            @Mixin EntryOptions entry) {
        return happened(workshop.bench(), serial, Happening.What.LENT, to, null, entry);
    }

    @Command(name = "placed", description = "somewhere, to collect")
    int placed(
            @Parameters(paramLabel = "SERIAL") String serial,
            @Option(names = "--at", paramLabel = "PLACE", required = true) String at,
            @Mixin WorkshopOption workshop,
            @Mixin EntryOptions entry) {
        return happened(workshop.bench(), serial, Happening.What.PLACED, at, null, entry);
    }

    @Command(name = "returned", description = "into stock")
    int returned(
            @Parameters(paramLabel = "SERIAL") String serial,
            @Option(names = "--from", paramLabel = "WHO", defaultValue = "") String from,
            @Mixin WorkshopOption workshop,
            @Mixin EntryOptions entry) {
        return happened(workshop.bench(), serial, Happening.What.RETURNED, from, null, entry);
    }

    @Command(name = "scrapped", description = "for good")
    int scrapped(
            @Parameters(paramLabel = "SERIAL") String serial,
            @Mixin WorkshopOption workshop,
            @Mixin EntryOptions entry) {
        return happened(workshop.bench(), serial, Happening.What.SCRAPPED, "", null, entry);
    }

    @Command(name = "repaired", description = "say in the note what was done")
    int repaired(
            @Parameters(paramLabel = "SERIAL") String serial,
            @Option(names = "--by", paramLabel = "WHO", defaultValue = "") String by,
            @Mixin WorkshopOption workshop,
            @Mixin EntryOptions entry) {
        return happened(workshop.bench(), serial, Happening.What.REPAIRED, by, null, entry);
    }

    @Command(
            name = "spare",
            description = "a part made again, from the piece's own revision: see bench restore --piece")
    int spare(
            @Parameters(paramLabel = "SERIAL") String serial,
            @Option(names = "--part", paramLabel = "PART", required = true) String part,
            @Mixin WorkshopOption workshop,
            @Mixin EntryOptions entry) {
        return happened(workshop.bench(), serial, Happening.What.SPARE, part, null, entry);
    }

    @Command(name = "list", description = "every piece with where it is")
    int list(@Mixin WorkshopOption workshop) {
        for (ObjectNode piece : BenchJson.pieces(workshop.bench().log())) {
            System.out.println(BenchReportCommand.words(piece));
        }
        return Outcome.FINE;
    }

    private static int happened(
            Bench bench, String serial, Happening.What what, String who, @Nullable String amount, EntryOptions entry) {
        Happening happening = BadInputException.unless(() -> new Happening(
                entry.stamp(),
                bench.piece(serial).serial(),
                what,
                who,
                amount == null ? null : Money.of(amount, currency(bench))));
        bench.log().add(Kinds.HAPPENINGS, happening);
        System.out.println("Piece " + serial + ": " + what.word() + (who.isEmpty() ? "" : ", " + who)
                + (happening.money() == null ? "" : ", " + happening.money()));
        return Outcome.FINE;
    }

    /** The workshop's own. */
    static String currency(Bench bench) {
        return WorkshopReader.read(bench.workshop()).currency();
    }
}

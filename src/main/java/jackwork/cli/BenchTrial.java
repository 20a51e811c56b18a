package jackwork.cli;

import jackwork.app.bench.Bench;
import jackwork.bench.Kinds;
import jackwork.bench.RevisionName;
import jackwork.bench.Score;
import jackwork.bench.Trial;
import jackwork.design.NearestWord;
import jackwork.stock.Coins;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code jackwork bench trial DESIGN --coin EUR-1 --tries 50 [--failed lands=2]}. */
@Command(name = "trial", description = "Logs tries with a coin.")
final class BenchTrial extends Subcommand {

    @Mixin
    private RevisionOption which = new RevisionOption();

    @Option(names = "--coin", paramLabel = "COIN", required = true, description = "as `jackwork coins` names it")
    private String coin = "";

    @Option(names = "--tries", paramLabel = "N", required = true, description = "how many in all")
    private int tries;

    @Option(
            names = "--failed",
            paramLabel = "CAUSE=N",
            split = ",",
            description = "how many of them failed, and at what: slot, gap, bearing, twist, lands, frees, acts, thrown,"
                    + " returns, locks, refuses, other, other-WORD; may be given again")
    private Map<String, Integer> failed = Map.of();

    @Option(names = "--piece", paramLabel = "SERIAL", description = "which piece was tried")
    private @Nullable String piece;

    @Mixin
    private EntryOptions entry = new EntryOptions();

    @Override
    public Integer call() {
        if (!Coins.catalogue().names().contains(coin)) {
            throw new BadInputException("--coin reads \"" + coin + "\", expected a coin of the catalogue"
                    + NearestWord.hint(coin, Coins.catalogue().names()));
        }
        Bench bench = which.bench();
        RevisionName revision = piece == null
                ? which.revision(bench).name()
                : bench.piece(piece).revision();
        Trial trial = BadInputException.unless(() -> new Trial(entry.stamp(), revision, piece, coin, tries, failed));
        bench.log().add(Kinds.TRIALS, trial);
        Score score = Score.of(bench.log().counting(Kinds.TRIALS).stream()
                .filter(other ->
                        other.revision().equals(revision) && other.coin().equals(coin))
                .toList());
        System.out.println(revision + " with " + coin + ": " + BenchWords.score(score));
        return Outcome.FINE;
    }
}

package jackwork.cli;

import jackwork.stock.Coin;
import jackwork.stock.Coins;
import java.util.Locale;
import picocli.CommandLine.Command;

/** {@code jackwork coins}. */
@Command(name = "coins", description = "The coins Jackwork knows, with sources.")
final class CoinsCommand extends Subcommand {

    @Override
    public Integer call() {
        System.out.printf(
                Locale.ROOT, "%-9s %8s %9s %7s  %-28s %s%n", "coin", "⌀ mm", "thick mm", "g", "shape", "source");
        for (Coin coin : Coins.catalogue().all()) {
            System.out.printf(
                    Locale.ROOT,
                    "%-9s %8.2f %9.2f %7.3f  %-28s %s (%s)%n",
                    coin.code(),
                    coin.diameter(),
                    coin.thickness(),
                    coin.mass(),
                    coin.round() ? "round" : coin.shape().split(",")[0],
                    coin.source(),
                    coin.status());
        }
        return Outcome.FINE;
    }
}

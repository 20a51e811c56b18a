package jackwork.builds;

import jackwork.check.Finding;
import jackwork.parts.Assembly;
import jackwork.stock.Coin;
import java.util.List;

/** Every mishap asked about. A new one is one class and one line here. */
public final class Mishaps {

    private static final List<Mishap> ALL =
            List.of(new LeansFirst(), new Shoves(), new Shakes(), new TwoCoins(), new OtherCoins(), new StraysIn());

    private Mishaps() {}

    /** @param coins that the design accepts */
    public static List<Finding> ask(Assembly assembly, List<Coin> coins) {
        Visitor visitor = new Visitor(assembly, coins);
        return ALL.stream().flatMap(mishap -> mishap.ask(visitor).stream()).toList();
    }
}

package jackwork.builds;

import jackwork.check.Finding;
import jackwork.stock.Strays;
import java.util.List;

/** Washers, buttons, folded notes. */
final class StraysIn implements Mishap {

    @Override
    public List<Finding> ask(Visitor visitor) {
        return Strays.catalogue().all().stream()
                .map(stray -> OtherCoins.find(
                        visitor,
                        stray.words(),
                        visitor.goesIn(stray.diameter(), stray.thickness()),
                        visitor.drop(stray)))
                .toList();
    }
}

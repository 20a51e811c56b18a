package jackwork.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a wage asks for.
 *
 * @param floor of a good piece at this wage
 * @param shelves what the buyer pays, by channel
 */
public record WageStep(BigDecimal wage, BigDecimal floor, Map<String, BigDecimal> shelves) {

    private static final List<Double> STEPS = List.of(0.0, 0.5, 0.75, 1.0, 1.25, 1.5, 2.0);

    static List<WageStep> of(Costing costing, int places) {
        List<WageStep> steps = new ArrayList<>();
        for (double step : STEPS) {
            double wage = costing.rates().number("wage") * step;
            Costing then = costing.with(costing.rates().with("wage", wage));
            Map<String, BigDecimal> shelves = new LinkedHashMap<>();
            BigDecimal net = Ladder.net(then.floor(), then.rates());
            then.channels().stream()
                    .filter(Channel::possible)
                    .forEach(channel -> shelves.put(channel.name(), Money.shown(channel.shelf(net), places)));
            steps.add(new WageStep(Money.shown(Money.of(wage), places), Money.shown(then.floor(), places), shelves));
        }
        return steps;
    }
}

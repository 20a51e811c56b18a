package jackwork.price;

import jackwork.drawing.SwingChart;
import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;

/**
 * Which number moves an answer most.
 *
 * @param of which answer
 * @param answer as it is
 * @param picture the same as SVG
 */
public record Sensitivity(String of, BigDecimal answer, List<Swing> swings, String picture) {

    private static final int MOST = 14;

    static Sensitivity of(
            String what,
            Costing costing,
            List<Ends> numbers,
            Function<Costing, BigDecimal> answer,
            String currency,
            int places) {
        BigDecimal now = Money.shown(answer.apply(costing), places);
        List<Swing> swings =
                Swing.of(numbers, answer, places).stream().limit(MOST).toList();
        List<SwingChart.Bar> bars = swings.stream()
                .map(swing -> new SwingChart.Bar(
                        swing.name(),
                        swing.atLow().doubleValue(),
                        swing.atHigh().doubleValue()))
                .toList();
        return new Sensitivity(what, now, swings, SwingChart.write(what, now.doubleValue(), currency, bars));
    }
}

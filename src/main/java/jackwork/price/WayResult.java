package jackwork.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a way of selling leaves, its sum line by line.
 *
 * @param unit what it is counted by: a piece, a kit, a day, a month, a year
 * @param left for the maker, hands paid by the wage asked for
 * @param anHour what an hour of the maker's hands then earns: wage and what is left together; null when it takes none
 * @param lines of the sum; they add up to what is left
 * @param purses of others, line by line; empty when nobody else has one
 * @param months cash by month, from the month of making; empty when all is paid at once
 * @param tiedUp most money that is out at once, the maker's own hands not counted; null when all is paid at once
 * @param hangsOn which of its own numbers move what is left, most first
 */
public record WayResult(
        String id,
        String name,
        String unit,
        BigDecimal left,
        @Nullable BigDecimal anHour,
        List<WayLine> lines,
        List<Purse> purses,
        List<BigDecimal> months,
        @Nullable BigDecimal tiedUp,
        List<String> words,
        List<Swing> hangsOn) {

    /** @param amount negative where it is paid out */
    public record WayLine(String name, BigDecimal amount) {}

    /** Somebody else's. */
    public record Purse(String whose, BigDecimal left, List<WayLine> lines) {}

    WayResult shown(int places) {
        List<WayLine> shown = shown(lines, places);
        BigDecimal hour = anHour == null ? null : Money.shown(anHour, places);
        List<Purse> others = purses.stream()
                .map(purse -> {
                    List<WayLine> its = shown(purse.lines(), places);
                    return new Purse(purse.whose(), sum(its), its);
                })
                .toList();
        List<BigDecimal> cash =
                months.stream().map(month -> Money.shown(month, places)).toList();
        BigDecimal tied = tiedUp == null ? null : Money.shown(tiedUp, places);
        return new WayResult(id, name, unit, sum(shown), hour, shown, others, cash, tied, words, hangsOn);
    }

    WayResult hangingOn(List<Swing> numbers) {
        return new WayResult(id, name, unit, left, anHour, lines, purses, months, tiedUp, words, numbers);
    }

    private static List<WayLine> shown(List<WayLine> lines, int places) {
        List<BigDecimal> amounts =
                Money.shown(lines.stream().map(WayLine::amount).toList(), places);
        List<WayLine> shown = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            shown.add(new WayLine(lines.get(i).name(), amounts.get(i)));
        }
        return shown;
    }

    static BigDecimal sum(List<WayLine> lines) {
        return lines.stream().map(WayLine::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}

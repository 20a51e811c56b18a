package jackwork.design;

import jackwork.stock.Basis;
import jackwork.stock.Uncertain;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What happens to a piece in use, and what it is made of that the drawings do not say; what the workshop does not say is
 * guessed.
 *
 * @param pressSpeed of the finger on the lever, mm/s
 * @param dropSpeed of the coin when it is let go, mm/s
 * @param tilt of the table in the mechanism's plane, degrees
 * @param rebound share of a coin's approach speed that comes back from wood
 * @param coinMass of coins in circulation as a share of a new one's
 * @param moisture of the wood, percent of its dry mass
 * @param finish paint or varnish on both faces together, g/m²
 * @param presses that a piece has behind it
 * @param drag moment that turns a bearing while it bears nothing, N·mm: layers that rub, paint or glue in its hole
 */
public record Handling(
        Uncertain pressSpeed,
        Uncertain dropSpeed,
        Uncertain tilt,
        Uncertain rebound,
        Uncertain coinMass,
        Uncertain moisture,
        Uncertain finish,
        Uncertain presses,
        Uncertain drag) {

    private static final Handling GUESS = new Handling(
            guess(150, 60, 300, "mm/s"),
            guess(60, 0, 150, "mm/s"),
            guess(0, -1.5, 1.5, "deg"),
            guess(0.3, 0.2, 0.4, "1"),
            guess(0.995, 0.98, 1.005, "1"),
            guess(8, 5, 12, "%"),
            guess(60, 0, 120, "g/m²"),
            guess(1000, 0, 10000, "1"),
            guess(0.15, 0, 0.5, "N·mm"));

    static Handling of(@Nullable HandlingEntry said) {
        return said == null
                ? GUESS
                : new Handling(
                        Objects.requireNonNullElse(said.pressSpeed(), GUESS.pressSpeed),
                        Objects.requireNonNullElse(said.dropSpeed(), GUESS.dropSpeed),
                        Objects.requireNonNullElse(said.tilt(), GUESS.tilt),
                        Objects.requireNonNullElse(said.rebound(), GUESS.rebound),
                        Objects.requireNonNullElse(said.coinMass(), GUESS.coinMass),
                        Objects.requireNonNullElse(said.moisture(), GUESS.moisture),
                        Objects.requireNonNullElse(said.finish(), GUESS.finish),
                        Objects.requireNonNullElse(said.presses(), GUESS.presses),
                        Objects.requireNonNullElse(said.drag(), GUESS.drag));
    }

    private static Uncertain guess(double value, double low, double high, String unit) {
        return new Uncertain(value, low, high, unit, Basis.GUESS, "common practice, no source");
    }
}

package jackwork.design;

import jackwork.stock.Basis;
import jackwork.stock.Uncertain;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * How fast the laser's head moves, mm/s; what the workshop does not say is guessed.
 *
 * @param engrave along an engraved line
 * @param cut through this workshop's usual sheets
 * @param travel between lines, beam off
 */
public record Speeds(Uncertain engrave, Uncertain cut, Uncertain travel) {

    private static final Speeds GUESS = new Speeds(guess(80, 40, 160), guess(10, 5, 20), guess(200, 100, 400));

    static Speeds of(@Nullable SpeedsEntry said) {
        return said == null
                ? GUESS
                : new Speeds(
                        Objects.requireNonNullElse(said.engrave(), GUESS.engrave),
                        Objects.requireNonNullElse(said.cut(), GUESS.cut),
                        Objects.requireNonNullElse(said.travel(), GUESS.travel));
    }

    private static Uncertain guess(double value, double low, double high) {
        return new Uncertain(value, low, high, "mm/s", Basis.GUESS, "common practice, no source");
    }
}

package jackwork.design;

import jackwork.stock.Basis;
import jackwork.stock.Uncertain;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What prints small parts, solid throughout; what the workshop does not say is guessed.
 *
 * @param bed width, depth and height that it can print, mm
 * @param density of what it prints, g/cm³
 * @param off how far a printed face comes out from where it was drawn, mm
 */
public record Printer(List<Double> bed, Uncertain density, Uncertain off) {

    private static final Printer GUESS = new Printer(
            List.of(180.0, 180.0, 180.0),
            new Uncertain(1.24, 1.18, 1.27, "g/cm³", Basis.GUESS, "PLA printed solid, data sheets, from memory"),
            new Uncertain(0, -0.1, 0.1, "mm", Basis.GUESS, "common practice, no source"));

    static Printer of(@Nullable PrinterEntry said) {
        return said == null
                ? GUESS
                : new Printer(
                        said.bed().isEmpty() ? GUESS.bed : said.bed(),
                        Objects.requireNonNullElse(said.density(), GUESS.density),
                        Objects.requireNonNullElse(said.off(), GUESS.off));
    }
}

package jackwork.price;

import jackwork.design.BandEntry;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What people pay for a thing of this kind, lowest first.
 *
 * @param guessed whether the bands are ours, not the maker's
 */
public record Bands(List<Band> bands, boolean guessed) {

    /** One band: up to this price. */
    public record Band(String name, BigDecimal to) {}

    private static final List<Band> USUAL = List.of(
            new Band("a small present", BigDecimal.valueOf(25)),
            new Band("a present", BigDecimal.valueOf(60)),
            new Band("a collector's piece", BigDecimal.valueOf(180)));

    /** Ours, our own invention, where the maker has none. */
    public static Bands of(List<BandEntry> entries) {
        return entries.isEmpty()
                ? new Bands(USUAL, true)
                : new Bands(
                        entries.stream()
                                .map(entry -> new Band(entry.name(), Money.of(entry.to())))
                                .toList(),
                        false);
    }

    /** The same with as many places as the currency has. */
    Bands shown(int places) {
        return new Bands(
                bands.stream()
                        .map(band -> new Band(band.name(), Money.shown(band.to(), places)))
                        .toList(),
                guessed);
    }

    /** The band a price falls in; null beyond the dearest. */
    @Nullable
    String of(BigDecimal price) {
        return bands.stream()
                .filter(band -> price.compareTo(band.to()) <= 0)
                .findFirst()
                .map(Band::name)
                .orElse(null);
    }

    /** The most that anybody pays. */
    public BigDecimal most() {
        return bands.get(bands.size() - 1).to();
    }
}

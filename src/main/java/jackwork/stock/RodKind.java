package jackwork.stock;

/**
 * A rod or wire.
 *
 * @param surface the word that friction pairs use for it
 * @param density g/cm³
 * @param diameterSpread how far a bought rod may be off its nominal diameter, ± mm
 */
public record RodKind(
        String name,
        String label,
        String surface,
        Uncertain density,
        double diameterSpread,
        RodStrength strength,
        String note)
        implements Catalogue.Entry {

    static RodKind of(Table.Row row) {
        return new RodKind(
                row.text("name"),
                row.text("label"),
                row.text("surface"),
                row.uncertain("density_g_per_cm3", "density_low", "density_high", "g/cm3"),
                row.number("diameter_spread_mm"),
                RodStrength.of(row),
                row.text("note"));
    }
}

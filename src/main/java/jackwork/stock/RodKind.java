package jackwork.stock;

/**
 * A rod or wire.
 *
 * @param surface the word that friction pairs use for it
 * @param density g/cm³
 * @param diameterSpread how far a bought rod may be off its nominal diameter, ± mm
 */
public record RodKind(String name, String label, String surface, Uncertain density, double diameterSpread, String note)
        implements Catalogue.Entry {}

package jackwork.stock;

/**
 * Something that is no coin and finds its way into a slot all the same; taken as a disc.
 *
 * @param words for people, with its article
 * @param diameter mm
 * @param thickness mm
 * @param mass g
 * @param friction on wood
 * @param rebound share of the approach speed that comes back from wood
 */
public record Stray(
        String name,
        String words,
        double diameter,
        double thickness,
        double mass,
        double friction,
        double rebound,
        String source)
        implements Catalogue.Entry {

    static Stray of(Table.Row row) {
        return new Stray(
                row.text("name"),
                row.text("words"),
                row.number("diameter_mm"),
                row.number("thickness_mm"),
                row.number("mass_g"),
                row.number("friction"),
                row.number("rebound"),
                row.text("source"));
    }
}

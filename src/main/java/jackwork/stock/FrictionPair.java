package jackwork.stock;

/**
 * Dry friction between two surfaces.
 *
 * @param coefficient its low end is nearer the kinetic, its high end nearer the static value
 */
public record FrictionPair(String a, String b, Uncertain coefficient, String note) {

    boolean joins(String one, String other) {
        return (a.equals(one) && b.equals(other)) || (a.equals(other) && b.equals(one));
    }
}

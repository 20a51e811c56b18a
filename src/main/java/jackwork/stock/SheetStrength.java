package jackwork.stock;

/**
 * What a sheet bears whichever way its face grain lies: the weaker way of the two, since no file says the grain of a part. N/mm².
 *
 * @param edgewise in its plane, pressed, pulled or bent: of wood what it bears in compression, which is below what it bears in
 *     tension
 * @param shear through its thickness, along an edge
 * @param planar of one ply on the next, which limits what a glued face bears
 */
public record SheetStrength(Uncertain edgewise, Uncertain shear, Uncertain planar) {

    static SheetStrength of(Table.Row row) {
        return new SheetStrength(row.strength("edgewise"), row.strength("shear"), row.strength("planar"));
    }

    /** Of what a printer lays down, whichever way it was laid. */
    public static SheetStrength printed() {
        return new SheetStrength(
                guess(20, 10, 35, "printed plastic between its layers, from memory"),
                guess(15, 10, 25, "printed plastic in shear, from memory"),
                guess(10, 6, 20, "printed plastic between its layers, from memory"));
    }

    private static Uncertain guess(double value, double low, double high, String source) {
        return new Uncertain(value, low, high, "N/mm2", Basis.GUESS, source);
    }
}

package jackwork.stock;

/** Sheet materials that may go under a laser; those that never may are not listed. */
public final class Sheets {

    private static final Catalogue<SheetKind> CATALOGUE = new Catalogue<>(Table.read("sheets.csv").rows().stream()
            .map(row -> new SheetKind(
                    row.text("name"),
                    row.text("label"),
                    row.text("surface"),
                    row.uncertain("density_g_per_cm3", "density_low", "density_high", "g/cm3"),
                    row.flag("grain"),
                    row.text("tolerance"),
                    row.text("note")))
            .toList());

    private Sheets() {}

    public static Catalogue<SheetKind> catalogue() {
        return CATALOGUE;
    }
}

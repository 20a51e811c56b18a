package jackwork.stock;

/** Sheet materials that may go under a laser; those that never may are not listed. */
public final class Sheets {

    private static final Catalogue<SheetKind> CATALOGUE = Catalogue.read("sheets.csv", SheetKind::of);

    private Sheets() {}

    public static Catalogue<SheetKind> catalogue() {
        return CATALOGUE;
    }
}

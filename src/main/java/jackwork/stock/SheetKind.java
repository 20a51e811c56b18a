package jackwork.stock;

/**
 * A sheet material.
 *
 * @param surface the word that friction pairs use for it
 * @param density g/cm³
 * @param grain whether it has a direction
 * @param tolerance the standard that limits its thickness, or ± mm
 */
public record SheetKind(
        String name,
        String label,
        String surface,
        Uncertain density,
        boolean grain,
        String tolerance,
        SheetStrength strength,
        String note)
        implements Catalogue.Entry {

    static SheetKind of(Table.Row row) {
        return new SheetKind(
                row.text("name"),
                row.text("label"),
                row.text("surface"),
                row.uncertain("density_g_per_cm3", "density_low", "density_high", "g/cm3"),
                row.flag("grain"),
                row.text("tolerance"),
                SheetStrength.of(row),
                row.text("note"));
    }

    /**
     * How thick a sheet sold as {@code nominal} mm may be.
     *
     * <p>EN 315:2000, sanded plywood: +(0.2 + 0.03 t) / −(0.4 + 0.03 t). ISO 7823-1, cast acrylic:
     * ±(0.4 + 0.1 t).
     */
    public Uncertain thickness(double nominal) {
        double above;
        double below;
        switch (tolerance) {
            case "EN 315" -> {
                above = 0.2 + 0.03 * nominal;
                below = 0.4 + 0.03 * nominal;
            }
            case "ISO 7823-1" -> {
                above = 0.4 + 0.1 * nominal;
                below = above;
            }
            default -> {
                above = Double.parseDouble(tolerance);
                below = above;
            }
        }
        return new Uncertain(nominal, nominal - below, nominal + above, "mm", Basis.PUBLISHED, tolerance);
    }
}

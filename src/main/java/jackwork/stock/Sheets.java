package jackwork.stock;

import java.util.List;
import java.util.Optional;

/** Sheet materials that may go under a laser; those that never may are not listed. */
public final class Sheets {

    private static final Sheets CATALOGUE = new Sheets(Table.read("sheets.csv").rows().stream()
            .map(row -> new SheetKind(
                    row.text("name"),
                    row.text("label"),
                    row.text("surface"),
                    row.uncertain("density_g_per_cm3", "density_low", "density_high", "g/cm3"),
                    row.flag("grain"),
                    row.text("tolerance"),
                    row.text("note")))
            .toList());

    private final List<SheetKind> all;

    private Sheets(List<SheetKind> all) {
        this.all = all;
    }

    public static Sheets catalogue() {
        return CATALOGUE;
    }

    public List<SheetKind> all() {
        return all;
    }

    public Optional<SheetKind> find(String name) {
        return all.stream().filter(kind -> kind.name().equals(name)).findFirst();
    }

    public List<String> names() {
        return all.stream().map(SheetKind::name).toList();
    }
}

package jackwork.stock;

import java.util.List;
import java.util.Optional;

/** Rods and wires. */
public final class Rods {

    private static final Rods CATALOGUE = new Rods(Table.read("rods.csv").rows().stream()
            .map(row -> new RodKind(
                    row.text("name"),
                    row.text("label"),
                    row.text("surface"),
                    row.uncertain("density_g_per_cm3", "density_low", "density_high", "g/cm3"),
                    row.number("diameter_spread_mm"),
                    row.text("note")))
            .toList());

    private final List<RodKind> all;

    private Rods(List<RodKind> all) {
        this.all = all;
    }

    public static Rods catalogue() {
        return CATALOGUE;
    }

    public List<RodKind> all() {
        return all;
    }

    public Optional<RodKind> find(String name) {
        return all.stream().filter(kind -> kind.name().equals(name)).findFirst();
    }

    public List<String> names() {
        return all.stream().map(RodKind::name).toList();
    }
}

package jackwork.stock;

import java.util.List;
import java.util.Optional;

/** Nuts and washers. */
public final class Fasteners {

    private static final Fasteners CATALOGUE = new Fasteners(Table.read("fasteners.csv").rows().stream()
            .map(row -> new Fastener(
                    row.text("name"),
                    row.text("kind"),
                    row.number("across_mm"),
                    row.number("height_mm"),
                    row.number("hole_mm"),
                    new Uncertain(
                            row.number("mass_g"),
                            row.number("mass_low"),
                            row.number("mass_high"),
                            "g",
                            Basis.PUBLISHED,
                            row.text("source"))))
            .toList());

    private final List<Fastener> all;

    private Fasteners(List<Fastener> all) {
        this.all = all;
    }

    public static Fasteners catalogue() {
        return CATALOGUE;
    }

    public List<Fastener> all() {
        return all;
    }

    public Optional<Fastener> find(String name) {
        return all.stream().filter(fastener -> fastener.name().equals(name)).findFirst();
    }

    public List<String> names() {
        return all.stream().map(Fastener::name).toList();
    }
}

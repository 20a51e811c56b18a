package jackwork.stock;

import java.util.List;

/** How surfaces rub on each other. */
public final class Frictions {

    /** Stands in for a pair that no table knows. */
    private static final Uncertain UNKNOWN =
            new Uncertain(0.35, 0.15, 0.6, "1", Basis.GUESS, "no value known for this pair: measure it by tilting");

    private static final Frictions CATALOGUE = new Frictions(Table.read("friction.csv").rows().stream()
            .map(row -> new FrictionPair(
                    row.text("a"), row.text("b"), row.uncertain("value", "low", "high", "1"), row.text("note")))
            .toList());

    private final List<FrictionPair> all;

    private Frictions(List<FrictionPair> all) {
        this.all = all;
    }

    public static Frictions catalogue() {
        return CATALOGUE;
    }

    public List<FrictionPair> all() {
        return all;
    }

    /** The pair in either order; a wide guess when the table has none. */
    public FrictionPair between(String a, String b) {
        return all.stream()
                .filter(pair -> pair.joins(a, b))
                .findFirst()
                .orElseGet(() -> new FrictionPair(a, b, UNKNOWN, ""));
    }
}

package jackwork.stock;

/** What hands do to make a piece, with how long one of each takes: guesses, until the bench has timed them. */
public final class Operations {

    private static final Catalogue<Operation> CATALOGUE = new Catalogue<>(Table.read("operations.csv").rows().stream()
            .map(row -> new Operation(
                    row.text("name"),
                    row.text("stage"),
                    row.text("per").equals("batch"),
                    row.flag("learns"),
                    row.uncertain("minutes", "low", "high", "min"),
                    row.text("what")))
            .toList());

    private Operations() {}

    public static Catalogue<Operation> catalogue() {
        return CATALOGUE;
    }
}

package jackwork.stock;

/**
 * A number that money depends on, as guessed where a workshop says nothing.
 *
 * @param name its path below {@code pay} in workshop.yaml
 * @param usual our guess
 * @param least below this it is a slip of the pen
 * @param most above this likewise
 * @param what it is, in words
 */
public record PayNumber(String name, Uncertain usual, double least, double most, String what)
        implements Catalogue.Entry {

    static PayNumber of(Table.Row row) {
        return new PayNumber(
                row.text("name"),
                row.uncertain("value", "low", "high", row.text("unit")),
                row.number("least"),
                row.number("most"),
                row.text("what"));
    }
}

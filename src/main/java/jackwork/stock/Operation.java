package jackwork.stock;

/**
 * One kind of work on a piece.
 *
 * @param stage {@code cut}, {@code print}, {@code dress}, {@code build}, {@code try} or {@code pack}
 * @param perBatch done once a batch, not for each piece
 * @param learns whether hands get quicker at it; machines and what is done once do not
 * @param minutes for one of it: a part, a dowel, a sheet
 * @param what it is, in words
 */
public record Operation(String name, String stage, boolean perBatch, boolean learns, Uncertain minutes, String what)
        implements Catalogue.Entry {

    static Operation of(Table.Row row) {
        return new Operation(
                row.text("name"),
                row.text("stage"),
                row.text("per").equals("batch"),
                row.flag("learns"),
                row.uncertain("minutes", "low", "high", "min"),
                row.text("what"));
    }
}

package jackwork.bench;

import java.sql.SQLException;
import java.util.List;

/** {@link Taking}. */
final class TakingKind extends LogKind<Taking> {

    TakingKind() {
        super("takings", "taking", List.of("piece", "amount", "currency", "counted-by", "witnessed-by", "seal"));
    }

    @Override
    public void requireSensible(Taking taking) {
        taking.stamp().requireSensible();
        taking.money().requireCoins();
    }

    @Override
    public long insert(Sql sql, Taking taking) throws SQLException {
        return sql.add(
                table(),
                taking.stamp(),
                "piece, amount, currency, counted_by, witnessed_by, seal",
                sql.piece(taking.serial()),
                taking.money().amount().toPlainString(),
                taking.money().currency(),
                taking.countedBy(),
                taking.witnessedBy(),
                taking.seal());
    }

    @Override
    public List<Logged<Taking>> list(Sql sql) throws SQLException {
        return sql.list(
                "SELECT t.*, p.serial FROM taking t JOIN piece p ON p.id = t.piece ORDER BY t.at, t.id",
                row -> row.logged(new Taking(
                        row.stamp(),
                        row.text("serial"),
                        Money.of(row.text("amount"), row.text("currency")),
                        row.text("counted_by"),
                        row.text("witnessed_by"),
                        row.text("seal"))));
    }

    @Override
    public List<String> fields(Taking taking) {
        return List.of(
                taking.serial(),
                taking.money().amount().toPlainString(),
                taking.money().currency(),
                taking.countedBy(),
                taking.witnessedBy(),
                taking.seal());
    }

    @Override
    public Taking entry(Stamp stamp, CsvRow row) {
        return new Taking(
                stamp,
                row.text("piece"),
                Money.of(row.text("amount"), row.text("currency")),
                row.text("counted-by"),
                row.text("witnessed-by"),
                row.text("seal"));
    }
}

package jackwork.bench;

import java.sql.SQLException;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** {@link Happening}. */
final class HappeningKind extends LogKind<Happening> {

    HappeningKind() {
        super("happenings", "happening", List.of("piece", "what", "who", "amount", "currency"));
    }

    @Override
    public void requireSensible(Happening happening) {
        happening.stamp().requireSensible();
        Money money = happening.money();
        if (money != null) {
            money.requireCoins();
        }
    }

    @Override
    public long insert(Sql sql, Happening happening) throws SQLException {
        Money money = happening.money();
        return sql.add(
                table(),
                happening.stamp(),
                "piece, what, who, amount, currency",
                sql.piece(happening.serial()),
                happening.what().word(),
                happening.who(),
                money == null ? null : money.amount().toPlainString(),
                money == null ? null : money.currency());
    }

    @Override
    public List<Logged<Happening>> list(Sql sql) throws SQLException {
        return sql.list(
                "SELECT h.*, p.serial FROM happening h JOIN piece p ON p.id = h.piece ORDER BY h.at, h.id",
                row -> row.logged(new Happening(
                        row.stamp(),
                        row.text("serial"),
                        Happening.What.of(row.text("what")),
                        row.text("who"),
                        money(row.textOrNull("amount"), row.text("currency")))));
    }

    private static @Nullable Money money(@Nullable String amount, String currency) {
        return amount == null ? null : Money.of(amount, currency);
    }

    @Override
    public List<String> fields(Happening happening) {
        Money money = happening.money();
        return List.of(
                happening.serial(),
                happening.what().word(),
                happening.who(),
                money == null ? "" : money.amount().toPlainString(),
                money == null ? "" : money.currency());
    }

    @Override
    public Happening entry(Stamp stamp, CsvRow row) {
        return new Happening(
                stamp,
                row.text("piece"),
                Happening.What.of(row.text("what")),
                row.textOr("who", ""),
                money(row.textOrNull("amount"), row.textOr("currency", "")));
    }
}

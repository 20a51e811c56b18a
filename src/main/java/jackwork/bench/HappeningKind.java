package jackwork.bench;

import java.sql.SQLException;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** {@link Happening}. */
final class HappeningKind implements LogKind<Happening> {

    @Override
    public String name() {
        return "happenings";
    }

    @Override
    public String table() {
        return "happening";
    }

    @Override
    public Stamp stamp(Happening happening) {
        return happening.stamp();
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
        return sql.insert(
                "INSERT INTO happening (key, at, note, piece, what, who, amount, currency) VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
                happening.stamp().key(),
                happening.stamp().at(),
                happening.stamp().note(),
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
                row -> new Logged<>(
                        row.number("id"),
                        new Happening(
                                row.stamp(),
                                row.text("serial"),
                                Happening.What.of(row.text("what")),
                                row.text("who"),
                                money(row.textOrNull("amount"), row.text("currency"))),
                        row.textOrNull("struck")));
    }

    private static @Nullable Money money(@Nullable String amount, String currency) {
        return amount == null ? null : Money.of(amount, currency);
    }

    @Override
    public List<String> columns() {
        return List.of("piece", "what", "who", "amount", "currency");
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

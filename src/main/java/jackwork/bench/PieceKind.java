package jackwork.bench;

import java.sql.SQLException;
import java.util.List;

/** {@link Piece}. */
final class PieceKind extends LogKind<Piece> {

    PieceKind() {
        super("pieces", "piece", List.of("serial", "design", "revision", "batch"));
    }

    @Override
    public long insert(Sql sql, Piece piece) throws SQLException {
        boolean there = sql.first(
                        "SELECT id FROM piece WHERE serial = ? AND struck IS NULL",
                        row -> row.number("id"),
                        piece.serial())
                .isPresent();
        if (there) {
            throw new BenchException(
                    "the log has a piece \"" + piece.serial() + "\" already; give this one another serial");
        }
        return sql.add(
                table(),
                piece.stamp(),
                "serial, revision, batch",
                piece.serial(),
                sql.revision(piece.revision()),
                piece.batch());
    }

    @Override
    public List<Logged<Piece>> list(Sql sql) throws SQLException {
        return sql.list(
                """
                SELECT p.*, r.design, r.number AS revision_number
                FROM piece p JOIN revision r ON r.id = p.revision ORDER BY p.at, p.id""", row -> row.logged(new Piece(row.stamp(), row.text("serial"), row.revision(), row.text("batch"))));
    }

    @Override
    public List<String> fields(Piece piece) {
        return List.of(
                piece.serial(),
                piece.revision().design(),
                String.valueOf(piece.revision().number()),
                piece.batch());
    }

    @Override
    public Piece entry(Stamp stamp, CsvRow row) {
        return new Piece(stamp, row.text("serial"), row.revision(), row.textOr("batch", ""));
    }
}

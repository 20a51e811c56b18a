package jackwork.bench;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.HexFormat;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteException;

/**
 * The file {@code workshop.db}. Each piece of work opens it, does all or nothing, and closes it, so that no other program is
 * kept waiting. A rollback journal and not a write-ahead log: what is closed is one file that anybody may copy. Synchronous
 * EXTRA: when a transaction is acknowledged, the disk has it.
 */
final class Database {

    private static final int PATIENCE = 10_000;

    private static final int COUNTER = 24;

    private final Path file;

    Database(Path file) {
        this.file = file;
    }

    interface Work<T> {
        T with(Sql sql) throws SQLException;
    }

    /** Reads without making a file where there is none. */
    <T> T read(Work<T> work) {
        if (!Files.exists(file)) {
            return in("jdbc:sqlite::memory:", connection -> {
                Migrations.bringUp(connection);
                return work.with(new Sql(connection));
            });
        }
        return in("jdbc:sqlite:" + file, connection -> {
            if (Migrations.behind(connection)) {
                Migrations.bringUp(connection);
            }
            run(connection, "BEGIN");
            T result = work.with(new Sql(connection));
            run(connection, "ROLLBACK");
            return result;
        });
    }

    /** SQLite's own count of what was written (bytes 24 to 27 of its file), so that it need not be opened. */
    String state() {
        if (!Files.exists(file)) {
            return "none";
        }
        try (InputStream in = Files.newInputStream(file)) {
            in.skipNBytes(COUNTER);
            return HexFormat.of().formatHex(in.readNBytes(4));
        } catch (EOFException e) {
            return "none";
        } catch (IOException e) {
            throw new BenchException(file + " cannot be read: " + e.getMessage(), e);
        }
    }

    /** All of it or nothing; when this returns, it is on the disk. */
    <T> T write(Work<T> work) {
        return in("jdbc:sqlite:" + file, connection -> {
            Migrations.bringUp(connection);
            run(connection, "BEGIN IMMEDIATE");
            try {
                T result = work.with(new Sql(connection));
                run(connection, "COMMIT");
                return result;
            } catch (SQLException | RuntimeException e) {
                undo(connection, e);
                throw e;
            }
        });
    }

    private interface Session<T> {
        T with(Connection connection) throws SQLException;
    }

    private <T> T in(String url, Session<T> session) {
        SQLiteConfig config = new SQLiteConfig();
        config.setBusyTimeout(PATIENCE);
        config.enforceForeignKeys(true);
        try (Connection connection = config.createConnection(url)) {
            run(connection, "PRAGMA synchronous = EXTRA");
            run(connection, "PRAGMA trusted_schema = OFF");
            run(connection, "PRAGMA cell_size_check = ON");
            return session.with(connection);
        } catch (SQLException e) {
            throw new BenchException(words(e), e);
        }
    }

    static void run(Connection connection, String statement) throws SQLException {
        try (Statement prepared = connection.createStatement()) {
            prepared.execute(statement);
        }
    }

    /** A statement that failed may have rolled back by itself; closing does it in any case. */
    static void undo(Connection connection, Exception why) {
        try {
            run(connection, "ROLLBACK");
        } catch (SQLException e) {
            why.addSuppressed(e);
        }
    }

    private String words(SQLException e) {
        String code = e instanceof SQLiteException known ? known.getResultCode().name() : "";
        String detail = " (" + e.getMessage() + ")";
        if (code.startsWith("SQLITE_FULL") || code.startsWith("SQLITE_IOERR")) {
            return file + ": the disk does not take it, is it full? Nothing was logged; what is in the log stays."
                    + " Free some room and log it again" + detail;
        }
        if (code.startsWith("SQLITE_READONLY")
                || code.startsWith("SQLITE_CANTOPEN")
                || code.startsWith("SQLITE_PERM")) {
            return file + ": cannot be written here. Nothing was logged; give yourself the right to write in "
                    + file.toAbsolutePath().getParent() + ", or copy the workshop" + detail;
        }
        if (code.startsWith("SQLITE_NOTADB") || code.startsWith("SQLITE_CORRUPT")) {
            return file + ": is no log, or a damaged one. Nothing was changed; put it aside and bring back a copy"
                    + detail;
        }
        if (code.startsWith("SQLITE_BUSY") || code.startsWith("SQLITE_LOCKED")) {
            return file + ": another program has held it for " + PATIENCE / 1000
                    + " s. Nothing was logged; close that and log it again" + detail;
        }
        throw new IllegalStateException(file + ": " + e.getMessage(), e);
    }
}

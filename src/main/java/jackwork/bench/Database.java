package jackwork.bench;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.HexFormat;
import java.util.Objects;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConnection;
import org.sqlite.SQLiteException;
import org.sqlite.SQLiteLimits;

/**
 * The file {@code workshop.db}. Each piece of work opens it, does all or nothing, and closes it, so that no other program is
 * kept waiting. A rollback journal and not a write-ahead log: what is closed is one file that anybody may copy. Synchronous
 * EXTRA: when a transaction is acknowledged, the disk has it.
 */
final class Database {

    private static final int PATIENCE = 10_000;

    private static final int COUNTER = 24;

    /** A frozen file is the longest there is, and a design has none larger than 20 MiB, bytes. */
    private static final int LONGEST_VALUE = 64 << 20;

    private final Path file;

    Database(Path file) {
        this.file = file;
    }

    interface Work<T> {
        T with(Sql sql) throws SQLException;
    }

    /** Reads without making a file where there is none. */
    <T> T read(Work<T> work) {
        if (!isThere()) {
            return in("jdbc:sqlite::memory:", connection -> {
                Migrations.bringUp(connection);
                return work.with(new Sql(connection));
            });
        }
        LogFile.require(file);
        return in("jdbc:sqlite:" + file, connection -> {
            if (Migrations.behind(connection)) {
                Migrations.requireBegun(connection);
                Migrations.bringUp(connection);
            }
            run(connection, "BEGIN");
            T result = work.with(new Sql(connection));
            run(connection, "ROLLBACK");
            return result;
        });
    }

    /** A link that leads nowhere counts: a log made through it would stand outside. */
    private boolean isThere() {
        return Files.exists(file, LinkOption.NOFOLLOW_LINKS);
    }

    /** SQLite's own count of what was written (bytes 24 to 27 of its file), so that it need not be opened. */
    String state() {
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
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
        if (!isThere()) {
            begin();
        }
        LogFile.require(file);
        return in("jdbc:sqlite:" + file, connection -> {
            Migrations.requireBegun(connection);
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

    /** A new log appears whole: one without anything in it is damaged, and said to be. */
    private void begin() {
        byte[] fresh = in("jdbc:sqlite::memory:", connection -> {
            Migrations.bringUp(connection);
            return connection.unwrap(SQLiteConnection.class).serialize("main");
        });
        try {
            LogFile.begin(file, fresh);
        } catch (IOException e) {
            throw new BenchException(notWritten(e), e);
        }
    }

    private String notWritten(IOException e) {
        String detail = " (" + e + ")";
        return e instanceof AccessDeniedException
                        || e instanceof NoSuchFileException
                        || Files.notExists(folder())
                        || !Files.isWritable(folder())
                ? cannotWrite(detail)
                : isFull(detail);
    }

    private Path folder() {
        return Objects.requireNonNull(file.toAbsolutePath().getParent());
    }

    private String isFull(String detail) {
        return file + ": the disk does not take it, is it full? Nothing was logged; what is in the log stays."
                + " Free some room and log it again" + detail;
    }

    private String cannotWrite(String detail) {
        return file + ": cannot be written here. Nothing was logged; give yourself the right to write in " + folder()
                + ", or copy the workshop" + detail;
    }

    /** What SQLite says of a file of a format that it does not know yet, under the code that stands for faults of ours too. */
    private static final String LATER_FORMAT = "unsupported file format";

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
            connection.unwrap(SQLiteConnection.class).setLimit(SQLiteLimits.SQLITE_LIMIT_LENGTH, LONGEST_VALUE);
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
            return isFull(detail);
        }
        if (code.startsWith("SQLITE_READONLY")
                || code.startsWith("SQLITE_CANTOPEN")
                || code.startsWith("SQLITE_PERM")) {
            return cannotWrite(detail);
        }
        if (code.startsWith("SQLITE_NOTADB")
                || code.startsWith("SQLITE_CORRUPT")
                || code.startsWith("SQLITE_FORMAT")
                || code.startsWith("SQLITE_MISMATCH")
                || code.startsWith("SQLITE_TOOBIG")
                || detail.contains(LATER_FORMAT)) {
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

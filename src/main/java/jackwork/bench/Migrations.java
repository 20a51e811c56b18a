package jackwork.bench;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

/**
 * The steps from an empty file to today's tables, each a script among the resources. The file says in its
 * {@code user_version} how many it has been through.
 */
final class Migrations {

    /** The last script's number. */
    static final int VERSION = 2;

    /** "JkWk": says whose file it is. */
    private static final int APPLICATION = 0x4A6B576B;

    private Migrations() {}

    /** @throws BenchException when a newer Jackwork wrote it, or another program, or its tables are others */
    static boolean behind(Connection connection) throws SQLException {
        int version = number(connection, "PRAGMA user_version");
        if (version > VERSION) {
            throw BenchException.ofLog("workshop.db is of format " + version + ", this Jackwork knows formats up to "
                    + VERSION + "; use a newer Jackwork. Nothing was changed");
        }
        int tables = number(connection, "SELECT count(*) FROM sqlite_schema");
        boolean ours = version > 0 && number(connection, "PRAGMA application_id") == APPLICATION;
        if ((tables > 0 && !ours) || version < 0) {
            throw BenchException.ofLog("workshop.db is another program's; move it away. Nothing was changed");
        }
        Schema.require(connection, BenchLog.FILE, version);
        return version < VERSION;
    }

    /** @throws BenchException when it has been through no script: it was never a log, or is none any more */
    static void requireBegun(Connection connection) throws SQLException {
        if (number(connection, "PRAGMA user_version") == 0) {
            throw BenchException.ofLog("workshop.db is no log: a database without its tables. Nothing was changed;"
                    + " move it away, and bring back a copy of the log if there was one");
        }
    }

    /** All steps that are missing, or none. */
    static void bringUp(Connection connection) throws SQLException {
        if (!behind(connection)) {
            return;
        }
        Database.run(connection, "BEGIN IMMEDIATE");
        try {
            // Another program may have been quicker.
            behind(connection);
            run(connection, number(connection, "PRAGMA user_version"), VERSION);
            Database.run(connection, "PRAGMA application_id = " + APPLICATION);
            Database.run(connection, "COMMIT");
        } catch (SQLException | RuntimeException e) {
            Database.undo(connection, e);
            throw e;
        }
    }

    /** The scripts after one of them up to another. */
    static void run(Connection connection, int from, int to) throws SQLException {
        for (int next = from + 1; next <= to; next++) {
            try (Statement statement = connection.createStatement()) {
                statement.executeUpdate(script(next));
            }
            Database.run(connection, "PRAGMA user_version = " + next);
        }
    }

    private static int number(Connection connection, String query) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet set = statement.executeQuery(query)) {
            return set.next() ? set.getInt(1) : 0;
        }
    }

    private static String script(int number) {
        try (InputStream in = Migrations.class.getResourceAsStream(number + ".sql")) {
            if (in == null) {
                throw new IllegalStateException(number + ".sql is missing from the program's own resources");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException(number + ".sql cannot be read", e);
        }
    }
}

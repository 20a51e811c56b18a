package jackwork.bench;

import jackwork.Child;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Starts {@link LoggingChild} as a program of its own, quick to start. */
final class Children {

    private final Path libraries;

    /** @param folder for the database's native library, unpacked once for all */
    Children(Path folder) throws IOException {
        this.libraries = Files.createDirectories(folder);
        String name = org.sqlite.util.LibraryLoaderUtil.getNativeLibName();
        String path = org.sqlite.util.LibraryLoaderUtil.getNativeLibResourcePath();
        try (InputStream in = LogTest.class.getResourceAsStream(path + "/" + name)) {
            Files.copy(in, libraries.resolve(name));
        }
    }

    /** @param before words before the command: a shell that limits, a user that may do less */
    Process start(List<String> before, Path workshop, String prefix, int most) throws IOException {
        String few = Stream.of(Child.classes().split(File.pathSeparator))
                .filter(entry -> entry.matches(".*(classes|sqlite-jdbc.*|slf4j.*|jspecify.*)"))
                .collect(Collectors.joining(File.pathSeparator));
        return Child.start(
                        before,
                        List.of("-Xmx64m", "-Dorg.sqlite.lib.path=" + libraries),
                        few,
                        LoggingChild.class,
                        workshop.toString(),
                        prefix,
                        String.valueOf(most))
                .process();
    }

    /** A log with the revision that the child's trials are of. */
    static BenchLog log(Path workshop) throws IOException {
        BenchLog log = BenchLog.in(Files.createDirectories(workshop));
        log.freeze(
                "heron", "Heron", Instant.parse("2026-03-01T09:30:00Z"), "", new TreeMap<>(Map.of("a", new byte[9])));
        return log;
    }

    /** What SQLite itself says of the file. */
    static String integrity(Path workshop) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + workshop.resolve(BenchLog.FILE));
                Statement statement = connection.createStatement()) {
            try (ResultSet broken = statement.executeQuery("PRAGMA foreign_key_check")) {
                if (broken.next()) {
                    return "a row refers to nothing";
                }
            }
            try (ResultSet set = statement.executeQuery("PRAGMA integrity_check")) {
                return set.getString(1);
            }
        }
    }
}

package jackwork.bench;

import jackwork.design.WholeFile;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** A whole log as a folder of CSV files and frozen designs, and back. */
public final class Archive {

    private static final String REVISIONS = "revisions";
    private static final long MOST_BYTES = 256L << 20;

    /** What came in: how many entries were new, how many were there already. */
    public record Taken(int added, int already) {}

    private Archive() {}

    /**
     * @param folder new or empty
     * @return the files written, frozen designs as one each
     */
    public static List<Path> write(BenchLog log, Path folder) throws IOException {
        requireEmpty(folder);
        Files.createDirectories(folder);
        List<Path> written = new ArrayList<>();
        List<Revision> revisions = log.revisions();
        for (Revision revision : revisions) {
            Path place = folder.resolve(REVISIONS).resolve(revision.name().folder());
            writeFiles(log.files(revision.name()), place);
            written.add(place);
        }
        written.add(save(folder, REVISIONS, RevisionTable.write(revisions)));
        for (LogKind<?> kind : Kinds.ALL) {
            written.add(save(folder, kind.name(), csv(log, kind)));
        }
        return written;
    }

    /** All entries of a kind that count, as CSV. */
    public static <T extends Stamped> String csv(BenchLog log, LogKind<T> kind) {
        return CsvTable.write(kind, log.list(kind));
    }

    /** A frozen design's files into a folder that is new or empty: a workshop of its own. */
    public static void restore(BenchLog log, RevisionName name, Path folder) throws IOException {
        requireEmpty(folder);
        writeFiles(log.files(name), folder);
    }

    /**
     * Takes over a folder as {@link #write} makes it, or one CSV file of it, by its name. All or nothing.
     *
     * @throws BenchException when something is wrong with it; nothing was changed then
     */
    public static Taken read(BenchLog log, Path from) throws IOException {
        Map<Revision, SortedMap<String, byte[]>> revisions = Map.of();
        List<BenchLog.Entry<?>> entries = new ArrayList<>();
        if (Files.isDirectory(from)) {
            Path table = from.resolve(REVISIONS + ".csv");
            revisions = Files.exists(table) ? revisions(from, table) : Map.of();
            for (LogKind<?> kind : Kinds.ALL) {
                Path file = from.resolve(kind.name() + ".csv");
                if (Files.exists(file)) {
                    entries.addAll(entries(kind, file));
                }
            }
            if (revisions.isEmpty() && entries.isEmpty()) {
                throw new BenchException(from + " has nothing in it that could be taken over; expected files as "
                        + "`jackwork bench export` writes them");
            }
        } else {
            String name = String.valueOf(from.getFileName()).replaceAll("\\.csv$", "");
            LogKind<?> kind = Kinds.named(name)
                    .orElseThrow(() -> new BenchException(from + ": expected a folder, or a file by the name of one of "
                            + String.join(".csv, ", Kinds.names()) + ".csv"));
            entries.addAll(entries(kind, from));
        }
        return take(log, revisions, entries);
    }

    private static Taken take(
            BenchLog log, Map<Revision, SortedMap<String, byte[]>> revisions, List<BenchLog.Entry<?>> entries) {
        return log.write(sql -> {
            int added = 0;
            Revisions there = new Revisions(sql);
            for (Map.Entry<Revision, SortedMap<String, byte[]>> revision : revisions.entrySet()) {
                added += there.take(revision.getKey(), revision.getValue()) ? 1 : 0;
            }
            Map<LogKind<?>, Map<String, Object>> listed = new HashMap<>();
            Map<LogKind<?>, Integer> row = new HashMap<>();
            for (BenchLog.Entry<?> entry : entries) {
                int number = row.merge(entry.kind(), 1, Integer::sum);
                try {
                    added += entry.addTo(sql, listed) ? 1 : 0;
                } catch (BenchException e) {
                    throw e.at(entry.kind().name() + ".csv, entry " + number + ": ");
                }
            }
            return new Taken(added, revisions.size() + entries.size() - added);
        });
    }

    private static Map<Revision, SortedMap<String, byte[]>> revisions(Path from, Path table) throws IOException {
        Map<Revision, SortedMap<String, byte[]>> revisions = new java.util.LinkedHashMap<>();
        for (RevisionTable.Line line : RevisionTable.read(REVISIONS + ".csv", text(table))) {
            Path folder = from.resolve(REVISIONS).resolve(line.name().folder()).normalize();
            if (!folder.startsWith(from.resolve(REVISIONS).normalize()) || !Files.isDirectory(folder)) {
                throw new BenchException(line.place() + "expected the frozen files in " + folder);
            }
            SortedMap<String, byte[]> files = readFiles(folder);
            SortedMap<String, String> sums = Sums.of(files);
            if (!Sums.fingerprint(sums).equals(line.fingerprint())) {
                throw new BenchException(line.place() + "the files in " + folder
                        + " are not those that were frozen; bring back the folder as it was exported");
            }
            revisions.put(
                    new Revision(line.name(), line.title(), line.at(), line.note(), line.fingerprint(), sums), files);
        }
        return revisions;
    }

    private static <T extends Stamped> List<BenchLog.Entry<?>> entries(LogKind<T> kind, Path file) throws IOException {
        List<BenchLog.Entry<?>> entries = new ArrayList<>();
        CsvTable.read(kind, String.valueOf(file.getFileName()), text(file))
                .forEach(entry -> entries.add(new BenchLog.Entry<>(kind, entry)));
        return entries;
    }

    private static String text(Path file) throws IOException {
        if (Files.size(file) > MOST_BYTES) {
            throw new BenchException(file + ": is larger than 256 MiB; import it in parts");
        }
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(Files.readAllBytes(file)))
                    .toString();
        } catch (CharacterCodingException e) {
            // Refused for good, so without a cause: the same bytes will be no text later either.
            throw new BenchException(file.getFileName() + ": is not UTF-8 text; save it as such");
        }
    }

    private static SortedMap<String, byte[]> readFiles(Path folder) throws IOException {
        SortedMap<String, byte[]> files = new TreeMap<>();
        long bytes = 0;
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                bytes += Files.size(file);
                if (bytes > MOST_BYTES) {
                    throw new BenchException(folder + " holds more than 256 MiB, more than a design has");
                }
                files.put(folder.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
            }
        }
        return files;
    }

    private static void writeFiles(SortedMap<String, byte[]> files, Path folder) throws IOException {
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            Path target = folder.resolve(file.getKey()).normalize();
            if (!target.startsWith(folder.normalize()) || Path.of(file.getKey()).isAbsolute()) {
                throw new BenchException("the log holds a file \"" + file.getKey() + "\", which would lie outside "
                        + folder + "; nothing was written to it");
            }
            Files.createDirectories(target.getParent() == null ? folder : target.getParent());
            WholeFile.write(target, file.getValue());
        }
    }

    private static Path save(Path folder, String name, String text) throws IOException {
        Path file = folder.resolve(name + ".csv");
        WholeFile.write(file, text);
        return file;
    }

    private static void requireEmpty(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> files = Files.list(folder)) {
                if (files.findAny().isPresent()) {
                    throw new FileAlreadyExistsException(
                            folder.toString(), null, "there is something in it already; nothing was changed");
                }
            }
        }
    }
}

package jackwork.app.bench;

import jackwork.app.core.DesignCheck;
import jackwork.app.core.Renewal;
import jackwork.bench.BenchException;
import jackwork.bench.BenchLog;
import jackwork.bench.Kinds;
import jackwork.bench.Piece;
import jackwork.bench.Prediction;
import jackwork.bench.Revision;
import jackwork.bench.RevisionName;
import jackwork.bench.Stamp;
import jackwork.builds.BuildReport;
import jackwork.builds.BuildRun;
import jackwork.design.Design;
import jackwork.design.DesignException;
import jackwork.design.DesignFile;
import jackwork.design.DesignFiles;
import jackwork.design.DesignReader;
import jackwork.design.WholeFile;
import jackwork.design.WorkshopReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.IntConsumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A workshop's bench: its log, and what needs the designs as well. */
public final class Bench {

    private final Path workshop;
    private final BenchLog log;

    private Bench(Path workshop) {
        this.workshop = workshop;
        this.log = BenchLog.in(workshop);
    }

    /**
     * @param place the workshop's folder, or any in it
     * @throws BenchException when it is in no workshop
     */
    public static Bench in(Path place) {
        return new Bench(WorkshopReader.folderOf(place)
                .orElseThrow(() -> new BenchException(place.toAbsolutePath().normalize()
                        + " is in no workshop: no workshop.yaml here or in a folder above. Name one with --workshop")));
    }

    public Path workshop() {
        return workshop;
    }

    public BenchLog log() {
        return log;
    }

    /** The name by which the log knows a design: its folder from the workshop's. */
    public String id(Path design) {
        Path folder = Files.isRegularFile(design) ? design.toAbsolutePath().getParent() : design;
        String name = workshop.relativize(
                        (folder == null ? design : folder).toAbsolutePath().normalize())
                .toString()
                .replace('\\', '/');
        if (name.isEmpty() || name.startsWith("..")) {
            throw new BenchException(design + " is no design of the workshop in " + workshop);
        }
        return name;
    }

    /**
     * The design's files as they stand, under the next number. They are copied first and read from the copy, so that what
     * is frozen can be packed again by itself.
     */
    public Revision freeze(Path design, String note, Instant at) throws IOException {
        Design read = DesignReader.read(design);
        String id = DesignFiles.id(read);
        SortedMap<String, byte[]> files = DesignFiles.bytes(read);
        String title =
                apart(files, folder -> DesignReader.read(folder.resolve(id)).name());
        return log.freeze(id, title, at, note, files);
    }

    /** The revision of that number, else the last one. */
    public Revision revision(String design, @Nullable Integer number) {
        List<Revision> all = log.revisions().stream()
                .filter(revision -> revision.name().design().equals(design))
                .toList();
        Optional<Revision> found = number == null
                ? all.stream().reduce((first, second) -> second)
                : all.stream()
                        .filter(revision -> revision.name().number() == number)
                        .findFirst();
        return found.orElseThrow(() -> new BenchException("the log has no revision "
                + (number == null ? "" : number + " ") + "of " + design
                + (all.isEmpty()
                        ? "; freeze it first: jackwork bench freeze"
                        : "; it has 1 to " + all.get(all.size() - 1).name().number())));
    }

    /** Whether the design's files are still those of its revision; true as well when it is gone. */
    public boolean unchanged(Revision revision) {
        Path design = workshop.resolve(revision.name().design());
        if (!Files.isDirectory(design)) {
            return true;
        }
        try {
            Design read = DesignReader.read(design);
            return RevisionDifference.between(log.files(revision.name()), DesignFiles.bytes(read))
                    .isEmpty();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What differs between two states, file by file. */
    public List<RevisionDifference> compare(RevisionName before, RevisionName after) {
        return RevisionDifference.between(log.files(before), log.files(after));
    }

    /** The same against another revision, or against the design as it stands, by 0. */
    List<RevisionDifference> compare(RevisionName before, int after) {
        if (after != 0) {
            return compare(before, new RevisionName(before.design(), after));
        }
        try {
            Design read = DesignReader.read(workshop.resolve(before.design()));
            return RevisionDifference.between(log.files(before), DesignFiles.bytes(read));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public Piece piece(String serial) {
        List<Piece> pieces = log.counting(Kinds.PIECES);
        return pieces.stream()
                .filter(piece -> piece.serial().equals(serial))
                .findFirst()
                .orElseThrow(() -> new BenchException("the log has no piece \"" + serial + "\""
                        + (pieces.isEmpty()
                                ? ""
                                : "; it has "
                                        + pieces.stream().map(Piece::serial).collect(Collectors.joining(", ")))));
    }

    /** What a frozen design says of itself. */
    public DesignFile designFile(RevisionName name) {
        byte[] text = log.files(name).get(name.design() + "/" + DesignReader.FILE);
        if (text == null) {
            throw new BenchException(name + " has no design.yaml in the log");
        }
        return DesignReader.parse(new String(text, StandardCharsets.UTF_8));
    }

    /** Codes of the coins that a frozen design takes; none when it cannot be read, frozen by an older Jackwork, say. */
    List<String> coins(RevisionName name) {
        try {
            return designFile(name).coins();
        } catch (DesignException e) {
            return List.of();
        }
    }

    /** Virtual builds of a frozen design, with the workshop's numbers of then, into the log. */
    public Prediction predict(RevisionName name, int builds, long seed, int threads, Instant at, IntConsumer progress)
            throws IOException, InterruptedException {
        return keep(name, builds(name, builds, seed).run(threads, progress), at);
    }

    /** The same builds, not yet run. */
    BuildRun builds(RevisionName name, int builds, long seed) throws IOException {
        return frozen(name, design -> DesignCheck.builds(DesignCheck.of(design).subject(), builds, seed));
    }

    /** What became of them, into the log. */
    Prediction keep(RevisionName name, BuildReport report, Instant at) {
        Map<String, Integer> causes = new TreeMap<>();
        report.causes().forEach((cause, count) -> causes.put(cause.name().toLowerCase(Locale.ROOT), count));
        Prediction prediction = new Prediction(
                Stamp.of(at, ""),
                name,
                report.seed(),
                report.builds(),
                report.passes(),
                report.unknowns(),
                report.guesses(),
                report.passesByCoin(),
                causes);
        log.add(Kinds.PREDICTIONS, prediction);
        return prediction;
    }

    /**
     * A frozen design, read again in a place of its own for as long as it is looked at; one of an earlier format as it would
     * be in today's.
     */
    <T> T frozen(RevisionName name, Function<Design, T> look) throws IOException {
        return apart(
                log.files(name),
                folder -> look.apply(DesignReader.read(folder.resolve(name.design()), Renewal.renewedTexts(folder))));
    }

    private interface Reading<T> {
        T of(Path folder) throws IOException;
    }

    /** Files on a place of their own for as long as they are read. */
    private static <T> T apart(SortedMap<String, byte[]> files, Reading<T> reading) throws IOException {
        Path folder = Files.createTempDirectory("jackwork-frozen");
        try {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                Path target = folder.resolve(file.getKey()).normalize();
                if (!target.startsWith(folder)) {
                    throw new BenchException("the log holds a file \"" + file.getKey() + "\" outside its workshop");
                }
                Files.createDirectories(target.getParent() == null ? folder : target.getParent());
                WholeFile.write(target, file.getValue());
            }
            return reading.of(folder);
        } finally {
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path file : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
    }
}

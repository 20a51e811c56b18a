package jackwork.app.history;

import jackwork.app.wire.Json;
import jackwork.design.Abandoned;
import jackwork.design.DesignException;
import jackwork.design.DesignFiles;
import jackwork.design.Inside;
import jackwork.design.WholeFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;

/**
 * Files of a workshop changed as one step, and that step taken back byte for byte. The bytes before and after are kept below
 * {@code .jackwork/renewed}, a numbered folder for each step, which is there whole before the first file is written. Where the
 * step stands is told by the files alone, so a program that was killed at any moment leaves nothing that the next cannot
 * bring to its end or take back.
 *
 * <p>A workshop may come from anybody, this folder with it: what does not fit is refused in words and nothing is written.
 */
public final class Renewals {

    private static final String BEFORE = "before";
    private static final String AFTER = "after";
    private static final String LIST = "list.json";
    private static final String NAME = "name";
    /** As large as a file of a design may be, and the list of them. */
    private static final long MOST_BYTES = 1L << 20;

    private static final int MOST_STEPS = 10_000;

    private static final String AS_THEY_WERE = "; all files are as they were";
    private static final String NOT_PUT_BACK =
            "; and not every file could be put back: make room, then give the same command again";

    private final Path workshop;
    private final Path folder;

    /** How a file stands to a step. */
    public enum Stands {
        BEFORE,
        AFTER,
        /** There is no such file now, though its folder is there. */
        GONE,
        /** It lay in a folder that is there no more. */
        WITH_ITS_FOLDER,
        /** It was changed since. */
        OTHERWISE
    }

    /** @param name from the workshop, with slashes */
    public record Changed(Path file, String name, byte[] before, byte[] after) {

        Stands stands() {
            try {
                if (Files.isRegularFile(file)) {
                    byte[] now = Files.size(file) > MOST_BYTES ? new byte[0] : Files.readAllBytes(file);
                    return Arrays.equals(now, after)
                            ? Stands.AFTER
                            : Arrays.equals(now, before) ? Stands.BEFORE : Stands.OTHERWISE;
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
                return Stands.OTHERWISE;
            }
            return Files.isDirectory(file.resolveSibling("")) ? Stands.GONE : Stands.WITH_ITS_FOLDER;
        }
    }

    /**
     * A step that is kept.
     *
     * @param told what was told of it when it was made
     */
    public record Step(Path folder, List<Changed> files, List<String> told) {

        private List<Changed> standing(Stands... how) {
            return files.stream()
                    .filter(file -> List.of(how).contains(file.stands()))
                    .toList();
        }

        /** Whether any of it stands in the files. */
        public boolean isMade() {
            return !standing(Stands.AFTER).isEmpty();
        }

        /** Whether a part of it stands in the files, and a part does not. */
        public boolean isBrokenOff() {
            return isMade() && !standing(Stands.BEFORE).isEmpty();
        }

        /** Whether nothing of it stands in the files, and each is as it was before. */
        boolean isTakenBack() {
            return standing(Stands.BEFORE).size() == files.size();
        }

        /** Files that were changed since. */
        public List<Changed> changedSince() {
            return standing(Stands.OTHERWISE);
        }
    }

    public Renewals(Path workshop) {
        this.workshop = workshop.toAbsolutePath().normalize();
        this.folder = this.workshop.resolve(".jackwork").resolve("renewed");
    }

    /** Whether anything is kept here. */
    public boolean isThere() {
        return Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS);
    }

    /**
     * The last step that is made in the files, all of it or a part.
     *
     * @throws DesignException when what is kept is not as it was written
     */
    public Optional<Step> last() {
        return steps().stream().filter(Step::isMade).findFirst();
    }

    /** All that are kept, the last first. */
    private List<Step> steps() {
        return numbers().stream()
                .sorted(Comparator.reverseOrder())
                .map(number -> read(folder.resolve(String.valueOf(number))))
                .toList();
    }

    /** Keeps a step that is about to be made: whole, or not at all. */
    public Step keep(Collection<Changed> files, List<String> told) {
        int number = numbers().stream().mapToInt(Integer::intValue).max().orElse(0) + 1;
        Path kept = folder.resolve(String.valueOf(number));
        Inside.requireOwn(workshop, kept.resolve(LIST));
        Path making = folder.resolve("." + number + "." + Abandoned.mark());
        try {
            Files.createDirectories(folder);
            clear();
            // What was killed after it was taken back, or before the first file was written.
            steps().stream().filter(Step::isTakenBack).forEach(this::drop);
            for (Changed file : files) {
                write(making.resolve(BEFORE).resolve(file.name()), file.before());
                write(making.resolve(AFTER).resolve(file.name()), file.after());
            }
            write(making.resolve(LIST), list(files, told));
            Files.move(making, kept, StandardCopyOption.ATOMIC_MOVE);
            return new Step(kept, List.copyOf(files), told);
        } catch (IOException e) {
            try {
                delete(making);
            } catch (IOException still) {
                e.addSuppressed(still);
            }
            // Whatever stays of the folder, none of the workshop's own files was touched.
            throw told(e, AS_THEY_WERE);
        }
    }

    /** Writes what is missing of a step; where one file cannot be written, none is, and the step is dropped. */
    public void make(Step step) {
        write(step.standing(Stands.BEFORE), true);
    }

    /**
     * Takes a step back, files that were changed since first to be out of the way.
     *
     * @throws DesignException naming those, and nothing is changed then
     */
    public void takeBack(Step step) {
        List<Changed> since = step.changedSince();
        if (!since.isEmpty()) {
            throw DesignException.of(
                    since.get(0).name(),
                    "was changed since the step, so nothing was taken back"
                            + (since.size() == 1
                                    ? ""
                                    : " (and "
                                            + String.join(
                                                    ", ",
                                                    since.stream()
                                                            .skip(1)
                                                            .map(Changed::name)
                                                            .toList()) + ")")
                            + "; give what you changed another name, take the step back, then put in again what you"
                            + " changed. As it was before, it is in "
                            + name(step.folder()
                                    .resolve(BEFORE)
                                    .resolve(since.get(0).name())));
        }
        write(step.standing(Stands.AFTER, Stands.GONE), false);
        drop(step);
    }

    /** A step that is not made any more is nothing to be kept. */
    public void drop(Step step) {
        try {
            Path going = folder.resolve("." + step.folder().getFileName() + "." + Abandoned.mark());
            Files.move(step.folder(), going, StandardCopyOption.ATOMIC_MOVE);
            delete(going);
        } catch (IOException e) {
            // What stays of it is of no step that is made: nobody asks for it.
        }
    }

    private void write(List<Changed> files, boolean forth) {
        List<Changed> written = new ArrayList<>();
        try {
            for (Changed file : files) {
                Inside.require(workshop, file.file());
                WholeFile.write(file.file(), forth ? file.after() : file.before());
                written.add(file);
            }
        } catch (IOException | DesignException e) {
            putBack(written, forth, e);
            throw e instanceof IOException io
                    ? told(io, io.getSuppressed().length == 0 ? AS_THEY_WERE : NOT_PUT_BACK)
                    : (DesignException) e;
        }
    }

    /** The same fault, told with what became of the files. */
    private static UncheckedIOException told(IOException why, String ofTheFiles) {
        return new UncheckedIOException(new IOException(why.getMessage() + ofTheFiles, why));
    }

    private static void putBack(List<Changed> written, boolean forth, Exception why) {
        try {
            for (Changed file : written) {
                WholeFile.write(file.file(), forth ? file.before() : file.after());
            }
        } catch (IOException e) {
            // No room for that either: the same command ends or takes back what was begun.
            why.addSuppressed(e);
        }
    }

    private static byte[] list(Collection<Changed> files, List<String> told) {
        var list = Json.object();
        var names = list.putArray("files");
        files.forEach(file -> names.addObject()
                .put(NAME, file.name())
                .put(BEFORE, DesignFiles.nameOf(file.before()))
                .put(AFTER, DesignFiles.nameOf(file.after())));
        var words = list.putArray("told");
        told.forEach(words::add);
        return Json.pretty(list).getBytes(StandardCharsets.UTF_8);
    }

    private List<Integer> numbers() {
        if (!isThere()) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(path -> String.valueOf(path.getFileName()))
                    .filter(name -> name.matches("[1-9]\\d{0,3}"))
                    .map(Integer::valueOf)
                    .limit(MOST_STEPS)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Step read(Path kept) {
        try {
            var list = Json.mapper().readTree(bytes(kept.resolve(LIST)));
            Map<String, Changed> files = new LinkedHashMap<>();
            for (var node : list.path("files")) {
                String name = node.path(NAME).asString("");
                Path file = workshop.resolve(name).normalize();
                if (!isPlain(name) || !Inside.is(workshop, file)) {
                    throw unfit(kept, "it names \"" + name + "\", which is no file of the workshop");
                }
                files.put(
                        name,
                        new Changed(
                                file,
                                name,
                                bytes(kept.resolve(BEFORE).resolve(name), node.path(BEFORE)),
                                bytes(kept.resolve(AFTER).resolve(name), node.path(AFTER))));
            }
            if (files.isEmpty()) {
                throw unfit(kept, "it names no file");
            }
            List<String> told = new ArrayList<>();
            list.path("told").forEach(node -> told.add(node.asString("")));
            return new Step(kept, List.copyOf(files.values()), List.copyOf(told));
        } catch (IOException | JacksonException | InvalidPathException e) {
            throw unfit(kept, String.valueOf(e.getMessage()));
        }
    }

    /** A file below the workshop, and none that Jackwork keeps for itself. */
    private static boolean isPlain(String name) {
        List<String> words = List.of(name.split("/", -1));
        return !words.contains("..")
                && !words.contains(".")
                && !words.contains("")
                && name.indexOf('\\') < 0
                && !words.get(0).equals(".jackwork");
    }

    /** A file's bytes as its step kept them, else refused: wrong ones are not to be taken back to. */
    private byte[] bytes(Path file, JsonNode hash) throws IOException {
        byte[] bytes = bytes(file);
        if (!DesignFiles.nameOf(bytes).equals(hash.asString(""))) {
            throw new FileSystemException(name(file), null, "has other bytes than were kept");
        }
        return bytes;
    }

    private byte[] bytes(Path file) throws IOException {
        if (Inside.stranger(workshop, file).isPresent()
                || !Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                || Files.size(file) > MOST_BYTES) {
            throw new FileSystemException(name(file), null, "is not there as it was kept");
        }
        return Files.readAllBytes(file);
    }

    private DesignException unfit(Path kept, String why) {
        return DesignException.of(
                name(kept),
                "what is kept there for taking back is not as it was written (" + why
                        + "), and nothing was changed; move that folder away");
    }

    private String name(Path file) {
        return workshop.relativize(file).toString().replace('\\', '/');
    }

    private static void write(Path file, byte[] bytes) throws IOException {
        Path parent = file.getParent();
        if (parent != null) {
            Files.createDirectories(parent);
        }
        WholeFile.writeThrough(file, bytes);
    }

    /** What killed programs left. */
    private void clear() throws IOException {
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder, ".*")) {
            for (Path path : all) {
                if (Abandoned.isAbandoned(path)) {
                    delete(path);
                }
            }
        }
    }

    private static void delete(Path folder) throws IOException {
        if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}

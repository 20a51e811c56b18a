package jackwork.design;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The files that a design is made of, and their state as one short word: it changes when anything in them does.
 *
 * @param design its {@code design.yaml}
 * @param box the box's YAML
 * @param figure the figure's YAML
 * @param others drawings, pictures and the workshop's file
 */
public record DesignFiles(Path design, Path box, Path figure, List<Path> others) {

    private static final int VERSION_LETTERS = 20;

    public static DesignFiles of(Design design) {
        Path file = design.folder().resolve(DesignReader.FILE);
        Path box = design.folder().resolve(design.file().box());
        Path figure = design.folder().resolve(design.file().figure());
        List<Path> others = new ArrayList<>();
        beside(box, design.box().works(), others);
        beside(figure, design.figure().works(), others);
        WorkshopReader.folderOf(design.folder())
                .ifPresent(workshop -> others.add(workshop.resolve(WorkshopReader.FILE)));
        return new DesignFiles(
                plain(file),
                plain(box),
                plain(figure),
                others.stream().map(DesignFiles::plain).toList());
    }

    /** A name at the beginning of a line, as these files are written. */
    private static final Pattern NAMES = Pattern.compile(
            "(?m)^[ \\t]*(?:\"?(?:figure\\.)?)(box|figure|drawing)\"?:[ \\t]*([\"']?)([^\"'#\\r\\n]*?)\\2[ \\t]*(?:#.*)?$");

    /**
     * The files that changes of a design made here may touch: its YAML files and the figure's drawing. Where the design
     * cannot be read as a whole they are those that its files name.
     *
     * @param folder the design's
     * @return empty when even that cannot be told
     */
    public static Optional<Set<Path>> changeable(Path folder) {
        try {
            Design design = DesignReader.read(folder);
            DesignFiles files = of(design);
            Path drawing = files.figure().resolveSibling(design.figure().works().drawing());
            return Optional.of(
                    new LinkedHashSet<>(List.of(files.design(), files.box(), files.figure(), plain(drawing))));
        } catch (DesignException e) {
            return named(folder);
        }
    }

    private static Optional<Set<Path>> named(Path folder) {
        try {
            Path file = plain(folder.resolve(DesignReader.FILE));
            String text = YamlFile.text(file, DesignReader.FILE);
            Path figure = named(folder, text, "figure");
            Set<Path> files = new LinkedHashSet<>(List.of(file, named(folder, text, "box"), figure));
            files.add(named(folder(figure), YamlFile.text(figure, "figure"), "drawing"));
            if (NAMES.matcher(text).results().anyMatch(match -> match.group(1).equals("drawing"))) {
                files.add(named(folder(figure), text, "drawing"));
            }
            return Optional.of(files);
        } catch (DesignException | InvalidPathException e) {
            return Optional.empty();
        }
    }

    private static Path folder(Path file) {
        return Objects.requireNonNull(file.getParent());
    }

    /** @throws DesignException when a text names no such file of the workshop */
    private static Path named(Path folder, String text, String what) {
        Path file = NAMES.matcher(text)
                .results()
                .filter(match -> match.group(1).equals(what))
                .map(match -> plain(folder.resolve(match.group(3).strip())))
                .findFirst()
                .orElseThrow(() -> DesignException.of(folder.toString(), "names no " + what));
        boolean inside = WorkshopReader.folderOf(folder)
                .filter(workshop -> Files.isRegularFile(file) && Inside.is(workshop, file))
                .isPresent();
        if (!inside) {
            throw DesignException.of(file.toString(), "no such file in the workshop");
        }
        return file;
    }

    private static void beside(Path file, Works works, List<Path> others) {
        others.add(file.resolveSibling(works.drawing()));
        works.pictures().values().forEach(picture -> others.add(file.resolveSibling(picture.file())));
    }

    private static Path plain(Path path) {
        return path.toAbsolutePath().normalize();
    }

    /** The three YAML files' texts. */
    public Map<Path, String> texts() {
        Map<Path, String> texts = new LinkedHashMap<>();
        for (Path path : List.of(design, box, figure)) {
            texts.put(path, YamlFile.text(path, path.getFileName().toString()));
        }
        return texts;
    }

    /** The state of all files as they are on the disk now. */
    public String version() {
        return version(Map.of());
    }

    /** The state they would be in with other texts, by path. */
    public String version(Map<Path, String> texts) {
        return versionOf(path -> {
            String text = texts.get(path);
            return text == null ? bytes(path) : text.getBytes(StandardCharsets.UTF_8);
        });
    }

    /** The state that they had when just these bytes were taken from them, by path. */
    String versionOf(Map<Path, byte[]> taken) {
        return versionOf(taken::get);
    }

    private String versionOf(Function<Path, byte @Nullable []> bytes) {
        MessageDigest digest = sha();
        for (Path path : all()) {
            byte[] here = bytes.apply(path);
            if (here == null) {
                digest.update((byte) 1); // gone: that too is a change
            } else {
                digest.update(here);
            }
            digest.update((byte) 0);
        }
        return HexFormat.of().formatHex(digest.digest()).substring(0, VERSION_LETTERS);
    }

    private static byte @Nullable [] bytes(Path path) {
        try {
            return Files.readAllBytes(path);
        } catch (IOException e) {
            return null;
        }
    }

    /**
     * Where all of them truly lie, links followed: the same contents from outside the workshop, or another workshop nearer by,
     * are another state.
     */
    public List<Path> places() {
        return all().stream().map(DesignFiles::place).toList();
    }

    private static Path place(Path path) {
        try {
            return path.toRealPath();
        } catch (IOException e) {
            return path; // gone: its contents tell
        }
    }

    /** A text's own name: the same for the same text. */
    public static String nameOf(String text) {
        return nameOf(text.getBytes(StandardCharsets.UTF_8));
    }

    /** The same of bytes. */
    public static String nameOf(byte[] bytes) {
        return HexFormat.of().formatHex(sha().digest(bytes)).substring(0, VERSION_LETTERS);
    }

    private static MessageDigest sha() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** @return bytes of all of them by the path from the workshop's folder, with slashes */
    public static SortedMap<String, byte[]> bytes(Design design) throws IOException {
        Path workshop = workshopOf(design);
        SortedMap<String, byte[]> all = new TreeMap<>();
        for (Path file : of(design).all()) {
            all.put(name(workshop, file), Files.readAllBytes(file));
        }
        return all;
    }

    /** All of them. */
    public List<Path> all() {
        List<Path> all = new ArrayList<>(List.of(design, box, figure));
        all.addAll(others);
        return all;
    }

    /** The design's own folder, from the workshop's, with slashes: {@code spoiled/heron-hangs-up}. */
    public static String id(Design design) {
        return name(workshopOf(design), design.folder());
    }

    private static Path workshopOf(Design design) {
        return WorkshopReader.folderOf(design.folder())
                .orElseThrow(() -> DesignException.of(design.folder().toString(), "no workshop.yaml any more"));
    }

    private static String name(Path workshop, Path file) {
        Path name = workshop.relativize(file.toAbsolutePath().normalize());
        if (name.startsWith("..")) {
            throw DesignException.of(file.toString(), "lies outside the workshop's folder; copy it in");
        }
        return name.toString().replace('\\', '/');
    }
}

package jackwork.design;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The files of a workshop that were written in an earlier format. A file is one of the workshop's by who names it: the
 * workshop's own, every design, and what designs name; besides, what is called as a box or a figure and has a drawing. Any
 * other file is left alone, whatever it says.
 *
 * @param files of an earlier format
 * @param left what cannot be told the format of, or is of a newer one
 */
public record OldFiles(List<Old> files, List<Problem> left) {

    private static final String BOX = "box.yaml";
    private static final String FIGURE = "figure.yaml";
    /** Folders, far more than anybody makes: what lies deeper stays as it is. */
    private static final int DEEPEST = 20;

    /**
     * @param names absolute paths by which it is reached, one at least: links give it more
     * @param name from the workshop, with slashes
     */
    public record Old(List<Path> names, String name, FileKind kind, String text) {

        public Path file() {
            return names.get(0);
        }
    }

    private record Seen(FileKind kind, List<Path> names) {}

    /**
     * @param workshop the folder with {@code workshop.yaml}
     * @throws DesignException when {@code workshop.yaml} itself cannot be told the format of, or is of a newer one
     */
    public static OldFiles in(Path workshop) throws IOException {
        Path home = workshop.toAbsolutePath().normalize();
        Map<Path, Seen> seen = new LinkedHashMap<>();
        see(home, home.resolve(WorkshopReader.FILE), FileKind.WORKSHOP, seen);
        for (Path design : own(home, DesignReader.FILE)) {
            see(home, design, FileKind.DESIGN, seen);
            named(design, "box").ifPresent(box -> see(home, box, FileKind.BOX, seen));
            named(design, "figure").ifPresent(figure -> see(home, figure, FileKind.FIGURE, seen));
        }
        for (Path box : own(home, BOX)) {
            if (hasDrawing(box)) {
                see(home, box, FileKind.BOX, seen);
            }
        }
        for (Path figure : own(home, FIGURE)) {
            if (hasDrawing(figure)) {
                see(home, figure, FileKind.FIGURE, seen);
            }
        }
        List<Old> files = new ArrayList<>();
        List<Problem> left = new ArrayList<>();
        for (Seen file : seen.values()) {
            sort(home, file, files, left);
        }
        // The workshop's own first, then by name.
        files.sort(Comparator.comparing((Old old) -> old.kind() != FileKind.WORKSHOP)
                .thenComparing(Old::name));
        return new OldFiles(List.copyOf(files), List.copyOf(left));
    }

    /** All files of a name but those of another workshop that lies within this one. */
    private static List<Path> own(Path home, String name) throws IOException {
        return DesignFolders.files(home, name, DEEPEST).stream()
                .filter(file -> WorkshopReader.folderOf(file.resolveSibling(""))
                        .filter(home::equals)
                        .isPresent())
                .toList();
    }

    private static void see(Path home, Path file, FileKind kind, Map<Path, Seen> seen) {
        if (!Files.isRegularFile(file) || !Inside.is(home, file) || file.startsWith(home.resolve(".jackwork"))) {
            return; // who reads it says so
        }
        try {
            List<Path> names = seen.computeIfAbsent(file.toRealPath(), real -> new Seen(kind, new ArrayList<>()))
                    .names();
            if (!names.contains(file)) {
                names.add(file);
            }
        } catch (IOException e) {
            // Taken away meanwhile.
        }
    }

    private static Optional<Path> named(Path design, String what) {
        try {
            String text = YamlFile.text(design, DesignReader.FILE);
            return YamlEdit.valueAt(DesignReader.FILE, text, List.of(what)) instanceof String value
                    ? Optional.of(design.resolveSibling(value.substring(value.indexOf(' ') + 1))
                            .normalize())
                    : Optional.empty();
        } catch (DesignException | InvalidPathException e) {
            return Optional.empty();
        }
    }

    private static boolean hasDrawing(Path file) {
        try {
            String name = String.valueOf(file.getFileName());
            return YamlEdit.has(name, YamlFile.text(file, name), List.of("drawing"));
        } catch (DesignException e) {
            return false;
        }
    }

    private static void sort(Path home, Seen seen, List<Old> files, List<Problem> left) {
        Path file = seen.names().get(0);
        String name = home.relativize(file).toString().replace('\\', '/');
        // What is kept goes by that name: where it leads to another file, nothing could be taken back.
        if (!home.resolve(name).equals(file)) {
            left.add(new Problem(
                    name,
                    0,
                    0,
                    "the name of the file, or of a folder above it, has a backslash or letters that this machine cannot write;"
                            + " expected a name that can be written down"));
            return;
        }
        try {
            String text = YamlFile.text(file, name);
            YamlFile yaml = YamlFile.parse(name, text, new ArrayList<>());
            switch (Format.of(yaml)) {
                case EARLIER -> files.add(new Old(List.copyOf(seen.names()), name, seen.kind(), text));
                case NEWER -> Format.requireNow(yaml);
                case UNKNOWN -> throw Format.unknown(yaml);
                case NOW -> {
                    // Nothing to do.
                }
            }
        } catch (DesignException e) {
            if (seen.kind() == FileKind.WORKSHOP) {
                throw e;
            }
            left.addAll(e.problems());
        }
    }

    /** Their texts by every name that they go by. */
    public static Map<Path, String> byName(Map<Old, String> texts) {
        Map<Path, String> named = new LinkedHashMap<>();
        texts.forEach((old, text) -> old.names().forEach(name -> named.put(name, text)));
        return named;
    }
}

package jackwork.design;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Every file that a design is made of, its workshop's among them. */
public final class DesignFiles {

    private DesignFiles() {}

    /** @return bytes by the path from the workshop's folder, with slashes */
    public static SortedMap<String, byte[]> of(Design design) throws IOException {
        Path workshop = workshopOf(design);
        Path box = design.folder().resolve(design.file().box()).normalize();
        Path figure = design.folder().resolve(design.file().figure()).normalize();
        List<Path> files = Stream.of(
                        Stream.of(
                                workshop.resolve(WorkshopReader.FILE),
                                design.folder().resolve(DesignReader.FILE)),
                        of(box, design.box()),
                        of(figure, design.figure()))
                .flatMap(stream -> stream)
                .toList();
        SortedMap<String, byte[]> all = new TreeMap<>();
        for (Path file : files) {
            String name = name(workshop, file);
            all.put(name, Files.readAllBytes(file));
        }
        return all;
    }

    /** The design's own folder, from the workshop's, with slashes: {@code spoiled/heron-hangs-up}. */
    public static String id(Design design) {
        return name(workshopOf(design), design.folder());
    }

    private static Stream<Path> of(Path file, Works works) {
        return Stream.concat(
                Stream.of(file, beside(file, works.drawing())),
                works.pictures().values().stream().map(picture -> beside(file, picture.file())));
    }

    private static Path beside(Path file, String name) {
        return file.resolveSibling(name).normalize();
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

package jackwork.design;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The designs of a workshop: every folder below it that has a {@code design.yaml}. */
public final class DesignFolders {

    private static final int DEEPEST = 4;

    private DesignFolders() {}

    /** Names relative to the workshop, with slashes: {@code heron}, {@code spoiled/heron-hangs-up}; sorted. */
    public static List<String> list(Path workshop) throws IOException {
        try (Stream<Path> files = Files.walk(workshop, DEEPEST)) {
            return files.filter(file -> file.getFileName().toString().equals(DesignReader.FILE))
                    .map(file ->
                            workshop.relativize(file.getParent()).toString().replace('\\', '/'))
                    .filter(name -> !name.isEmpty() && !isHidden(name))
                    .sorted(java.util.Comparator.comparing((String name) -> name.contains("/"))
                            .thenComparing(name -> name))
                    .toList();
        }
    }

    /** Whether one of its folders begins with a dot: what is being written, or kept for taking back. */
    private static boolean isHidden(String name) {
        return name.startsWith(".") || name.contains("/.");
    }
}

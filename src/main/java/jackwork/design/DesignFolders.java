package jackwork.design;

import java.io.IOException;
import java.nio.file.FileVisitOption;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;

/** The designs of a workshop: every folder below it that has a {@code design.yaml}. */
public final class DesignFolders {

    private static final int DEEPEST = 4;

    private DesignFolders() {}

    /** Names relative to the workshop, with slashes: {@code heron}, {@code spoiled/heron-hangs-up}; sorted. */
    public static List<String> list(Path workshop) throws IOException {
        return files(workshop, DesignReader.FILE).stream()
                .map(file -> workshop.relativize(file.getParent()).toString().replace('\\', '/'))
                .filter(name -> !name.isEmpty())
                .sorted(Comparator.comparing((String name) -> name.contains("/"))
                        .thenComparing(name -> name))
                .toList();
    }

    /**
     * All files of a name, sorted. Folders that begin with a dot are not entered: they hold what is being written, or kept
     * for taking back. What another program takes away meanwhile is no fault.
     */
    static List<Path> files(Path workshop, String name) throws IOException {
        return files(workshop, name, DEEPEST);
    }

    /** The same, so many folders deep: one that lies too deep to be listed is read all the same when it is named. */
    static List<Path> files(Path workshop, String name, int deepest) throws IOException {
        List<Path> found = new ArrayList<>();
        Files.walkFileTree(workshop, EnumSet.noneOf(FileVisitOption.class), deepest, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
                boolean hidden = !folder.equals(workshop)
                        && folder.getFileName().toString().startsWith(".");
                return hidden ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                if (file.getFileName().toString().equals(name)) {
                    found.add(file);
                }
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFileFailed(Path file, IOException fault) throws IOException {
                if (file.equals(workshop)) {
                    throw fault;
                }
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult postVisitDirectory(
                    Path folder, @org.jspecify.annotations.Nullable IOException fault) {
                return FileVisitResult.CONTINUE;
            }
        });
        return found.stream().sorted().toList();
    }
}

package jackwork.app.core;

import jackwork.design.Abandoned;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import org.jspecify.annotations.Nullable;

/** Folders that are made beside their place under a hidden name, and appear there whole or not at all. */
public final class Aside {

    private Aside() {}

    /** Where to make one, not there yet. Those that killed programs left here are taken away. */
    public static Path in(Path parent) {
        clear(parent);
        return parent.resolve("." + Abandoned.mark());
    }

    /** Copies a whole folder. */
    public static void copy(Path from, Path to) throws IOException {
        Path parent = to.toAbsolutePath().getParent();
        Path home = parent == null ? to : parent;
        Files.createDirectories(home);
        Path aside = in(home);
        try {
            copyTree(from, aside);
            Files.move(aside, to, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            remove(aside);
        }
    }

    /** Takes away what killed programs left; it harms nobody where that may not be. */
    public static void clear(Path parent) {
        try (DirectoryStream<Path> left = Files.newDirectoryStream(parent, ".making-*")) {
            for (Path folder : left) {
                if (Abandoned.isAbandoned(folder)) {
                    remove(folder);
                }
            }
        } catch (IOException | UncheckedIOException e) {
            // Hidden, and no design is looked for in it.
        }
    }

    public static void remove(Path folder) {
        if (!Files.exists(folder)) {
            return;
        }
        try {
            Files.walkFileTree(folder, new SimpleFileVisitor<>() {
                @Override
                public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                    Files.delete(file);
                    return FileVisitResult.CONTINUE;
                }

                @Override
                public FileVisitResult postVisitDirectory(Path inside, @Nullable IOException fault) throws IOException {
                    Files.delete(inside);
                    return FileVisitResult.CONTINUE;
                }
            });
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A folder and all that is in it. */
    public static void copyTree(Path from, Path to) throws IOException {
        Files.walkFileTree(from, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) throws IOException {
                Files.createDirectories(to.resolve(from.relativize(folder).toString()));
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                Files.copy(file, to.resolve(from.relativize(file).toString()));
                return FileVisitResult.CONTINUE;
            }
        });
    }
}

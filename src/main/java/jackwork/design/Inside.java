package jackwork.design;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;

/**
 * What lies in a workshop's folder. A workshop may come from anybody, with links in it: nothing is written where they lead
 * out of it, and none is followed at all to what Jackwork keeps for itself.
 */
public final class Inside {

    private static final String STRANGER =
            "is a link, or no plain file or folder; Jackwork keeps its own notes there and follows none: move it away";

    private Inside() {}

    /** Whether a file lies in the workshop, or would, links followed. */
    public static boolean is(Path workshop, Path file) {
        try {
            Path there = file.toAbsolutePath().normalize();
            while (there != null && !Files.exists(there)) {
                there = there.getParent();
            }
            return there != null && there.toRealPath().startsWith(workshop.toRealPath());
        } catch (IOException e) {
            return false;
        }
    }

    /** @throws DesignException when it does not lie in the workshop, links followed */
    public static void require(Path workshop, Path file) {
        if (!is(workshop, file)) {
            throw DesignException.of(
                    file.toString(),
                    "leads out of the workshop's folder, where nothing is written; copy what it leads to in here");
        }
    }

    /**
     * Saves a file of a workshop whole or not at all.
     *
     * @throws DesignException when it does not lie in the workshop, links followed
     * @throws UncheckedIOException when it cannot be written
     */
    public static void save(Path workshop, Path file, String text) {
        require(workshop, file);
        WholeFile.save(file, text);
    }

    /** The first on the way from the workshop to a file that is a link, a file where a folder should be, or a device. */
    public static Optional<Path> stranger(Path workshop, Path file) {
        Path there = workshop;
        for (Path name : workshop.relativize(file)) {
            there = there.resolve(name);
            if (Files.exists(there, LinkOption.NOFOLLOW_LINKS)) {
                boolean fits = there.equals(file)
                        ? Files.isRegularFile(there, LinkOption.NOFOLLOW_LINKS)
                        : Files.isDirectory(there, LinkOption.NOFOLLOW_LINKS);
                if (!fits || !is(workshop, there)) {
                    return Optional.of(there);
                }
            }
        }
        return Optional.empty();
    }

    /** @throws UncheckedIOException when something else than plain folders and a plain file is on the way to it */
    public static void requireOwn(Path workshop, Path file) {
        stranger(workshop, file).ifPresent(found -> {
            throw new UncheckedIOException(new FileSystemException(found.toString(), null, STRANGER));
        });
    }
}

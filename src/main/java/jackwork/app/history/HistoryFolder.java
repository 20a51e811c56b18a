package jackwork.app.history;

import jackwork.design.Inside;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Where the changes of one design are kept: below {@code .jackwork/history}, no two designs in one folder. */
public final class HistoryFolder {

    /** The workshop's own numbers. No design has it: a name with that sign begins with a point. */
    private static final String OF_WORKSHOP = "~workshop";

    private final Path workshop;
    private final Path folder;

    private HistoryFolder(Path workshop, String name) {
        this.workshop = workshop;
        this.folder = place(workshop, name);
    }

    public static HistoryFolder ofWorkshop(Path workshop) {
        return new HistoryFolder(workshop, OF_WORKSHOP);
    }

    /**
     * @param id the design's folder in the workshop
     * @param ids of all designs: what an earlier Jackwork kept is taken over unless two of them shared it
     */
    public static HistoryFolder ofDesign(Path workshop, String id, Supplier<List<String>> ids) {
        String name = name(id);
        String before = nameBefore(id);
        if (!name.equals(before)
                && !before.equals(OF_WORKSHOP)
                && !isThere(place(workshop, name))
                && isThere(place(workshop, before))
                && ids.get().stream()
                                .map(HistoryFolder::nameBefore)
                                .filter(before::equals)
                                .count()
                        <= 1) {
            return new HistoryFolder(workshop, before);
        }
        return new HistoryFolder(workshop, name);
    }

    /**
     * A design's id as one name, another for each: slashes and tildes as RFC 6901 writes them. The point before it keeps it
     * from what an earlier Jackwork called some other design's; no design's folder begins with one.
     */
    public static String name(String id) {
        return id.indexOf('/') < 0 && id.indexOf('~') < 0
                ? id
                : "." + id.replace("~", "~0").replace("/", "~1");
    }

    private static String nameBefore(String id) {
        return id.replace('/', '~');
    }

    private static Path place(Path workshop, String name) {
        return workshop.resolve(".jackwork").resolve("history").resolve(name);
    }

    private static boolean isThere(Path file) {
        return Files.exists(file, LinkOption.NOFOLLOW_LINKS);
    }

    Path path() {
        return folder;
    }

    /** @throws UnfitHistoryException when a link or something else that is not ours is on the way to a file in it */
    void requireOwn(Path file) {
        Optional<Path> stranger = Inside.stranger(workshop, file);
        if (stranger.isPresent()) {
            // What is in the folder goes with it.
            Path at = stranger.get().startsWith(folder) ? folder : stranger.get();
            throw unfit(at, named(stranger.get()) + " is a link, or no plain file or folder");
        }
    }

    /** Before anything is written to it. */
    void requireOwnToWrite(Path file) {
        Inside.requireOwn(workshop, file);
    }

    UnfitHistoryException unfit(String why) {
        return unfit(folder, why);
    }

    private static UnfitHistoryException unfit(Path at, String why) {
        return new UnfitHistoryException(at, why);
    }

    /**
     * Renames what does not fit, so that it can be looked at and is never read again.
     *
     * @return where it is now, from the workshop; empty where it cannot be renamed
     */
    Optional<String> putAside(Path at) {
        for (int number = 1; ; number++) {
            Path to = at.resolveSibling(at.getFileName() + " (put aside " + number + ")");
            if (!isThere(to)) {
                try {
                    Files.move(at, to);
                    return Optional.of(named(to));
                } catch (IOException e) {
                    return Optional.empty();
                }
            }
        }
    }

    private String named(Path file) {
        return workshop.relativize(file).toString();
    }
}

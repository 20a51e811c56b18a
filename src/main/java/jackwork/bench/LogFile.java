package jackwork.bench;

import jackwork.design.Abandoned;
import jackwork.design.WholeFile;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;

/** The file of a log and what stands beside it, before anything is made of either. */
final class LogFile {

    /** Ends a journal that names a second file, to be deleted once the journal is done with (SQLite's file format, 3). */
    private static final long NAMES_ANOTHER = 0xd9d505f920a163d7L;

    /** Bytes of a journal's end that tell it. */
    private static final int END = 16;

    private LogFile() {}

    /** @throws BenchException when it is no plain file, has nothing in it, or what stands beside it is not its own */
    static void require(Path file) {
        for (String ending : new String[] {"", "-journal", "-wal", "-shm"}) {
            Path beside = file.resolveSibling(file.getFileName() + ending);
            if (isStrange(beside)) {
                throw BenchException.ofLog(beside + ": is a link, or no plain file; Jackwork follows none there."
                        + " Nothing was changed; move it away, and bring the file itself here");
            }
        }
        try {
            if (Files.size(file) == 0) {
                throw BenchException.ofLog(
                        file + ": has nothing in it, not even an empty log: it was damaged or not copied to"
                                + " its end. Nothing was changed; bring back a copy, or delete it to begin a new log");
            }
            Path journal = file.resolveSibling(file.getFileName() + "-journal");
            if (namesAnother(journal)) {
                throw BenchException.ofLog(
                        journal + ": names another file to be deleted, which Jackwork's own never does."
                                + " Nothing was changed; move it away");
            }
        } catch (IOException e) {
            throw new BenchException(file + " cannot be read: " + e.getMessage(), e);
        }
    }

    /** Whether something is there that is no plain file. Asked once: another program's journal comes and goes meanwhile. */
    private static boolean isStrange(Path file) {
        try {
            return !Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS)
                    .isRegularFile();
        } catch (NoSuchFileException e) {
            return false;
        } catch (IOException e) {
            throw new BenchException(file + " cannot be read: " + e.getMessage(), e);
        }
    }

    /** The end of such a journal: the other's name, its length, a sum, and this mark. One that is gone meanwhile is none. */
    private static boolean namesAnother(Path journal) throws IOException {
        try (SeekableByteChannel open = Files.newByteChannel(journal)) {
            long size = open.size();
            if (size < END) {
                return false;
            }
            ByteBuffer end = ByteBuffer.allocate(END);
            open.position(size - END);
            while (end.hasRemaining() && open.read(end) >= 0) {
                // until it is whole, or the journal ended meanwhile
            }
            if (end.hasRemaining()) {
                return false;
            }
            long length = Integer.toUnsignedLong(end.getInt(0));
            return end.getLong(END - Long.BYTES) == NAMES_ANOTHER && length > 0 && length <= size - END;
        } catch (NoSuchFileException e) {
            return false;
        }
    }

    /** Puts a new log in its place, unless another program was quicker. */
    static void begin(Path file, byte[] bytes) throws IOException {
        Path part = file.resolveSibling("." + file.getFileName() + "." + Abandoned.mark() + ".part");
        try {
            WholeFile.writeThrough(part, bytes);
            try {
                // A second name for it, which never takes another file's place; a move might.
                Files.createLink(file, part);
            } catch (UnsupportedOperationException | FileSystemException e) {
                if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
                    Files.move(part, file);
                }
            }
        } catch (FileAlreadyExistsException e) {
            // The other's serves.
        } finally {
            Files.deleteIfExists(part);
        }
    }
}

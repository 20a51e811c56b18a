package jackwork.design;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;

/**
 * Saves a file whole or not at all: a crash at any moment leaves the old one or the new one. What is written first stands
 * beside it under a hidden name of this program's own, so that two programs never write into one; what a killed program
 * left there goes with the next save.
 */
public final class WholeFile {

    private WholeFile() {}

    public static void write(Path file, String text) throws IOException {
        write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    /** As {@link #write(Path, String)}, where nobody can do anything about a full disk but be told. */
    public static void save(Path file, String text) {
        try {
            write(file, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A link is followed: what it points to is replaced. */
    public static void write(Path file, byte[] bytes) throws IOException {
        Path target = (Files.exists(file) ? file.toRealPath() : file).toAbsolutePath();
        clear(target);
        Path part = target.resolveSibling("." + target.getFileName() + "." + Abandoned.mark() + ".part");
        try {
            writeThrough(part, bytes);
            keepRights(target, part);
            Files.move(part, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    /** Who may read and write a file stays as its maker set it, where the disk knows of such. */
    private static void keepRights(Path file, Path part) {
        PosixFileAttributeView rights = Files.getFileAttributeView(part, PosixFileAttributeView.class);
        if (rights != null && Files.exists(file)) {
            try {
                rights.setPermissions(Files.getPosixFilePermissions(file));
            } catch (IOException e) {
                // A disk of another system: no reason not to save.
            }
        }
    }

    /** A new file: its bytes are on the disk when this returns. Else a name could reach the disk before the bytes do. */
    public static void writeThrough(Path file, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            ByteBuffer buffer = ByteBuffer.wrap(bytes);
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
            channel.force(true);
        }
    }

    private static void clear(Path target) {
        Path folder = target.getParent();
        if (folder == null) {
            return;
        }
        try (DirectoryStream<Path> parts = Files.newDirectoryStream(folder, ".*.part")) {
            for (Path part : parts) {
                if (Abandoned.isAbandoned(part)) {
                    Files.deleteIfExists(part);
                }
            }
        } catch (IOException e) {
            // Hidden, and in nobody's way: no reason not to save.
        }
    }
}

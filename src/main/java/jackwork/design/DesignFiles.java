package jackwork.design;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The files that a design is made of, and their state as one short word: it changes when anything in them does.
 *
 * @param design its {@code design.yaml}
 * @param box the box's YAML
 * @param figure the figure's YAML
 * @param others drawings and the workshop's file
 */
public record DesignFiles(Path design, Path box, Path figure, List<Path> others) {

    private static final int VERSION_LETTERS = 20;

    public static DesignFiles of(Design design) {
        Path file = design.folder().resolve(DesignReader.FILE);
        Path box = design.folder().resolve(design.file().box());
        Path figure = design.folder().resolve(design.file().figure());
        List<Path> others = new ArrayList<>();
        others.add(box.resolveSibling(design.box().drawing()));
        others.add(figure.resolveSibling(design.figure().drawing()));
        WorkshopReader.folderOf(design.folder())
                .ifPresent(workshop -> others.add(workshop.resolve(WorkshopReader.FILE)));
        return new DesignFiles(
                plain(file),
                plain(box),
                plain(figure),
                others.stream().map(DesignFiles::plain).toList());
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
        MessageDigest digest = sha();
        List<Path> all = new ArrayList<>(List.of(design, box, figure));
        all.addAll(others);
        for (Path path : all) {
            try {
                digest.update(Files.readAllBytes(path));
            } catch (IOException e) {
                digest.update((byte) 1); // gone: that too is a change
            }
            digest.update((byte) 0);
        }
        return HexFormat.of().formatHex(digest.digest()).substring(0, VERSION_LETTERS);
    }

    /** A text's own name: the same for the same text. */
    public static String nameOf(String text) {
        return HexFormat.of()
                .formatHex(sha().digest(text.getBytes(StandardCharsets.UTF_8)))
                .substring(0, VERSION_LETTERS);
    }

    private static MessageDigest sha() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Writes a file whole or not at all: at any moment the old or the new one stands there. */
    public static void save(Path path, String text) {
        Path draft = path.resolveSibling(path.getFileName() + ".part");
        try {
            try (FileChannel channel = FileChannel.open(
                    draft, StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING)) {
                ByteBuffer bytes = StandardCharsets.UTF_8.encode(text);
                while (bytes.hasRemaining()) {
                    channel.write(bytes);
                }
                channel.force(true);
            }
            Files.move(draft, path, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            try {
                Files.deleteIfExists(draft);
            } catch (IOException left) {
                e.addSuppressed(left);
            }
            throw new UncheckedIOException(e);
        }
    }
}

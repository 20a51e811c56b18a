package jackwork.app;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** A file of one JSON object a line, only ever added to, by more than one program. */
final class StepList {

    private final Path file;
    /** Bytes that are read already; fewer than there are when another program has added to it. */
    private long read = -1;

    StepList(Path file) {
        this.file = file;
    }

    /** Whether there is more or less of it than was read. */
    boolean isNews() throws IOException {
        return size() != read;
    }

    /** All of it is to be read again. */
    void forget() {
        read = -1;
    }

    private long size() throws IOException {
        return Files.isRegularFile(file) ? Files.size(file) : 0;
    }

    /** All of it; what a killed program left of a line is left out. */
    List<JsonNode> all() throws IOException {
        long size = size();
        // Not as strict text: a line may end within a letter.
        String text = size == 0 ? "" : new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
        List<JsonNode> lines = new ArrayList<>();
        for (String line : text.lines().toList()) {
            try {
                lines.add(Json.mapper().readTree(line));
            } catch (JacksonException e) {
                // The last line of a program that was killed while writing it.
            }
        }
        read = size;
        return lines;
    }

    /** On the disk when this returns. */
    void add(ObjectNode line) {
        try {
            Path folder = file.getParent();
            if (folder != null) {
                Files.createDirectories(folder);
            }
            byte[] bytes = ((isTorn() ? "\n" : "") + Json.compact(line) + "\n").getBytes(StandardCharsets.UTF_8);
            long before = size();
            Files.write(file, bytes, StandardOpenOption.CREATE, StandardOpenOption.APPEND, StandardOpenOption.SYNC);
            boolean known = read < 0 ? before == 0 : read == before;
            read = known && size() == before + bytes.length ? before + bytes.length : -1;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Whether its last line was never finished: what follows must not be written onto it. */
    private boolean isTorn() throws IOException {
        if (size() == 0) {
            return false;
        }
        try (RandomAccessFile open = new RandomAccessFile(file.toFile(), "r")) {
            open.seek(open.length() - 1);
            return open.read() != '\n';
        }
    }
}

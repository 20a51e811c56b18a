package jackwork.app.history;

import jackwork.app.wire.Json;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.RandomAccessFile;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.exc.UnexpectedEndOfInputException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** A file of one JSON object a line, only ever added to, by more than one program. */
final class StepList {

    /** A hundred thousand changes and more, bytes. */
    private static final long MOST_BYTES = 64L << 20;

    /** Some hundred letters are usual. */
    private static final int LONGEST_LINE = 1 << 18;

    private final HistoryFolder folder;
    private final Path file;
    /** Bytes that are read already; fewer than there are when another program has added to it. */
    private long read = -1;

    StepList(HistoryFolder folder) {
        this.folder = folder;
        this.file = folder.path().resolve("steps.jsonl");
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
        return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) ? Files.size(file) : 0;
    }

    /**
     * All of it; what a killed program left of a line is null, so that the others keep their numbers.
     *
     * @throws UnfitHistoryException when it is no such list
     */
    List<@Nullable JsonNode> all() throws IOException {
        folder.requireOwn(file);
        long size = size();
        if (size > MOST_BYTES) {
            throw folder.unfit("its list of steps is larger than " + (MOST_BYTES >> 20) + " MiB");
        }
        List<@Nullable JsonNode> lines = new ArrayList<>();
        if (size > 0) {
            // Not as strict text: a line may end within a letter.
            try (Reader text =
                    new BufferedReader(new InputStreamReader(Files.newInputStream(file), StandardCharsets.UTF_8))) {
                for (String line = line(text, 1); line != null; line = line(text, lines.size() + 1)) {
                    lines.add(parsed(line, lines.size() + 1));
                }
            }
        }
        read = size;
        return lines;
    }

    /** Up to the next line's end; null when there is none. */
    private @Nullable String line(Reader text, int number) throws IOException {
        StringBuilder line = new StringBuilder();
        int next = text.read();
        if (next < 0) {
            return null;
        }
        for (; next >= 0 && next != '\n'; next = text.read()) {
            if (line.length() >= LONGEST_LINE) {
                throw folder.unfit("line " + number + " of its list of steps is longer than any step");
            }
            line.append((char) next);
        }
        return line.toString();
    }

    private @Nullable JsonNode parsed(String line, int number) {
        try {
            JsonNode node = Json.mapper().readTree(line);
            if (node.isObject()) {
                return node;
            }
        } catch (UnexpectedEndOfInputException e) {
            if (line.startsWith("{")) {
                return null; // what a program wrote of it before it was killed
            }
        } catch (JacksonException e) {
            // Told below.
        }
        if (line.isBlank()) {
            return null;
        }
        throw folder.unfit("line " + number + " of its list of steps is no step");
    }

    /** On the disk when this returns. */
    void add(ObjectNode line) {
        folder.requireOwnToWrite(file);
        try {
            Files.createDirectories(folder.path());
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

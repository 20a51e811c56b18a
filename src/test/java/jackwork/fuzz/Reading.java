package jackwork.fuzz;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Comparator;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One thing that reads what strangers made, and what it promises for any input: an answer or a complaint in words, and
 * nothing changed on the disk. Kept inputs and a fuzzer go through the same {@link #once}; time and memory are bounded by
 * whoever calls it.
 */
public abstract class Reading {

    private static final Path MEMORY = Path.of("/dev/shm");
    /** A complaint is for people: no names of classes, no parser's own words for a missing object. */
    private static final Pattern NOT_WORDS =
            Pattern.compile("Exception|\\bjava\\.|\\borg\\.|\\bjackwork\\.|because \"|Cannot invoke");

    /** Reads it; whatever comes out of here and is no {@link #complaint} is a fault. */
    protected abstract void read(byte[] input) throws Exception;

    /** The documented complaint that this is, in words; null when it is none. */
    protected abstract @Nullable String complaint(Exception thrown);

    /** One of the file names that a complaint speaks of; empty where there is no file. */
    protected abstract Pattern names();

    /** @throws AssertionError when a promise is broken */
    public final void once(byte[] input) {
        try {
            read(input);
        } catch (Exception e) {
            String words = complaint(e);
            if (words == null) {
                throw new AssertionError("not a documented complaint: " + e, e);
            }
            require(!words.isBlank(), "a complaint without words", e);
            require(names().matcher(words).find(), "a complaint that does not say where: " + words, e);
            Matcher own = NOT_WORDS.matcher(words);
            // What was read is quoted, and may be any word.
            require(!own.find() || said(input, own.group()), "a complaint that is no plain word: " + words, e);
        }
    }

    /** Whether the input itself holds that word. */
    protected static boolean said(byte[] input, String word) {
        return new String(input, StandardCharsets.ISO_8859_1).contains(word.strip());
    }

    private static void require(boolean holds, String what, Exception thrown) {
        if (!holds) {
            throw new AssertionError(what, thrown);
        }
    }

    /** A folder of its own, in memory where that can be, gone with the program. */
    protected static Path folder(String name) {
        try {
            Path folder = Files.isWritable(MEMORY)
                    ? Files.createTempDirectory(MEMORY, "jackwork-" + name)
                    : Files.createTempDirectory("jackwork-" + name);
            Runtime.getRuntime().addShutdownHook(new Thread(() -> delete(folder)));
            return folder;
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    protected static void delete(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Every file below a folder with its size and the moment of its last change. */
    protected static Map<Path, String> state(Path folder) throws IOException {
        Map<Path, String> state = new TreeMap<>();
        Files.walkFileTree(folder, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                state.put(file, attributes.size() + " " + attributes.lastModifiedTime());
                return FileVisitResult.CONTINUE;
            }
        });
        return state;
    }

    protected static void requireUntouched(Map<Path, String> before, Path folder) throws IOException {
        Map<Path, String> after = state(folder);
        if (!after.equals(before)) {
            after.entrySet().removeAll(before.entrySet());
            throw new AssertionError("the disk was changed: " + after.keySet());
        }
    }
}

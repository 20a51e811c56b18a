package jackwork.app.make;

import jackwork.app.bench.Bench;
import jackwork.app.wire.BadRequestException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The pack that was made last, as a zip outside the workshop, until the next is made or Jackwork ends. */
public final class PackShelf implements AutoCloseable {

    /**
     * A pack that stands ready.
     *
     * @param number of the work that made it
     * @param name of the file, for whoever fetches it
     * @param root the folder that it stands in, alone
     */
    public record Boxed(int number, String name, Path root) {

        public Path zip() {
            return root.resolve(ZIP);
        }
    }

    /**
     * A pack on its way out.
     *
     * @param bytes to be closed
     */
    public record Fetched(String name, InputStream bytes) {}

    private static final String ZIP = "pack.zip";

    private Optional<Boxed> boxed = Optional.empty();

    PackShelf() {}

    /** Where a pack is made; all of it is gone again on closing, but a zip that is kept. */
    final class Bench implements AutoCloseable {
        private final Path root;
        private boolean kept;

        private Bench() throws IOException {
            this.root = Files.createTempDirectory("jackwork-pack-");
        }

        Path folder() {
            return root.resolve("files");
        }

        Path zip() {
            return root.resolve(ZIP);
        }

        void keep(int number, String name) {
            put(new Boxed(number, name, root));
            kept = true;
        }

        @Override
        public void close() {
            delete(kept ? folder() : root);
        }
    }

    Bench bench() throws IOException {
        return new Bench();
    }

    /** @throws BadRequestException when that pack is not there any more */
    synchronized Boxed find(int number) {
        return boxed.filter(one -> one.number() == number)
                .orElseThrow(() -> new BadRequestException("that pack is not there any more; make it again"));
    }

    /**
     * Opened while nobody can take it away; it can be read to its end, whatever takes its place meanwhile.
     *
     * @throws BadRequestException when that pack is not there any more
     */
    synchronized Fetched fetch(int number) throws IOException {
        Boxed found = find(number);
        return new Fetched(found.name(), Files.newInputStream(found.zip()));
    }

    private synchronized void put(Boxed next) {
        close();
        boxed = Optional.of(next);
    }

    @Override
    public synchronized void close() {
        boxed.ifPresent(one -> delete(one.root()));
        boxed = Optional.empty();
    }

    private static void delete(Path root) {
        if (!Files.exists(root)) {
            return;
        }
        // Some systems keep what is still being read; it stands where the system itself clears up.
        try (Stream<Path> files = Files.walk(root)) {
            List<Path> all = files.sorted(Comparator.reverseOrder()).toList();
            for (Path file : all) {
                Files.delete(file);
            }
        } catch (IOException | UncheckedIOException e) {
            return;
        }
    }
}

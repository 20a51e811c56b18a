package jackwork.fuzz;

import jackwork.app.core.HistoryReading;
import jackwork.web.HttpReading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The readers that are fuzzed, and the inputs kept for each. */
enum Kept {
    YAML(YamlReading.class, 10, 2048),
    SVG(SvgReading.class, 10, 1024),
    PICTURE(PictureReading.class, 10, 1024),
    CSV(CsvReading.class, 10, 512),
    HISTORY(HistoryReading.class, 10, 512),
    LOG(LogReading.class, 10, 512),
    HTTP(HttpReading.class, 60, 256);

    static final Path FOLDER = Path.of("src", "test", "resources", "jackwork", "fuzz");

    /** What the program itself may take, 512 MiB, and as much again for the fuzzer. */
    private static final int HEAP_MEGABYTES = 1024;

    private final Class<?> target;
    private final int timeout;
    private final int megabytes;

    Kept(Class<?> target, int timeout, int megabytes) {
        this.target = target;
        this.timeout = timeout;
        this.megabytes = megabytes;
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    Class<?> target() {
        return target;
    }

    /** How long one input may take, s: far more than any needs, on a machine busy with other things. */
    int timeout() {
        return timeout;
    }

    /** What reading one input may take from the heap, given back or not, MiB. */
    int megabytes() {
        return megabytes;
    }

    /** The whole heap that the fuzzer gives it, MiB. */
    int heap() {
        return HEAP_MEGABYTES;
    }

    Path seeds() {
        return FOLDER.resolve(word());
    }

    List<Path> inputs() throws IOException {
        try (Stream<Path> files = Files.list(seeds())) {
            return files.sorted().toList();
        }
    }

    /** As the fuzzer does. */
    void once(byte[] input) {
        try {
            target.getMethod("fuzzerTestOneInput", byte[].class).invoke(null, (Object) input);
        } catch (java.lang.reflect.InvocationTargetException e) {
            if (e.getCause() instanceof Error broken) {
                throw broken;
            }
            throw new AssertionError(e.getCause());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }
}

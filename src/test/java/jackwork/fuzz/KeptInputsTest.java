package jackwork.fuzz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every input that is kept, those that once broke something among them, and those too large to keep. */
class KeptInputsTest {

    @TestFactory
    Stream<DynamicTest> everyReaderKeepsItsPromises() {
        return Arrays.stream(Kept.values()).flatMap(KeptInputsTest::inputs);
    }

    private static Stream<DynamicTest> inputs(Kept reader) {
        try {
            assertThat(reader.inputs()).as("inputs for " + reader.word()).hasSizeGreaterThan(5);
            Stream<DynamicTest> kept = reader.inputs().stream().map(file -> test(reader, name(file), () -> read(file)));
            Stream<DynamicTest> made =
                    Large.of(reader).entrySet().stream().map(large -> test(reader, large.getKey(), large.getValue()));
            return Stream.concat(kept, made);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static DynamicTest test(Kept reader, String name, Large.Input input) {
        return DynamicTest.dynamicTest(reader.word() + " " + name, () -> {
            byte[] bytes = input.bytes();
            long taken = assertTimeoutPreemptively(Duration.ofSeconds(reader.timeout()), () -> {
                long before = allocated();
                reader.once(bytes);
                return allocated() - before;
            });
            assertThat(taken >> 20).as("MiB taken from the heap").isLessThanOrEqualTo(reader.megabytes());
        });
    }

    private static long allocated() {
        return ((ThreadMXBean) ManagementFactory.getThreadMXBean())
                .getThreadAllocatedBytes(Thread.currentThread().getId());
    }

    private static String name(Path file) {
        return file.getFileName().toString();
    }

    private static byte[] read(Path file) throws IOException {
        return Files.readAllBytes(file);
    }
}

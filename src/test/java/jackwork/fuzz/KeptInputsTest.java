package jackwork.fuzz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every input that is kept, those that once broke something among them, and those too large to keep. */
class KeptInputsTest {

    /** A reader's inputs come one after the other; two readers are at work at once. */
    private static final ExecutorService WORKERS = Executors.newFixedThreadPool(2);

    /** By the clock a reader may take so many times as long: others are at work. */
    private static final int AT_WORK = 6;

    @AfterAll
    static void rest() {
        WORKERS.shutdown();
    }

    @TestFactory
    List<DynamicTest> everyReaderKeepsItsPromises() throws IOException {
        List<DynamicTest> tests = new ArrayList<>();
        // The slowest first.
        for (Kept reader : List.of(Kept.HTTP, Kept.YAML, Kept.SVG, Kept.PICTURE, Kept.CSV, Kept.HISTORY, Kept.LOG)) {
            Map<String, Large.Input> inputs = new LinkedHashMap<>();
            for (Path file : reader.inputs()) {
                inputs.put(file.getFileName().toString(), () -> Files.readAllBytes(file));
            }
            assertThat(inputs).as("inputs for " + reader.word()).hasSizeGreaterThan(20);
            inputs.putAll(Large.of(reader));
            Future<Map<String, Throwable>> faults = WORKERS.submit(() -> faults(reader, inputs));
            inputs.keySet()
                    .forEach(name ->
                            tests.add(DynamicTest.dynamicTest(reader.word() + " " + name, () -> told(faults, name))));
        }
        return tests;
    }

    private static void told(Future<Map<String, Throwable>> faults, String name) throws Throwable {
        Throwable fault = faults.get().get(name);
        if (fault != null) {
            throw fault;
        }
    }

    private static Map<String, Throwable> faults(Kept reader, Map<String, Large.Input> inputs) {
        Map<String, Throwable> faults = new LinkedHashMap<>();
        inputs.forEach((name, input) -> {
            try {
                read(reader, input.bytes());
            } catch (Exception | AssertionError | StackOverflowError e) {
                faults.put(name, e);
            }
        });
        return faults;
    }

    /**
     * What it takes of the processor counts, not what else the machine has to do; the page's server answers on threads of
     * its own and counts by the clock.
     */
    private static void read(Kept reader, byte[] bytes) {
        int patience = reader == Kept.HTTP ? 1 : AT_WORK;
        Taken taken = assertTimeoutPreemptively(Duration.ofSeconds((long) patience * reader.timeout()), () -> {
            long memory = allocated();
            long time = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            reader.once(bytes);
            return new Taken(
                    ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - time, allocated() - memory);
        });
        assertThat(taken.nanoseconds() / 1e9).as("s of the processor").isLessThanOrEqualTo(reader.timeout());
        assertThat(taken.bytes() >> 20).as("MiB taken from the heap").isLessThanOrEqualTo(reader.megabytes());
    }

    private record Taken(long nanoseconds, long bytes) {}

    private static long allocated() {
        return ((ThreadMXBean) ManagementFactory.getThreadMXBean())
                .getThreadAllocatedBytes(Thread.currentThread().getId());
    }
}

package jackwork;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** What the figures were measured on. */
final class Machine {

    private Machine() {}

    /** Processor, cores, operating system and Java, as a Markdown list. */
    static String describe() {
        return "- processor: %s, %d cores%n- system: %s, %s%n- Java: %s %s%n"
                .formatted(
                        processor(),
                        Runtime.getRuntime().availableProcessors(),
                        System.getProperty("os.name"),
                        System.getProperty("os.arch"),
                        System.getProperty("java.vm.name"),
                        System.getProperty("java.vm.version"))
                .replace(System.lineSeparator(), "\n");
    }

    /** The processor's own name where the system tells it (Linux does), else "unnamed". */
    private static String processor() {
        Path told = Path.of("/proc/cpuinfo");
        if (!Files.isReadable(told)) {
            return "unnamed";
        }
        try (Stream<String> lines = Files.lines(told)) {
            return lines.filter(line -> line.startsWith("model name"))
                    .map(line -> line.substring(line.indexOf(':') + 1).strip())
                    .findFirst()
                    .orElse("unnamed");
        } catch (IOException e) {
            return "unnamed";
        }
    }
}

package jackwork.parts;

import jackwork.design.Design;
import jackwork.design.DesignReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What stops lever, bucket and figure of every demo and its spoiled copies, as a table; run {@link #main} to renew it. */
final class StoppingTable {

    static final Path FILE = Path.of("docs", "benchmarks", "what-stops-it.md");

    private StoppingTable() {}

    public static void main(String[] arguments) throws IOException {
        Files.writeString(FILE, table());
    }

    static String table() throws IOException {
        StringBuilder text = new StringBuilder("""
                # What stops it

                Every end of the way of lever, bucket and limited parts, held against the wood: what is met first by turning there,
                in a layer that both are in, and what is nearest at the end. An end is *provided* when it is met first, within
                0.3° of where it is wished, on an arm of 5 mm or more, square enough not to wedge. Made by the program itself
                (`jackwork.parts.StoppingTable`), and held by a test. [Before anything was redrawn](what-stops-it-0.1.md) no end of any
                design was.

                | design | end | is at | provided | met first | or nearest |
                |---|---|--:|---|---|---|
                """);
        for (Path folder : folders()) {
            Design design = DesignReader.read(folder);
            Assembly assembly = Assembler.assemble(design);
            for (Stopping stopping : assembly.ends()) {
                text.append(row(
                        Path.of("demo").relativize(folder),
                        stopping,
                        stopping.nearest(assembly).orElse(null)));
            }
        }
        return text.toString();
    }

    private static List<Path> folders() throws IOException {
        List<Path> folders = new ArrayList<>();
        for (Path in : List.of(Path.of("demo"), Path.of("demo", "spoiled"))) {
            try (Stream<Path> all = Files.list(in)) {
                all.filter(folder -> Files.exists(folder.resolve(DesignReader.FILE)))
                        .sorted()
                        .forEach(folders::add);
            }
        }
        return folders;
    }

    private static String row(Path design, Stopping stopping, Stopping.@Nullable Nearby nearest) {
        Stopping.Obstacle met = stopping.met();
        return String.format(
                        Locale.ROOT,
                        "| %s | %s | %.1f° | %s | %s | %s |%n",
                        design.toString().replace('\\', '/'),
                        stopping.end().name(),
                        Math.toDegrees(stopping.end().at()),
                        stopping.isProvided() ? "yes" : "no",
                        met == null
                                ? ""
                                : String.format(
                                        Locale.ROOT,
                                        "%s by %s at %.1f°, arm %.1f mm",
                                        met.own(),
                                        met.by(),
                                        Math.toDegrees(met.meeting().angle()),
                                        met.meeting().arm(stopping.end().pivot())),
                        nearest == null
                                ? "nothing in its layers"
                                : String.format(
                                        Locale.ROOT,
                                        "%s to %s, %.1f mm",
                                        nearest.own(),
                                        nearest.by(),
                                        nearest.distance()))
                .replace("\r", "");
    }
}

package jackwork;

import jackwork.design.DesignFolders;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;

/** Copies of the demo workshop for tests to spoil. */
public final class DemoCopy {

    private DemoCopy() {}

    private static final AtomicInteger PLACES = new AtomicInteger();

    /** One place a thread: what was worked out of files there holds for the same files of the next test. */
    private static final ThreadLocal<Path> HERE = ThreadLocal.withInitial(
            () -> Path.of("target", "hut-" + ProcessHandle.current().pid() + "-" + PLACES.incrementAndGet())
                    .toAbsolutePath());

    /** A fresh copy at the same place every time, with these designs alone or with all of them; the one before is gone. */
    public static Path here(String... designs) throws IOException {
        Path here = HERE.get();
        if (Files.exists(here)) {
            try (Stream<Path> files = Files.walk(here)) {
                for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
        return designs.length == 0 ? at(here) : with(here, designs);
    }

    /** A fresh copy of the demo as {@code folder}. */
    public static Path at(Path folder) throws IOException {
        Path demo = Path.of("demo");
        try (Stream<Path> files = Files.walk(demo)) {
            for (Path file : files.sorted().toList()) {
                Path target = folder.resolve(demo.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(file, target);
                }
            }
        }
        return folder;
    }

    /** As if the workshop had these designs alone: to ask all of them takes a while. */
    public static Path with(Path folder, String... designs) throws IOException {
        at(folder);
        for (String id : DesignFolders.list(folder)) {
            if (!List.of(designs).contains(id)) {
                Files.delete(folder.resolve(id).resolve("design.yaml"));
            }
        }
        return folder;
    }

    /** The heron of a workshop, for some coins and with some numbers changed; gives its folder. */
    public static Path heron(Path workshop, String coins, String... changes) throws IOException {
        Path design = workshop.resolve("heron");
        Files.writeString(design.resolve("design.yaml"), """
                format: 2
                name: Heron
                box: ../boxes/marsh-box/box.yaml
                figure: figure.yaml
                coins: [%s]
                change:
                  %s
                """.formatted(coins, String.join("\n  ", changes)));
        return design;
    }

    /** The design there asks for one coin alone: a virtual build takes as many times less. */
    public static void withCoin(Path design, String coin) throws IOException {
        Path file = design.resolve("design.yaml");
        String text = Files.readString(file);
        Files.writeString(file, text.replaceFirst("(?m)^coins: .*$", "coins: [" + coin + "]"));
    }
}

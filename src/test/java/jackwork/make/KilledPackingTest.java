package jackwork.make;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.Child;
import jackwork.DemoCopy;
import jackwork.design.DesignReader;
import jackwork.drawing.Paper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Killed outright while it packs: every file that stands there is whole, and packing again makes all of it whole. */
@EnabledOnOs({OS.LINUX, OS.MAC})
class KilledPackingTest {

    private static final int USUAL = 4;
    private static final int OUT_OF = 10;

    @TempDir
    private Path folder;

    @Test
    void everyFileIsWhole() throws Exception {
        Path heron = DemoCopy.at(folder.resolve("hut")).resolve("heron");
        Path reference = folder.resolve("reference");
        Pack pack = Pack.of(Makings.of(DesignReader.read(heron)), 1, SheetSearch.usual());
        pack.write(reference, Paper.A4, name -> {});
        Map<String, byte[]> whole = files(reference);
        Path out = folder.resolve("out");
        Random random = new Random(20261204);
        int begun = 0;
        for (int i = 0; i < Child.kills(USUAL, OUT_OF); i++) {
            if (i % 4 == 0) {
                out = folder.resolve("out-" + i);
            }
            Child.start(List.of(), PackingChild.class, heron.toString(), out.toString(), "1000000")
                    .killAfter(random.nextInt(1200));
            if (!Files.exists(out)) {
                continue;
            }
            begun++;
            files(out).forEach((name, bytes) -> {
                if (!name.startsWith(".")) {
                    assertThat(bytes).as(name).isEqualTo(whole.get(name));
                }
            });
        }
        assertThat(begun).isGreaterThan(Child.kills(USUAL, OUT_OF) / 2);
        pack.write(out, Paper.A4, name -> {});
        assertThat(files(out)).as("nothing lies about").containsOnlyKeys(whole.keySet());
    }

    private static Map<String, byte[]> files(Path folder) throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        try (Stream<Path> all = Files.list(folder)) {
            for (Path file : all.toList()) {
                files.put(file.getFileName().toString(), Files.readAllBytes(file));
            }
        }
        return files;
    }
}

package jackwork.app.core;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.DemoCopy;
import jackwork.design.DesignException;
import jackwork.design.DesignReader;
import jackwork.make.MakeException;
import jackwork.motion.model.MechanismException;
import jackwork.parts.PartException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The demo's files damaged at random, seeded: whatever comes of it is an answer or a complaint in words,
 * never a fault of ours. Not guided by coverage, as {@code ./check fuzz} is; but every question is asked with its whole spread.
 */
class DamagedFilesTest {

    private static final int DAMAGES = 300;
    private static final int WORKERS = 2;

    private static final String[] SCRAPS = {
        "",
        " ",
        "-",
        ":",
        "0",
        "-1",
        "1e300",
        ".nan",
        ".inf",
        "[",
        "]",
        "{",
        "}",
        "box",
        "lever",
        "bucket-core",
        "hip",
        "#",
        "&a",
        "*a",
        "\n",
        "\t",
        "\"",
        "null",
        "~",
        "14 deg",
        "0.5 in",
        "body",
        "\uD83E\uDD86"
    };

    @TempDir
    private Path workshop;

    /** Replaces a word, or a stretch of characters, by a scrap. */
    private static String damage(String text, Random random) {
        int from = random.nextInt(text.length());
        int to = from;
        if (random.nextBoolean()) {
            while (from > 0 && Character.isLetterOrDigit(text.charAt(from - 1))) {
                from--;
            }
            while (to < text.length()
                    && (Character.isLetterOrDigit(text.charAt(to)) || ".-".indexOf(text.charAt(to)) >= 0)) {
                to++;
            }
        } else {
            to = Math.min(text.length(), from + random.nextInt(4));
        }
        return text.substring(0, from) + SCRAPS[random.nextInt(SCRAPS.length)] + text.substring(to);
    }

    private record Told(int complaints, List<String> faults) {}

    @Test
    void damageIsAnsweredInWords() throws Exception {
        ExecutorService workers = Executors.newFixedThreadPool(WORKERS);
        List<Future<Told>> all = new ArrayList<>();
        for (int worker = 0; worker < WORKERS; worker++) {
            int number = worker;
            all.add(workers.submit(() -> damageAll(number)));
        }
        int complaints = 0;
        for (Future<Told> told : all) {
            complaints += told.get().complaints();
            assertThat(told.get().faults()).isEmpty();
        }
        workers.shutdown();
        assertThat(complaints).isGreaterThan(50);
    }

    /** A share of all damages, on a workshop of its own. */
    private Told damageAll(int worker) throws IOException {
        Path demo = DemoCopy.at(workshop.resolve("hut-" + worker));
        List<Path> files = List.of(
                demo.resolve("workshop.yaml"),
                demo.resolve("heron/design.yaml"),
                demo.resolve("heron/figure.yaml"),
                demo.resolve("heron/figure.svg"),
                demo.resolve("boxes/marsh-box/box.yaml"),
                demo.resolve("boxes/marsh-box/box.svg"));
        Random random = new Random(20261125 + worker);
        List<String> faults = new ArrayList<>();
        int complaints = 0;
        for (int i = 0; i < DAMAGES / WORKERS; i++) {
            Path file = files.get(i % files.size());
            String whole = Files.readString(file, StandardCharsets.UTF_8);
            String damaged = damage(whole, random);
            Files.writeString(file, damaged, StandardCharsets.UTF_8);
            try {
                DesignCheck.of(DesignReader.read(demo.resolve("heron"))).json();
            } catch (DesignException | MechanismException | PartException | MakeException e) {
                complaints++;
                assertThat(e.getMessage()).isNotBlank();
            } catch (RuntimeException e) {
                faults.add(i + " " + file.getFileName() + ": " + e + " at "
                        + (e.getStackTrace().length > 0 ? e.getStackTrace()[0] : ""));
            } finally {
                Files.writeString(file, whole, StandardCharsets.UTF_8);
            }
        }
        return new Told(complaints, faults);
    }
}

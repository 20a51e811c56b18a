package jackwork.app.core;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.Child;
import jackwork.DemoCopy;
import jackwork.design.DesignReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Killed outright while it saves changes of three files at once: the old ones or the new ones, and all can be taken back. */
@EnabledOnOs({OS.LINUX, OS.MAC})
class KilledSavingTest {

    private static final int USUAL = 6;
    private static final int OUT_OF = 10;
    private static final int LINES = 2;

    @TempDir
    private Path folder;

    @Test
    void threeFilesAreOfOneChange() throws Exception {
        ExecutorService workers = Executors.newFixedThreadPool(LINES);
        List<Future<Integer>> lines = new ArrayList<>();
        for (int line = 0; line < LINES; line++) {
            int number = line;
            lines.add(workers.submit(() -> kill(folder.resolve("hut-" + number), number)));
        }
        int saved = 0;
        for (Future<Integer> line : lines) {
            saved += line.get();
        }
        workers.shutdown();
        // Else they died before they had saved anything, and this shows nothing.
        assertThat(saved).isGreaterThan(Child.kills(USUAL, OUT_OF) / 2);
    }

    /** A share of all kills, on a workshop of its own; @return how many changes were saved. */
    private static int kill(Path place, int line) throws IOException, InterruptedException {
        Path workshop = DemoCopy.with(place, "heron");
        Path heron = workshop.resolve("heron");
        Random random = new Random(20261203 + line);
        String last = "";
        int saved = 0;
        for (int i = 0; i < Child.kills(USUAL, OUT_OF) / LINES; i++) {
            String name = "k" + i + "n";
            List<String> acknowledged = Child.start(List.of(), SavingChild.class, workshop.toString(), name, "1000000")
                    .killAfter(random.nextInt(600));
            assertThat(acknowledged).noneMatch(said -> said.startsWith("!"));
            saved += acknowledged.size();
            last = acknowledged.isEmpty() ? last : acknowledged.get(acknowledged.size() - 1);
            String next = name + acknowledged.size();
            // One file is whole at any moment...
            assertThat(words(heron)).allMatch(List.of(last, next)::contains, last + " or " + next);
            // ... and who looks at the design next has all three of one change.
            new Editor(new Workbench(workshop)).versionJson("heron");
            assertThat(words(heron)).containsOnly(words(heron).get(0));
            last = words(heron).get(0);
            DesignReader.read(heron);
        }
        allCanBeTakenBack(workshop, heron, last);
        try (Stream<Path> left = Files.list(heron)) {
            assertThat(left.map(file -> file.getFileName().toString()))
                    .as("what they left lying went with a later save")
                    .noneMatch(file -> file.startsWith("."));
        }
        return saved;
    }

    private static void allCanBeTakenBack(Path workshop, Path heron, String last) throws IOException {
        Editor editor = new Editor(new Workbench(workshop));
        String before = last;
        for (int i = 0; i < 3; i++) {
            editor.undoJson("heron", editor.versionJson("heron"));
            List<String> words = words(heron);
            assertThat(words).containsOnly(words.get(0)).doesNotContain(before);
            before = words.get(0);
        }
    }

    private static List<String> words(Path heron) throws IOException {
        List<String> words = new ArrayList<>();
        for (String file : SavingChild.FILES) {
            words.add(SavingChild.word(heron.resolve(file)));
        }
        return words;
    }
}

package jackwork.app.core;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.Child;
import jackwork.DemoCopy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two programs on one workshop: no change is written over, each is a step that can be taken back. */
class TwoProgramsTest {

    private static final int EACH = 8;

    @TempDir
    private Path folder;

    @Test
    void noChangeIsWrittenOver() throws Exception {
        Path workshop = DemoCopy.with(folder.resolve("hut"), "heron");
        Child one = Child.start(List.of(), SavingChild.class, workshop.toString(), "a", String.valueOf(EACH));
        Child two = Child.start(List.of(), SavingChild.class, workshop.toString(), "b", String.valueOf(EACH));
        List<String> said = new ArrayList<>(one.rest().lines().toList());
        said.addAll(two.rest().lines().toList());
        assertThat(said).hasSize(2 * EACH);
        List<String> saved = said.stream().filter(line -> !line.startsWith("!")).toList();
        assertThat(said).filteredOn(line -> line.startsWith("!")).allMatch(line -> line.contains("somebody else"));
        assertThat(saved.size()).isGreaterThan(EACH / 2);
        // Taken back one by one, every change that was acknowledged comes by once, on all three files.
        Editor editor = new Editor(new Workbench(workshop));
        List<String> seen = new ArrayList<>();
        for (String word = word(workshop); !word.isEmpty(); word = word(workshop)) {
            seen.add(word);
            editor.undoJson("heron", editor.versionJson("heron"));
        }
        assertThat(seen).containsExactlyInAnyOrderElementsOf(saved);
    }

    private static String word(Path workshop) throws IOException {
        List<String> words = new ArrayList<>();
        for (String file : SavingChild.FILES) {
            words.add(SavingChild.word(workshop.resolve("heron").resolve(file)));
        }
        assertThat(words).containsOnly(words.get(0));
        return words.get(0);
    }

    /** Clocks jump, copies keep old times: whether a file has changed is told by what is in it. */
    @Test
    void timesOfFilesMeanNothing() throws IOException {
        Path workshop = DemoCopy.with(folder.resolve("hut"), "heron");
        Editor editor = new Editor(new Workbench(workshop));
        String version = editor.versionJson("heron");
        Path file = workshop.resolve("heron/design.yaml");
        for (String time : List.of("1971-01-01T00:00:00Z", "2099-01-01T00:00:00Z")) {
            Files.setLastModifiedTime(file, FileTime.from(Instant.parse(time)));
            assertThat(editor.versionJson("heron")).isEqualTo(version);
        }
        FileTime kept = Files.getLastModifiedTime(file);
        Files.writeString(file, Files.readString(file).replace("distance: 60", "distance: 59"));
        Files.setLastModifiedTime(file, kept);
        assertThat(editor.versionJson("heron")).isNotEqualTo(version);
    }
}

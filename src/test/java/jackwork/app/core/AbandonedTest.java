package jackwork.app.core;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.DemoCopy;
import jackwork.app.bring.Bringing;
import jackwork.design.WholeFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a killed program left half made goes with the next save or start; what a living one is making stays. */
class AbandonedTest {

    @TempDir
    private Path folder;

    private long dead;
    private long living;

    @BeforeEach
    void processes() throws IOException, InterruptedException {
        Process ended = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-version")
                .redirectErrorStream(true)
                .start();
        ended.getInputStream().readAllBytes();
        ended.waitFor();
        dead = ended.pid();
        living = ProcessHandle.current().pid();
    }

    @Test
    void halfFilesOfTheDeadGoWithTheNextSave() throws IOException {
        Path left = Files.writeString(folder.resolve(".design.yaml.making-" + dead + "-3.part"), "form");
        Path begun = Files.writeString(folder.resolve(".design.yaml.making-" + living + "-99999.part"), "form");
        Path other = Files.writeString(folder.resolve(".somebodys-own.part"), "mine");
        WholeFile.write(folder.resolve("design.yaml"), "format: 2");
        assertThat(left).doesNotExist();
        assertThat(begun).exists();
        assertThat(other).exists();
        assertThat(folder.resolve("design.yaml")).hasContent("format: 2");
    }

    @Test
    void halfDesignsOfTheDeadGoWithTheNextStart() throws IOException {
        Path workshop = DemoCopy.at(folder.resolve("hut"));
        Path left = Files.createDirectory(workshop.resolve(".making-" + dead + "-1"));
        Files.writeString(left.resolve("figure.svg"), "<svg");
        Path begun = Files.createDirectory(workshop.resolve(".making-" + living + "-99999"));
        Workbench workbench = new Workbench(workshop);
        new Bringing(workbench, new Editor(workbench));
        assertThat(left).doesNotExist();
        assertThat(begun).exists();
        assertThat(workbench.ids()).contains("heron").noneMatch(id -> id.contains("making"));
    }
}

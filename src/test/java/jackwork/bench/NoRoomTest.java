package jackwork.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import jackwork.Child;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A full disk, files that may not grow, folders that may not be written: a clear word, and nothing lost. */
@EnabledOnOs(OS.LINUX)
class NoRoomTest {

    @TempDir(factory = InMemory.class)
    private Path folder;

    private record Ran(List<String> acknowledged, String complaint) {}

    private Ran run(List<String> before, Path workshop, String prefix) throws IOException, InterruptedException {
        Process child = new Children(folder.resolve("lib-" + prefix)).start(before, workshop, prefix, 5000);
        List<String> lines = new ArrayList<>();
        String said = new String(child.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        said.lines().forEach(lines::add);
        assertThat(child.waitFor()).as(said).isZero();
        String last = lines.get(lines.size() - 1);
        assertThat(last).startsWith("! ");
        return new Ran(lines.subList(0, lines.size() - 1), last);
    }

    private static void nothingIsLost(Path workshop, Ran ran) throws SQLException {
        assertThat(Children.integrity(workshop)).isEqualTo("ok");
        assertThat(BenchLog.in(workshop).list(Kinds.TRIALS).stream()
                        .map(trial -> trial.entry().stamp().key()))
                .containsExactlyElementsOf(ran.acknowledged());
    }

    /** A file may have 512 KiB and no more: the same for the log as a disk without room. */
    @Test
    void aFileThatMayNotGrow() throws Exception {
        Path workshop = folder.resolve("workshop");
        Children.log(workshop);
        Ran ran = run(List.of("bash", "-c", "ulimit -f 512; exec \"$@\"", "limited"), workshop, "u");
        assertThat(ran.complaint())
                .contains("is it full?")
                .contains("Nothing was logged")
                .contains("Free some room");
        assertThat(ran.acknowledged()).hasSizeGreaterThan(50);
        nothingIsLost(workshop, ran);
        // With room again it goes on.
        assertThat(BenchLog.in(workshop).add(Kinds.TRIALS, LogTest.trialOf("later")))
                .isTrue();
    }

    /** A disk of 1 MiB, where this user may make one. */
    @Test
    void aDiskThatIsFull() throws Exception {
        assumeTrue(Child.maySetUpADisk(folder), "no small disk can be made here; aFileThatMayNotGrow stands in for it");
        Path disk = Files.createDirectory(folder.resolve("disk"));
        Path saved = Files.createDirectory(folder.resolve("saved"));
        Children.log(folder.resolve("seed"));
        String script = "mount -t tmpfs -o size=1m none '" + disk + "' && cp '" + folder.resolve("seed/workshop.db")
                + "' '" + disk + "' && \"$@\"; cp '" + disk + "/workshop.db' '" + saved + "'";
        Ran ran = run(List.of("unshare", "-m", "bash", "-c", script, "small"), disk, "d");
        assertThat(ran.complaint()).contains("is it full?");
        assertThat(ran.acknowledged()).hasSizeGreaterThan(50);
        nothingIsLost(saved, ran);
    }

    /** Without the right to overrule permissions, which root has. */
    @Test
    void aFolderThatMayNotBeWritten() throws Exception {
        Path workshop = folder.resolve("workshop");
        BenchLog log = Children.log(workshop);
        log.add(Kinds.TRIALS, LogTest.trialOf("before"));
        byte[] before = Files.readAllBytes(workshop.resolve(BenchLog.FILE));
        Files.setPosixFilePermissions(workshop.resolve(BenchLog.FILE), PosixFilePermissions.fromString("r--r--r--"));
        Files.setPosixFilePermissions(workshop, PosixFilePermissions.fromString("r-xr-xr-x"));
        Path empty = Files.createDirectory(
                folder.resolve("empty"),
                PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("r-xr-xr-x")));
        try {
            for (Path place : List.of(workshop, empty)) {
                Ran ran = run(lesser(), place, "r-" + place.getFileName());
                assertThat(ran.acknowledged()).isEmpty();
                assertThat(ran.complaint()).contains("cannot be written here").contains(place.toString());
            }
        } finally {
            Files.setPosixFilePermissions(workshop, PosixFilePermissions.fromString("rwxr-xr-x"));
        }
        assertThat(empty).isEmptyDirectory();
        assertThat(Files.readAllBytes(workshop.resolve(BenchLog.FILE))).isEqualTo(before);
        assertThat(log.list(Kinds.TRIALS)).hasSize(1);
    }

    private static List<String> lesser() {
        return System.getProperty("user.name").equals("root")
                ? List.of("setpriv", "--bounding-set=-dac_override,-dac_read_search", "--inh-caps=-all")
                : List.of();
    }
}

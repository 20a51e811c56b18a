package jackwork.app.core;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import jackwork.Child;
import jackwork.DemoCopy;
import jackwork.design.DesignReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A full disk and folders that may not be written: a change is refused in words, and no file is of another change. */
@EnabledOnOs(OS.LINUX)
class ChangesWithoutRoomTest {

    @TempDir
    private Path folder;

    private static List<String> lines(List<String> before, Path workshop, int most)
            throws IOException, InterruptedException {
        Child child = Child.start(before, SavingChild.class, workshop.toString(), "n", String.valueOf(most));
        List<String> lines = child.rest().lines().toList();
        assertThat(child.process().waitFor()).as(String.join("\n", lines)).isZero();
        return lines;
    }

    private static void isOf(String word, Path workshop) throws IOException {
        for (String file : SavingChild.FILES) {
            assertThat(SavingChild.word(workshop.resolve("heron").resolve(file)))
                    .as(file)
                    .isEqualTo(word);
        }
        DesignReader.read(workshop.resolve("heron"));
    }

    /** A disk with 200 KiB to spare, where this user may make one. */
    @Test
    void aDiskThatIsFull() throws Exception {
        assumeTrue(Child.maySetUpADisk(folder), "no small disk can be made here; aFileThatMayNotGrow stands in for it");
        Path seed = DemoCopy.with(folder.resolve("seed"), "heron");
        Path disk = Files.createDirectory(folder.resolve("disk"));
        Path saved = folder.resolve("saved");
        String script = "mount -t tmpfs -o size=1600k none '" + disk + "' && cp -r '" + seed + "/.' '" + disk
                + "' && \"$@\"; cp -r '" + disk + "' '" + saved + "'";
        List<String> lines = lines(List.of("unshare", "-m", "bash", "-c", script, "small"), disk, 500);
        assertThat(lines.get(lines.size() - 1)).startsWith("! ").containsIgnoringCase("no space");
        assertThat(lines).hasSizeGreaterThan(3);
        isOf(lines.get(lines.size() - 2), saved);
    }

    /** A file may have 6 KiB and no more; the drawing is larger. */
    @Test
    void aFileThatMayNotGrow() throws Exception {
        Path workshop = DemoCopy.with(folder.resolve("hut"), "heron");
        List<String> lines = lines(List.of("bash", "-c", "ulimit -f 6; exec \"$@\"", "limited"), workshop, 5);
        assertThat(lines).singleElement().asString().startsWith("! java.io.IOException");
        isOf("", workshop);
    }

    /** The last of three files cannot be written, when the others are already: they are put back. */
    @Test
    void whatCannotBeSavedWholeIsPutBack() throws Exception {
        Path workshop = DemoCopy.with(folder.resolve("hut"), "heron");
        Path drawing = workshop.resolve("heron/figure.svg");
        Path elsewhere = Files.createDirectory(workshop.resolve("drawings"));
        Files.move(drawing, elsewhere.resolve("heron.svg"));
        Files.createSymbolicLink(drawing, elsewhere.resolve("heron.svg"));
        Files.setPosixFilePermissions(elsewhere, PosixFilePermissions.fromString("r-xr-xr-x"));
        try {
            List<String> lines = lines(Child.lesser(), workshop, 5);
            assertThat(lines).singleElement().asString().startsWith("! ").contains("AccessDenied");
        } finally {
            Files.setPosixFilePermissions(elsewhere, PosixFilePermissions.fromString("rwxr-xr-x"));
        }
        isOf("", workshop);
        // With the right to write it goes on.
        assertThat(lines(List.of(), workshop, 1)).containsExactly("n0");
        isOf("n0", workshop);
    }

    @Test
    void aWorkshopThatMayNotBeWritten() throws Exception {
        Path workshop = DemoCopy.with(folder.resolve("hut"), "heron");
        Map<String, String> before = texts(workshop);
        permit(workshop, "r-xr-xr-x");
        try {
            List<String> lines = lines(Child.lesser(), workshop, 5);
            assertThat(lines).singleElement().asString().startsWith("! ").contains("AccessDenied");
            // It can be looked at all the same.
            Child looks = Child.start(
                    Child.lesser(),
                    jackwork.cli.Main.class,
                    "check",
                    workshop.resolve("heron").toString());
            assertThat(looks.rest()).contains("nothing found against it");
            assertThat(looks.process().waitFor()).isZero();
        } finally {
            permit(workshop, "rwxr-xr-x");
        }
        assertThat(texts(workshop)).isEqualTo(before);
    }

    private static void permit(Path workshop, String mode) throws IOException {
        try (Stream<Path> all = Files.walk(workshop)) {
            for (Path one : all.filter(Files::isDirectory).toList()) {
                Files.setPosixFilePermissions(one, PosixFilePermissions.fromString(mode));
            }
        }
    }

    private static Map<String, String> texts(Path workshop) throws IOException {
        Map<String, String> texts = new TreeMap<>();
        try (Stream<Path> all = Files.walk(workshop)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                texts.put(file.toString(), java.util.HexFormat.of().formatHex(Files.readAllBytes(file)));
            }
        }
        return texts;
    }
}

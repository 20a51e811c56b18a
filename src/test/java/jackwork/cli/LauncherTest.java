package jackwork.cli;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.Child;
import jackwork.DemoCopy;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code ./jackwork} as a whole, already built, with Java as it is found on other machines. */
@EnabledOnOs({OS.LINUX, OS.MAC})
class LauncherTest {

    @TempDir
    Path folder;

    private Path home;
    private Path java;
    private Path calls;

    @BeforeEach
    void built() throws IOException, InterruptedException {
        home = Files.createDirectories(folder.resolve("home"));
        java = Files.createDirectories(folder.resolve("jdk/bin")).resolve("java");
        calls = folder.resolve("calls");
        Files.copy(Path.of("jackwork"), home.resolve("jackwork"));
        Path target = Files.createDirectories(home.resolve("target"));
        for (String file : List.of("jackwork.jar", "jackwork.jsa", ".built")) {
            Files.writeString(target.resolve(file), "");
            Thread.sleep(20);
        }
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"1.8.0_392", "11.0.22", "16.0.2"})
    void anOlderJavaIsToldThoughAllIsBuilt(String version) throws IOException, InterruptedException {
        javaThatSays(version);
        Run run = run("check", "heron");
        assertThat(run.said).contains("needs a JDK 17 or later", java.toString());
        assertThat(run.exit).isEqualTo(Outcome.OUR_FAULT);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"1.8.0_392", "11.0.22"})
    void whatAJdkSaysOfItselfIsEnough(String version) throws IOException, InterruptedException {
        javaThatSays("17.0.1");
        Files.writeString(folder.resolve("jdk/release"), "IMPLEMENTOR=\"x\"\nJAVA_VERSION=\"" + version + "\"\n");
        assertThat(run("check", "heron").exit).isEqualTo(Outcome.OUR_FAULT);
        assertThat(calls).doesNotExist();
    }

    @Test
    void oneJavaIsStartedAlone() throws IOException, InterruptedException {
        javaThatSays("17.0.1");
        Files.writeString(folder.resolve("jdk/release"), "JAVA_VERSION=\"17.0.1\"\n");
        run("check", "heron");
        assertThat(Files.readAllLines(calls)).hasSize(1).allMatch(call -> call.endsWith("check heron"));
    }

    @Test
    void namesWithUmlautsAreReadWhereTheLocaleHasNone() throws IOException, InterruptedException {
        Path workshop = DemoCopy.with(folder.resolve("V\u00f6gel"), "heron");
        Path design = workshop.resolve("heron/design.yaml");
        Files.writeString(design, Files.readString(design).replaceFirst("(?m)^name: .*$", "name: Gr\u00fcner Reiher"));
        javaThatRuns();
        Run run = run("check", workshop.resolve("heron").toString());
        assertThat(run.said).startsWith("Gr\u00fcner Reiher: nothing found against it");
        assertThat(run.exit).isZero();
    }

    @Test
    void whatTheLocaleHasLostIsTold() throws IOException, InterruptedException {
        Path workshop = DemoCopy.with(folder.resolve("V\u00f6gel"), "heron");
        Child child = Child.start(
                List.of("env", "LC_ALL=C"),
                Main.class,
                "check",
                workshop.resolve("heron").toString());
        assertThat(child.rest()).contains("this system's locale does not know", "LC_ALL=C.UTF-8");
        assertThat(child.process().waitFor()).isEqualTo(Outcome.BAD_INPUT);
    }

    private record Run(int exit, String said) {}

    /** As on a system whose locale was never set. */
    private Run run(String... words) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(home.resolve("jackwork").toString());
        builder.command().addAll(List.of(words));
        builder.environment().put("JAVA_HOME", folder.resolve("jdk").toString());
        builder.environment().put("LC_ALL", "C");
        Process process = builder.redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Run(process.waitFor(), said);
    }

    /** A Java that is asked, notes so, and fails at all else as one does that is too old for the classes. */
    private void javaThatSays(String version) throws IOException {
        script("echo \"$@\" >>" + calls + "\n"
                + "[ \"$1\" != -version ] || { echo 'openjdk version \"" + version + "\" 2024-01-16' >&2; exit 0; }\n"
                + "exit 1\n");
    }

    /** This machine's own Java, on the classes under test instead of a jar of them. */
    private void javaThatRuns() throws IOException {
        String own = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        script("[ \"$1\" != -version ] || exec " + own + " -version\n"
                + "while [ \"$1\" != -jar ]; do shift; done\nshift 2\n"
                + "exec " + own + " -cp '" + Child.classes() + "' " + Main.class.getName() + " \"$@\"\n");
    }

    private void script(String lines) throws IOException {
        Files.writeString(java, "#!/bin/sh\n" + lines);
        assertThat(java.toFile().setExecutable(true)).isTrue();
    }
}

package jackwork.cli;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.Child;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Output that has nowhere to go is never taken for an answer. */
@EnabledOnOs(OS.LINUX)
class OutputTest {

    /** Puts out what is on a full disk. */
    private static final List<String> INTO_A_FULL_DISK = List.of("sh", "-c", "exec \"$@\" >/dev/full", "sh");

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "check demo/heron --json",
                "check demo/spoiled/heron-hangs-up",
                "mechanism demo/heron",
                "price demo/heron",
                "coins",
                "stock",
                "stock --help",
                "--version",
                "open demo --no-browser"
            })
    void theExitCodeSaysThatItCouldNotBeWritten(String words) throws IOException, InterruptedException {
        Child child = Child.start(INTO_A_FULL_DISK, Main.class, words.split(" "));
        assertThat(child.rest()).contains("the output could not be written");
        assertThat(child.process().waitFor()).isEqualTo(Outcome.BAD_INPUT);
    }
}

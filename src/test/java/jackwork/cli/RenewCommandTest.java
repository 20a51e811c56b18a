package jackwork.cli;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.OldWorkshop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An old workshop at the command line: every command names the one step; that step says first what it does, and is taken back. */
class RenewCommandTest {

    @TempDir
    private Path folder;

    @Test
    void toldLookedAtMadeAndTakenBack() throws IOException {
        Path hut = OldWorkshop.at(folder.resolve("hut"));
        Map<String, String> before = OldWorkshop.bytes(hut);
        String heron = hut.resolve("heron").toString();
        for (List<String> command : List.of(
                List.of("check", heron),
                List.of("pack", heron, "-o", folder.resolve("out").toString()),
                List.of("price", heron),
                List.of("mechanism", heron),
                List.of("tune", heron, "--free", "box.lever.throw=8..16"),
                List.of("replay", heron, "--build", "1"),
                List.of("bench", "freeze", heron))) {
            Ran ran = Ran.run(command.toArray(String[]::new));
            assertThat(ran.exit()).as(ran.toString()).isEqualTo(2);
            assertThat(ran.err())
                    .contains("read format 1", "jackwork renew FOLDER")
                    .hasLineCount(1);
        }
        Ran look = Ran.run("renew", "--look", hut.toString());
        assertThat(look.exit()).isZero();
        assertThat(look.out())
                .startsWith("18 files would become format 2:\n    workshop.yaml\n")
                .contains(
                        "\nWould not be carried over:\n    boxes/marsh-box/box.yaml line 62: bucket.bearing 9.8 is gone")
                .endsWith("\nNothing was written. Do it with: jackwork renew " + hut + "\n");
        assertThat(OldWorkshop.bytes(hut)).isEqualTo(before);
        // A folder in it does as well.
        Ran made = Ran.run("renew", heron);
        assertThat(made.exit()).isZero();
        assertThat(made.out())
                .startsWith("18 files became format 2:\n")
                .contains("jackwork renew --back " + heron + "\n");
        assertThat(lines(made)).isEqualTo(lines(look));
        assertThat(Ran.run("check", heron).exit()).isEqualTo(1);
        assertThat(Ran.run("renew", hut.toString()).out()).startsWith("Nothing to do: no file of ");
        Files.writeString(hut.resolve("heron/design.yaml"), "\n# mine\n", StandardOpenOption.APPEND);
        Ran since = Ran.run("renew", "--back", hut.toString());
        assertThat(since.exit()).isEqualTo(2);
        assertThat(since.err())
                .startsWith("heron/design.yaml: was changed since the step")
                .contains("another name");
        Path mine = Files.move(hut.resolve("heron/design.yaml"), folder.resolve("mine.yaml"));
        Ran back = Ran.run("renew", "--back", hut.toString());
        assertThat(back.out()).startsWith("Taken back; as they were before, byte for byte:\n    workshop.yaml\n");
        assertThat(mine).content().endsWith("# mine\n");
        assertThat(OldWorkshop.bytes(hut)).isEqualTo(before);
        Ran nothing = Ran.run("renew", "--back", hut.toString());
        assertThat(nothing.exit()).isEqualTo(2);
        assertThat(nothing.err()).contains("there is no step to take back");
    }

    private static List<String> lines(Ran ran) {
        return ran.out().lines().filter(line -> line.startsWith("    ")).toList();
    }

    @Test
    void whereThereIsNoWorkshop() {
        Ran ran = Ran.run("renew", folder.toString());
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).contains("no workshop.yaml", "expected the folder of a workshop");
        assertThat(Ran.run("renew", "--look", "--back", folder.toString()).err())
                .contains("expected one of them");
    }
}

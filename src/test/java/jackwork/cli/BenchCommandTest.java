package jackwork.cli;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.DemoCopy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The bench as typed: from freezing a design to the takings of a piece. */
class BenchCommandTest {

    @TempDir
    private Path folder;

    private Path workshop;
    private String heron;

    @BeforeEach
    void open() throws IOException {
        workshop = DemoCopy.at(folder.resolve("workshop"));
        heron = workshop.resolve("heron").toString();
    }

    private static Ran run(String... arguments) {
        return Ran.run(Stream.concat(Stream.of("bench"), Stream.of(arguments)).toArray(String[]::new));
    }

    private Ran here(String... arguments) {
        return run(Stream.concat(Stream.of(arguments), Stream.of("--workshop", workshop.toString()))
                .toArray(String[]::new));
    }

    private static String fine(Ran ran) {
        assertThat(ran.err()).isEmpty();
        assertThat(ran.exit()).isZero();
        return ran.out();
    }

    private static String complaint(Ran ran) {
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        return ran.err();
    }

    @Test
    void aPiecesLife() throws IOException {
        assertThat(fine(run("freeze", heron, "--note", "first cut"))).startsWith("heron, revision 1: ");
        assertThat(fine(run("piece", "add", heron, "--serial", "R-001", "--batch", "March")))
                .contains("R-001 of heron, revision 1");
        assertThat(fine(run(
                        "trial",
                        heron,
                        "--coin",
                        "EUR-1",
                        "--tries",
                        "50",
                        "--failed",
                        "lands=2,thrown=1",
                        "--piece",
                        "R-001")))
                .contains("47 of 50 passed, 94.0 %")
                .contains("failed: lands 2, thrown 1");
        assertThat(fine(run("timing", heron, "--operation", "glue", "--minutes", "41", "--pieces", "2")))
                .contains("20.5 minutes a piece");
        assertThat(fine(here("piece", "sold", "R-001", "--to", "Reed shop", "--for", "35.00")))
                .contains("35.00 EUR");
        assertThat(fine(here("piece", "returned", "R-001", "--note", "dented"))).contains("returned");
        assertThat(fine(here("piece", "repaired", "R-001"))).contains("repaired");
        assertThat(fine(here("piece", "placed", "R-001", "--at", "Marsh hut"))).contains("Marsh hut");
        assertThat(fine(here(
                        "takings",
                        "R-001",
                        "--amount",
                        "41.20",
                        "--counted-by",
                        "Ada",
                        "--witnessed-by",
                        "Ben",
                        "--seal",
                        "00123")))
                .contains("41.20 EUR");
        assertThat(fine(here("piece", "spare", "R-001", "--part", "lever"))).contains("lever");
        assertThat(fine(here("piece", "list")))
                .contains("R-001  heron, revision 1  placed, Marsh hut")
                .contains("took in 41.20 EUR")
                .contains("repaired 1 times");
        String report = fine(here("report"));
        assertThat(report)
                .contains("EUR-1: 47 of 50 passed")
                .contains("glue: 20.5 minutes")
                .contains("clean coins more show 99 % at 95 %");
        JsonNode json = JsonMapper.shared().readTree(fine(here("report", "--json")));
        assertThat(json.at("/revisions/0/coins/0/measured/failures/lands").asInt())
                .isEqualTo(2);
        assertThat(json.at("/pieces/0/takings/EUR").asString()).isEqualTo("41.20");
        assertThat(fine(here(
                                "restore",
                                "--piece",
                                "R-001",
                                "-o",
                                folder.resolve("again").toString())
                        .withoutTalk()))
                .contains("again");
        assertThat(folder.resolve("again/heron/design.yaml"))
                .hasSameBinaryContentAs(workshop.resolve("heron/design.yaml"));
    }

    @Test
    void freezingAgainSaysWhatChanged() throws IOException {
        fine(run("freeze", heron));
        assertThat(complaint(run("freeze", heron))).contains("nothing of heron has changed");
        Path design = Path.of(heron, "design.yaml");
        Files.writeString(design, Files.readString(design).replaceFirst("distance: 60", "distance: 55"));
        Ran trial = run("trial", heron, "--coin", "EUR-1", "--tries", "5");
        assertThat(trial.err()).contains("Taken for heron, revision 1").contains("have changed since");
        assertThat(fine(run("freeze", heron)))
                .contains("heron, revision 2")
                .contains("gestures.beak.distance: 60 -> 55");
        assertThat(fine(run("revisions", heron, "--compare", "1,2"))).contains("distance: 60 -> 55");
        assertThat(fine(run("revisions", heron))).hasLineCount(2);
        assertThat(complaint(run("revisions", heron, "--compare", "1,9"))).contains("it has 1 to 2");
    }

    @Test
    void measuredAndUsed() throws IOException {
        assertThat(fine(here("measured", "friction", "17", "18", "17.5", "--between", "coin,wood")))
                .startsWith("friction of coin on wood: 0.315");
        assertThat(fine(here("measured", "sheet", "birch-2", "1.87", "1.9")))
                .contains("sheets.birch-2.thickness: 1.885");
        assertThat(fine(here("measured", "kerf", "--drawn", "50", "--outside", "49.84")))
                .contains("logged; one reading");
        String before = Files.readString(workshop.resolve("workshop.yaml"));
        assertThat(fine(here("use", "--on", heron)))
                .contains("kerf: not used")
                .contains("heron: still nothing found against it")
                .contains("Nothing written yet");
        assertThat(workshop.resolve("workshop.yaml")).hasContent(before);
        assertThat(fine(here("use", "sheet", "--on", heron, "--apply"))).contains("Written to workshop.yaml");
        assertThat(Files.readString(workshop.resolve("workshop.yaml")))
                .contains("thickness: {value: 1.885,")
                .contains("friction: []               # pairs measured here")
                .contains("# mm it can cut");
        assertThat(fine(here("use", "sheet", "--on", heron, "--apply"))).contains("says all this already");
        assertThat(JsonMapper.shared()
                        .readTree(fine(here("use", "--on", heron, "--json")))
                        .get("written")
                        .asBoolean())
                .isFalse();
    }

    @Test
    void outAndBackAndStruck() throws IOException {
        fine(run("freeze", heron));
        fine(run("trial", heron, "--coin", "EUR-1", "--tries", "5"));
        fine(here("strike", "trials", "1", "--why", "wrong coin"));
        assertThat(fine(here("list", "trials"))).contains("STRUCK: wrong coin");
        fine(run("trial", heron, "--coin", "EUR-2", "--tries", "7"));
        fine(here("export", folder.resolve("out").toString()));
        Path other = DemoCopy.at(folder.resolve("other"));
        assertThat(fine(run("import", folder.resolve("out").toString(), "--workshop", other.toString())))
                .isEqualTo("2 logged, 0 were there already\n");
        assertThat(fine(run("list", "trials", "--json", "--workshop", other.toString())))
                .contains("\"EUR-2\"")
                .doesNotContain("\"EUR-1\"");
    }

    @Test
    void whatCannotBeIsBadInput() {
        assertThat(complaint(run("trial", heron, "--coin", "EUR-1", "--tries", "5")))
                .contains("freeze it first");
        fine(run("freeze", heron));
        assertThat(complaint(run("trial", heron, "--coin", "EUR-3", "--tries", "5")))
                .contains("did you mean \"EUR-1\"");
        assertThat(complaint(run("trial", heron, "--coin", "EUR-1", "--tries", "5", "--failed", "landz=1")))
                .contains("landz");
        assertThat(complaint(run("trial", heron, "--coin", "EUR-1", "--tries", "5", "--failed", "lands=6")))
                .contains("6 failures of 5");
        assertThat(complaint(run("trial", heron, "--coin", "EUR-1", "--tries", "5", "--on", "1st of May")))
                .contains("1st of May");
        assertThat(complaint(here(
                        "takings", "R-9", "--amount", "1", "--counted-by", "A", "--witnessed-by", "B", "--seal", "1")))
                .contains("no piece \"R-9\"");
        assertThat(complaint(here("measured", "sheet", "birch-9", "2", "2"))).contains("birch-9");
        assertThat(complaint(here("measured", "friction", "95", "96", "--between", "coin,wood")))
                .contains("95");
        assertThat(complaint(here("list", "trial"))).contains("did you mean \"trials\"");
        assertThat(complaint(here("strike", "trials", "7", "--why", "x"))).contains("no entry 7");
        assertThat(complaint(here("report", "--rate", "2"))).contains("--rate 2");
        assertThat(complaint(run("report", "--workshop", folder.toString()))).contains("is in no workshop");
        assertThat(run().exit()).isEqualTo(2);
        assertThat(run("measured").exit()).isEqualTo(2);
    }
}

package jackwork.cli;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.DemoCopy;
import jackwork.app.core.DesignCheck;
import jackwork.builds.BuildReport;
import jackwork.check.NotInTheModel;
import jackwork.design.DesignReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The commands as typed: results on stdout, talk on stderr, exit codes that mean something. */
class MainTest {

    /** A yes says how far it goes: of findings alone, and with builds. A no stays what it was. */
    @Test
    void aYesSaysHowFarItGoes() throws InterruptedException {
        Ran found = Ran.run("check", "demo/cobbler");
        assertThat(found.exit()).isZero();
        assertThat(found.out().lines().findFirst()).contains("Cobbler: nothing found against it");
        assertThat(found.out()).containsOnlyOnce("--left-out").doesNotContain("Not in the model");
        DesignCheck check = DesignCheck.of(DesignReader.read(Path.of("demo/cobbler")));
        BuildReport report = DesignCheck.builds(check.subject(), 10, 7).run(2, done -> {});
        DesignCheck tried = new DesignCheck(check.design(), check.subject(), check.findings(), report);
        assertThat(tried.words())
                .startsWith("works in " + report.passes() + " of 10 builds, and bears ")
                .endsWith(" times the drag expected");
        assertThat(tried.verdict()).as("for machines it stays").isEqualTo("works");
        assertThat(Ran.run("check", "demo/spoiled/heron-hangs-up", "--left-out").out())
                .startsWith("Heron that hangs up: fails");
    }

    @Test
    void whatIsNotInTheModelIsOneSwitchAway() {
        String out = Ran.run("check", "demo/cobbler", "--left-out").out();
        assertThat(out).contains("Not in the model, whatever the verdict:").doesNotContain("add --left-out");
        for (NotInTheModel one : NotInTheModel.all()) {
            assertThat(out).containsSubsequence(one.what(), one.instead());
        }
        JsonNode told = JsonMapper.shared()
                .readTree(Ran.run("check", "demo/cobbler", "--json").out())
                .get("leftOut");
        assertThat(told).hasSameSizeAs(NotInTheModel.all());
        assertThat(told.get(0).get("what").asString())
                .isEqualTo(NotInTheModel.all().get(0).what());
    }

    @Test
    void theHeronWorks() {
        Ran ran = Ran.run("check", "demo/heron", "--json");
        assertThat(ran.exit()).isZero();
        JsonNode report = JsonMapper.shared().readTree(ran.out());
        assertThat(report.get("formatVersion").asInt()).isEqualTo(1);
        assertThat(report.get("verdict").asString()).isEqualTo("works");
        assertThat(report.get("builds").isNull()).isTrue();
        assertThat(report.at("/motion/pressing/forceN").size()).isEqualTo(201);
        assertThat(report.at("/motion/returning/parts/head/200").size()).isEqualTo(3);
        for (JsonNode finding : report.get("findings")) {
            assertThat(finding.propertyNames())
                    .containsExactlyInAnyOrder(
                            "id",
                            "question",
                            "status",
                            "value",
                            "limit",
                            "margin",
                            "unit",
                            "where",
                            "why",
                            "remedy",
                            "formula",
                            "restsOn",
                            "topic",
                            "about",
                            "margins",
                            "worded");
            assertThat(finding.get("formula").asString())
                    .as(finding.get("id").asString())
                    .matches(".*\\d.*");
        }
        for (JsonNode coin : report.get("coins")) {
            assertThat(coin.get("cycle").isNull()).isTrue();
            assertThat(coin.get("trips").asBoolean()).isTrue();
        }
    }

    @Test
    void sameInputSameBytes() {
        assertThat(Ran.run("check", "demo/heron", "--json").out())
                .isEqualTo(Ran.run("check", "demo/heron", "--json").out());
    }

    @Test
    void buildsAreInTheReportAndTheSameWithAnyThreads() {
        Ran ran = Ran.run("check", "demo/heron", "--builds", "10", "--seed", "7", "--threads", "2", "--json");
        assertThat(ran.exit()).isZero();
        assertThat(ran.err()).contains("10 of 10 builds");
        JsonNode report = JsonMapper.shared().readTree(ran.out());
        assertThat(report.at("/builds/passes").asInt()).isGreaterThanOrEqualTo(9);
        assertThat(report.at("/builds/words").asString()).contains("under these spreads");
        assertThat(report.at("/builds/matters/numbers").size()).isEqualTo(6);
        assertThat(report.at("/coins/2/cycle/passes").asBoolean()).isTrue();
        assertThat(report.at("/coins/2/cycle/stages/6/stage").asString()).isEqualTo("refuses");
        assertThat(Ran.run("check", "demo/heron", "--builds", "10", "--seed", "7", "--threads", "1", "--json")
                        .out())
                .isEqualTo(ran.out());
    }

    @Test
    void replayDrawsABuild(@TempDir Path folder) throws IOException {
        Path out = folder.resolve("seen.svg");
        Ran ran = Ran.run(
                "replay",
                "demo/spoiled/kicker-short",
                "--build",
                "1",
                "--builds",
                "20",
                "--seed",
                "7",
                "-o",
                out.toString());
        assertThat(ran.exit()).isZero();
        assertThat(ran.out()).contains("the coin is not thrown into the box");
        assertThat(Files.readString(out))
                .startsWith("<?xml")
                .contains("<animateTransform")
                .endsWith("</svg>\n");
        assertThat(Ran.run("replay", "demo/heron", "--build", "99", "--builds", "20")
                        .err())
                .contains("--build reads 99, expected 0 to 19");
        assertThat(Ran.run("replay", "demo/heron", "--build", "0", "--coin", "EUR-3")
                        .err())
                .contains("EUR-3");
    }

    /** What fails out of the plane is shown across it. */
    @Test
    void replayDrawsATwistAcross(@TempDir Path folder) throws IOException {
        Path out = folder.resolve("across.svg");
        Ran ran = Ran.run("replay", "demo/spoiled/bucket-twists", "--build", "0", "--seed", "7", "-o", out.toString());
        assertThat(ran.out()).contains("the bucket twists against its neighbours");
        assertThat(Files.readString(out))
                .contains("seen across the mechanism")
                .contains("<animateTransform")
                .contains("of bearing");
    }

    @Test
    void tuneProposesAndAppliesOneNumber(@TempDir Path folder) throws IOException {
        Path design = DemoCopy.at(folder.resolve("workshop")).resolve("spoiled/counterweight-heavy");
        DemoCopy.withCoin(design, "EUR-1");
        String before = Files.readString(design.resolve("design.yaml"));
        Ran ran = Ran.run(
                "tune",
                design.toString(),
                "--free",
                "box.weights.counterweight.count=2..3",
                "--builds",
                "10",
                "--apply");
        assertThat(ran.exit()).isZero();
        assertThat(ran.out())
                .matches(
                        "(?s)Set box.weights.counterweight.count: [23]: then 9 of 10 builds pass with every coin, where 8 of 10 did.*");
        assertThat(Files.readString(design.resolve("design.yaml")))
                .isIn(
                        before.replace("counterweight.count: 4", "counterweight.count: 2"),
                        before.replace("counterweight.count: 4", "counterweight.count: 3"));
        assertThat(Ran.run("tune", design.toString(), "--free", "box.lever.throw=9")
                        .err())
                .contains("expected a path and limits");
        assertThat(Ran.run("tune", design.toString(), "--free", "box.lever.throww=8..9")
                        .err())
                .contains("throww");
        assertThat(Ran.run("check", "demo/heron", "--builds", "3").err()).contains("--builds reads 3");
    }

    @Test
    void theSpoiledHeronFailsAndNamesTheStroke() {
        Ran ran = Ran.run("check", "demo/spoiled/heron-hangs-up");
        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.out())
                .contains("fails")
                .containsPattern("return force turns negative at \\d\\d % of the stroke");
    }

    @Test
    void aMisspeltKeyIsBadInput(@TempDir Path folder) throws IOException {
        DemoCopy.at(folder.resolve("w"));
        Path design = folder.resolve("w/heron/design.yaml");
        Files.writeString(design, Files.readString(design).replace("coins:", "coinz:"));
        Ran ran = Ran.run("check", folder.resolve("w/heron").toString());
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("design.yaml:5:1").contains("did you mean \"coins\"?");
    }

    @Test
    void unknownWordsAreUsage() {
        assertThat(Ran.run("chekc").exit()).isEqualTo(2);
        assertThat(Ran.run("check", "demo/heron", "--nonsense").exit()).isEqualTo(2);
        assertThat(Ran.run("check", "demo/no-such-design").exit()).isEqualTo(2);
    }

    @Test
    void otherCoinsCanBeAskedAbout() {
        Ran ran = Ran.run("check", "demo/heron", "--coins", "GBP-2,EUR-0.01");
        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.out())
                .contains("FAIL      Does EUR-0.01 tip the bucket?")
                .contains("GBP-2");
        Ran wrong = Ran.run("check", "demo/heron", "--coins", "EUR-3");
        assertThat(wrong.exit()).isEqualTo(2);
        assertThat(wrong.err()).contains("did you mean \"EUR-1\"?");
    }

    @Test
    void packs(@TempDir Path folder) {
        Ran ran = Ran.run("pack", "demo/heron", "-o", folder.resolve("out").toString(), "--quantity", "2");
        assertThat(ran.exit()).isZero();
        assertThat(folder.resolve("out/sheets.pdf")).isNotEmptyFile();
        assertThat(folder.resolve("out/parts.csv")).content().contains("head-2");
    }

    @Test
    void startsANewDesignThatChecks(@TempDir Path folder) throws IOException {
        Ran ran = Ran.run("new", "my-bird", "--from", "spoiled/heron-hangs-up", "--in", folder.toString());
        assertThat(ran.exit()).isZero();
        assertThat(Files.readString(folder.resolve("my-bird/design.yaml"))).contains("name: my-bird");
        assertThat(Ran.run("check", folder.resolve("my-bird").toString()).exit())
                .isEqualTo(1);
        assertThat(Ran.run("new", "second", "--in", folder.toString()).exit()).isZero();
        assertThat(Ran.run("check", folder.resolve("second").toString()).exit()).isZero();
        assertThat(Ran.run("new", "second", "--in", folder.toString()).exit()).isEqualTo(2);
        assertThat(Ran.run("new", "../escape", "--in", folder.toString()).exit())
                .isEqualTo(2);
    }

    /** Each moves by its own weight and the lever's, and the help names it. */
    @ParameterizedTest
    @ValueSource(strings = {"nodding", "bowing", "lifting", "flapping", "turning", "hammering"})
    void startsFromBareBoards(String boards, @TempDir Path folder) {
        Ran ran = Ran.run("new", "my-" + boards, "--from", boards, "--in", folder.toString());
        assertThat(ran.exit()).isZero();
        assertThat(ran.out().strip()).isEqualTo(folder.resolve("my-" + boards).toString());
        assertThat(Ran.run("check", folder.resolve("my-" + boards).toString()).exit())
                .isZero();
        Ran again = Ran.run("new", "my-" + boards, "--from", boards, "--in", folder.toString());
        assertThat(again.exit()).isEqualTo(2);
        assertThat(again.err()).contains("already").contains("Choose another name");
        assertThat(Ran.run("new", "--help").out()).contains(boards);
        assertThat(Ran.run("new", "other", "--from", "no-such", "--in", folder.toString())
                        .err())
                .contains(boards);
    }

    @Test
    void listsCoinsAndStockWithSources() {
        assertThat(Ran.run("coins").out())
                .contains("EUR-2")
                .contains("729/2014")
                .contains("31 U.S.C. 5112");
        assertThat(Ran.run("stock").out())
                .contains("birch-ply")
                .contains("guess")
                .contains("published");
    }

    @Test
    void tellsTheMechanism() {
        Ran ran = Ran.run("mechanism", "demo/heron");
        JsonNode mechanism = JsonMapper.shared().readTree(ran.out());
        assertThat(mechanism.get("bodies").size()).isEqualTo(9);
        assertThat(mechanism.get("pins").size()).isGreaterThanOrEqualTo(11);
    }
}

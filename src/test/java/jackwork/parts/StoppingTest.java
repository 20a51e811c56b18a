package jackwork.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jackwork.DemoCopy;
import jackwork.check.Finding;
import jackwork.check.Questions;
import jackwork.check.Status;
import jackwork.check.Subject;
import jackwork.design.Design;
import jackwork.design.DesignReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whether wood stands where the motion ends, and that it ends where wood stands. */
class StoppingTest {

    private static final String BOX = "boxes/marsh-box/box";

    @TempDir
    private Path folder;

    private int copies;

    private static Stopping end(Assembly assembly, String id) {
        return assembly.ends().stream()
                .filter(stopping -> stopping.end().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static RodRun rod(Design design, Assembly assembly, String name) {
        return assembly.rods().stream()
                .filter(run -> run.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private Path copy() throws IOException {
        return DemoCopy.at(folder.resolve("hut-" + copies++));
    }

    private static void replace(Path file, String regex, String by) throws IOException {
        String text = Files.readString(file);
        Matcher found = Pattern.compile(regex).matcher(text);
        assertThat(found.find()).as(regex).isTrue();
        Files.writeString(file, found.replaceFirst(by));
    }

    private static Assembly assembled(Path hut, String design) {
        return Assembler.assemble(DesignReader.read(hut.resolve(design)));
    }

    /** Takes a post's rod out: the pin goes, its circle stays. */
    private static void without(Path yaml, String post) throws IOException {
        replace(yaml, "(?m)^  " + post + ": .*\n", "");
    }

    @Test
    void theTableIsThatOfTheDesigns() throws IOException {
        assertThat(Files.readString(StoppingTable.FILE)).isEqualTo(StoppingTable.table());
    }

    /** With any stopping part taken out, the design fails by that end and says how to mend it. */
    @ParameterizedTest
    @CsvSource({
        "heron, boxes/marsh-box/box.yaml, lever-rest, lever-rest",
        "heron, boxes/marsh-box/box.yaml, lever-end, lever-pressed",
        "heron, boxes/marsh-box/box.yaml, bucket-rest, bucket-rest",
        "heron, boxes/marsh-box/box.yaml, bucket-end, bucket-tipped",
        "cobbler, boxes/reed-box/box.yaml, lever-rest, lever-rest",
        "cobbler, boxes/reed-box/box.yaml, lever-end, lever-pressed",
        "cobbler, boxes/reed-box/box.yaml, gate-rest, bucket-rest",
        "cobbler, boxes/reed-box/box.yaml, gate-open, bucket-tipped",
        "lamplighter, lamplighter/figure.yaml, door-rest, shut-to",
        "lamplighter, lamplighter/figure.yaml, door-open, shut-from",
    })
    void whatStopsItIsMissed(String design, String yaml, String post, String end) throws IOException {
        Path hut = copy();
        without(hut.resolve(yaml), post);
        Subject subject = Subject.of(DesignReader.read(hut.resolve(design)));
        List<Finding> failing = Questions.ask(subject).stream()
                .filter(finding -> finding.status() == Status.FAIL)
                .toList();
        assertThat(failing).extracting(Finding::id).contains("what-stops/" + end);
        Finding finding = failing.stream()
                .filter(one -> one.id().equals("what-stops/" + end))
                .findFirst()
                .orElseThrow();
        assertThat(finding.remedy().toString()).contains("stops: {part: ");
    }

    /** Wherever the post is drawn about the lever's edge and whatever throw is wished, it is moved to where that is. */
    @Test
    @Tag("outside")
    void aPostIsMovedToTheWishedAngle() throws IOException {
        Random random = new Random(21);
        for (int i = 0; i < 20; i++) {
            double turn = 8 + 6 * random.nextDouble();
            Path hut = copy();
            replace(hut.resolve(BOX + ".yaml"), "throw: 14", "throw: " + turn);
            double x = 130 + 20 * random.nextDouble();
            double y = 50 + 15 * random.nextDouble();
            replace(
                    hut.resolve(BOX + ".svg"),
                    "id=\"lever-end\" cx=\"[0-9.]*\" cy=\"[0-9.]*\"",
                    "id=\"lever-end\" cx=\"" + x + "\" cy=\"" + y + "\"");
            // The window is closed, so that there is wood for it wherever it comes.
            replace(hut.resolve(BOX + ".svg"), " M117,84 .*? Z", "");
            Assembly assembly = assembled(hut, "windmill");
            Stopping pressed = end(assembly, "lever-pressed");
            assertThat(pressed.isProvided())
                    .as("throw %s, at %s, %s", turn, x, y)
                    .isTrue();
            assertThat(Objects.requireNonNull(pressed.met()).by()).isEqualTo("the rod of lever-end");
            assertThat(Math.toDegrees(assembly.lever().turn())).isCloseTo(-turn, within(0.01));
            // It keeps its distance from the pivot, at (80, 72) in the box.
            double arm = Math.hypot(x - 90, y - 38);
            RodRun rod = rod(DesignReader.read(hut.resolve("windmill")), assembly, "lever-end");
            assertThat(rod.at().distance(assembly.lever().pivot())).isCloseTo(arm, within(1e-9));
        }
    }

    /**
     * A post that stays where it is drawn decides the throw: drawn half a millimetre lower, the lever goes farther by half a
     * millimetre over the arm, and what is cut moves with it.
     */
    @Test
    @Tag("outside")
    void aPostHalfAMillimetreLowerLetsItGoFarther() throws IOException {
        double[] turn = new double[2];
        double[] hole = new double[2];
        double arm = 0;
        for (int i = 0; i < 2; i++) {
            Path hut = copy();
            replace(hut.resolve(BOX + ".yaml"), "  throw: 14\n", "");
            replace(hut.resolve(BOX + ".yaml"), ", stops: \\{part: lever, when: pressed\\}", "");
            replace(
                    hut.resolve(BOX + ".svg"),
                    "id=\"lever-end\" cx=\"[0-9.]*\" cy=\"[0-9.]*\"",
                    "id=\"lever-end\" cx=\"154.1\" cy=\"" + (61 + 0.5 * i) + "\"");
            Assembly assembly = assembled(hut, "heron");
            Stopping pressed = end(assembly, "lever-pressed");
            assertThat(pressed.isProvided()).isTrue();
            turn[i] = Math.abs(assembly.lever().turn());
            arm = pressed.lever();
            hole[i] = assembly.parts().stream()
                    .filter(part -> part.name().equals("back"))
                    .flatMap(part -> part.holes().stream())
                    .filter(bored -> bored.joint().equals("lever-end"))
                    .findFirst()
                    .orElseThrow()
                    .circle()
                    .centre()
                    .y();
        }
        assertThat(hole[0] - hole[1]).isCloseTo(0.5, within(1e-9));
        // Straight down is not quite square to the lever's edge, which leans by the throw.
        assertThat(turn[1] - turn[0]).isCloseTo(0.5 * Math.cos(turn[0]) / arm, within(0.0005));
    }

    /** A rest that is off is where it rests: marks of the works move with lever and bucket. */
    @Test
    void aRestThatIsOffIsWhereItRests() throws IOException {
        Path hut = copy();
        replace(hut.resolve(BOX + ".yaml"), ", stops: \\{part: bucket-core, when: rest\\}", "");
        replace(
                hut.resolve(BOX + ".svg"),
                "id=\"bucket-rest\" cx=\"147.8\" cy=\"78.3\"",
                "id=\"bucket-rest\" cx=\"147.8\" cy=\"78.85\"");
        Assembly off = assembled(hut, "heron");
        Assembly right = Assembler.assemble(DesignReader.read(Path.of("demo/heron")));
        CoinWorks works = off.coinWorks();
        assertThat(end(off, "bucket-rest").isProvided()).isFalse();
        assertThat(end(off, "bucket-rest").holds()).isTrue();
        assertThat(Math.toDegrees(works.rest())).isBetween(-1.2, -0.3);
        assertThat(works.lip()).isEqualTo(right.coinWorks().lip().turnedAbout(works.pivot(), works.rest()));
        assertThat(works.rest() + works.tip()).isCloseTo(right.coinWorks().angle(1), within(1e-9));
        assertThat(works.kicker()).isEqualTo(right.coinWorks().kicker());
    }

    /** A throw that nobody writes and nothing stops is told with what to do. */
    @Test
    void noThrowAndNoPost() throws IOException {
        Path hut = copy();
        replace(hut.resolve(BOX + ".yaml"), "  throw: 14\n", "");
        without(hut.resolve(BOX + ".yaml"), "lever-end");
        // They would be met next.
        without(hut.resolve(BOX + ".yaml"), "bucket-end");
        without(hut.resolve(BOX + ".yaml"), "bucket-rest");
        Design design = DesignReader.read(hut.resolve("windmill"));
        assertThatThrownBy(() -> Assembler.assemble(design))
                .isInstanceOf(PartException.class)
                .hasMessageContaining("nothing stops the lever")
                .hasMessageContaining("set a post");
    }

    /** A post that can stop nothing is told so, with what was read and expected, and is not left standing somewhere. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "lever-rest|[back, front], rod: bamboo-3, stops: {part: lever, when: tipped}|expected rest or pressed",
                "lever-rest|[back, front], rod: bamboo-3, stops: {part: bucket-core, when: pressed}|expected rest or tipped",
                "lever-rest|[back, front], rod: bamboo-3, stops: {part: chute-left, when: rest}|expected a part that turns",
                "lever-rest|[lever, front], rod: bamboo-3, stops: {part: lever, when: rest}|which moves",
                "lever-rest|[bucket-core, front], rod: bamboo-3, stops: {part: lever, when: rest}|which moves",
                "lever-dowel-1|[lever, hub-far, hub-near, kicker], rod: bamboo-3, stops: {part: lever, when: rest}|no pivot and no dowel"
            })
    void aPostThatStopsNothingIsTold(String post, String entry, String told) throws IOException {
        Path hut = copy();
        replace(hut.resolve(BOX + ".yaml"), "(?m)^  " + post + ": .*$", "  " + post + ": {parts: " + entry + "}");
        Design design = DesignReader.read(hut.resolve("heron"));
        assertThatThrownBy(() -> Assembler.assemble(design))
                .isInstanceOf(PartException.class)
                .hasMessageContaining(told)
                .hasMessageContaining("pins." + post + ".stops");
    }

    /** Too far from the lever at any angle near: not moved across the box without a word. */
    @Test
    void aPostFarFromItsPartIsTold() throws IOException {
        Path hut = copy();
        replace(
                hut.resolve(BOX + ".svg"),
                "id=\"lever-rest\" cx=\"140\" cy=\"31.5\"",
                "id=\"lever-rest\" cx=\"20\" cy=\"20\"");
        Design design = DesignReader.read(hut.resolve("windmill"));
        Assembly assembly = Assembler.assemble(design);
        assertThat(end(assembly, "lever-rest").isProvided()).isFalse();
        RodRun rod = rod(design, assembly, "lever-rest");
        assertThat(rod.at().distance(design.inBox(null, "lever-rest"))).isZero();
        assertThat(Questions.ask(Subject.of(design)))
                .filteredOn(finding -> finding.id().equals("what-stops/lever-rest"))
                .allMatch(finding -> finding.remedy().toString().contains("nearer to its edge"))
                .hasSize(1);
    }

    /** A coin falls past wood and rods alike: a post across its way is in it. */
    @Test
    void aPostInTheCoinsWayIsTold() throws IOException {
        Path hut = copy();
        replace(
                hut.resolve(BOX + ".yaml"),
                "  lever-end: .*",
                "  lever-end: {parts: [chute-far, chute-near, front], rod: bamboo-3, stops: {part: lever, when: pressed}}");
        replace(
                hut.resolve(BOX + ".svg"),
                "id=\"lever-end\" cx=\"[0-9.]*\" cy=\"[0-9.]*\"",
                "id=\"lever-end\" cx=\"60\" cy=\"24\"");
        List<Finding> found = Questions.ask(Subject.of(DesignReader.read(hut.resolve("heron"))));
        assertThat(found)
                .filteredOn(finding -> finding.id().equals("coin-falls"))
                .allSatisfy(finding -> assertThat(finding.status()).isEqualTo(Status.FAIL))
                .isNotEmpty();
    }

    /** Wood will do as well as a rod: a block above the lever's arm, and nothing clashes. */
    @Test
    void aBlockOfWoodStopsIt() throws IOException {
        Path hut = copy();
        without(hut.resolve(BOX + ".yaml"), "lever-rest");
        replace(hut.resolve(BOX + ".yaml"), "  front:  ", "  block:        {stock: birch-3, layer: 5}\n  front:  ");
        replace(hut.resolve(BOX + ".yaml"), "fixed: \\[back, ", "fixed: [back, block, ");
        replace(
                hut.resolve(BOX + ".svg"),
                "<path id=\"front\"",
                "<path id=\"block\" d=\"M136,33.1 h6 v-9 h-6 Z\"/>\n    <path id=\"front\"");
        List<Finding> failing = Questions.ask(Subject.of(DesignReader.read(hut.resolve("windmill")))).stream()
                .filter(finding -> finding.status() == Status.FAIL)
                .toList();
        assertThat(failing).extracting(Finding::id).doesNotContain("what-stops/lever-rest", "parts-clash");
    }
}

package jackwork.make;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.DemoCopy;
import jackwork.check.Finding;
import jackwork.check.Status;
import jackwork.check.Subject;
import jackwork.design.Design;
import jackwork.design.DesignReader;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The heron's box pressed hard: by hand, with and without toes, with shallower cases and weaker fingers. */
@Tag("quick")
class StandsFirmTest {

    private static final Pattern TOES = Pattern.compile("toes\\.(left|right): (\\d+)");

    /** Of the sheet as measured, mm. */
    private static final double THICK = 2.95;
    /** Where the case's walls end on the right, mm. */
    private static final double EDGE = -0.6 + 151.2 + THICK;

    private static Design heron(String force, String... changes) throws IOException {
        Path demo = DemoCopy.here("heron");
        Path workshop = demo.resolve("workshop.yaml");
        String text = Files.readString(workshop);
        String changed = text.replaceFirst(
                "strongest: \\{value: 60, low: 40, high: 80",
                "strongest: {value: %s, low: %s, high: %s".formatted(force, force, force));
        assertThat(changed).isNotEqualTo(text);
        Files.writeString(workshop, changed);
        return DesignReader.read(DemoCopy.heron(demo, "EUR-1", changes));
    }

    private static Finding tips(Design design) {
        return findings(design).get(0);
    }

    private static List<Finding> findings(Design design) {
        List<Finding> findings = StandsFirm.ask(design, Subject.of(design));
        assertThat(findings).extracting(Finding::id).containsExactly("stands-firm/tips", "stands-firm/slides");
        return findings;
    }

    /**
     * Statics by hand from the numbers of the file. The walls end at 153.55 mm; the lever's end is pressed 94.9 mm above
     * the table at 158, 4.45 mm beyond. Leaning 5 deg to the right, F tips the piece when F (4.45 cos 5° + 94.9 sin 5°) =
     * W (153.55 − 69.0), with W = 3.16 N: F = 60 N straight down, 21.0 N with the lean.
     */
    @Test
    void theForceThatTipsItByHand() throws IOException {
        Finding finding = tips(heron("60", "box.case.toes.right: 0"));
        assertThat(finding.status()).isEqualTo(Status.FAIL);
        double weight = number(finding, "weight ([\\d.]+) N");
        double centre = number(finding, "N at x = ([\\d.]+)");
        assertThat(weight).isCloseTo(3.16, within(0.03));
        double press = number(finding, "press 60\\.0 N at x = ([\\d.]+)");
        double above = number(finding, "z = [\\d.]+ mm, ([\\d.]+) mm above the table");
        double lean = Math.toRadians(5);
        double most = weight * (EDGE - centre) / ((press - EDGE) * Math.cos(lean) + above * Math.sin(lean));
        assertThat(words(finding.why().toString(), "([\\d.]+) N is the most")).isCloseTo(most, within(0.02 * most));
        double beyond = (weight * centre + 60 * Math.cos(lean) * press + 60 * Math.sin(lean) * above)
                        / (weight + 60 * Math.cos(lean))
                - EDGE;
        assertThat(finding.margin()).isCloseTo(-beyond, within(0.3));
    }

    /** Mass and centre of walls, ends, floor and lid as plain rectangles, and the works as the mechanism tells them. */
    @Test
    void itsWeightIsThatOfWhatItIsMadeOf() throws IOException {
        Design design = heron("60", "box.case.toes.right: 0");
        double grams = number(tips(design), "weight ([\\d.]+) N") / 9.80665 * 1000;
        double works = Subject.of(design).assembly().bodies().stream()
                .mapToDouble(body -> body.mass())
                .sum();
        double t = THICK;
        double walls = 2 * (151.2 + 2 * t) * (114.6 + 2 * t + 3) + 2 * 62 * (114.6 + 2 * t + 3);
        double flat = 151.2 * 62 + (151.2 + 2 * t + 8) * (62 + 2 * t + 8);
        double density = PartsList.density(design.workshop(), "birch-3");
        double panels = (walls + flat) * t * density / 1000;
        // Tabs, slots, openings, the gaps between feet and the door's frame are left out of this.
        assertThat(grams - works).isCloseTo(panels, within(0.12 * panels));
    }

    /** What the remedy says is enough, with every number at its worst, and little less is not. */
    @Test
    void theToesItAsksForAreEnough() throws IOException {
        Random random = new Random(61);
        int asked = 0;
        for (int i = 0; i < 12; i++) {
            String width = String.format(Locale.ROOT, "%.1f", 151.2 + 6 * random.nextDouble());
            String force = String.format(Locale.ROOT, "%.0f", 20 + 60 * random.nextDouble());
            String wide = "box.case.width: " + width;
            Finding bare = tips(heron(force, wide, "box.case.toes.right: 0"));
            Matcher toes = TOES.matcher(bare.remedy().toString());
            if (!toes.find()) {
                assertThat(bare.status()).as(width).isEqualTo(Status.PASS);
                continue;
            }
            asked++;
            assertThat(toes.group(1)).isEqualTo("right");
            int reach = Integer.parseInt(toes.group(2));
            assertThat(tips(heron(force, wide, "box.case.toes.right: " + reach)).status())
                    .as("%s mm, %s N, %d", width, force, reach)
                    .isEqualTo(Status.PASS);
            assertThat(tips(heron(force, wide, "box.case.toes.right: " + Math.max(0, reach - 14)))
                            .status())
                    .as("%s mm, %s N, %d", width, force, reach - 14)
                    .isNotEqualTo(Status.PASS);
        }
        assertThat(asked).isGreaterThan(6);
    }

    @ParameterizedTest
    @CsvSource({"22, 60, PASS", "0, 60, FAIL", "0, 10, PASS", "10, 60, DOUBTFUL"})
    void toesAndFingers(int reach, int force, Status expected) throws IOException {
        Finding finding = tips(heron(String.valueOf(force), "box.case.toes.right: " + reach));
        assertThat(finding.status()).isEqualTo(expected);
        assertThat(finding.remedy().isEmpty()).isEqualTo(expected == Status.PASS);
    }

    /** A higher lever tips the shallow box over its near wall as well: what it says to that side does, and no toe there is. */
    @Test
    void overTheNearWallItTakesABoard() throws IOException {
        String[] high = {"box.case.floor: -60", "box.case.height: 160.6"};
        Finding both = tips(heron("60", high[0], high[1], "box.case.toes.right: 0"));
        assertThat(both.status()).isEqualTo(Status.FAIL);
        assertThat(both.remedy().toString())
                .contains("in the design's file, under change: box.case.toes.right: ", "a board that reaches");
        Finding near = tips(heron("60", high[0], high[1], "box.case.toes.right: 40"));
        assertThat(near.status()).isEqualTo(Status.DOUBTFUL);
        assertThat(near.remedy().toString())
                .startsWith("Lower the lever, or set the piece on a board")
                .contains("near wall");
    }

    @Test
    void withoutACaseNobodyKnows() throws IOException {
        Path demo = DemoCopy.here("heron");
        Path box = demo.resolve("boxes/marsh-box/box.yaml");
        String text = Files.readString(box);
        Files.writeString(box, text.substring(0, text.indexOf("\ncase:") + 1));
        Design design = DesignReader.read(demo.resolve("heron"));
        assertThat(StandsFirm.ask(design, Subject.of(design))).singleElement().satisfies(finding -> {
            assertThat(finding.status()).isEqualTo(Status.OPEN);
            assertThat(finding.remedy().isEmpty()).isFalse();
        });
    }

    /** What is there on the other side stays. */
    @Test
    void aToeOnTheOtherSideStays() throws IOException {
        Finding finding = tips(heron("60", "box.case.toes.right: 0", "box.case.toes.left: 12"));
        assertThat(finding.remedy().toString())
                .containsPattern("under change: box\\.case\\.toes\\.left: 12, box\\.case\\.toes\\.right: 1[78];");
    }

    /** Both long walls, and no other panel, reach out by what the file says, as low at the tip as a toe. */
    @Test
    void toesStandOnTheTableAndNowhereElse() throws IOException {
        Design design = heron("60", "box.case.toes.right: 22");
        Case housing = Objects.requireNonNull(Case.of(design, Subject.of(design)));
        double lowest = housing.panels().stream()
                .filter(panel -> panel.axis() != Panel.Axis.Y)
                .mapToDouble(panel -> panel.outline().bounds().minY())
                .min()
                .orElseThrow();
        for (Panel panel : housing.panels()) {
            if (panel.name().equals("case-near") || panel.name().equals("case-far")) {
                assertThat(panel.outline().bounds().maxX()).as(panel.name()).isCloseTo(EDGE + 22, within(1e-9));
                assertThat(panel.outline().contains(new Point(EDGE + 21, lowest + 5)))
                        .isTrue();
                assertThat(panel.outline().contains(new Point(EDGE + 21, lowest + 8)))
                        .isFalse();
            } else if (!panel.name().equals("case-lid")) {
                assertThat(
                                panel.axis() == Panel.Axis.X
                                        ? panel.to()
                                        : panel.outline().bounds().maxX())
                        .as(panel.name())
                        .isLessThan(EDGE + 1e-9);
            }
        }
    }

    /** A toe as high as the lowest tabs leaves their slots free: within the case the walls are as without it. */
    @Test
    void longToesLeaveTheSlotsFree() throws IOException {
        List<Outline> walls = new ArrayList<>();
        for (int reach : List.of(0, 70)) {
            Design design = heron("60", "box.case.toes.right: " + reach);
            Outline within = Outline.rectangle(-50, -100, EDGE, 200);
            List<Outline> left = Objects.requireNonNull(Case.of(design, Subject.of(design))).panels().stream()
                    .filter(panel -> panel.name().equals("case-near"))
                    .findFirst()
                    .orElseThrow()
                    .outline()
                    .shared(within);
            assertThat(left).hasSize(1);
            walls.add(left.get(0));
        }
        assertThat(walls.get(1).area()).isCloseTo(walls.get(0).area(), within(1e-6));
        assertThat(walls.get(1).sharedArea(walls.get(0))).isCloseTo(walls.get(0).area(), within(1e-6));
    }

    private static double number(Finding finding, String pattern) {
        return words(finding.formula(), pattern);
    }

    private static double words(String text, String pattern) {
        Matcher found = Pattern.compile(pattern).matcher(text);
        assertThat(found.find()).as(text).isTrue();
        return Double.parseDouble(found.group(1));
    }
}

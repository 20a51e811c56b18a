package jackwork.check;

import static jackwork.check.Nonsense.changed;
import static jackwork.check.Nonsense.isNo;
import static jackwork.check.Nonsense.replaced;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.geometry.Point;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The press that is refused: by hand on the heron's box, on all demos, and where boxes are spoiled. */
@Tag("quick")
class RefusedPressTest {

    private static final List<Question> ALL =
            List.of(new PivotsBearPress(), new PostBearsPress(), new WoodBearsPress());

    private static RefusedPress heron() throws IOException {
        return RefusedPress.of(plain("heron").assembly()).orElseThrow();
    }

    private static Subject plain(String design) throws IOException {
        return changed(design, "box.name: Box");
    }

    private static Finding ask(Question question, Subject subject) {
        List<Finding> findings = question.ask(subject);
        assertThat(findings).hasSize(1);
        return findings.get(0);
    }

    /**
     * From the drawing, mm to the right and up of the lever's pivot: the finger at (78, 0), the tooth's corner at (17.66, −1.01)
     * comes down on the strut, which ends at (21.0, −2.0): by −3.2° they lie on each other from 17.7 to 21.0. Square to the
     * strut, 78 cos 3.2° = N · 19.3: some 4.0 N for one of the finger.
     */
    @Test
    void theToothBearsByTheLever() throws IOException {
        RefusedPress press = heron();
        assertThat(press.at().x() - 80).isCloseTo((17.7 + 21.0) / 2, within(0.2));
        assertThat(press.at().y() - 72).isCloseTo(-2.0, within(0.1));
        assertThat(press.normal().distance(new Point(0, 1))).isLessThan(1e-3);
        assertThat(press.bites()).hasSize(3);
        press.bites().forEach(bite -> assertThat(bite.width()).isCloseTo(3.3, within(0.2)));
        List<RefusedPress.Loads> frictionless = press.loads(0);
        double arm = 78 * Math.cos(Math.toRadians(3.21));
        assertThat(frictionless.get(0).normal()).isCloseTo(arm / (press.at().x() - 80), within(0.01));
        assertThat(frictionless
                        .get(0)
                        .onLever()
                        .distance(new Point(0, 1 - arm / (press.at().x() - 80))))
                .isLessThan(0.01);
    }

    /**
     * Friction that shuts the bucket, µ = 0.35: by hand, with C − P = (19.34, −2.05) and C − B = (2.34, 31.95),
     * N = 77.88 / (19.34 − 0.35 · 2.05) = 4.18; turning about the bucket's pivot 4.18 · 2.34 + 0.35 · 4.18 · 31.95 = 56.5 N·mm,
     * which the post bears.
     */
    @Test
    void frictionThatShutsTheBucketComesToThePost() throws IOException {
        RefusedPress press = heron();
        RefusedPress.Loads shut = press.loads(0.35).get(1);
        assertThat(shut.friction()).isEqualTo(0.35);
        assertThat(shut.normal()).isCloseTo(4.18, within(0.01));
        assertThat(shut.onStrut().distance(new Point(1.46, -4.18))).isLessThan(0.02);
        Point post = press.stop().meeting().at().minus(new Point(97, 38));
        assertThat(Math.abs(post.cross(shut.byStop()))).isCloseTo(56.5, within(0.3));
        assertThat(shut.onStrut().plus(shut.byStop()).plus(shut.onBucket()).length())
                .isLessThan(1e-9);
    }

    /** Friction that would open it is no more than leaves the line of the force through the pivot: that then bears all of it. */
    @Test
    void atTheOtherEndThePivotBearsAllOfIt() throws IOException {
        RefusedPress.Loads open = heron().loads(0.35).get(0);
        assertThat(open.friction()).isCloseTo(-2.34 / 31.95, within(0.001));
        assertThat(open.byStop()).isEqualTo(Point.ORIGIN);
        assertThat(open.onBucket().length()).isCloseTo(open.onTooth().length(), within(1e-9));
    }

    /** Forces on lever and bucket balance, whatever the friction, and are as large as the finger's is. */
    @ParameterizedTest
    @CsvSource({"heron,0", "heron,0.2", "heron,0.5", "cobbler,0.1", "cobbler,0.35", "cobbler,0.5"})
    void bothBodiesAreInBalance(String design, double friction) throws IOException {
        RefusedPress press = RefusedPress.of(plain(design).assembly()).orElseThrow();
        var assembly = press.assembly();
        List<RefusedPress.Loads> all = press.loads(friction);
        assertThat(all).hasSize(2);
        for (RefusedPress.Loads loads : all) {
            Point finger = new Point(0, -1);
            assertThat(loads.onTooth().plus(finger).plus(loads.onLever()).length())
                    .isLessThan(1e-9);
            Point lever = assembly.lever().pivot();
            assertThat(press.press().minus(lever).cross(finger)
                            + press.at().minus(lever).cross(loads.onTooth()))
                    .isCloseTo(0, within(1e-9));
            Point bucket = assembly.coinWorks().pivot();
            assertThat(press.at().minus(bucket).cross(loads.onStrut())
                            + press.stop().meeting().at().minus(bucket).cross(loads.byStop()))
                    .isCloseTo(0, within(1e-6));
        }
    }

    /** The gate of the cobbler's box is held by friction alone, 0.05 of what presses: with none it slips aside, and no press is refused. */
    @Test
    void whatSlipsAsideIsNotRefused() throws IOException {
        assertThat(RefusedPress.of(plain("cobbler").assembly()).orElseThrow().loads(0))
                .isEmpty();
        assertThat(RefusedPress.of(plain("cobbler").assembly()).orElseThrow().loads(0.06))
                .hasSize(2);
    }

    @ParameterizedTest
    @ValueSource(strings = {"heron", "windmill", "lamplighter", "cobbler"})
    void theDemosStandIt(String design) throws IOException {
        Subject subject = plain(design);
        for (Question question : ALL) {
            Finding finding = ask(question, subject);
            assertThat(finding.status()).as(finding.id()).isEqualTo(Status.PASS);
            assertThat(finding.limit()).as(finding.id()).isGreaterThan(85);
        }
    }

    /** On skewers the bucket's pivot breaks at some sixteen newtons, as by hand: 100 · π 3³ / 32 / (4.02 · 4.1 mm) . */
    @Test
    void aSkewerBreaks() throws IOException {
        Finding finding = ask(new PivotsBearPress(), changed("heron", "box.pins.bucket-pivot.rod: bamboo-3"));
        assertThat(finding.status()).isEqualTo(Status.FAIL);
        assertThat(finding.limit()).isCloseTo(16, within(1.5));
        assertThat(finding.why().toString()).contains("the rod of bucket-pivot bends");
        assertThat(finding.remedy().toString()).contains("steel-4");
    }

    @Test
    void aPostOfBambooGivesBeforeOneOfSteel() throws IOException {
        Finding bamboo = ask(new PostBearsPress(), changed("heron", "box.pins.bucket-rest.rod: bamboo-3"));
        assertThat(bamboo.limit())
                .isLessThan(ask(new PostBearsPress(), plain("heron")).limit());
        assertThat(bamboo.status()).isNotEqualTo(Status.PASS);
    }

    /** Nobody who presses with at most ten newtons breaks a skewer; whoever presses with two hundred breaks steel. */
    @ParameterizedTest
    @CsvSource({"10,PASSES", "200,FAILS"})
    void itRestsOnWhoPresses(String force, Nonsense.Verdict expected) throws IOException {
        assertThat(Nonsense.ask(new WoodBearsPress(), () -> Nonsense.pressed("heron", force)))
                .isEqualTo(expected);
    }

    /** A tooth in one thin layer, as the box once had it, crushes. */
    @Test
    void aToothInOneLayerCrushes() throws IOException {
        Finding finding = ask(
                new WoodBearsPress(),
                changed("heron", "box.parts.bucket-hub.layer: 11", "box.parts.bucket-far.layer: 12"));
        assertThat(finding.status()).isEqualTo(Status.FAIL);
    }

    @Test
    void whereNoWoodComesOntoWoodNobodyKnows() throws IOException {
        Subject apart = changed("heron", "box.lever.throw: 1");
        Finding finding = ask(new PivotsBearPress(), apart);
        assertThat(finding.status()).isEqualTo(Status.OPEN);
        assertThat(new WoodBearsPress().ask(apart)).isEmpty();
        assertThat(new PostBearsPress().ask(apart)).isEmpty();
    }

    /** Without what it rests on, without a case, with sheets of next to nothing: an answer or a refusal, and never a fault. */
    @Test
    void nonsenseIsAnswered() throws IOException {
        for (Question question : ALL) {
            for (String design : List.of("heron", "cobbler")) {
                String box = design.equals("heron") ? "marsh-box" : "reed-box";
                String stop = design.equals("heron")
                        ? ", stops: {part: bucket-core, when: rest}"
                        : ", stops: {part: gate-strut, when: rest}";
                assertThat(Nonsense.ask(question, () -> replaced(design, "boxes/" + box + "/box.yaml", stop, "")))
                        .isNotNull();
                assertThat(Nonsense.ask(
                                question,
                                () -> replaced(
                                        design,
                                        "workshop.yaml",
                                        "{value: 2.95, low: 2.85, high: 3.05",
                                        "{value: 0.3, low: 0.3, high: 0.3")))
                        .isNotEqualTo(question instanceof WoodBearsPress ? Nonsense.Verdict.PASSES : null);
                assertThat(Nonsense.ask(
                                question, () -> replaced(design, "boxes/" + box + "/box.yaml", "\ncase:", "\n# case:")))
                        .isNotNull();
            }
        }
    }

    @Test
    void paperThinSheetsDoNotPass() throws IOException {
        assertThat(isNo(Nonsense.ask(
                        new WoodBearsPress(),
                        () -> replaced(
                                "heron",
                                "workshop.yaml",
                                "{value: 2.95, low: 2.85, high: 3.05",
                                "{value: 1, low: 1, high: 1"))))
                .isTrue();
    }
}

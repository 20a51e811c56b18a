package jackwork.app.bring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jackwork.DemoCopy;
import jackwork.app.bring.BringPlan.PlannedPart;
import jackwork.app.bring.BringPlan.PlannedPoint;
import jackwork.app.bring.BringPlan.PointRole;
import jackwork.app.core.Attempt;
import jackwork.app.core.Benches;
import jackwork.app.core.DesignCheck;
import jackwork.app.core.Editor;
import jackwork.app.core.ReportMaker;
import jackwork.app.core.Workbench;
import jackwork.app.wire.Pair;
import jackwork.app.wire.PoseEntry;
import jackwork.app.wire.Report;
import jackwork.app.wire.StaleException;
import jackwork.check.Status;
import jackwork.design.Design;
import jackwork.design.DesignReader;
import jackwork.geometry.Point;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A drawing of a maker's own, from the file to a moving design and through being redrawn. */
class BringTest {

    /**
     * A crane in pixels of no known size: stand, body, head, far wing and its mirrored copy, nothing with an id; the
     * body's fill and line apart; pivots as circles. 10 px are 2.5 mm once it is said that the stand is 40 mm wide.
     */
    static final String CRANE = """
            <svg xmlns="http://www.w3.org/2000/svg" width="900" height="800">
              <defs><path id="wing" d="M0,0 L120,-30 L130,20 L10,40 Z"/></defs>
              <g transform="translate(100 50)">
                <g transform="scale(2)"><path d="M170,160 L190,160 L190,290 L220,290 L220,330 L140,330 L140,290 L170,290 Z"/></g>
                <path d="M160,300 L460,280 L520,330 L460,380 L160,370 Z" fill="#9aa7b0"/>
                <path d="M160,300 L460,280 L520,330 L460,380 L160,370 Z" fill="none" stroke="#000"/>
                <path d="M460,310 L600,220 L640,250 L500,350 Z" fill="#cccccc"/>
                <use href="#wing" transform="translate(250 320)" fill="#667788"/>
                <circle cx="360" cy="335" r="6"/>
                <circle cx="482" cy="315" r="6"/>
                <circle cx="500" cy="322" r="6"/>
                <circle cx="240" cy="340" r="6"/>
                <circle cx="300" cy="335" r="6"/>
              </g>
            </svg>""";

    private Path hut;
    private Workbench workbench;
    private Editor editor;
    private BringMaker maker;

    @BeforeEach
    void open() throws IOException {
        hut = DemoCopy.here();
        workbench = Benches.at(hut);
        editor = new Editor(workbench);
        maker = new BringMaker(workbench.folder());
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** Read at the size that a known width gives. */
    private static Brought read(String svg) {
        Brought first = BringReader.read("crane.svg", bytes(svg), 1);
        assertThat(first.sized()).isFalse();
        double scale = 40 / first.shapes().get(0).width();
        return BringReader.read("crane.svg", bytes(svg), scale);
    }

    private static PlannedPart part(Brought brought, int shape, String name, int layer, String body) {
        return new PlannedPart(name, brought.shapes().get(shape).rings(), "birch-3", layer, body, "");
    }

    private static PlannedPoint point(Brought brought, int round, String name, PointRole role, String... parts) {
        Brought.BroughtRound at = brought.rounds().get(round);
        return new PlannedPoint(name, at.at(), at.radius(), role, List.of(parts), 40);
    }

    static BringPlan plan(Brought crane, String name) {
        return new BringPlan(
                name,
                "boxes/marsh-box/box.yaml",
                crane.scale(),
                false,
                new Pair(0, 0),
                List.of(
                        part(crane, 0, "legs", 2, BringPlan.STANDS),
                        part(crane, 1, "body", 3, "trunk"),
                        part(crane, 2, "head", 4, "trunk"),
                        part(crane, 3, "wing", 5, "trunk")),
                List.of(
                        point(crane, 0, "hip", PointRole.PIN, "legs", "body"),
                        point(crane, 1, "neck-1", PointRole.PIN, "body", "head"),
                        point(crane, 2, "neck-2", PointRole.PIN, "body", "head"),
                        point(crane, 3, "tail", PointRole.WEIGHT, "body"),
                        point(crane, 4, "crank", PointRole.LIFT, "body")),
                List.of());
    }

    @Test
    void offersPartsAndPivotsAtTheSizeThatOneLengthGives() {
        Brought crane = read(CRANE);
        assertThat(crane.shapes()).hasSize(4);
        assertThat(crane.shapes().get(0).width()).isCloseTo(40, within(1e-6));
        assertThat(crane.shapes().get(1).twins()).isEqualTo(1);
        assertThat(crane.shapes().get(1).paint()).isEqualTo("#9aa7b0");
        assertThat(crane.shapes().get(1).width()).isCloseTo(90, within(1e-6));
        assertThat(crane.shapes().stream().map(Brought.BroughtShape::layer)).containsExactly(2, 3, 4, 4);
        assertThat(crane.rounds()).hasSize(5);
        assertThat(crane.rounds().get(0).inside()).containsExactly("s1", "s2", "s5");
        assertThat(crane.rounds().get(0).radius()).isCloseTo(1.5, within(1e-3));
    }

    @Test
    void makesAMovingDesignOfIt() {
        BringPlan plan = plan(read(CRANE), "Marsh crane");
        Attempt attempt = maker.attempt(plan);
        assertThat(attempt.complaints()).isEmpty();
        assertThat(maker.make(plan)).isEqualTo("marsh-crane");
        Design design = DesignReader.read(hut.resolve("marsh-crane"));
        assertThat(design.name()).isEqualTo("Marsh crane");
        assertThat(design.figure().works().parts()).containsOnlyKeys("legs", "body", "head", "wing", "crank-rod");
        assertThat(design.figure().works().glued()).containsExactly(List.of("body", "head", "wing"));
        assertThat(design.file().coins()).containsExactly("EUR-0.20", "EUR-0.50", "EUR-1", "EUR-2");
        DesignCheck check = DesignCheck.of(design);
        assertThat(check.subject().stroke().reach()).isEqualTo(1);
        assertThat(turned(ReportMaker.of(check), "body")).isGreaterThan(5);
        assertThat(leftovers()).isEmpty();
    }

    private static double turned(Report report, String part) {
        List<PoseEntry> poses = report.motion().pressing().parts().entrySet().stream()
                .filter(body -> body.getKey().contains(part))
                .findFirst()
                .orElseThrow()
                .getValue();
        PoseEntry last = poses.get(poses.size() - 1);
        PoseEntry first = poses.get(0);
        return Math.abs(last.angle() - first.angle());
    }

    /** Anything in the workshop that begins with a dot: nothing half made stays. */
    private List<Path> leftovers() {
        try (Stream<Path> files = Files.list(hut)) {
            return files.filter(file -> file.getFileName().toString().startsWith("."))
                    .toList();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void saysWhatIsMissingAndWhereItIs() {
        Brought crane = read(CRANE);
        BringPlan whole = plan(crane, "Crane");
        BringPlan bare = new BringPlan(
                "Crane", whole.box(), whole.scale(), false, whole.shift(), whole.parts(), List.of(), List.of());
        assertThat(maker.attempt(bare).complaints())
                .extracting(Attempt.Complaint::about)
                .contains("body", "");
        assertThatThrownBy(() -> maker.make(bare))
                .isInstanceOf(BringException.class)
                .hasMessageContaining("Nothing holds body");
        List<PlannedPoint> points = new ArrayList<>(whole.points());
        points.set(0, new PlannedPoint("hip", new Pair(0, 0), 1.5, PointRole.PIN, List.of("legs", "body"), 0));
        BringPlan beside = new BringPlan(
                "Crane", whole.box(), whole.scale(), false, whole.shift(), whole.parts(), points, List.of());
        assertThat(maker.attempt(beside).complaints())
                .singleElement()
                .satisfies(complaint ->
                        assertThat(complaint.words()).contains("hip").contains("no wood"));
        assertThat(hut.resolve("crane")).doesNotExist();
        assertThat(leftovers()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"../crane", "a/b", "..", "", "C:\\x", ".hidden", "con", "x\ny", "  "})
    void refusesNamesThatLeaveTheFolder(String name) {
        assertThatThrownBy(() -> maker.make(plan(read(CRANE), name))).isInstanceOf(BringException.class);
        assertThat(leftovers()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"../../x", "Wing", "a b", "box", "origin", "lever", "x: {", "engrave-x"})
    void refusesPartNamesThatAreNone(String name) {
        BringPlan good = plan(read(CRANE), "Crane");
        List<PlannedPart> parts = new ArrayList<>(good.parts());
        PlannedPart wing = parts.get(3);
        parts.set(3, new PlannedPart(name, wing.rings(), wing.stock(), wing.layer(), wing.body(), ""));
        BringPlan bad =
                new BringPlan("Crane", good.box(), good.scale(), false, good.shift(), parts, good.points(), List.of());
        assertThat(maker.attempt(bad).complaints())
                .extracting(Attempt.Complaint::about)
                .contains(name);
        assertThatThrownBy(() -> maker.make(bad)).isInstanceOf(BringException.class);
    }

    @Test
    void refusesWhatIsThereAlreadyAndBoxesThatAreNot() {
        assertThatThrownBy(() -> maker.make(plan(read(CRANE), "Heron")))
                .isInstanceOf(BringException.class)
                .hasMessageContaining("heron");
        BringPlan good = plan(read(CRANE), "Crane");
        BringPlan elsewhere = new BringPlan(
                "Crane", "../../box.yaml", 1, false, good.shift(), good.parts(), good.points(), List.of());
        assertThatThrownBy(() -> maker.make(elsewhere))
                .isInstanceOf(BringException.class)
                .hasMessageContaining("no box");
    }

    @Test
    void findsEverythingAgainInARedrawnFile() throws IOException {
        String id = maker.make(plan(read(CRANE), "Crane"));
        Path svg = hut.resolve(id).resolve("figure.svg");
        String before = Files.readString(svg);
        String yaml = Files.readString(hut.resolve(id).resolve("figure.yaml"));
        // A larger page, the head moved with its pins, the body's beak-end reshaped, the hip higher, the wing left out.
        String redrawn = CRANE.replace("height=\"800\"", "height=\"840\"")
                .replace("M460,310 L600,220 L640,250 L500,350", "M464,306 L604,216 L644,246 L504,346")
                .replace("L520,330 L460,380", "L530,330 L460,376")
                .replace("cx=\"360\" cy=\"335\"", "cx=\"360\" cy=\"329\"")
                .replace("<use href=\"#wing\" transform=\"translate(250 320)\" fill=\"#667788\"/>", "")
                .replace("</svg>", "<rect x=\"20\" y=\"20\" width=\"60\" height=\"30\"/></svg>");
        BringRedraw redraw = new BringRedraw(workbench, editor);
        Redrawn found = redraw.read(id, "crane.svg", bytes(redrawn), 0);
        Map<String, Redrawn.RedrawnPart> parts = new java.util.HashMap<>();
        found.parts().forEach(part -> parts.put(part.name(), part));
        assertThat(parts.get("legs").change()).isEqualTo(Redrawn.Change.SAME);
        assertThat(parts.get("head").change()).isEqualTo(Redrawn.Change.MOVED);
        assertThat(parts.get("head").words()).isEqualTo("moved by 1.4 mm");
        assertThat(parts.get("body").change()).isEqualTo(Redrawn.Change.RESHAPED);
        assertThat(parts.get("wing").change()).isEqualTo(Redrawn.Change.GONE);
        assertThat(parts.get("crank-rod").change()).isEqualTo(Redrawn.Change.GONE);
        assertThat(found.added()).hasSize(1);
        Redrawn.RedrawnPoint hip = found.points().stream()
                .filter(point -> point.name().equals("hip"))
                .findFirst()
                .orElseThrow();
        assertThat(hip.words()).isEqualTo("moved by 1.5 mm");
        Redrawn.Redraw plan = new Redrawn.Redraw(
                found.version(),
                "crane.svg",
                redrawn,
                found.scale(),
                Map.of(),
                Map.of(),
                List.of(new Redrawn.AddedPart(found.added().get(0).key(), "hat", "birch-2", 6, "head")),
                List.of("wing"));
        redraw.accept(id, plan);
        Design design = DesignReader.read(hut.resolve(id));
        assertThat(design.figure().works().parts()).containsOnlyKeys("legs", "body", "head", "crank-rod", "hat");
        assertThat(design.figure().works().glued()).containsExactly(List.of("body", "head", "hat"));
        assertThat(design.figure().works().pins()).containsKeys("hip", "crank", "crank-lever", "neck-1", "neck-2");
        Point moved = design.figureDrawing().circle("hip").orElseThrow().centre();
        assertThat(moved.distance(hip.was().point())).isCloseTo(1.5, within(0.01));
        assertThat(DesignCheck.of(design).subject().stroke().reach()).isEqualTo(1);
        editor.undoJson(id, "{\"version\": \"" + editor.versionJson(id).replaceAll(".*:\"|\".*", "") + "\"}");
        assertThat(Files.readString(svg)).isEqualTo(before);
        assertThat(Files.readString(hut.resolve(id).resolve("figure.yaml"))).isEqualTo(yaml);
    }

    @Test
    void keepsAFileWithAllItsIdsAsItIs() throws IOException {
        Path svg = hut.resolve("heron/figure.svg");
        String redrawn = Files.readString(svg).replace("cx=\"66\" cy=\"85\"", "cx=\"66.5\" cy=\"85\"");
        BringRedraw redraw = new BringRedraw(workbench, editor);
        Redrawn found = redraw.read("heron", "mine.svg", bytes(redrawn), 0);
        assertThat(found.parts()).allSatisfy(part -> assertThat(part.change()).isEqualTo(Redrawn.Change.SAME));
        redraw.accept(
                "heron",
                new Redrawn.Redraw(
                        found.version(), "mine.svg", redrawn, found.scale(), Map.of(), Map.of(), List.of(), List.of()));
        assertThat(Files.readString(svg)).isEqualTo(redrawn);
    }

    @Test
    void findsTheHeronWithEveryIdRemoved() throws IOException {
        String heron = Files.readString(hut.resolve("heron/figure.svg"));
        String bare = heron.replaceAll(" id=\"[^\"]*\"", "");
        Redrawn found = new BringRedraw(workbench, editor).read("heron", "heron.svg", bytes(bare), 0);
        assertThat(found.parts())
                .hasSize(10)
                .allSatisfy(part -> assertThat(part.change()).as(part.name()).isEqualTo(Redrawn.Change.SAME));
        assertThat(found.points())
                .allSatisfy(point -> assertThat(point.change()).as(point.name()).isEqualTo(Redrawn.Change.SAME));
    }

    @Test
    void refusesToWriteOverFilesThatHaveChangedSince() throws IOException {
        String redrawn = Files.readString(hut.resolve("heron/figure.svg")).replace("cx=\"66\"", "cx=\"66.5\"");
        BringRedraw redraw = new BringRedraw(workbench, editor);
        Redrawn found = redraw.read("heron", "mine.svg", bytes(redrawn), 0);
        Files.writeString(hut.resolve("heron/figure.svg"), redrawn.replace("66.5", "66.2"));
        Redrawn.Redraw plan =
                new Redrawn.Redraw(found.version(), "mine.svg", redrawn, 1, Map.of(), Map.of(), List.of(), List.of());
        assertThatThrownBy(() -> redraw.accept("heron", plan)).isInstanceOf(StaleException.class);
    }

    @Test
    void beginsFromBareBoardsAndOwnDesigns() {
        Bringing bringing = new Bringing(workbench, editor);
        for (BareStarts.Bare bare : BareStarts.ALL) {
            String made = bringing.beginJson("{\"from\": \"bare/" + bare.id() + "\", \"name\": \"Start " + bare.id()
                    + "\", \"box\": \"boxes/marsh-box/box.yaml\"}");
            assertThat(made).isEqualTo("{\"id\":\"start-" + bare.id() + "\"}");
            DesignCheck check = DesignCheck.of(DesignReader.read(hut.resolve("start-" + bare.id())));
            assertThat(check.subject().stroke().reach()).as(bare.id()).isEqualTo(1);
            for (BareStarts.Board board : bare.boards()) {
                assertThat(turned(ReportMaker.of(check), board.name()))
                        .as(bare.id() + " " + board.name())
                        .isGreaterThan(5);
            }
            assertThat(check.findings()).as(bare.id()).noneMatch(finding -> finding.status() == Status.FAIL);
        }
        bringing.beginJson("{\"from\": \"own/spoiled/heron-hangs-up\", \"name\": \"My: heron\", \"box\": \"\"}"
                .replace("My: heron", "My heron"));
        assertThat(DesignReader.read(hut.resolve("my-heron")).name()).isEqualTo("My heron");
        assertThat(bringing.pictureSvg("own/my-heron")).startsWith("<svg");
        assertThat(leftovers()).isEmpty();
    }

    /** A board with an eye cut out of its path, an eye drawn as a circle, a pivot, and a mark that means nothing yet. */
    private static final String BOARD = """
            <svg xmlns="http://www.w3.org/2000/svg" width="120mm" height="80mm" viewBox="0 0 120 80">
              <path d="M10,10 h100 v30 h-100 Z M22,20 a2,2 0 1 0 -4,0 a2,2 0 1 0 4,0 Z"/>
              <circle cx="90" cy="20" r="2.5"/><circle cx="60" cy="25" r="1.5"/><circle cx="40" cy="20" r="1"/>
              <circle cx="76" cy="25" r="1.5"/>
            </svg>""";

    @Test
    void keepsHolesAndMarksThroughARedrawing() {
        Brought board = BringReader.read("board.svg", bytes(BOARD), 1);
        assertThat(board.sized()).isTrue();
        assertThat(board.rounds())
                .extracting(Brought.BroughtRound::key)
                .containsExactly("s1h1", "s2", "s3", "s4", "s5");
        BringPlan plan = new BringPlan(
                "Board",
                "boxes/marsh-box/box.yaml",
                1,
                false,
                new Pair(0, 0),
                List.of(part(board, 0, "board", 3, "")),
                List.of(
                        point(board, 0, "eye", PointRole.HOLE, "board"),
                        point(board, 1, "other-eye", PointRole.HOLE, "board"),
                        point(board, 2, "pivot", PointRole.POST, "board"),
                        point(board, 3, "mark", PointRole.NONE),
                        point(board, 4, "crank", PointRole.LIFT, "board")),
                List.of());
        String id = maker.make(plan);
        double area = DesignReader.read(hut.resolve(id))
                .figureDrawing()
                .outline("board")
                .orElseThrow()
                .area();
        assertThat(area).isCloseTo(3000 - Math.PI * (4 + 6.25), within(0.2));
        // The weightier eye and the pivot moved; the file has no ids as before.
        String redrawn = BOARD.replace("cx=\"90\"", "cx=\"93\"").replace("cx=\"60\" cy=\"25\"", "cx=\"58\" cy=\"25\"");
        BringRedraw redraw = new BringRedraw(workbench, editor);
        Redrawn found = redraw.read(id, "board.svg", bytes(redrawn), 0);
        assertThat(found.points().stream().filter(p -> p.change() == Redrawn.Change.MOVED))
                .extracting(Redrawn.RedrawnPoint::name)
                .containsExactlyInAnyOrder("other-eye", "pivot");
        assertThat(found.parts().get(0).change()).isEqualTo(Redrawn.Change.SAME);
        redraw.accept(
                id,
                new Redrawn.Redraw(found.version(), "board.svg", redrawn, 1, Map.of(), Map.of(), List.of(), List.of()));
        Design after = DesignReader.read(hut.resolve(id));
        jackwork.geometry.Outline outline =
                after.figureDrawing().outline("board").orElseThrow();
        assertThat(outline.area()).isCloseTo(area, within(0.2));
        assertThat(outline.contains(new Point(93, 60))).isFalse();
        assertThat(outline.contains(new Point(90, 60))).isTrue();
        assertThat(after.figureDrawing().circles()).containsKeys("mark", "eye", "other-eye", "pivot");
        assertThat(DesignCheck.of(after).subject().stroke().reach()).isEqualTo(1);
    }
}

package jackwork.app.core;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.DemoCopy;
import jackwork.app.history.HistoryFolder;
import jackwork.app.history.Turn;
import jackwork.app.workshop.MyWorkshop;
import jackwork.design.DesignFiles;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A workshop that a stranger sent, with a history made up to reach what lies outside it. */
class HostileHistoryTest {

    private static final String MINE = "# mine\n";
    private static final String THEIRS = "# theirs\n";

    @TempDir
    private Path folder;

    private Path hut;
    private Path history;
    private String design;

    @BeforeEach
    void begin() throws IOException {
        hut = DemoCopy.with(folder.resolve("hut"), "heron", "spoiled/heron-hangs-up");
        history = hut.resolve(".jackwork/history/heron");
        design = Files.readString(hut.resolve("heron/design.yaml"));
        Files.writeString(folder.resolve(".profile"), MINE);
        Files.writeString(hut.resolve("notes.yaml"), MINE);
    }

    /** What must be as it was: all that lies outside the workshop, and all in it but what the program keeps. */
    private Map<String, String> state() throws IOException {
        Map<String, String> state = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.toList()) {
                String name = folder.relativize(file).toString();
                if (!name.startsWith("hut/.jackwork")) {
                    state.put(
                            name,
                            Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                                    ? Files.readString(file, StandardCharsets.ISO_8859_1)
                                    : "");
                }
            }
        }
        return state;
    }

    private String keep(String text) throws IOException {
        String name = DesignFiles.nameOf(text);
        Files.writeString(Files.createDirectories(history).resolve(name + ".yaml"), text);
        return name;
    }

    private void line(String what, Map<String, String> before, Map<String, String> after) throws IOException {
        String line = JsonMapper.shared()
                .writeValueAsString(Map.of("what", what, "label", "x", "before", before, "after", after));
        write(line + "\n");
    }

    private void write(String text) throws IOException {
        Files.writeString(Files.createDirectories(history).resolve("steps.jsonl"), text);
    }

    /** Opens the design as the page does, and clicks once. */
    private JsonNode takenBack() {
        Editor editor = new Editor(new Workbench(hut));
        String version = editor.versionJson("heron");
        return JsonMapper.shared().readTree(editor.undoJson("heron", version));
    }

    private void isPutAside(JsonNode view, String why) {
        assertThat(view.path("undo").isNull()).isTrue();
        assertThat(view.path("putAside").asString(""))
                .contains(why)
                .contains("no file was changed")
                .contains("(put aside 1)");
        assertThat(Files.exists(history.resolveSibling("heron (put aside 1)"))).isTrue();
        assertThat(Files.exists(history)).isFalse();
    }

    /** Half of it stands already, so that merely looking at the design would end it. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "../.profile",
                "..\\.profile",
                "heron/../../.profile",
                "heron/./../../.profile",
                "{folder}/.profile",
                "file:../.profile",
                "notes.yaml",
                "workshop.yaml",
                "heron/../notes.yaml",
                "windmill/figure.yaml",
                ".jackwork/turn",
                "",
                "\u0000"
            })
    void aHalfWrittenChangeOfAnotherFileIsNeverEnded(String key) throws IOException {
        String name = key.replace("{folder}", folder.toString());
        Map<String, String> before = new LinkedHashMap<>(Map.of("heron/design.yaml", keep("# once\n")));
        before.put(name, keep(MINE));
        Map<String, String> after = new LinkedHashMap<>(Map.of("heron/design.yaml", keep(design)));
        after.put(name, keep(THEIRS));
        line("writing", before, after);
        Map<String, String> was = state();
        JsonNode view = takenBack();
        assertThat(state()).isEqualTo(was);
        isPutAside(view, "and this design changes no file of that name");
    }

    @ParameterizedTest
    @ValueSource(strings = {"../.profile", "{folder}/.profile", "heron\\..\\..\\.profile", "notes.yaml"})
    void aForgedStepIsNeverTakenBack(String key) throws IOException {
        String name = key.replace("{folder}", folder.toString());
        line("did", Map.of(name, keep(THEIRS)), Map.of(name, keep(MINE)));
        Map<String, String> was = state();
        JsonNode view = takenBack();
        assertThat(state()).isEqualTo(was);
        isPutAside(view, "and this design changes no file of that name");
    }

    @Test
    void aTextThatDoesNotFitItsNameIsNeverWritten() throws IOException {
        String name = keep("# once\n");
        line("did", Map.of("heron/design.yaml", name), Map.of("heron/design.yaml", keep(design)));
        Files.writeString(history.resolve(name + ".yaml"), THEIRS);
        Map<String, String> was = state();
        JsonNode view = takenBack();
        assertThat(state()).isEqualTo(was);
        isPutAside(view, "the text " + name);
    }

    @Test
    void aTextThatIsALinkIsNotRead() throws IOException {
        String name = DesignFiles.nameOf(MINE);
        line("did", Map.of("heron/design.yaml", name), Map.of("heron/design.yaml", keep(design)));
        Files.createSymbolicLink(history.resolve(name + ".yaml"), folder.resolve(".profile"));
        Map<String, String> was = state();
        JsonNode view = takenBack();
        assertThat(state()).isEqualTo(was);
        isPutAside(view, "the text " + name);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"what\":\"undid\",\"before\":{},\"after\":{}}",
                "{\"what\":7}",
                "{}",
                "[]",
                "\"did\"",
                "no JSON at all",
                "\u0000\u0001\u0002",
                "[[[[[[",
                "{\"what\":\"did\",\"before\":{\"heron/design.yaml\":\"../../../.profile\"},\"after\":{\"heron/design.yaml\":\"x\"}}",
                "{\"what\":\"did\",\"before\":{\"heron/design.yaml\":\"00000000000000000000\"},\"after\":{}}",
                "{\"what\":\"did\",\"label\":\"x\"}}"
            })
    void whatIsNoStepIsNotTakenForOne(String line) throws IOException {
        write(line + "\n");
        Map<String, String> was = state();
        JsonNode view = takenBack();
        assertThat(state()).isEqualTo(was);
        isPutAside(view, "line 1 of its list of steps");
    }

    @Test
    void aLineWithoutEndIsNotReadToIt() throws IOException {
        write("{\"what\":\"did\",\"label\":\"" + "x".repeat(1 << 20));
        isPutAside(takenBack(), "longer than any step");
    }

    @Test
    void aListLargerThanAnyIsNotRead() throws IOException {
        Files.createDirectories(history);
        try (var file =
                new java.io.RandomAccessFile(history.resolve("steps.jsonl").toFile(), "rw")) {
            file.setLength((64L << 20) + 1);
        }
        isPutAside(takenBack(), "larger than 64 MiB");
    }

    /** A file of the design that is a link out: it must be looked at to be a design, and is never written. */
    @Test
    void noFileIsWrittenThroughALinkThatLeadsOut() throws IOException {
        Path mine = folder.resolve("mine.yaml");
        Files.move(hut.resolve("heron/design.yaml"), mine);
        Files.createSymbolicLink(hut.resolve("heron/design.yaml"), mine);
        line(
                "did",
                Map.of("heron/design.yaml", keep(design + "\n# as it was before\n")),
                Map.of("heron/design.yaml", keep(design)));
        Map<String, String> was = state();
        Editor editor = new Editor(new Workbench(hut));
        String version = editor.versionJson("heron");
        assertThat(thrown(() -> editor.undoJson("heron", version))).hasMessageContaining("leads out of the workshop");
        assertThat(thrown(() -> editor.editJson(
                        "heron",
                        version.replace("\"version\"", "\"base\"").replace("}", "")
                                + ", \"label\": \"x\", \"steps\": [{\"kind\": \"SET\", \"path\":"
                                + " \"figure.weights.tail.mass\", \"value\": \"20\"}]}")))
                .hasMessageContaining("leads out of the workshop");
        assertThat(state()).isEqualTo(was);
    }

    private static Throwable thrown(Runnable work) {
        try {
            work.run();
        } catch (RuntimeException e) {
            return e;
        }
        return new AssertionError("nothing was thrown");
    }

    /** Each stands for what the program keeps, and leads out. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                ".jackwork",
                ".jackwork/history",
                ".jackwork/history/heron",
                ".jackwork/history/heron/steps.jsonl",
            })
    void nothingIsKeptThroughALink(String link) throws IOException {
        Path outside = Files.createDirectories(folder.resolve("outside"));
        Path at = hut.resolve(link);
        Files.createDirectories(at.getParent());
        Files.createSymbolicLink(at, link.endsWith("jsonl") ? folder.resolve(".profile") : outside);
        Map<String, String> was = state();
        was.remove("hut/.jackwork");
        Editor editor = new Editor(new Workbench(hut));
        String version = editor.versionJson("heron");
        JsonNode view = JsonMapper.shared().readTree(editor.undoJson("heron", version));
        assertThat(view.path("putAside").asString("")).contains("is a link").contains("(put aside 1)");
        String edit = version.replace("\"version\"", "\"base\"").replace("}", "")
                + ", \"label\": \"x\", \"steps\": [{\"kind\": \"SET\", \"path\":"
                + " \"figure.weights.tail.mass\", \"value\": \"20\"}]}";
        view = JsonMapper.shared().readTree(editor.editJson("heron", edit));
        assertThat(view.path("undo").asString(""))
                .as("kept anew, in a place of its own")
                .isEqualTo("x");
        Map<String, String> is = state();
        is.put("hut/heron/design.yaml", design);
        assertThat(is).isEqualTo(was);
    }

    @Test
    void theTurnIsNotTakenThroughALink() throws IOException {
        Path outside = folder.resolve("not-there");
        Files.createDirectories(hut.resolve(".jackwork"));
        Files.createSymbolicLink(hut.resolve(".jackwork/turn"), outside);
        assertThat(thrown(() -> Turn.take(hut, () -> {}))).hasMessageContaining("is a link");
        assertThat(Files.exists(outside)).isFalse();
    }

    @Test
    void aHistoryThatCannotBeMovedAwayIsNotUsedEither() throws IOException {
        line("did", Map.of("notes.yaml", keep(THEIRS)), Map.of("notes.yaml", keep(MINE)));
        Files.createDirectories(hut.resolve("heron"));
        for (int number = 1; number < 2; number++) {
            Files.createDirectories(history.resolveSibling("heron (put aside " + number + ")"));
        }
        JsonNode view = takenBack();
        assertThat(view.path("undo").isNull()).isTrue();
        assertThat(view.path("putAside").asString("")).contains("(put aside 2)");
        assertThat(Files.readString(hut.resolve("notes.yaml"))).isEqualTo(MINE);
    }

    /** As the page edits it by hand: no list of its files can be had, and what was kept is left alone. */
    @Test
    void whileTheFilesCannotBeToldNothingIsPutAside() throws IOException {
        line("did", Map.of("heron/figure.yaml", keep(THEIRS)), Map.of("heron/figure.yaml", keep(MINE)));
        Files.writeString(hut.resolve("heron/design.yaml"), "name: [half");
        assertThat(thrown(() -> new Editor(new Workbench(hut)).versionJson("heron")))
                .hasMessageContaining("design.yaml");
        assertThat(Files.exists(history.resolve("steps.jsonl"))).isTrue();
    }

    @Test
    void theWorkshopsOwnNumbersAreConfinedAsWell() throws IOException {
        history = hut.resolve(".jackwork/history/~workshop");
        line("did", Map.of("../.profile", keep(THEIRS)), Map.of("../.profile", keep(MINE)));
        Map<String, String> was = state();
        MyWorkshop workshop = new MyWorkshop(new Workbench(hut));
        JsonNode view = JsonMapper.shared().readTree(workshop.undoJson(workshop.versionJson()));
        assertThat(state()).isEqualTo(was);
        assertThat(view.path("undo").isNull()).isTrue();
        assertThat(view.path("putAside").asString("")).contains("../.profile").contains("~workshop (put aside 1)");
    }

    @Test
    void theWorkshopsFileIsNotWrittenThroughALinkThatLeadsOut() throws IOException {
        Path mine = folder.resolve("mine.yaml");
        Files.move(hut.resolve("workshop.yaml"), mine);
        Files.createSymbolicLink(hut.resolve("workshop.yaml"), mine);
        Map<String, String> was = state();
        MyWorkshop workshop = new MyWorkshop(new Workbench(hut));
        String base = JsonMapper.shared()
                .readTree(workshop.versionJson())
                .path("version")
                .asString();
        assertThat(thrown(() -> workshop.editJson("{\"base\": \"" + base
                        + "\", \"label\": \"x\", \"kind\": \"SET\", \"path\": \"laser.kerf\", \"value\": \"0.2\","
                        + " \"low\": \"0.1\", \"high\": \"0.3\", \"basis\": \"guess\", \"source\": \"x\"}")))
                .hasMessageContaining("leads out of the workshop");
        assertThat(state()).isEqualTo(was);
    }

    @Test
    void noTwoDesignsShareAHistory() {
        assertThat(Stream.of("a/b", "a~b", "a~1b", "a~0b", "a/1b", ".a~1b", "a~~b", "a/~b", "a~/b", "ab", "~workshop")
                        .map(HistoryFolder::name))
                .doesNotHaveDuplicates()
                .doesNotContain("~workshop");
    }

    /** Kept by an earlier Jackwork: of {@code spoiled/heron-hangs-up} alone, or of another of the same name there as well. */
    @Test
    void whatWasKeptUnderTheOldNameIsFoundUnlessTwoSharedIt() throws IOException {
        String id = "spoiled/heron-hangs-up";
        history = hut.resolve(".jackwork/history/spoiled~heron-hangs-up");
        String own = Files.readString(hut.resolve(id).resolve("design.yaml"));
        line(
                "did",
                Map.of(id + "/design.yaml", keep(own.replace("\n", "\n\n"))),
                Map.of(id + "/design.yaml", keep(own)));
        Editor editor = new Editor(new Workbench(hut));
        assertThat(JsonMapper.shared()
                        .readTree(editor.viewJson(id))
                        .path("undo")
                        .asString(""))
                .isEqualTo("x");
        Files.createDirectories(hut.resolve("spoiled~heron-hangs-up"));
        Files.writeString(hut.resolve("spoiled~heron-hangs-up/design.yaml"), own);
        JsonNode view = JsonMapper.shared().readTree(new Editor(new Workbench(hut)).viewJson(id));
        assertThat(view.path("undo").isNull()).isTrue();
        assertThat(view.path("putAside").isNull()).isTrue();
    }
}

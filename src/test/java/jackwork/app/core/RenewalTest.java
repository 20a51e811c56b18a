package jackwork.app.core;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jackwork.OldWorkshop;
import jackwork.app.history.Renewals;
import jackwork.app.wire.Json;
import jackwork.app.wire.StaleException;
import jackwork.design.DesignException;
import jackwork.design.DesignFolders;
import jackwork.design.DesignReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The demo of release 0.1 made one of today's, told what is not carried over, and taken back. */
class RenewalTest {

    @TempDir
    private Path folder;

    private Path workshop;
    private Map<String, String> before;
    private Renewal renewal;

    @BeforeEach
    void copy() throws IOException {
        workshop = OldWorkshop.at(folder.resolve("hut"));
        before = OldWorkshop.bytes(workshop);
        renewal = new Renewal(workshop);
    }

    private Path file(String name) {
        return workshop.resolve(name);
    }

    private void change(String name, String from, String to) throws IOException {
        String text = Files.readString(file(name));
        assertThat(text).contains(from);
        Files.writeString(file(name), text.replace(from, to));
    }

    private void isAsBefore() throws IOException {
        assertThat(OldWorkshop.bytes(workshop)).isEqualTo(before);
    }

    @Test
    void everyDesignComesToAVerdictAndEveryFileBack() throws IOException {
        Renewal.Told look = renewal.look();
        isAsBefore();
        assertThat(file(".jackwork")).as("looking writes nothing").doesNotExist();
        assertThat(look.files())
                .hasSize(18)
                .startsWith("workshop.yaml")
                .contains("boxes/marsh-box/box.yaml", "spoiled/kicker-short/design.yaml");
        Renewal.Told told = renewal.renew();
        assertThat(told).isEqualTo(look);
        assertThat(told.lost())
                .contains(
                        "boxes/marsh-box/box.yaml line 63: bucket.clearance 0.20 is gone: it follows from the hole, bored for"
                                + " its rod and the workshop's fits.running (0.2 mm wider than the rod)",
                        "boxes/marsh-box/box.yaml line 50: nothing in heron, lamplighter, windmill and 5 more stops the lever"
                                + " fully pressed (throw 14): add a pin with stops: {part: lever, when: pressed}",
                        "spoiled/kicker-short/design.yaml line 9: nothing in spoiled/kicker-short stops the lever fully"
                                + " pressed (throw 9): add a pin with stops: {part: lever, when: pressed}",
                        "lamplighter/figure.yaml line 57: nothing in lamplighter, spoiled/lamplighter-overpulled stops the"
                                + " door (stop shut, from -60): add a pin with stops: {part: door, when: from}")
                .anyMatch(
                        line -> line.startsWith("spoiled/bucket-twists/design.yaml line 9: bucket.bearing 3.5 is gone"))
                .doesNotHaveDuplicates();
        List<String> ids = DesignFolders.list(workshop);
        assertThat(ids).hasSize(11);
        // Nothing stops them: that alone fails each.
        assertThat(FormerDesigns.table(workshop))
                .contains("| `what-stops/lever-pressed` | all 11 |")
                .isEqualTo(Files.readString(FormerDesigns.FILE));
        assertThat(renewal.look().isNothing()).isTrue();
        assertThat(renewal.takeBack()).isEqualTo(told.files());
        isAsBefore();
        assertThat(renewal.takeBack()).isEmpty();
        isAsBefore();
        assertThat(renewal.look()).isEqualTo(look);
    }

    @Test
    void oneDesignCopiedInFromAnOlderWorkshop() throws IOException {
        renewal.renew();
        Files.createDirectories(file("old-heron"));
        for (String name : List.of("design.yaml", "figure.yaml", "figure.svg", "heron-body.png", "heron-head.png")) {
            Files.copy(
                    Path.of("src/test/resources/jackwork/workshop-0.1/heron", name),
                    file("old-heron").resolve(name));
        }
        before = OldWorkshop.bytes(workshop);
        assertThatThrownBy(() -> DesignReader.read(file("old-heron")))
                .isInstanceOf(DesignException.class)
                .hasMessageContaining("design.yaml:1:9: read format 1")
                .hasMessageContaining("jackwork renew FOLDER");
        assertThat(renewal.renew().files()).containsExactly("old-heron/design.yaml", "old-heron/figure.yaml");
        DesignReader.read(file("old-heron"));
        // The last step first, then the one before.
        assertThat(renewal.takeBack()).containsExactly("old-heron/design.yaml", "old-heron/figure.yaml");
        isAsBefore();
        assertThat(renewal.takeBack()).hasSize(18).contains("workshop.yaml");
    }

    /** Such a design is listed nowhere, but opens when it is named: its box must not leave it behind. */
    @Test
    void aDesignInDeepFoldersGoesAlong() throws IOException {
        String deep = "2019/spring/birds/small/heron";
        Files.createDirectories(file(deep));
        for (String name : List.of("design.yaml", "figure.yaml", "figure.svg", "heron-body.png", "heron-head.png")) {
            Files.copy(file("heron/" + name), file(deep).resolve(name));
        }
        change(deep + "/design.yaml", "box: ../", "box: ../../../../../");
        before = OldWorkshop.bytes(workshop);
        assertThat(renewal.renew().files()).hasSize(20).contains(deep + "/design.yaml", deep + "/figure.yaml");
        DesignReader.read(file(deep));
        assertThat(renewal.takeBack()).hasSize(20);
        isAsBefore();
    }

    /** A folder whose name leads elsewhere once it is written down could not be found again to take it back. */
    @Test
    @DisabledOnOs(OS.WINDOWS)
    void aNameThatCannotBeWrittenDownIsLeft() throws IOException {
        Path odd = Files.createDirectories(file("a\\b"));
        Files.copy(file("heron/design.yaml"), odd.resolve("design.yaml"));
        before = OldWorkshop.bytes(workshop);
        Renewal.Told told = renewal.renew();
        assertThat(told.files()).hasSize(18).noneMatch(name -> name.startsWith("a/b"));
        assertThat(told.lost()).anyMatch(line -> line.contains("a/b/design.yaml") && line.contains("backslash"));
        assertThat(Files.readString(odd.resolve("design.yaml"))).contains("format: 1");
        assertThat(renewal.takeBack()).hasSize(18);
        isAsBefore();
    }

    @Test
    void whatWasChangedSinceIsNamedAndNothingIsLost() throws IOException {
        renewal.renew();
        change("heron/design.yaml", "name: Heron", "name: Grey heron");
        Map<String, String> now = OldWorkshop.bytes(workshop);
        assertThatThrownBy(renewal::takeBack)
                .isInstanceOf(DesignException.class)
                .hasMessageContaining("heron/design.yaml: was changed since the step, so nothing was taken back")
                .hasMessageContaining(".jackwork/renewed/1/before/heron/design.yaml");
        assertThat(OldWorkshop.bytes(workshop)).isEqualTo(now);
        // As told: out of the way, and all comes back.
        Files.move(file("heron/design.yaml"), file("heron/design.mine"));
        renewal.takeBack();
        assertThat(file("heron/design.mine")).content().contains("Grey heron");
        Files.delete(file("heron/design.mine"));
        isAsBefore();
    }

    @Test
    void aDesignThatWasThrownAwaySinceStaysAway() throws IOException {
        renewal.renew();
        Path gone = file("spoiled/kicker-short");
        Files.delete(gone.resolve("design.yaml"));
        Files.delete(gone);
        renewal.takeBack();
        assertThat(gone).doesNotExist();
        before.remove("spoiled/kicker-short/design.yaml");
        isAsBefore();
    }

    @Test
    void whatCannotBeReadIsLeftAndNamedAndTheRestIsCarriedOver() throws IOException {
        change("heron/design.yaml", "gestures:", "gestures: [");
        change("windmill/design.yaml", "format: 1", "format: 7");
        change("cobbler/design.yaml", "format: 1", "format: some");
        change("spoiled/kicker-short/design.yaml", "change:", "change: &all");
        change("lamplighter/design.yaml", "format: 1", "format: &number 1");
        before = OldWorkshop.bytes(workshop);
        Renewal.Told told = renewal.renew();
        assertThat(told.files()).contains("workshop.yaml", "heron/figure.yaml", "spoiled/kicker-short/design.yaml");
        assertThat(told.files())
                .doesNotContain(
                        "heron/design.yaml", "windmill/design.yaml", "cobbler/design.yaml", "lamplighter/design.yaml");
        assertThat(told.lost())
                .anyMatch(line -> line.matches("heron/design.yaml line \\d+: this file is left as it is: not YAML.*"))
                .anyMatch(line -> line.matches("windmill/design.yaml line 1: this file is left.*format 7.*newer.*"))
                .anyMatch(line -> line.matches("cobbler/design.yaml line 1: this file is left.*read format some.*"))
                .anyMatch(line -> line.matches("lamplighter/design.yaml line 1: this file is left.*anchor.*"))
                .anyMatch(line -> line.startsWith("cobbler cannot be opened yet: design.yaml:1:9"));
        renewal.takeBack();
        isAsBefore();
    }

    @Test
    void aWorkshopOfANewerFormatOrOfNoneIsRefusedWhole() throws IOException {
        for (String number : List.of("3", "0", "two", "[1]")) {
            change("workshop.yaml", "\nformat: 1\n", "\nformat: " + number + "\n");
            Map<String, String> now = OldWorkshop.bytes(workshop);
            assertThatThrownBy(renewal::renew)
                    .as(number)
                    .isInstanceOf(DesignException.class)
                    .hasMessageContaining("workshop.yaml:3:9: ");
            assertThat(OldWorkshop.bytes(workshop)).isEqualTo(now);
            change("workshop.yaml", "\nformat: " + number + "\n", "\nformat: 1\n");
        }
    }

    @Test
    void otherFilesAreLeftAloneWhateverTheySay() throws IOException {
        Map<String, String> others = Map.of(
                "notes.yaml", "format: 1\nclearance: 0.2\n",
                "figure.yaml", "format: 1\nof: a book\n",
                "heron/box.yaml", "format: 1\n",
                "heron/list.txt", "format: 1",
                ".kept/design.yaml", "format: 1\n",
                "elsewhere/workshop.yaml", "format: 1\n",
                "elsewhere/owl/design.yaml", "format: 1\nname: Owl\nbox: b.yaml\nfigure: f.yaml\n");
        for (Map.Entry<String, String> other : others.entrySet()) {
            Files.createDirectories(file(other.getKey()).getParent());
            Files.writeString(file(other.getKey()), other.getValue());
        }
        renewal.renew();
        for (Map.Entry<String, String> other : others.entrySet()) {
            assertThat(file(other.getKey())).hasContent(other.getValue());
        }
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void oneFileUnderTwoNamesIsChangedOnce() throws IOException {
        Files.createDirectories(file("shared"));
        Files.move(file("boxes/marsh-box/box.yaml"), file("shared/marsh.yaml"));
        Files.createSymbolicLink(file("boxes/marsh-box/box.yaml"), file("shared/marsh.yaml"));
        Files.writeString(folder.resolve("outside.yaml"), "format: 1\n");
        Files.createSymbolicLink(file("boxes/box.yaml"), folder.resolve("outside.yaml"));
        before = OldWorkshop.bytes(workshop);
        renewal.renew();
        assertThat(file("boxes/marsh-box/box.yaml")).isSymbolicLink();
        assertThat(Files.readString(file("shared/marsh.yaml"))).contains("format: 2");
        assertThat(folder.resolve("outside.yaml")).hasContent("format: 1");
        renewal.takeBack();
        isAsBefore();
        assertThat(file("boxes/marsh-box/box.yaml")).isSymbolicLink();
    }

    /** Whatever number of files a killed program had written, the same command goes on, and the other one goes back. */
    @Test
    void brokenOffAnywhere() throws IOException {
        Map<String, String> after = after();
        List<String> changed = before.keySet().stream()
                .filter(name -> !after.get(name).equals(before.get(name)))
                .toList();
        assertThat(changed).hasSize(18);
        for (int written : List.of(0, 1, 9, 17, 18)) {
            for (boolean forth : List.of(true, false)) {
                new Renewals(workshop).keep(steps(changed, after), List.of("something"));
                for (String name : changed.subList(0, written)) {
                    Files.write(file(name), bytes(after.get(name)));
                }
                String as = written + " written, " + (forth ? "on" : "back");
                if (forth) {
                    assertThat(renewal.renew().isNothing()).as(as).isEqualTo(written == changed.size());
                    assertThat(OldWorkshop.bytes(workshop)).as(as).isEqualTo(after);
                }
                assertThat(renewal.takeBack().isEmpty()).as(as).isEqualTo(!forth && written == 0);
                isAsBefore();
            }
        }
        renewal.renew();
        try (Stream<Path> kept = Files.list(file(".jackwork/renewed"))) {
            assertThat(kept).as("what was broken off does not lie about").hasSize(1);
        }
    }

    private Map<String, String> after() throws IOException {
        renewal.renew();
        Map<String, String> after = OldWorkshop.bytes(workshop);
        renewal.takeBack();
        return after;
    }

    private List<Renewals.Changed> steps(List<String> changed, Map<String, String> after) {
        return changed.stream()
                .map(name -> new Renewals.Changed(file(name), name, bytes(before.get(name)), bytes(after.get(name))))
                .toList();
    }

    private static byte[] bytes(String hex) {
        return HexFormat.of().parseHex(hex);
    }

    /** A file that cannot be written: those before it are put back. */
    @Test
    @DisabledOnOs(OS.WINDOWS)
    void allFilesOrNone() throws IOException {
        Map<String, String> after = after();
        Path away = Files.createDirectories(folder.resolve("away"));
        Files.createDirectories(away.resolve("marsh-box"));
        List<Renewals.Changed> files = new ArrayList<>(steps(List.of("workshop.yaml", "heron/design.yaml"), after));
        // Led out of the workshop between looking and writing.
        byte[] box = Files.readAllBytes(file("boxes/marsh-box/box.yaml"));
        Files.write(away.resolve("box.yaml"), box);
        Files.createSymbolicLink(file("led-away"), away);
        files.add(new Renewals.Changed(file("led-away/box.yaml"), "led-away/box.yaml", box, new byte[] {1}));
        Renewals kept = new Renewals(workshop);
        Renewals.Step step = kept.keep(files, List.of());
        assertThatThrownBy(() -> kept.make(step))
                .isInstanceOf(DesignException.class)
                .hasMessageContaining("leads out of the workshop's folder");
        Files.delete(file("led-away"));
        isAsBefore();
    }

    @Test
    void whatIsKeptMayComeFromAnybody() throws IOException {
        renewal.renew();
        Path list = file(".jackwork/renewed/1/list.json");
        String whole = Files.readString(list);
        Map<String, String> now = OldWorkshop.bytes(workshop);
        Files.writeString(folder.resolve("outside.yaml"), "precious");
        for (String name : List.of(
                "../outside.yaml",
                "heron/../../outside.yaml",
                "/etc/passwd",
                ".jackwork/turn",
                "",
                "heron//design.yaml",
                "heron\\\\u0000.yaml",
                "never-kept.yaml")) {
            Files.writeString(list, whole.replace("\"workshop.yaml\"", "\"" + name + "\""));
            assertThatThrownBy(renewal::takeBack)
                    .as(name)
                    .isInstanceOf(DesignException.class)
                    .hasMessageContaining(".jackwork/renewed/1: what is kept there")
                    .hasMessageContaining("move that folder away");
            assertThat(OldWorkshop.bytes(workshop)).isEqualTo(now);
        }
        for (String nonsense : List.of("", "[", "{\"files\": [[[]]]}", "\u0000")) {
            Files.writeString(list, nonsense);
            assertThatThrownBy(renewal::takeBack).as(nonsense).isInstanceOf(DesignException.class);
        }
        assertThat(folder.resolve("outside.yaml")).hasContent("precious");
        Files.writeString(list, whole);
        Path copy = file(".jackwork/renewed/1/before/heron/design.yaml");
        String kept = Files.readString(copy);
        Files.writeString(copy, kept.replace("Heron", "Peron"));
        assertThatThrownBy(renewal::takeBack)
                .isInstanceOf(DesignException.class)
                .hasMessageContaining("has other bytes than were kept");
        assertThat(OldWorkshop.bytes(workshop)).isEqualTo(now);
        Files.writeString(copy, kept);
        renewal.takeBack();
        isAsBefore();
    }

    @Test
    void thePageDecidesOnWhatItSaw() throws IOException {
        var view = Json.mapper().readTree(renewal.viewJson());
        assertThat(view.path("files").size()).isEqualTo(18);
        assertThat(view.path("back").isNull()).isTrue();
        int lost = view.path("lost").size();
        change("heron/design.yaml", "name: Heron", "name: Grey heron");
        String version = "{\"version\":\"" + view.path("version").asString() + "\"}";
        assertThatThrownBy(() -> renewal.renewJson(version)).isInstanceOf(StaleException.class);
        change("heron/design.yaml", "name: Grey heron", "name: Heron");
        isAsBefore();
        view = Json.mapper().readTree(renewal.renewJson(version));
        assertThat(view.path("files").size()).isZero();
        assertThat(view.path("back").size()).isEqualTo(18);
        assertThat(view.path("backLost").size()).isEqualTo(lost).isPositive();
        assertThat(renewal.look().lost()).isEmpty();
        view = Json.mapper().readTree(renewal.takeBackJson());
        assertThat(view.path("files").size()).isEqualTo(18);
        isAsBefore();
    }
}

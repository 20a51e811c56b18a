package jackwork.app.core;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;

import jackwork.DemoCopy;
import jackwork.builds.ThrownClear;
import jackwork.check.Finding;
import jackwork.check.Questions;
import jackwork.check.Status;
import jackwork.check.Subject;
import jackwork.check.Topic;
import jackwork.design.Design;
import jackwork.design.DesignReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** No remedy is dead: of everything that one number may settle, some spoiled design has that very finding. */
@Tag("quick")
class RemediesTest {

    /** A design and what to change of it, for what is then found. */
    private static final Map<Topic, List<String>> SPOILED = Map.ofEntries(
            entry(Topic.COMES_BACK, List.of("heron", "figure.weights.tail.mass: 10")),
            entry(Topic.RUNS_AHEAD, List.of("heron", "figure.weights.tail.mass: 10")),
            entry(Topic.FINGER_FORCE, List.of("heron", "figure.weights.tail.mass: 2300")),
            entry(Topic.GESTURE_REACHED, List.of("lamplighter", "figure.strings.open.slack: 20")),
            entry(Topic.FULL_STROKE, List.of("lamplighter", "figure.strings.open.slack: 3")),
            entry(Topic.STRING_OVERPULLED, List.of("lamplighter", "figure.strings.open.slack: 3")),
            entry(Topic.BUCKET_TWIST, List.of("heron", "box.coin-works.bucket.side-gap: 1.0")),
            entry(Topic.BUCKET_RESETS, List.of("heron", "box.weights.counterweight.count: 0")),
            entry(Topic.COIN_TRIPS, List.of("heron", "box.weights.counterweight.count: 5")),
            entry(Topic.LEANS_ACROSS, List.of("heron", "box.weights.counterweight.count: 5")),
            entry(Topic.COIN_THROWN_CLEAR, List.of("heron", "box.lever.throw: 8")),
            entry(Topic.COIN_FITS_SLOT, List.of("heron", "box.coin-works.slot.width: 2.3")),
            entry(Topic.CATCH_FREES, List.of("heron", "box.coin-works.bucket.tip: 5")),
            entry(Topic.HEAP, List.of("heron", "box.coin-works.cash-room.depth: 12")));

    static Stream<Topic> topics() {
        return Remedies.topics().stream();
    }

    @ParameterizedTest
    @MethodSource("topics")
    void someSpoiledDesignIsMendedByIt(Topic topic, @TempDir Path folder) throws Exception {
        assertThat(SPOILED).containsKey(topic);
        List<String> spoiled = SPOILED.get(topic);
        Path design = DemoCopy.at(folder.resolve("hut")).resolve(spoiled.get(0));
        Path file = design.resolve("design.yaml");
        Files.writeString(file, Files.readString(file) + "\nchange:\n  " + spoiled.get(1) + "\n");
        Design read = DesignReader.read(design);
        Subject subject = Subject.asNumbered(read);
        List<Finding> found = Stream.of(Questions.askQuickly(subject), ThrownClear.ask(subject))
                .flatMap(List::stream)
                .filter(finding -> finding.topic() == topic && finding.status() != Status.PASS)
                .toList();
        assertThat(found).isNotEmpty();
        assertThat(Remedies.mendable(read, found))
                .containsExactlyElementsOf(found.stream().map(Finding::id).toList());
    }

    /** The heap was once asked for under a name that no finding has. */
    @Test
    void aShallowCashRoomIsMadeDeeper(@TempDir Path folder) throws Exception {
        Path workshop = DemoCopy.at(folder.resolve("hut"));
        Path file = workshop.resolve("heron/design.yaml");
        Files.writeString(file, Files.readString(file) + "\nchange:\n  box.coin-works.cash-room.depth: 20\n");
        String remedy = new Remedies(new Workbench(workshop)).remedyJson("heron", Topic.HEAP.id(""));
        assertThat(remedy).contains("box.coin-works.cash-room.").contains("then it passes");
    }
}

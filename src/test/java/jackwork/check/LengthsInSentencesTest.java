package jackwork.check;

import static jackwork.check.Nonsense.changed;
import static jackwork.check.Nonsense.replaced;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Whoever has the page in inches reads no millimetres: lengths in findings are numbers, not text. */
class LengthsInSentencesTest {

    /** Areas and moments stay as they are. */
    private static final String LENGTH = "(?s).*\\d mm(?!²).*";

    @Test
    void lengthsOfWhatPassesAreNumbers() throws IOException {
        for (String design : List.of("heron", "lamplighter", "windmill", "cobbler")) {
            inInches(Questions.askQuickly(changed(design, "box.weights.counterweight.count: 2")));
        }
    }

    /** Asked where it fails, for what is said only there. */
    @Test
    void lengthsOfWhatFailsAreNumbers() throws IOException {
        String box = "boxes/marsh-box/box.yaml";
        List<Finding> failing = Stream.of(
                        new CaseFitsSheet().ask(replaced("heron", box, "width: 151.2", "width: 900")),
                        new WorksInCase().ask(replaced("heron", box, "width: 151.2", "width: 100")),
                        new DoorInWall().ask(replaced("heron", box, "at: [40, -3]", "at: [-9, -3]")),
                        new ScrewsHold().ask(replaced("heron", box, "[5, 84]", "[400, 84]")),
                        new CashRoomFits().ask(changed("heron", "box.coin-works.cash-room.depth: 90")),
                        new CashRoomFits().ask(changed("heron", "box.coin-works.cash-room.depth: 20")),
                        new SlotPlaced().ask(changed("heron", "box.coin-works.slot.width: 9")),
                        new SlotPlaced().ask(changed("heron", "box.coin-works.slot.at: [300, 80]")),
                        new RodsApart().ask(changed("heron", "figure.pins.wing-dowel-1.at: [-13, 79]")),
                        new HolesInWood().ask(changed("heron", "figure.pins.wing-dowel-1.at: [-15.5, 79]")))
                .flatMap(List::stream)
                .toList();
        assertThat(failing).hasSize(10).allMatch(finding -> finding.status() == Status.FAIL);
        inInches(failing);
    }

    private static void inInches(List<Finding> findings) {
        assertThat(findings).isNotEmpty();
        for (Finding finding : findings) {
            for (Sentence said : List.of(finding.question(), finding.why(), finding.remedy())) {
                assertThat(said.inches()).as(finding.id()).doesNotMatch(LENGTH);
            }
        }
    }
}

package jackwork.app.core;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.Child;
import jackwork.OldWorkshop;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Killed outright while it changes a workshop's format or takes that back: each file is whole, and either command ends it. */
@EnabledOnOs({OS.LINUX, OS.MAC})
class KilledRenewalTest {

    private static final int USUAL = 6;
    private static final int OUT_OF = 10;

    @TempDir
    private Path folder;

    @Test
    void eitherCommandEndsIt() throws Exception {
        Path workshop = OldWorkshop.at(folder.resolve("hut"));
        // Two designs alone: working out what is lost takes most of the time, and nothing is written then.
        for (String other : List.of("windmill", "lamplighter", "spoiled/heron-hangs-up", "spoiled/bucket-twists")) {
            Files.delete(workshop.resolve(other).resolve("design.yaml"));
        }
        Map<String, String> before = OldWorkshop.bytes(workshop);
        Renewal renewal = new Renewal(workshop);
        renewal.renew();
        Map<String, String> after = OldWorkshop.bytes(workshop);
        renewal.takeBack();
        Random random = new Random(20261202);
        int made = 0;
        int mixed = 0;
        for (int i = 0; i < Child.kills(USUAL, OUT_OF); i++) {
            List<String> said = Child.start(List.of(), RenewingChild.class, workshop.toString())
                    .killAfter(random.nextInt(300));
            made += said.size();
            Map<String, String> now = OldWorkshop.bytes(workshop);
            now.keySet().removeIf(name -> ("/" + name).contains("/.") && name.endsWith(".part"));
            assertThat(now.keySet()).isEqualTo(before.keySet());
            assertThat(now).allSatisfy((name, bytes) -> assertThat(bytes).isIn(before.get(name), after.get(name)));
            mixed += now.equals(before) || now.equals(after) ? 0 : 1;
            if (random.nextBoolean()) {
                renewal.renew();
                assertThat(OldWorkshop.bytes(workshop)).containsAllEntriesOf(after);
            }
            renewal.takeBack();
            assertThat(OldWorkshop.bytes(workshop)).containsAllEntriesOf(before);
        }
        // Else they died before they had begun, and this shows nothing.
        assertThat(made + mixed).isGreaterThan(Child.kills(USUAL, OUT_OF) / 2);
        renewal.renew();
        renewal.takeBack();
        assertThat(OldWorkshop.bytes(workshop)).as("nothing lies about").isEqualTo(before);
        try (Stream<Path> kept = Files.list(workshop.resolve(".jackwork/renewed"))) {
            assertThat(kept).isEmpty();
        }
    }
}

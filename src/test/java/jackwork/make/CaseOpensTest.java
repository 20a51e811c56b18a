package jackwork.make;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.DemoCopy;
import jackwork.check.Finding;
import jackwork.check.Status;
import jackwork.check.Subject;
import jackwork.design.Design;
import jackwork.design.DesignReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The marsh box without its door, its screws, or with a door too low. */
@Tag("quick")
class CaseOpensTest {

    private static final String DOOR = "  door: {at: [40, -3], width: 70, height: 32}\n";
    private static final String SCREWS = "  screws: [[5, 84], [145, 84], [5, 7], [145, 7]]\n";

    @TempDir
    private Path folder = Path.of("");

    @ParameterizedTest
    @CsvSource({
        "as drawn, PASS, OPEN",
        "no door, DOUBTFUL, OPEN",
        "no screws, PASS, FAIL",
        "neither, FAIL, FAIL",
        "low door, DOUBTFUL, OPEN",
        "nuts alone, DOUBTFUL, PASS"
    })
    void whatOpensIsSeen(String how, Status money, Status jam) throws IOException {
        Path demo = DemoCopy.at(folder.resolve("demo"));
        Path box = demo.resolve("boxes/marsh-box/box.yaml");
        String text = Files.readString(box);
        assertThat(text).contains(DOOR, SCREWS);
        String changed = switch (how) {
            case "no door" -> text.replace(DOOR, "");
            case "no screws" -> text.replace(SCREWS, "");
            case "neither" -> text.replace(DOOR, "").replace(SCREWS, "");
            case "low door" -> text.replace("height: 32", "height: 22");
            case "nuts alone" -> text.replace(DOOR, "").replace(SCREWS, "  joined: screws\n");
            default -> text;
        };
        Files.writeString(box, changed);
        Design design = DesignReader.read(demo.resolve("heron"));
        List<Finding> findings = CaseOpens.ask(design, Subject.of(design));
        assertThat(findings).extracting(Finding::id).containsExactly("money-out", "jam-reached");
        assertThat(findings).extracting(Finding::status).containsExactly(money, jam);
        assertThat(findings)
                .allSatisfy(
                        finding -> assertThat(finding.remedy().isEmpty()).isEqualTo(finding.status() == Status.PASS));
    }

    /** The floor is at −14 mm; a finger draws a coin up by 20. The cash room goes from 9.6 to 149.6 mm. */
    @Test
    void theDoorOpensOnTheMoney() throws IOException {
        Random random = new Random(54);
        for (int i = 0; i < 12; i++) {
            double x = 12 + 60 * random.nextDouble();
            double y = (i % 2 == 0 ? 6.5 : -7.5) + 13 * random.nextDouble();
            Finding money = money(text -> text, x, y);
            assertThat(money.status()).as("door at %s, %s", x, y).isEqualTo(y > 6 ? Status.DOUBTFUL : Status.PASS);
            if (y > 6) {
                assertThat(money.why().toString()).contains("above the floor");
            }
            double right = 10 + 20 * random.nextDouble();
            Finding beside = money(
                    text -> text.replace("to-left: 35, to-right: 105", "to-left: 35, to-right: " + right), 75, -3);
            assertThat(beside.status()).as("room to %s", right).isEqualTo(Status.DOUBTFUL);
            assertThat(beside.why().toString()).contains("cash room");
        }
    }

    @Test
    void whatHoldsTheWorksIsCounted() throws IOException {
        assertThat(jam("  screws: [[5, 84]]\n")).startsWith("one screw holds the works");
        assertThat(jam("")).startsWith("no screw holds the works");
    }

    private static Finding money(UnaryOperator<String> change, double x, double y) throws IOException {
        return ask(text -> change.apply(text)
                        .replace("at: [40, -3]", String.format(Locale.ROOT, "at: [%.3f, %.3f]", x, y)))
                .get(0);
    }

    private static String jam(String screws) throws IOException {
        return ask(text -> text.replace(SCREWS, screws)).get(1).why().toString();
    }

    private static List<Finding> ask(UnaryOperator<String> change) throws IOException {
        Path demo = Path.of("demo").toAbsolutePath();
        Path box = demo.resolve("boxes/marsh-box/box.yaml");
        Design design = DesignReader.read(demo.resolve("heron"), Map.of(box, change.apply(Files.readString(box))));
        return CaseOpens.ask(design, Subject.asNumbered(design));
    }
}

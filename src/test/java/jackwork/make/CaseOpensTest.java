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
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The marsh box without its door, its screws, or with a door too low. */
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
        String changed =
                switch (how) {
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
}

package jackwork.cli;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.DemoCopy;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** {@code jackwork price} as typed, on the demo's heron. */
class PriceCommandTest {

    @TempDir
    private Path folder = Path.of("");

    private static JsonNode json(Ran ran) {
        return JsonMapper.shared().readTree(ran.out());
    }

    private static BigDecimal sum(JsonNode list, String amount) {
        BigDecimal sum = BigDecimal.ZERO;
        for (JsonNode line : list) {
            sum = sum.add(line.get(amount).decimalValue());
        }
        return sum;
    }

    private static double count(JsonNode report, String operation) {
        for (JsonNode task : report.get("tasks")) {
            if (task.get("operation").asString().equals(operation)) {
                return task.get("count").asDouble();
            }
        }
        return 0;
    }

    /** The heron's own counts, from its files: 11 pins that turn, 2 pictures, one steel bar and nuts, 9 panels. */
    @Test
    void everythingAPageNeeds() {
        Ran ran = Ran.run("price", "demo/heron", "--quantity", "2", "--shelf", "400", "--json");
        assertThat(ran.exit()).isZero();
        JsonNode report = json(ran);
        assertThat(report.get("design").asString()).isEqualTo("Heron");
        assertThat(report.get("currency").asString()).isEqualTo("EUR");
        assertThat(report.get("pieces").asInt()).isEqualTo(2);
        assertThat(sum(report.get("lines"), "amount"))
                .isEqualByComparingTo(report.get("floor").decimalValue());
        assertThat(sum(report.get("cash"), "amount"))
                .isEqualByComparingTo(report.get("cashTotal").decimalValue());
        assertThat(count(report, "picture")).isEqualTo(2);
        assertThat(count(report, "weight")).isEqualTo(2);
        assertThat(count(report, "panel")).isEqualTo(9);
        assertThat(count(report, "dowel-cut")).isEqualTo(26);
        double share = 0;
        for (JsonNode task : report.get("tasks")) {
            share += task.get("share").asDouble();
        }
        assertThat(share).isBetween(0.9999, 1.0001);
        assertThat(report.get("ladders").size()).isEqualTo(4);
        assertThat(report.get("ways").size()).isEqualTo(7);
        assertThat(report.get("quicker").size()).isGreaterThanOrEqualTo(5);
        assertThat(report.at("/numbers/0").propertyNames()).containsExactly("name", "what", "number");
        assertThat(report.get("guesses").asInt()).isPositive();
        for (JsonNode finding : report.get("findings")) {
            assertThat(finding.get("id").asString()).startsWith("pay-");
            assertThat(finding.get("formula").asString()).matches("(?s).*\\d.*");
        }
    }

    @Test
    void sameInputSameBytes() {
        String[] typed = {"price", "demo/cobbler", "--quantity", "1", "--json"};
        assertThat(Ran.run(typed).out()).isEqualTo(Ran.run(typed).out());
    }

    @Test
    void aPriceThatCannotPayFailsAndSaysWhatIsInTheWay() {
        Ran ran = Ran.run("price", "demo/heron", "--quantity", "2", "--shelf", "35");
        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.out()).contains("Heron: fails", "Backwards from 35.00 EUR", "these 5 steps take");
    }

    @Test
    void whatWasTimedReplacesTheGuess() {
        JsonNode report = json(Ran.run(
                "price", "demo/heron", "--quantity", "2", "--time", "pivot=18.5", "--time", "dress=40", "--json"));
        double dress = 0;
        for (JsonNode task : report.get("tasks")) {
            String stage = task.get("stage").asString();
            if (task.get("operation").asString().equals("pivot")) {
                assertThat(task.get("basis").asString()).isEqualTo("measured here");
                assertThat(task.get("count").asDouble() * task.get("each").asDouble())
                        .isBetween(18.4999, 18.5001);
            }
            if (stage.equals("dress")) {
                dress += task.get("count").asDouble() * task.get("each").asDouble();
            }
        }
        assertThat(dress).isBetween(39.999, 40.001);
        assertThat(Ran.run("price", "demo/heron", "--quantity", "1", "--time", "whistling=3")
                        .err())
                .contains("whistling");
    }

    @Test
    void whatTheLogHasTimedIsTaken() throws IOException {
        String heron = DemoCopy.at(folder.resolve("demo")).resolve("heron").toString();
        String[] plain = {"price", heron, "--quantity", "1", "--json"};
        Ran before = Ran.run(plain);
        assertThat(Ran.run("bench", "freeze", heron, "--note", "as drawn").exit())
                .isZero();
        assertThat(Ran.run("bench", "timing", heron, "--operation", "pivot", "--minutes", "37", "--pieces", "2")
                        .exit())
                .isZero();
        Ran timed = Ran.run(plain);
        assertThat(timed.err()).contains("pivot as timed at the bench: 2 pieces of revision 1");
        assertThat(minutesOnce(json(timed), "pivot")).isBetween(18.4999, 18.5001);
        assertThat(minutesOnce(
                        json(Ran.run("price", heron, "--quantity", "1", "--time", "pivot=9", "--json")), "pivot"))
                .isBetween(8.9999, 9.0001);
        assertThat(Ran.run("price", heron, "--quantity", "1", "--supposed", "--json")
                        .out())
                .isEqualTo(before.out());
    }

    /** Of all of an operation in one piece, before learning and spoiling. */
    private static double minutesOnce(JsonNode report, String operation) {
        for (JsonNode task : report.get("tasks")) {
            if (task.get("operation").asString().equals(operation)) {
                return task.get("count").asDouble() * task.get("each").asDouble();
            }
        }
        return 0;
    }

    @Test
    void theWageMovesThePrice() {
        JsonNode low = json(Ran.run("price", "demo/heron", "--quantity", "1", "--wage", "10", "--json"));
        JsonNode high = json(Ran.run("price", "demo/heron", "--quantity", "1", "--wage", "20", "--json"));
        assertThat(high.get("floor").decimalValue())
                .isGreaterThan(low.get("floor").decimalValue());
        assertThat(high.at("/hour/cost").decimalValue()).isEqualByComparingTo("32");
    }

    /** A bucket printed in one is a real edit: every question is asked again, and the file stays as it was. */
    @Test
    void editsAreAskedAgain() throws IOException {
        Path heron = DemoCopy.at(folder.resolve("demo")).resolve("heron");
        String before = Files.readString(heron.resolve("design.yaml"));
        JsonNode report = json(Ran.run("price", heron.toString(), "--quantity", "1", "--again", "--json"));
        int asked = 0;
        for (JsonNode offer : report.get("quicker")) {
            if (!offer.get("edit").isEmpty()) {
                asked++;
                assertThat(offer.get("findings").asString()).isEqualTo("were run again");
                assertThat(offer.get("after").asString()).isIn("works", "doubtful", "fails");
            }
        }
        assertThat(asked).isGreaterThanOrEqualTo(2);
        assertThat(Files.readString(heron.resolve("design.yaml"))).isEqualTo(before);
    }

    @Test
    void virtualBuildsSayHowManyPassTheirTrial() {
        JsonNode report = json(Ran.run("price", "demo/heron", "--quantity", "1", "--builds", "10", "--json"));
        for (JsonNode number : report.get("numbers")) {
            if (number.get("name").asString().equals("yields.first-time")) {
                assertThat(number.at("/number/source").asString()).contains("10 virtual builds");
            }
        }
        assertThat(report.toString()).contains("Under a beginner's spreads");
    }

    @Test
    void theChartIsAPictureWithABarForEachNumber() throws Exception {
        Path chart = folder.resolve("chart.svg");
        assertThat(Ran.run("price", "demo/heron", "--quantity", "1", "--shelf", "400", "--chart", chart.toString())
                        .exit())
                .isZero();
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        Document svg = factory.newDocumentBuilder().parse(new ByteArrayInputStream(Files.readAllBytes(chart)));
        assertThat(svg.getDocumentElement().getTagName()).isEqualTo("svg");
        assertThat(svg.getElementsByTagName("title").getLength()).isEqualTo(1);
        // Two parts for each of fourteen numbers, the ground, and the pattern's own.
        assertThat(svg.getElementsByTagName("rect").getLength()).isEqualTo(2 * 14 + 2);
        assertThat(svg.getDocumentElement().getTextContent()).contains("wage");
    }

    @Test
    void slipsOfThePenAreToldKindly() throws IOException {
        assertThat(Ran.run("price", "demo/heron", "--shelf", "thirty").exit()).isEqualTo(2);
        assertThat(Ran.run("price", "demo/heron", "--quantity", "0").err())
                .contains("--quantity reads 0, expected 1 to 1000");
        assertThat(Ran.run("price", "demo/heron", "--time", "pivot=-3").exit()).isEqualTo(2);
        Path demo = DemoCopy.at(folder.resolve("demo"));
        Path file = demo.resolve("workshop.yaml");
        String text = Files.readString(file);
        Files.writeString(file, text.replace("  wage: 14", "  wgae: 14"));
        assertThat(Ran.run("price", demo.resolve("heron").toString()).err())
                .contains("\"wgae\"", "did you mean \"wage\"?");
        Files.writeString(file, text.replace("share: 35 %", "share: 120 %"));
        assertThat(Ran.run("price", demo.resolve("heron").toString()).err())
                .contains("workshop.yaml:", "read 120, expected 0 to 95");
        Files.writeString(file, text.replace("  paint-part:", "  paint-parts:"));
        assertThat(Ran.run("price", demo.resolve("heron").toString()).err()).contains("did you mean \"paint-part\"?");
        Files.writeString(file, text.replace("to: 55", "to: 10"));
        assertThat(Ran.run("price", demo.resolve("heron").toString()).err()).contains("expected more than 20");
    }
}

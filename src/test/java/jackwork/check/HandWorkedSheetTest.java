package jackwork.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.design.DesignReader;
import jackwork.geometry.Point;
import jackwork.motion.rest.StrokeResult;
import jackwork.parts.Assembly;
import jackwork.parts.Body;
import jackwork.stock.Coin;
import jackwork.stock.Coins;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * docs/heron-by-hand.md, worked with circles and lever arms, against the solver: every figure of its
 * tables to the last place printed there. Reach: positions, the finger force without friction, the
 * coin's moments; not friction in the pins.
 */
@Tag("quick")
class HandWorkedSheetTest {

    private static final Pattern NUMBER = Pattern.compile("-?\\d+\\.\\d+|-?\\d+");

    private final Map<String, List<double[]>> sheet = read();
    private final Subject subject = Subject.of(DesignReader.read(Path.of("demo/heron")));
    private final Assembly assembly = subject.assembly();
    private final StrokeResult stroke = subject.stroke();

    /** Rows of three cells by their first word; each cell one number or a pair. */
    private static Map<String, List<double[]>> read() {
        try {
            Map<String, List<double[]>> rows = new HashMap<>();
            for (String line : Files.readAllLines(Path.of("docs/heron-by-hand.md"))) {
                String[] cells = line.split("\\|");
                if (cells.length == 5 && NUMBER.matcher(cells[2]).find()) {
                    List<double[]> values = new ArrayList<>();
                    for (int i = 2; i < 5; i++) {
                        Matcher matcher = NUMBER.matcher(cells[i]);
                        List<Double> numbers = new ArrayList<>();
                        while (matcher.find()) {
                            numbers.add(Double.parseDouble(matcher.group()));
                        }
                        values.add(numbers.stream()
                                .mapToDouble(Double::doubleValue)
                                .toArray());
                    }
                    rows.put(cells[1].strip(), values);
                }
            }
            return rows;
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private double[] pose(String body, int third) {
        double[] all = stroke.pose()[100 * third];
        int number = subject.mechanism().bodyNumber(body);
        return new double[] {all[3 * number], all[3 * number + 1], all[3 * number + 2]};
    }

    private Point now(String body, Point drawn, int third) {
        Point centre = assembly.bodies().stream()
                .filter(b -> b.name().equals(body))
                .map(Body::centre)
                .findFirst()
                .orElseThrow();
        double[] pose = pose(body, third);
        return drawn.minus(centre).turned(pose[2]).plus(new Point(pose[0], pose[1]));
    }

    private void assertPoint(String row, String body, double x, double y) {
        List<double[]> cells = sheet.get(row);
        assertThat(cells).as("row " + row).isNotNull();
        for (int third = 0; third < 3; third++) {
            Point now = now(body, new Point(x, y), third);
            assertThat(now.x()).as(row).isCloseTo(cells.get(third)[0], within(6e-4));
            assertThat(now.y()).as(row).isCloseTo(cells.get(third)[1], within(6e-4));
        }
    }

    @Test
    void pivots() {
        assertPoint("drive D", "lever", 50, 72);
        assertPoint("crank C", "body", 50, 166);
        assertPoint("shoulder S", "lower-neck", 88.5, 188.5);
        assertPoint("stay end E", "stay", 79.5, 185);
        assertPoint("bend N", "head", 82, 227);
        assertPoint("back pin A", "link", 80.5, 193.5);
        assertPoint("nape Q", "link", 70.5, 227.5);
        assertPoint("beak", "head", 150, 222);
    }

    @Test
    void turns() {
        Map<String, String> rows = Map.of(
                "lever turn", "lever", "body turn", "body", "lower neck turn", "lower-neck", "head turn", "head");
        rows.forEach((row, body) -> {
            for (int third = 0; third < 3; third++) {
                assertThat(Math.toDegrees(pose(body, third)[2]))
                        .as(row)
                        .isCloseTo(sheet.get(row).get(third)[0], within(6e-4));
            }
        });
    }

    @Test
    void fingerForceWithoutFriction() {
        for (int third = 0; third < 3; third++) {
            assertThat(stroke.freeForce()[100 * third] / 1e6)
                    .isCloseTo(sheet.get("finger force F").get(third)[0], within(1.1e-5));
        }
    }

    @Test
    void coinMoments() {
        Coin euro = Coins.catalogue().find("EUR-1").orElseThrow();
        String closing = sheet.keySet().stream()
                .filter(row -> row.startsWith("closing moment"))
                .findFirst()
                .orElseThrow();
        for (int third = 0; third < 3; third++) {
            double share = third / 2.0;
            Point centre = CoinSeat.centre(assembly.coinWorks(), euro.radius(), share);
            assertThat(centre.x()).isCloseTo(sheet.get("coin centre").get(third)[0], within(6e-4));
            assertThat(centre.y()).isCloseTo(sheet.get("coin centre").get(third)[1], within(6e-4));
            assertThat(CoinSeat.coinMoment(assembly.coinWorks(), euro.mass(), euro.radius(), share))
                    .isCloseTo(sheet.get("coin moment").get(third)[0], within(6e-5));
            assertThat(CoinSeat.closingMoment(assembly, share))
                    .isCloseTo(sheet.get(closing).get(third)[0], within(6e-5));
        }
    }
}

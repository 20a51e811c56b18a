package jackwork.check;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.design.Adjustable;
import jackwork.design.Design;
import jackwork.design.DesignEdit;
import jackwork.design.DesignException;
import jackwork.design.DesignFiles;
import jackwork.design.DesignReader;
import jackwork.motion.model.MechanismException;
import jackwork.parts.PartException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever outlines and numbers a design is given, it is read, or refused with a file and a key, in words. */
class PlacedRefusalsTest {

    private static final Path DEMO = Path.of("demo").toAbsolutePath().normalize();
    /** {@code figure.yaml:12:3: } or {@code figure.yaml: pins.hip}. */
    private static final Pattern PLACED =
            Pattern.compile("(?s)^[a-z-]+\\.(yaml|svg)(:\\d+:\\d+: |: [a-z-]+\\.[\\w.-]+).*");

    private static final Pattern CLOSED = Pattern.compile("(<(?:path|polygon)[^>]*\\b(?:d|points)=\")([^\"]*)(\")");

    private final Random random = new Random(20260611);

    private static Optional<String> refusal(Path folder, Map<Path, String> texts) {
        try {
            Subject.asNumbered(DesignReader.read(folder, texts));
            return Optional.empty();
        } catch (DesignException | PartException | MechanismException e) {
            return Optional.of(String.valueOf(e.getMessage()));
        }
    }

    private static void requirePlaced(String told, String what) {
        for (String line : told.split("\n")) {
            assertThat(line)
                    .as(what)
                    .matches(PLACED)
                    .doesNotContain("Point[", "NaN", "Infinity", "not a finite", "leaves 1 pieces", "jackwork.");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"heron", "lamplighter", "windmill", "cobbler"})
    void whateverNumbersStandThere(String name) throws IOException {
        Design design = DesignReader.read(DEMO.resolve(name));
        DesignFiles files = DesignFiles.of(design);
        Adjustable adjustable = Adjustable.of(design);
        int refused = 0;
        for (int i = 0; i < 60; i++) {
            Map<Path, String> texts = new HashMap<>(files.texts());
            List<String> changes = new ArrayList<>();
            for (int k = 0; k <= random.nextInt(3); k++) {
                String path;
                String value;
                if (random.nextBoolean()) {
                    var spot = adjustable
                            .points()
                            .get(random.nextInt(adjustable.points().size()));
                    path = spot.paths().get(random.nextInt(spot.paths().size()));
                    var other = adjustable
                            .points()
                            .get(random.nextInt(adjustable.points().size()));
                    value = random.nextBoolean()
                            ? Adjustable.words(design, path, other.at())
                            : String.format(
                                    Locale.ROOT,
                                    "[%.2f, %.2f]",
                                    300 * random.nextGaussian(),
                                    300 * random.nextGaussian());
                } else {
                    var number = adjustable
                            .numbers()
                            .get(random.nextInt(adjustable.numbers().size()));
                    path = number.path();
                    double least = Math.max(-500, number.field().least());
                    double most = Math.min(500, number.field().most());
                    double drawn = random.nextInt(4) == 0 ? most : least + (most - least) * random.nextDouble();
                    value = number.whole()
                            ? String.valueOf(Math.round(drawn))
                            : String.format(Locale.ROOT, "%.3f", drawn);
                }
                texts.computeIfPresent(files.design(), (file, text) -> DesignEdit.with(text, path, value));
                changes.add(path + ": " + value);
            }
            Optional<String> told = refusal(DEMO.resolve(name), texts);
            told.ifPresent(words -> requirePlaced(words, changes.toString()));
            refused += told.isPresent() ? 1 : 0;
        }
        assertThat(refused).isGreaterThan(10);
    }

    @ParameterizedTest
    @ValueSource(strings = {"heron", "lamplighter", "windmill", "cobbler"})
    void whateverOutlinesAreDrawn(String name) throws IOException {
        Path drawing = DEMO.resolve(name).resolve("figure.svg");
        String text = Files.readString(drawing);
        int refused = 0;
        for (int i = 0; i < 40; i++) {
            List<Integer> starts = new ArrayList<>();
            Matcher all = CLOSED.matcher(text);
            while (all.find()) {
                starts.add(all.start());
            }
            Matcher one = CLOSED.matcher(text);
            assertThat(one.find(starts.get(random.nextInt(starts.size())))).isTrue();
            String spoiled = text.substring(0, one.start(2)) + outline() + text.substring(one.end(2));
            Optional<String> told = refusal(DEMO.resolve(name), Map.of(drawing, spoiled));
            told.ifPresent(words -> requirePlaced(words, one.group(1)));
            refused += told.isPresent() ? 1 : 0;
        }
        assertThat(refused).isGreaterThan(10);
    }

    /** Three to seven corners anywhere about the figure: crossing, in line, far off, or as it may be. */
    private String outline() {
        StringBuilder path = new StringBuilder();
        int corners = 3 + random.nextInt(5);
        boolean line = random.nextInt(5) == 0;
        for (int i = 0; i < corners; i++) {
            double x = 250 * random.nextDouble() - 50;
            path.append(i == 0 ? "M" : "L")
                    .append(String.format(Locale.ROOT, "%.2f,%.2f ", x, line ? 2 * x : 250 * random.nextDouble() - 50));
        }
        return path.append("Z").toString();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "heron|box.pins.lever-pivot.shoulder: 80|box.yaml: pins.lever-pivot: its hole, 80.20 mm wide",
                "heron|figure.pins.hip.at: [300, 300]|figure.yaml: pins.hip: its hole in leg-far",
                "lamplighter|figure.strings.lift.from.at: [300, 300]|figure.yaml: strings.lift: its hole in pole",
                "heron|box.coin-works.slot.width: null|read nothing for \"width\""
            })
    void saysWhatItIsAndWhere(String design, String change, String words) {
        assertThat(complaint(() -> Nonsense.changed(design, change))).contains(words);
    }

    private static String complaint(Nonsense.Reading reading) {
        try {
            reading.subject();
            return "";
        } catch (DesignException | PartException | MechanismException e) {
            return String.valueOf(e.getMessage());
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void whatIsNoYamlSaysWhatToDo() {
        Path figure = DEMO.resolve("heron/figure.yaml");
        for (String broken :
                List.of("parts: {a: [1, 2}\n", "a: b: c\n", "\tparts: 1\n", "name: \"open\nparts: {}\n", "a: @x\n")) {
            String told = refusal(DEMO.resolve("heron"), Map.of(figure, broken)).orElse("");
            assertThat(told)
                    .as(broken)
                    .containsPattern("^figure\\.yaml:\\d+:\\d+: not YAML: ")
                    .contains("expected `key: value`");
        }
    }
}

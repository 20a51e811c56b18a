package jackwork.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every number that can be changed, of every design, its box and the workshop, put just beyond the ends of what it may be:
 * always refused, with its place and the reason. At the ends it is read, or refused by a rule across numbers, with its place.
 */
class NumbersOutOfBoundsTest {

    private static final double[] SHARES = {0.5, 0.9, 1.1, 2, 0, -1};

    /** What went wrong; empty when the design could be read. */
    private static Optional<String> complaint(Design design, DesignFiles files, String path, double value) {
        Map<Path, String> texts = new HashMap<>(files.texts());
        texts.computeIfPresent(files.design(), (file, text) -> DesignEdit.with(text, path, words(value)));
        try {
            DesignReader.readLike(design, texts);
            return Optional.empty();
        } catch (DesignException e) {
            return Optional.of(String.valueOf(e.getMessage()));
        }
    }

    private static String words(double value) {
        return new java.math.BigDecimal(String.valueOf(value))
                .stripTrailingZeros()
                .toPlainString();
    }

    @ParameterizedTest
    @ValueSource(strings = {"heron", "lamplighter", "windmill", "cobbler"})
    void ofADesign(String name) {
        Design design = DesignReader.read(Path.of("demo", name));
        DesignFiles files = DesignFiles.of(design);
        int tried = 0;
        for (Adjustable.Setting number : Adjustable.of(design).numbers()) {
            Field field = number.field();
            if (Double.isInfinite(field.least())) {
                continue; // about to go, see VocabularyTest
            }
            double beyond = field.whole() ? 1 : 1e-3 * Math.max(1, Math.abs(field.most()));
            for (double value : new double[] {field.least() - beyond, field.most() + beyond}) {
                assertThat(complaint(design, files, number.path(), value))
                        .as(number.path() + " = " + value)
                        .hasValueSatisfying(told -> assertThat(told)
                                .containsPattern("design\\.yaml:\\d+:\\d+: ")
                                .contains("expected ")
                                .contains(field.why()));
                tried++;
            }
            for (double value : new double[] {field.least(), field.most()}) {
                complaint(design, files, number.path(), value)
                        .ifPresent(told -> assertThat(told).containsPattern("\\.yaml:\\d+:\\d+: "));
                tried++;
            }
            for (double share : SHARES) {
                double value = field.whole() ? Math.rint(number.value() * share) : number.value() * share;
                boolean within = value >= field.least() && value <= field.most();
                Optional<String> told = complaint(design, files, number.path(), value);
                told.ifPresent(words -> assertThat(words).containsPattern("\\.yaml:\\d+:\\d+: "));
                assertThat(within || told.isPresent())
                        .as(number.path() + " = " + value)
                        .isTrue();
                tried++;
            }
        }
        assertThat(tried).isGreaterThan(200);
    }

    @Test
    void ofTheWorkshop() {
        String text = WorkshopReader.text(Path.of("demo"));
        WorkshopFile workshop = WorkshopReader.parse(text);
        Map<String, Range> ranges = new HashMap<>();
        Walk.over(
                workshop,
                "",
                (path, entry, word, value) ->
                        Range.of(word).filter(range -> !word.isList()).ifPresent(range -> ranges.put(path, range)));
        int tried = 0;
        for (Map.Entry<String, Range> number : ranges.entrySet()) {
            if (!WorkshopSplice.says(text, number.getKey())) {
                continue;
            }
            Range range = Objects.requireNonNull(number.getValue());
            double beyond = 1e-3 * Math.max(1, Math.abs(range.most()));
            for (double value : List.of(range.least() - beyond, range.most() + beyond)) {
                assertThat(complaint(text, number.getKey(), words(value)))
                        .as(number.getKey() + " = " + value)
                        .hasValueSatisfying(told -> assertThat(told)
                                .containsPattern("workshop\\.yaml:\\d+:\\d+: ")
                                .contains(range.why()));
                tried++;
            }
        }
        assertThat(tried).isGreaterThan(20);
    }

    @Test
    void anIntervalsEndsAreHeldAsWell() {
        String text = WorkshopReader.text(Path.of("demo"));
        assertThat(complaint(text, "fits.running", "{value: 0.2, low: -0.2, high: 0.3}"))
                .hasValueSatisfying(told -> assertThat(told).contains("read -0.2, expected 0.01 to 1.5 mm"));
        assertThat(complaint(text, "laser.kerf", "{value: 0.2, low: 0.1, high: 30}"))
                .hasValueSatisfying(told -> assertThat(told).contains("read 30, expected 0 to 1 mm"));
    }

    private static Optional<String> complaint(String text, String path, String value) {
        try {
            WorkshopSplice.value(text, path, value);
            return Optional.empty();
        } catch (DesignException e) {
            return Optional.of(String.valueOf(e.getMessage()));
        }
    }
}

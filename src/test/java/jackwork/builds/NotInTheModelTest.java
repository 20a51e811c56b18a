package jackwork.builds;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.check.Measurement;
import jackwork.check.NotInTheModel;
import jackwork.design.DesignReader;
import jackwork.parts.Assembler;
import jackwork.parts.Assembly;
import jackwork.stock.Basis;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is said to be left out is left out: the list is held against what builds draw. */
class NotInTheModelTest {

    private static Assembly assembly(String design) {
        return Assembler.assemble(DesignReader.read(Path.of("demo/" + design)));
    }

    private static Set<String> drawn(String design) {
        return Unknowns.of(assembly(design)).stream().map(Unknown::name).collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void eachIsWholeSentencesAndIsSaidOnce() {
        assertThat(NotInTheModel.all()).hasSizeGreaterThan(10).doesNotHaveDuplicates();
        assertThat(NotInTheModel.all()).allSatisfy(one -> {
            assertThat(one.what()).matches("[A-Z].*\\.").doesNotContain("  ");
            assertThat(one.instead()).matches("[A-Z].*\\.").doesNotContain("  ");
        });
    }

    /** A number that comes into the builds may make a sentence of the list untrue: read it again, and put the word here. */
    @ParameterizedTest
    @ValueSource(strings = {"heron", "lamplighter", "windmill", "cobbler"})
    void whatBuildsDrawIsKnownToTheList(String design) {
        Set<String> known = Set.of(
                "friction",
                "grip",
                "drag",
                "warp",
                "roundness",
                "weight",
                "thickness",
                "density",
                "mass",
                "kerf",
                "diameter",
                "printed",
                "press",
                "running",
                "wear,",
                "moisture",
                "length",
                "paint",
                "place",
                "speed",
                "rebound",
                "strength",
                "tilt",
                "side");
        assertThat(drawn(design)).allMatch(name -> known.contains(name.split(" ")[0]));
        assertThat(drawn(design))
                .filteredOn(name -> name.startsWith("place of"))
                .allMatch(name -> name.equals("place of the drop")
                        || name.startsWith("place of what stops")
                        || name.matches("place of [a-z0-9-/]+, (left or right|up or down)"));
    }

    /** What is bought weighs what is published, what is cut by hand about what is written. */
    @ParameterizedTest
    @ValueSource(strings = {"heron", "lamplighter", "windmill", "cobbler"})
    void onlyWhatIsBoughtWeighsOtherwise(String design) {
        assertThat(drawn(design))
                .filteredOn(name -> name.startsWith("mass of"))
                .allMatch(name -> name.equals("mass of coins in use") || name.matches("mass of (nut|washer)-m\\d+"));
    }

    /** Whatever may be advised says how it is measured. */
    @ParameterizedTest
    @ValueSource(strings = {"heron", "lamplighter", "windmill", "cobbler"})
    void everyNumberOfTheBuildsThatCanBeMeasuredSaysHow(String design) {
        assertThat(Unknowns.of(assembly(design)))
                .filteredOn(unknown -> !unknown.isEven() && unknown.number().basis() != Basis.MEASURED)
                .isNotEmpty()
                .allSatisfy(unknown ->
                        assertThat(Measurement.first(unknown.name())).doesNotContain("it moves this answer most"));
    }
}

package jackwork.make;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.design.Design;
import jackwork.design.DesignReader;
import jackwork.parts.Assembler;
import jackwork.parts.Assembly;
import jackwork.parts.RodRun;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The heron's rods, against lengths added up by hand from its layers. */
class DowelsTest {

    private static final List<Dowels.Dowel> HERON = rods("heron");

    private static List<Dowels.Dowel> rods(String design) {
        Design read = DesignReader.read(Path.of("demo", design));
        return Dowels.of(read, Assembler.assemble(read));
    }

    private static Dowels.Dowel dowel(String name) {
        return HERON.stream()
                .filter(dowel -> dowel.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** Through layers 6, 7, 8 of 2.95 mm and 9 of 1.95 mm (in 7 the lever's hub is the thickest), and 1 mm at each end. */
    @Test
    void reachesThroughItsLayers() {
        Dowels.Dowel bucket = dowel("bucket-dowel-2");
        assertThat(bucket.from()).isEqualTo(6);
        assertThat(bucket.to()).isEqualTo(9);
        assertThat(bucket.rod()).isEqualTo("bamboo-3");
        assertThat(bucket.length()).isCloseTo(12.8, within(1e-9));
    }

    @Test
    void everyPinHasOneAndTheListAddsUp() {
        List<Dowels.Dowel> dowels = HERON;
        assertThat(dowels).extracting(Dowels.Dowel::name).doesNotHaveDuplicates();
        assertThat(dowels).extracting(Dowels.Dowel::name).contains("lever-pivot", "hip", "mount-left");
        String csv = Dowels.csv(dowels, 3);
        for (String rod : List.of("bamboo-3", "steel-4")) {
            double sum = dowels.stream()
                    .filter(dowel -> dowel.rod().equals(rod))
                    .mapToDouble(Dowels.Dowel::length)
                    .sum();
            assertThat(csv).contains(String.format(java.util.Locale.ROOT, "all of %s,%s,,,%.0f,", rod, rod, 3 * sum));
        }
        assertThat(csv.lines().count()).isEqualTo(dowels.size() + 3);
    }

    /**
     * A peg is bored in its holder alone: the cobbler's rack guides stand in layer 5 and lead the rack in 3, its hammer's peg
     * stands in 4 and rides on the cam in 2.
     */
    @Test
    void aPegReachesWhatItMeets() {
        List<Dowels.Dowel> cobbler = rods("cobbler");
        for (String peg : List.of("rack-guide-high", "rack-guide-low", "cam")) {
            Dowels.Dowel rod = cobbler.stream()
                    .filter(dowel -> dowel.name().equals(peg))
                    .findFirst()
                    .orElseThrow();
            // Three layers of 2.95 mm, one of them passed where nothing lies; 1 mm at each end.
            assertThat(rod.from()).as(peg).isEqualTo(peg.equals("cam") ? 2 : 3);
            assertThat(rod.to()).as(peg).isEqualTo(peg.equals("cam") ? 4 : 5);
            assertThat(rod.length()).as(peg).isCloseTo(10.85, within(1e-9));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"heron", "lamplighter", "windmill", "cobbler"})
    void everyRodReachesWhateverTheQuestionsTakeItToReach(String design) {
        Design read = DesignReader.read(Path.of("demo", design));
        Assembly assembly = Assembler.assemble(read);
        List<Dowels.Dowel> rods = Dowels.of(read, assembly);
        for (RodRun run : assembly.rods()) {
            if (run.kind() != RodRun.Kind.SCREW) {
                assertThat(rods)
                        .as(design + ": " + run)
                        .anyMatch(rod ->
                                rod.at().distance(run.at()) < 0.01 && rod.from() <= run.from() && rod.to() >= run.to());
            }
        }
    }
}

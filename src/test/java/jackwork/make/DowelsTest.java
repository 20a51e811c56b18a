package jackwork.make;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.design.DesignReader;
import jackwork.parts.Assembler;
import jackwork.parts.Assembly;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The heron's rods, against lengths added up by hand from its layers. */
class DowelsTest {

    private static final Assembly HERON = Assembler.assemble(DesignReader.read(Path.of("demo/heron")));

    private static Dowels.Dowel dowel(String name) {
        return Dowels.of(HERON).stream()
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
        List<Dowels.Dowel> dowels = Dowels.of(HERON);
        assertThat(dowels).extracting(Dowels.Dowel::name).doesNotHaveDuplicates();
        assertThat(dowels).extracting(Dowels.Dowel::name).contains("lever-pivot", "hip", "mount-left");
        String csv = Dowels.csv(dowels, 3);
        double sum = dowels.stream().mapToDouble(Dowels.Dowel::length).sum();
        assertThat(csv).contains(String.format(java.util.Locale.ROOT, "all of bamboo-3,bamboo-3,,,%.0f,", 3 * sum));
        assertThat(csv.lines().count()).isEqualTo(dowels.size() + 2);
    }
}

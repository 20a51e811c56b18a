package jackwork.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.design.Design;
import jackwork.design.DesignReader;
import jackwork.design.WorkshopFile;
import jackwork.parts.CoinWorks;
import jackwork.stock.Uncertain;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How far the bucket twists hangs on hole, rod and bearing, none known for certain, and the finding says how much. */
@Tag("quick")
class BucketTwistTest {

    /** Layers that turn on the rod: two of 2 mm each, and of 3 mm as many as are named, as the calliper reads them. */
    @ParameterizedTest
    @CsvSource({"heron,2", "lamplighter,2", "windmill,2", "cobbler,3"})
    void itRestsOnFitRodKerfAndLayers(String name, int thicks) {
        double bearing = thicks * 2.95 + 2 * 1.95;
        Design design = DesignReader.read(Path.of("demo", name));
        Subject subject = Subject.of(design);
        WorkshopFile workshop = design.workshop();
        CoinWorks works = subject.assembly().coinWorks();
        Uncertain fit = workshop.fits().running();
        Uncertain kerf = workshop.laser().kerf();
        Uncertain rod = Objects.requireNonNull(workshop.rods().get("steel-4")).diameter();
        Uncertain thick =
                Objects.requireNonNull(workshop.sheets().get("birch-3")).thickness();
        Uncertain thin =
                Objects.requireNonNull(workshop.sheets().get("birch-2")).thickness();
        Finding finding = new BucketTwist().ask(subject).get(0);
        assertThat(finding.value()).isCloseTo(fit.value() * works.reach() / bearing, within(1e-9));
        assertThat(finding.restsOn()).extracting(Ground::number).contains(fit, kerf, rod, thin);

        double perMillimetre = works.reach() / bearing;
        double free = works.sideGap() - fit.value() * perMillimetre;
        // A wider cut and a thinner rod leave more room; of two sheets, two layers each.
        double lost = rootOfSquares(List.of(
                (fit.high() - fit.value()) * perMillimetre,
                (kerf.high() - kerf.value()) * perMillimetre,
                (rod.value() - rod.low()) * perMillimetre,
                fit.value() * works.reach() * (1 / (bearing - thicks * (thick.value() - thick.low())) - 1 / bearing),
                fit.value() * works.reach() * (1 / (bearing - 2 * (thin.value() - thin.low())) - 1 / bearing)));
        assertThat(Objects.requireNonNull(finding.margins()).low()).isCloseTo(free - lost, within(1e-9));
    }

    private static double rootOfSquares(List<Double> drops) {
        return Math.sqrt(drops.stream().mapToDouble(drop -> drop * drop).sum());
    }
}

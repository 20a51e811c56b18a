package jackwork.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import jackwork.geometry.Point;
import jackwork.stock.Rods;
import jackwork.stock.Sheets;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Beams, holes, plies and glue against worked and published numbers; beside each where it comes from. Numbers of a handbook that
 * are from memory are said to be, and prove no more than that the program says the same.
 */
@Tag("outside")
@Tag("quick")
class RefusedPressOutsideTest {

    private static RodBeam beam(double left, double right, double from, double to, double force) {
        return new RodBeam(List.of(left, right), List.of(new RodBeam.Load(from, to, force)));
    }

    /** Any text on strength of materials: F L / 4 in the middle, 20 N on 80 mm: 400 N·mm, and 150.902 N/mm² in a rod of 3 mm. Calculated. */
    @Test
    void aLoadInTheMiddleOfASimpleBeam() {
        RodBeam beam = beam(0, 80, 40, 40, 20);
        assertThat(beam.bending()).isCloseTo(400, within(1e-9));
        assertThat(beam.bending() / RodBeam.modulus(3)).isCloseTo(150.902, within(5e-4));
        assertThat(beam.shear()).isCloseTo(10, within(1e-9));
    }

    /** The same texts: w L² / 8, 0.5 N/mm on 100 mm: 625 N·mm. Calculated. */
    @Test
    void anEvenLoadOnASimpleBeam() {
        assertThat(beam(0, 100, 0, 100, 50).bending()).isCloseTo(625, within(1e-6));
    }

    /** The same: F a b / L, and an even load of width w about the middle takes F w / 8 of F L / 4. Calculated. */
    @Test
    void aLoadBesideTheMiddleAndOneThatIsSpread() {
        assertThat(beam(0, 30, 25, 25, 12).bending()).isCloseTo(12.0 * 25 * 5 / 30, within(1e-9));
        assertThat(beam(0, 30, 10, 20, 12).bending()).isCloseTo(12.0 * 30 / 4 - 12.0 * 10 / 8, within(1e-6));
    }

    /** Where it stands out of one plate: F L. Calculated. */
    @Test
    void aRodHeldAtOneEnd() {
        RodBeam beam = new RodBeam(List.of(0.0), List.of(new RodBeam.Load(50, 70, 10)));
        assertThat(beam.bending()).isCloseTo(600, within(1e-9));
        assertThat(beam.shear()).isCloseTo(10, within(1e-9));
    }

    /** Round sections: W = π d³ / 32. Calculated. */
    @ParameterizedTest
    @CsvSource({"2,0.7854", "3,2.6507", "4,6.2832"})
    void theModulusOfARoundRod(double diameter, double modulus) {
        assertThat(RodBeam.modulus(diameter)).isCloseTo(modulus, within(5e-5));
    }

    /** 4/3 of the mean in a round rod: 100 N on two faces of 3 mm: 9.4314 N/mm². Calculated. */
    @Test
    void theShearOfARodBetweenTwoPlates() {
        double stress = 4.0 / 3 * beam(0, 6, 2, 4, 100).shear() / RodBeam.area(3);
        assertThat(stress).isCloseTo(9.4314, within(5e-5));
    }

    /** EN 1995-1-1 (8.20), the formula as read in published programs, its numbers calculated from it. */
    @ParameterizedTest
    @CsvSource({
        "2,600,64.68",
        "3,600,64.02",
        "4,600,63.36",
        "2,630,67.91",
        "3,630,67.22",
        "4,630,66.53",
        "3,650,69.36",
        "4,700,73.92"
    })
    void theEdgeOfAHoleInPlywood(double diameter, double density, double strength) {
        assertThat(PressedRod.embedment(diameter, density)).isCloseTo(strength, within(5e-3));
    }

    /**
     * Birch veneers bear 52 N/mm² along their grain in compression, and those across count for nothing (a fit to the Handbook of
     * Finnish Plywood, 4 to 15 mm, whose figures are from memory but for 27.7 and 24.3 of 12 mm, which are published in a worked
     * example as well): what the weaker way then bears is the share of plies that lie that way.
     */
    @ParameterizedTest
    @CsvSource({"1.0,1.0,17.3", "0.8,1.4,24.3", "1.1,1.4,20.2"})
    void theWeakerWayOfAThreePlySheet(double face, double middle, double across) {
        double model = 52 * middle / (2 * face + middle);
        assertThat(model).isCloseTo(across, within(0.05));
        var edgewise =
                Sheets.catalogue().find("birch-ply").orElseThrow().strength().edgewise();
        assertThat(edgewise.low()).isLessThanOrEqualTo(Math.min(model, 52 - model) + 0.05);
        assertThat(edgewise.high()).isGreaterThanOrEqualTo(Math.min(model, 52 - model) - 0.1);
    }

    /** 12 mm of nine plies: 27.7 along, 24.3 across, published; 52 in all, as plies along and across share them. */
    @Test
    void theTwoWaysOfASheetAreTogetherAsStrongAsItsVeneer() {
        assertThat(27.7 + 24.3).isCloseTo(52, withinPercentage(0.1));
    }

    /** A lap of 12 × 10 mm under 60 N: 0.5 N/mm²; it bears 332.4 N at 2.77 N/mm² (Handbook of Finnish Plywood, from memory). */
    @Test
    void aGluedLap() {
        GluedLap lap = new GluedLap(120, Point.ORIGIN, 12 * 10 * (144 + 100) / 12.0, Math.hypot(6, 5));
        assertThat(lap.stress(new Point(60, 0), 0)).isCloseTo(0.5, within(1e-9));
        assertThat(2.77 / lap.stress(new Point(1, 0), 0)).isCloseTo(332.4, within(1e-6));
        // Twisted by 100 N·mm: T r / J, 100 · 7.81 / 2440. Calculated.
        assertThat(lap.stress(Point.ORIGIN, 100)).isCloseTo(0.3201, within(1e-4));
    }

    /** Edgewise, 3 mm by 12 mm, 10 N at 60 mm: 8.3333 N/mm², a quarter of the same bar laid flat. Calculated. */
    @Test
    void aBarOnEdge() {
        WoodSection section = WoodSection.of(List.of(new WoodSection.Strip(3, -6, 6)));
        assertThat(section.modulus()).isCloseTo(72, within(1e-9));
        assertThat(section.stress(0, 600)).isCloseTo(8.3333, within(5e-5));
    }

    /** Two layers of different depth, glued: area, middle and I as any text's built-up section. By hand: see the numbers. */
    @Test
    void twoLayersOfDifferentDepth() {
        WoodSection section = WoodSection.of(List.of(new WoodSection.Strip(3, 0, 20), new WoodSection.Strip(3, 0, 10)));
        // A = 90, middle (60·10 + 30·5)/90 = 8.333; I = 3·8000/12 + 60·1.667² + 3·1000/12 + 30·3.333² = 2750.
        assertThat(section.area()).isCloseTo(90, within(1e-9));
        assertThat(section.middle()).isCloseTo(8.3333, within(1e-4));
        assertThat(section.modulus()).isCloseTo(2750 / 11.6667, within(1e-2));
    }

    /** Metals' shear is 0.58 of their yield (von Mises), so that no row of the table contradicts itself. */
    @ParameterizedTest
    @CsvSource({"steel", "brass"})
    void metalsShearAtTheirShareOfYield(String rod) {
        var strength = Rods.catalogue().find(rod).orElseThrow().strength();
        assertThat(strength.shear().value()).isCloseTo(0.58 * strength.bending().value(), withinPercentage(1));
    }
}

package jackwork.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Closed forms of area, centroid and polar second moment of standard shapes, as every text on
 * mechanics of materials lists them (e.g. Beer and Johnston, Mechanics of Materials, tables of
 * section properties; formulas from memory, each derivable in a line).
 *
 * <p>Reach: polygons exactly; the circle to the accuracy of its many sides.
 */
@Tag("outside")
@Tag("quick")
class SectionPropertiesOutsideTest {

    @Test
    void rectangle() {
        SectionProperties section = SectionProperties.of(Outline.rectangle(10, 20, 40, 32));
        assertThat(section.area()).isCloseTo(30 * 12, within(1e-9));
        assertThat(section.centroid().x()).isCloseTo(25, within(1e-12));
        assertThat(section.centroid().y()).isCloseTo(26, within(1e-12));
        assertThat(section.polarMoment()).isCloseTo(30 * 12 * (30 * 30 + 12 * 12) / 12.0, within(1e-6));
    }

    @Test
    void triangle() {
        double b = 9;
        double h = 6;
        SectionProperties section =
                SectionProperties.of(Outline.of(List.of(new Point(0, 0), new Point(b, 0), new Point(0, h))));
        assertThat(section.area()).isCloseTo(b * h / 2, within(1e-12));
        assertThat(section.centroid().x()).isCloseTo(b / 3, within(1e-12));
        assertThat(section.centroid().y()).isCloseTo(h / 3, within(1e-12));
        assertThat(section.polarMoment()).isCloseTo(b * h * (b * b + h * h) / 36, within(1e-9));
    }

    @Test
    void circle() {
        double r = 5;
        SectionProperties section = SectionProperties.of(Outline.disc(new Circle(new Point(100, -50), r), 1e-7));
        assertThat(section.area()).isCloseTo(Math.PI * r * r, within(1e-5));
        assertThat(section.centroid().distance(new Point(100, -50))).isLessThan(1e-9);
        assertThat(section.polarMoment()).isCloseTo(Math.PI * Math.pow(r, 4) / 2, within(1e-4));
    }

    @Test
    void plateWithRoundHole() {
        Outline plate = Outline.rectangle(-20, -10, 20, 10).without(new Circle(new Point(8, 0), 4), 1e-6);
        double hole = Math.PI * 16;
        double area = 800 - hole;
        double centre = -hole * 8 / area;
        SectionProperties section = SectionProperties.of(plate);
        assertThat(section.area()).isCloseTo(area, within(1e-4));
        assertThat(section.centroid().x()).isCloseTo(centre, within(1e-5));
        double about = 800 * (1600 + 400) / 12.0 - (Math.PI * 256 / 2 + hole * 64) - area * centre * centre;
        assertThat(section.polarMoment()).isCloseTo(about, within(1e-1));
    }
}

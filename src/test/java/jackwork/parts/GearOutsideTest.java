package jackwork.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.Published;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Involute gears against ISO 53, handbook and worked values of the table; the drawn teeth measured back. */
@Tag("outside")
@Tag("quick")
class GearOutsideTest {

    private static final String TABLE = "/jackwork/parts/cams_gears.csv";
    private static final double ALPHA = Math.toRadians(20);

    private static double published(String name, String quantity) {
        return Published.value(TABLE, 3, "gear", name, quantity);
    }

    @ParameterizedTest
    @CsvSource({"14.5", "17.5", "25", "30"})
    void involuteFunction(double degrees) {
        String name = "inv(" + (degrees % 1 == 0 ? String.valueOf((int) degrees) : String.valueOf(degrees)) + " deg)";
        assertThat(InvoluteGear.involute(Math.toRadians(degrees)))
                .isCloseTo(published(name, "involute"), within(1e-10));
    }

    @Test
    void undercutLimits() {
        assertThat(InvoluteGear.standard(20, 1, ALPHA).leastTeeth())
                .isCloseTo(published("undercut limit full-depth ha*=1, 20 deg", "z_min"), within(1e-6));
        assertThat(InvoluteGear.standard(20, 1, Math.toRadians(25)).leastTeeth())
                .isCloseTo(published("undercut limit full-depth ha*=1, 25 deg", "z_min"), within(1e-6));
        for (int z : List.of(10, 12, 16)) {
            assertThat(InvoluteGear.standard(z, 1, ALPHA).leastShift())
                    .isCloseTo(published("profile shift to avoid undercut z=" + z + ", 20 deg", "x_min"), within(1e-8));
            assertThat(InvoluteGear.standard(z, 1, ALPHA).isUndercut()).isTrue();
        }
        assertThat(InvoluteGear.standard(18, 1, ALPHA).isUndercut()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"16, 40", "12, 12", "20, 40", "18, 90", "10, 30"})
    void contactRatios(int z1, int z2) {
        double ratio =
                InvoluteGear.standard(z1, 1, ALPHA).contactRatio(InvoluteGear.standard(z2, 1, ALPHA), (z1 + z2) / 2.0);
        String name = "contact ratio z1=" + z1 + " z2=" + z2 + " alpha=20 ha*=1";
        assertThat(ratio).isCloseTo(published(name, "epsilon"), within(1e-7));
    }

    @ParameterizedTest
    @CsvSource({"9, 2, 0", "18, 3, 0", "20, 3, 0", "30, 4, 0", "40, 5, 0", "100, 12, 0"})
    void spans(int z, int k, int shift) {
        String name = "span m=1 alpha=20 z=" + z + " k=" + k + " x=" + shift;
        assertThat(InvoluteGear.standard(z, 1, ALPHA).span(k)).isCloseTo(published(name, "W"), within(1e-7));
    }

    @Test
    void spanWithShift() {
        InvoluteGear gear = new InvoluteGear(24, 3, ALPHA, 0.4, 1, 1.25);
        assertThat(gear.span(4)).isCloseTo(published("span m=3 alpha=20 z=24 x=0.4 k=4", "W"), within(1e-6));
    }

    /** Parallel jaws over k teeth of the drawn outline: its extent along the common tangent of the base circle. */
    @ParameterizedTest
    @CsvSource({"18, 3", "30, 4", "40, 5"})
    void theDrawnTeethMeasureTheirSpan(int z, int k) {
        InvoluteGear gear = InvoluteGear.standard(z, 2, ALPHA);
        // Middle of the k teeth straight up; jaws square to x.
        double turned = Math.PI / 2 - Math.PI * (k - 1) / z;
        List<Point> outline = gear.outline(Point.ORIGIN, turned, 0).outer();
        double most = 0;
        for (Point p : outline) {
            double angle = Math.atan2(p.y(), p.x()) - Math.PI / 2;
            // Only the k teeth, outside the base circle.
            if (Math.abs(angle) < Math.PI * k / z && p.length() > gear.baseRadius()) {
                most = Math.max(most, Math.abs(p.x()));
            }
        }
        assertThat(2 * most).isCloseTo(gear.span(k), within(0.02));
    }

    @Test
    void twoGearsRunInEachOtherWithoutOverlap() {
        InvoluteGear small = InvoluteGear.standard(18, 2, ALPHA);
        InvoluteGear large = InvoluteGear.standard(31, 2, ALPHA);
        double distance = small.pitchRadius() + large.pitchRadius();
        double most = 0;
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 40; i++) {
            double turned = 2 * Math.PI / 18 * i / 40;
            Outline first = small.outline(Point.ORIGIN, turned, 0);
            // A gap of the large gear faces a tooth of the small one.
            double other = Math.PI + Math.PI / 31 - turned * 18 / 31;
            Outline second = large.outline(new Point(distance, 0), other, 0);
            most = Math.max(most, first.sharedArea(second));
            Outline apart = large.outline(new Point(distance + 0.05, 0), other, 0);
            nearest = Math.min(nearest, first.sharedArea(apart));
        }
        assertThat(most).isLessThan(0.02);
        assertThat(nearest).isZero();
    }

    @Test
    void aGearRunsInsideAnInternalOne() {
        InvoluteGear pinion = InvoluteGear.standard(18, 2, ALPHA);
        InvoluteGear hole = InvoluteGear.hole(45, 2, ALPHA);
        double distance = hole.pitchRadius() - pinion.pitchRadius();
        Outline rim = Outline.rectangle(-60, -60, 60, 60);
        for (int i = 0; i < 20; i++) {
            double turned = 2 * Math.PI / 18 * i / 20;
            Outline ring = rim.without(hole.outline(Point.ORIGIN, turned * 18 / 45, 0));
            Outline first = pinion.outline(new Point(distance, 0), turned, 0);
            assertThat(first.sharedArea(ring)).as("at %s", i).isLessThan(0.05);
        }
    }
}

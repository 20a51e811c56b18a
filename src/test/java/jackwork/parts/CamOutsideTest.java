package jackwork.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jackwork.Published;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Cam laws against the handbooks' coefficients (Norton; Rothbart; quoted from memory, recomputed), and the
 * generated profile measured back.
 */
@Tag("outside")
@Tag("quick")
class CamOutsideTest {

    private static final String TABLE = "/jackwork/parts/cams_gears.csv";

    private static double published(String law, String quantity) {
        return Published.value(TABLE, 3, "cam_law", law, quantity);
    }

    @ParameterizedTest
    @CsvSource({
        "HARMONIC, simple harmonic",
        "CYCLOIDAL, cycloidal",
        "POLYNOMIAL_345, 3-4-5 polynomial",
        "POLYNOMIAL_4567, 4-5-6-7 polynomial",
        "MODIFIED_SINE, modified sine (b=.25 c=0 d=.75)",
        "MODIFIED_TRAPEZOID, modified trapezoid (b=.25 c=.5 d=.25)"
    })
    void coefficients(CamLaw law, String name) {
        double[] most = new double[4];
        double[] s = new double[4];
        for (int i = 0; i <= 200_000; i++) {
            law.at(i / 200_000.0, s);
            for (int k = 1; k < 4; k++) {
                most[k] = Math.max(most[k], Math.abs(s[k]));
            }
        }
        assertThat(most[1]).isCloseTo(published(name, "Cv"), within(1e-7));
        assertThat(most[2]).isCloseTo(published(name, "Ca"), within(1e-6));
        assertThat(most[3]).isCloseTo(published(name, "Cj"), within(1e-3));
    }

    @ParameterizedTest
    @CsvSource({"HARMONIC, simple harmonic", "CYCLOIDAL, cycloidal", "POLYNOMIAL_345, 3-4-5", "POLYNOMIAL_4567, 4-5-6-7"
    })
    void samples(CamLaw law, String name) {
        double[] s = new double[4];
        for (String x : List.of("0.1", "0.2", "0.25", "0.3", "0.4", "0.5")) {
            law.at(Double.parseDouble(x), s);
            double value = Published.value(TABLE, 3, "cam_law_sample", name, "s(x=" + x + ")/h");
            assertThat(s[0]).isCloseTo(value, within(1e-9));
        }
    }

    @ParameterizedTest
    @EnumSource(CamLaw.class)
    void derivativesBelongTogetherAndEndsMeet(CamLaw law) {
        double[] s = new double[4];
        double[] before = new double[4];
        double[] after = new double[4];
        double step = 1e-5;
        for (int i = 1; i < 400; i++) {
            double x = i / 400.0 + 1e-4;
            law.at(x, s);
            law.at(x - step, before);
            law.at(x + step, after);
            for (int k = 0; k < 3; k++) {
                assertThat((after[k] - before[k]) / (2 * step)).isCloseTo(s[k + 1], within(2e-3));
            }
        }
        law.at(0, s);
        assertThat(s[0]).isZero();
        law.at(1, s);
        assertThat(s[0]).isCloseTo(1, within(1e-12));
        assertThat(s[1]).isCloseTo(0, within(1e-12));
    }

    private static CamMotion motion(double move) {
        return new CamMotion(List.of(
                new CamMotion.Piece(CamLaw.CYCLOIDAL, Math.toRadians(120), move),
                new CamMotion.Piece(CamLaw.HARMONIC, Math.toRadians(60), 0),
                new CamMotion.Piece(CamLaw.POLYNOMIAL_345, Math.toRadians(100), -move),
                new CamMotion.Piece(CamLaw.HARMONIC, Math.toRadians(80), 0)));
    }

    @Test
    void theProfileTouchesItsFollowerAllTheWayRound() {
        CamMotion straight = motion(9);
        CamMotion swing = motion(Math.toRadians(-20));
        CamProfile lifting = CamProfile.straight(straight, new Point(4, 25), new Point(0, 1), 3);
        CamProfile swinging = CamProfile.swinging(swing, new Point(4, 25), new Point(45, 25), 3);
        Outline liftingOutline = lifting.outline(Point.ORIGIN, 1440);
        Outline swingingOutline = swinging.outline(Point.ORIGIN, 1440);
        double[] s = new double[4];
        for (int i = 0; i < 360; i++) {
            double turned = Math.toRadians(i);
            straight.at(turned, s);
            Point follower = new Point(4, 25 + s[0]).turned(-turned);
            assertThat(liftingOutline.distanceToEdge(follower)).isCloseTo(3, within(0.01));
            swing.at(turned, s);
            Point pivot = new Point(45, 25);
            Point swung = pivot.plus(new Point(-41, 0).turned(s[0])).turned(-turned);
            assertThat(swingingOutline.distanceToEdge(swung)).isCloseTo(3, within(0.01));
        }
        assertThat(lifting.isUndercut()).isFalse();
    }

    @Test
    void aFollowerTooThickForItsCurveIsFound() {
        // A quick rise bends the pitch curve sharply: a thick follower undercuts it, a thin one does not.
        CamMotion quick = new CamMotion(List.of(
                new CamMotion.Piece(CamLaw.CYCLOIDAL, Math.toRadians(30), 8),
                new CamMotion.Piece(CamLaw.CYCLOIDAL, Math.toRadians(30), -8),
                new CamMotion.Piece(CamLaw.CYCLOIDAL, Math.toRadians(300), 0)));
        assertThat(CamProfile.straight(quick, new Point(0, 20), new Point(0, 1), 8)
                        .isUndercut())
                .isTrue();
        assertThat(CamProfile.straight(quick, new Point(0, 20), new Point(0, 1), 0.2)
                        .isUndercut())
                .isFalse();
    }

    @Test
    void piecesThatDoNotComeBackAreRefused() {
        assertThatThrownBy(() -> new CamMotion(List.of(new CamMotion.Piece(CamLaw.HARMONIC, 2 * Math.PI, 3))))
                .hasMessageContaining("must fall again");
        assertThatThrownBy(() -> new CamMotion(List.of(new CamMotion.Piece(CamLaw.HARMONIC, 1, 0))))
                .hasMessageContaining("expected 360");
    }
}

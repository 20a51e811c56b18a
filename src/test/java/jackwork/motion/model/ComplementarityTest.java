package jackwork.motion.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Small problems whose answers are worked out by hand, and many that are held against their own conditions. */
@Tag("quick")
class ComplementarityTest {

    private static Complementarity of(double[][] matrix, double... offset) {
        Complementarity problem = new Complementarity(offset.length);
        problem.size = offset.length;
        for (int i = 0; i < offset.length; i++) {
            System.arraycopy(matrix[i], 0, problem.matrix, i * problem.stride(), offset.length);
            problem.offset[i] = offset[i];
        }
        return problem;
    }

    /**
     * A joint rubs, and its reaction turns its sign by its own friction. Held, 0.5 and 1.5: beyond 0.55 of it. Sliding, by
     * hand: f0 − 0.55 f0 · (−1) = −1, that is f0 = −1 / 1.55.
     */
    @Test
    void aReactionMayTurnByItsOwnFriction() {
        Complementarity problem = of(new double[][] {{1, -1}, {-1, 2}}, 1, -2.5);
        problem.row(0, Complementarity.Kind.HOLD, -1, 0, 0);
        problem.row(1, Complementarity.Kind.LIMITED, 0, 0.55, 0.55);
        assertThat(problem.solve()).isTrue();
        assertThat(problem.force[0]).isCloseTo(-1 / 1.55, within(1e-8));
        assertThat(problem.force[1]).isCloseTo(0.55 / 1.55, within(1e-8));
        assertThat(problem.motion[1]).isNegative();
    }

    /** Touches and joints with friction on each, as bodies in the plane give: the answer meets every condition. */
    @Test
    void answersFitWithFrictionOnEverything() {
        Random random = new Random(5);
        int fits = 0;
        for (int trial = 0; trial < 500; trial++) {
            int contacts = 2 + random.nextInt(5);
            int size = 2 * contacts;
            double[][] jacobian = new double[size][size + 2];
            for (double[] row : jacobian) {
                for (int k = 0; k < row.length; k++) {
                    row[k] = random.nextGaussian();
                }
            }
            double[][] matrix = new double[size][size];
            double[] offset = new double[size];
            for (int i = 0; i < size; i++) {
                offset[i] = random.nextGaussian();
                for (int j = 0; j < size; j++) {
                    for (int k = 0; k < size + 2; k++) {
                        matrix[i][j] += jacobian[i][k] * jacobian[j][k];
                    }
                }
            }
            Complementarity problem = of(matrix, offset);
            for (int c = 0; c < contacts; c++) {
                problem.row(c, c % 3 == 0 ? Complementarity.Kind.HOLD : Complementarity.Kind.PUSH, -1, 0, 0);
                problem.row(contacts + c, Complementarity.Kind.LIMITED, c, 0.3, 0.3);
            }
            if (problem.solve()) {
                fits++;
                holds(problem, matrix, offset, contacts);
            }
        }
        assertThat(fits).as("of 500").isEqualTo(500);
    }

    private static void holds(Complementarity problem, double[][] matrix, double[] offset, int contacts) {
        for (int i = 0; i < problem.size; i++) {
            double motion = offset[i];
            for (int j = 0; j < problem.size; j++) {
                motion += matrix[i][j] * problem.force[j];
            }
            double force = problem.force[i];
            if (i >= contacts) {
                double bound = 0.3 * Math.abs(problem.force[i - contacts]);
                assertThat(Math.abs(force)).isLessThan(bound + 1e-7);
                if (Math.abs(motion) > 1e-6) {
                    assertThat(force).as("against the sliding").isCloseTo(-Math.signum(motion) * bound, within(1e-6));
                }
            } else if (i % 3 == 0) {
                assertThat(motion).isCloseTo(0, within(1e-6));
            } else {
                assertThat(force).isNotNegative();
                assertThat(motion).isGreaterThan(-1e-6);
                assertThat(force * motion).isCloseTo(0, within(1e-6));
            }
        }
    }
}

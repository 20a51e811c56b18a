package jackwork.motion;

import java.util.ArrayList;
import java.util.List;

/**
 * Counts freedoms as drawn. Gruebler's count alone (M = 3 (L − 1) − 2 J1 − J2, any text on
 * mechanisms) overlooks what moves and what is held twice, so a bad count is explained by the
 * bodies that can still move while the lever stands still.
 */
final class Freedoms {

    private Freedoms() {}

    /** @throws MechanismException unless the lever, and nothing else, decides where every body is */
    static void requireLeverOnly(Mechanism mechanism) {
        int coordinates = mechanism.coordinates();
        int equations = mechanism.jointEquations() + 1;
        double[][] rows = jacobian(mechanism);
        List<Integer> free = freeBodies(rows, coordinates);
        if (!free.isEmpty()) {
            String names =
                    String.join(", ", free.stream().map(mechanism::bodyName).toList());
            throw new MechanismException("with the lever held still, these can still move: " + names
                    + "; join each by another pin or slide, or glue it to its neighbour");
        }
        if (equations > coordinates) {
            throw new MechanismException("the joints hold more than there is to hold: " + equations
                    + " equations for " + coordinates + " coordinates of " + mechanism.bodyCount()
                    + " bodies; take away a pin or slide that repeats another");
        }
    }

    private static double[][] jacobian(Mechanism mechanism) {
        double[] pose = mechanism.drawnPose();
        Equations equations = new Equations(mechanism);
        equations.at(pose);
        int rows = mechanism.jointEquations() + 1;
        int size = Math.max(rows, mechanism.coordinates());
        LuFactors square = new LuFactors(size);
        square.clear();
        equations.addJacobian(pose, square);
        double[][] result = new double[rows][mechanism.coordinates()];
        for (int i = 0; i < rows; i++) {
            for (int j = 0; j < result[i].length; j++) {
                result[i][j] = square.entry(i, j);
            }
        }
        return result;
    }

    /** Bodies whose coordinates no equation decides: Gauss-Jordan with full pivoting. */
    private static List<Integer> freeBodies(double[][] a, int coordinates) {
        boolean[] used = new boolean[a.length];
        int[] pivotRow = new int[coordinates];
        java.util.Arrays.fill(pivotRow, -1);
        for (int step = 0; step < Math.min(a.length, coordinates); step++) {
            int bestRow = -1;
            int bestColumn = -1;
            double most = 1e-9;
            for (int i = 0; i < a.length; i++) {
                for (int j = 0; j < coordinates && !used[i]; j++) {
                    if (pivotRow[j] < 0 && Math.abs(a[i][j]) > most) {
                        most = Math.abs(a[i][j]);
                        bestRow = i;
                        bestColumn = j;
                    }
                }
            }
            if (bestRow < 0) {
                break;
            }
            used[bestRow] = true;
            pivotRow[bestColumn] = bestRow;
            for (int i = 0; i < a.length; i++) {
                double factor = a[i][bestColumn] / a[bestRow][bestColumn];
                for (int j = 0; j < coordinates && i != bestRow; j++) {
                    a[i][j] -= factor * a[bestRow][j];
                }
            }
        }
        return moved(a, pivotRow, coordinates);
    }

    private static List<Integer> moved(double[][] a, int[] pivotRow, int coordinates) {
        List<Integer> bodies = new ArrayList<>();
        for (int j = 0; j < coordinates; j++) {
            if (pivotRow[j] < 0) {
                note(bodies, j / 3);
                for (int k = 0; k < coordinates; k++) {
                    if (pivotRow[k] >= 0 && Math.abs(a[pivotRow[k]][j]) > 1e-9) {
                        note(bodies, k / 3);
                    }
                }
            }
        }
        bodies.sort(null);
        return bodies;
    }

    private static void note(List<Integer> bodies, int body) {
        if (!bodies.contains(body)) {
            bodies.add(body);
        }
    }
}

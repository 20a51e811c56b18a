package jackwork.motion.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What the equality rows leave free as drawn, found by Gauss-Jordan elimination with full pivoting, the lever
 * first. Gruebler's count alone (M = 3 (L − 1) − 2 J1 − J2, any text on mechanisms) overlooks what moves and
 * what is held twice.
 *
 * @param independent equality rows that, with the lever, decide as many coordinates
 * @param redundant equality rows that repeat what others hold: they must stay closed by themselves
 * @param free coordinates that no row decides: gravity, strings and touches do
 * @param freeBodies bodies that can move while the lever stands still
 */
public record Structure(int[] independent, int[] redundant, int[] free, List<Integer> freeBodies) {

    static Structure of(Mechanism mechanism) {
        return of(mechanism, mechanism.drawnPose());
    }

    static Structure of(Mechanism mechanism, double[] pose) {
        int coordinates = mechanism.coordinates();
        Rows rows = new Rows(mechanism);
        rows.at(pose);
        List<Integer> equalities = new ArrayList<>();
        for (int r = 0; r < mechanism.rowCount; r++) {
            if (!mechanism.pushesOnly[r]) {
                equalities.add(r);
            }
        }
        double[][] a = new double[equalities.size() + 1][coordinates];
        a[0][3 * mechanism.drive.body() + 2] = 1;
        for (int i = 0; i < equalities.size(); i++) {
            rows.addForce(equalities.get(i), 1, a[i + 1]);
        }
        return eliminate(a, equalities, coordinates);
    }

    private static Structure eliminate(double[][] a, List<Integer> equalities, int coordinates) {
        int[] pivotRow = new int[coordinates];
        Arrays.fill(pivotRow, -1);
        boolean[] used = new boolean[a.length];
        for (int step = 0; step < Math.min(a.length, coordinates); step++) {
            int bestRow = -1;
            int bestColumn = -1;
            double most = ModelLimits.DECIDED;
            for (int i = 0; i < (step == 0 ? 1 : a.length); i++) {
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
                for (int j = 0; j < coordinates && i != bestRow && factor != 0; j++) {
                    a[i][j] -= factor * a[bestRow][j];
                }
            }
        }
        int[] free = java.util.stream.IntStream.range(0, coordinates)
                .filter(j -> pivotRow[j] < 0)
                .toArray();
        return new Structure(
                rowsWhere(used, equalities, true), rowsWhere(used, equalities, false), free, moved(a, pivotRow, free));
    }

    private static int[] rowsWhere(boolean[] used, List<Integer> equalities, boolean wanted) {
        return java.util.stream.IntStream.range(0, equalities.size())
                .filter(i -> used[i + 1] == wanted)
                .map(equalities::get)
                .toArray();
    }

    private static List<Integer> moved(double[][] a, int[] pivotRow, int[] free) {
        List<Integer> bodies = new ArrayList<>();
        for (int j : free) {
            note(bodies, j / 3);
            for (int k = 0; k < pivotRow.length; k++) {
                if (pivotRow[k] >= 0 && Math.abs(a[pivotRow[k]][j]) > ModelLimits.DECIDED) {
                    note(bodies, k / 3);
                }
            }
        }
        bodies.sort(null);
        return List.copyOf(bodies);
    }

    private static void note(List<Integer> bodies, int body) {
        if (!bodies.contains(body)) {
            bodies.add(body);
        }
    }
}

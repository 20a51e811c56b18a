package jackwork.motion.model;

import java.util.Arrays;

/**
 * The system that closes a mechanism at a stroke: independent equality rows, the lever's angle, and for
 * every free coordinate the wish to stay. As many rows as coordinates. The rows' own arrays are used; one per thread.
 */
public final class Closure {

    private final Mechanism mechanism;
    private final Rows rows;
    private final int[] independent;
    private final int[] free;

    public Closure(Mechanism mechanism, Rows rows) {
        this.mechanism = mechanism;
        this.rows = rows;
        this.independent = mechanism.structure.independent();
        this.free = mechanism.structure.free();
    }

    /** Number of the lever's row, and of the column that carries its motion. */
    public int leverRow() {
        return independent.length;
    }

    private double leverMiss(double[] pose, double stroke) {
        return pose[3 * mechanism.drive.body() + 2] - mechanism.drive.angle(stroke);
    }

    /** Largest miss of an independent row or the lever, mm (a rad counts as the mm it moves a point 100 mm away). */
    public double miss(double[] pose, double stroke) {
        double most = 100 * Math.abs(leverMiss(pose, stroke));
        for (int row : independent) {
            most = Math.max(most, Math.abs(rows.gap[row]));
        }
        return most;
    }

    /** The Jacobian at the pose that the rows hold. */
    public void assemble(LuFactors factors) {
        factors.clear();
        for (int i = 0; i < independent.length; i++) {
            rows.addRow(independent[i], factors, i);
        }
        factors.add(independent.length, 3 * mechanism.drive.body() + 2, 1);
        for (int j = 0; j < free.length; j++) {
            factors.add(independent.length + 1 + j, free[j], 1);
        }
    }

    /** What Newton's method must take off: minus the misses, 0 for free coordinates. */
    public void residual(double[] pose, double stroke, double[] into) {
        Arrays.fill(into, 0);
        for (int i = 0; i < independent.length; i++) {
            into[i] = -rows.gap[independent[i]];
        }
        into[independent.length] = -leverMiss(pose, stroke);
    }

    /** Motion per unit of stroke with free coordinates at rest, from factors of the Jacobian. */
    public void velocity(LuFactors factors, double[] into) {
        Arrays.fill(into, 0);
        into[independent.length] = mechanism.drive.turn();
        factors.solve(into);
    }
}

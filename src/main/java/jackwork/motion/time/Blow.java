package jackwork.motion.time;

import jackwork.motion.model.Mechanism;
import jackwork.motion.model.Rows;

/**
 * A blow: an instant in which velocities jump and positions do not. Newton's restitution on the rows that
 * close, with friction, that of pins by their own impulses; where the two together would raise the kinetic energy, restitution is lowered
 * for this blow until they do not.
 */
final class Blow {

    private final Mechanism mechanism;
    private final Rows rows;
    private final StepForces forces;
    private final double[] before;
    private double residual;

    Blow(Mechanism mechanism, Rows rows, StepForces forces) {
        this.mechanism = mechanism;
        this.rows = rows;
        this.forces = forces;
        this.before = new double[mechanism.coordinates()];
    }

    /**
     * Strikes where closed rows approach; changes the velocity.
     *
     * @param step s; an approach that gravity makes within two steps does not come back
     * @return whether there was a blow
     */
    boolean strike(double[] pose, double[] velocity, double step, Finger finger) {
        rows.at(pose);
        double fastest = 0;
        for (int r = 0; r < rows.count; r++) {
            if (mechanism.pushesOnly[r] && rows.gap[r] <= TimeLimits.CLOSED) {
                fastest = Math.min(fastest, rows.rate(r, velocity));
            }
        }
        if (fastest >= -TimeLimits.FAINT) {
            return false;
        }
        System.arraycopy(velocity, 0, before, 0, velocity.length);
        double energy = kinetic(velocity);
        double restitution = -fastest > 2 * Mechanism.GRAVITY * step ? 1 : 0;
        residual = forces.strike(velocity, restitution, finger);
        for (int k = 0; k < TimeLimits.LOWERINGS && kinetic(velocity) > energy * (1 + 1e-12) && restitution > 0; k++) {
            restitution = k == TimeLimits.LOWERINGS - 1 ? 0 : 0.8 * restitution;
            System.arraycopy(before, 0, velocity, 0, velocity.length);
            residual = forces.strike(velocity, restitution, finger);
        }
        return true;
    }

    private double kinetic(double[] v) {
        double sum = 0;
        for (int i = 0; i < v.length; i++) {
            sum += 0.5 * v[i] * v[i] / rows.inverseMass[i];
        }
        return sum;
    }

    double residual() {
        return residual;
    }
}

package jackwork.motion;

import jackwork.geometry.Point;
import jackwork.parts.Assembly;
import jackwork.parts.Lever;
import java.util.Arrays;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A figure whose every part stands where the lever's angle says, folded into the lever: over that angle its inertia
 * as felt there, its potential, its weight on the lever's pivot, and the friction of its joints under that weight.
 * What acceleration adds to the joints' friction is left out. Immutable.
 */
final class FoldedFigure {

    /** Strokes at which it is worked out, both ends included. */
    private static final int SAMPLES = 65;
    /** Something that only pushes must not be closed by more on the way, mm: it would bear. */
    private static final double CLOSED = -1e-6;
    /** A finger nearer the pivot tells nothing of moments, mm. */
    private static final double SHORTEST_ARM = 1;

    private final EvenTable inertia;
    private final EvenTable potential;
    private final EvenTable pressing;
    private final EvenTable returning;
    private final EvenTable pivotX;
    private final EvenTable pivotY;
    /** Coordinates of the figure's bodies as numbered in its own mechanism, [3 × bodies]. */
    private final EvenTable[] pose;
    /** Number of each of the assembly's bodies there. */
    private final int[] number;

    private final double pivotFromCentreX;
    private final double pivotFromCentreY;
    private final boolean turnsForward;

    private FoldedFigure(Sampling sampling, int[] number, double turn) {
        this.number = number;
        double step = turn / (SAMPLES - 1);
        this.inertia = EvenTable.of(0, step, sampling.inertia);
        this.potential = new EvenTable(0, step, sampling.potential, sampling.potentialSlope);
        this.pressing = EvenTable.of(0, step, sampling.pressing);
        this.returning = EvenTable.of(0, step, sampling.returning);
        this.pivotX = EvenTable.of(0, step, sampling.pivotX);
        this.pivotY = EvenTable.of(0, step, sampling.pivotY);
        this.pose = new EvenTable[sampling.pose.length];
        for (int c = 0; c < pose.length; c++) {
            pose[c] = new EvenTable(0, step, sampling.pose[c], sampling.poseSlope[c]);
        }
        Pin pivot = sampling.pivot;
        boolean runs = pivot.b == Mechanism.GROUND;
        this.pivotFromCentreX = runs ? pivot.ax : pivot.bx;
        this.pivotFromCentreY = runs ? pivot.ay : pivot.by;
        this.turnsForward = turn > 0;
    }

    /**
     * @param gravity mm/s²
     * @return nothing when something of it can lag behind the lever or lock it, or when the coin meets it
     */
    static Optional<FoldedFigure> of(Assembly assembly, Point gravity) {
        Lever lever = assembly.lever();
        boolean meetsCoin = assembly.parts().stream()
                .filter(part ->
                        part.ofBox() && part.layer() == assembly.coinWorks().layer())
                .mapToInt(part -> assembly.bodyOf(part.name()))
                .anyMatch(body -> body != 0
                        && body != lever.body()
                        && body != assembly.coinWorks().bucket());
        boolean leverAlone = assembly.slides().stream()
                        .anyMatch(slide -> ofLeverAlone(slide.peg(), lever) && ofLeverAlone(slide.slot(), lever))
                || assembly.links().stream()
                        .anyMatch(link -> link.bodies().stream().allMatch(body -> ofLeverAlone(body, lever)));
        if (meetsCoin || leverAlone) {
            return Optional.empty();
        }
        int[] number = new int[assembly.bodies().size()];
        Mechanism mechanism = MechanismCompiler.figure(assembly, number, false)
                .gravity(gravity)
                .build();
        Pin pivot = pivot(mechanism, lever.pin());
        if (!mechanism.structure.freeBodies().isEmpty() || pivot == null) {
            return Optional.empty();
        }
        Sampling sampling = new Sampling(mechanism, pivot);
        return sampling.run() ? Optional.of(new FoldedFigure(sampling, number, lever.turn())) : Optional.empty();
    }

    private static boolean ofLeverAlone(int body, Lever lever) {
        return body == 0 || body == lever.body();
    }

    private static @Nullable Pin pivot(Mechanism mechanism, String name) {
        for (Pin pin : mechanism.pins) {
            if (pin.name().equals(name) && (pin.a == Mechanism.GROUND || pin.b == Mechanism.GROUND)) {
                return pin;
            }
        }
        return null;
    }

    // All over the lever's angle, rad.

    /** g·mm². */
    double inertia(double angle) {
        return inertia.at(angle);
    }

    /** g·mm²/rad. */
    double inertiaSlope(double angle) {
        return inertia.slope(angle);
    }

    /** µN·mm. */
    double potential(double angle) {
        return potential.at(angle);
    }

    /** Greatest moment of friction when the angle grows, µN·mm. */
    double dragAgainstTurning(double angle) {
        return Math.max(0, (turnsForward ? pressing : returning).at(angle));
    }

    /** Greatest moment of friction when the angle falls, µN·mm. */
    double dragAgainstTurningBack(double angle) {
        return Math.max(0, (turnsForward ? returning : pressing).at(angle));
    }

    /** Adds its weight on the lever: the moment about the pivot from the potential, the force at the pivot. */
    void addForce(Rows rows, int lever, double[] force) {
        double angle = rows.angle(lever);
        double x = pivotX.at(angle);
        double y = pivotY.at(angle);
        double armX = rows.armX(lever, pivotFromCentreX, pivotFromCentreY);
        double armY = rows.armY(lever, pivotFromCentreX, pivotFromCentreY);
        force[3 * lever] += x;
        force[3 * lever + 1] += y;
        force[3 * lever + 2] += armX * y - armY * x - potential.slope(angle);
    }

    /**
     * Where one of the assembly's bodies stands.
     *
     * @param into gets x, y, angle from {@code at} on
     */
    void pose(int body, double angle, double[] into, int at) {
        for (int c = 0; c < 3; c++) {
            into[at + c] = pose[3 * number[body] + c].at(angle);
        }
    }

    /** The figure followed over the stroke. */
    private static final class Sampling {

        final Mechanism mechanism;
        final Pin pivot;
        final double[] inertia = new double[SAMPLES];
        final double[] potential = new double[SAMPLES];
        final double[] potentialSlope = new double[SAMPLES];
        final double[] pressing = new double[SAMPLES];
        final double[] returning = new double[SAMPLES];
        final double[] pivotX = new double[SAMPLES];
        final double[] pivotY = new double[SAMPLES];
        final double[][] pose;
        final double[][] poseSlope;
        private final Rows rows;
        private final Loads loads;
        private final double[] load;
        private final PoseSolver poses;
        private final ForceSolver forces;

        Sampling(Mechanism mechanism, Pin pivot) {
            this.mechanism = mechanism;
            this.pivot = pivot;
            this.pose = new double[mechanism.coordinates()][SAMPLES];
            this.poseSlope = new double[mechanism.coordinates()][SAMPLES];
            this.rows = new Rows(mechanism);
            this.loads = new Loads(mechanism);
            this.load = new double[mechanism.coordinates()];
            this.poses = new PoseSolver(mechanism);
            this.forces = new ForceSolver(mechanism);
        }

        /** @return false when it is no figure to fold */
        boolean run() {
            for (int k = 0; k < SAMPLES; k++) {
                if (!poses.moveTo((double) k / (SAMPLES - 1)) || !sample(k)) {
                    return false;
                }
            }
            return true;
        }

        private boolean sample(int k) {
            rows.at(poses.pose());
            for (int r = 0; r < rows.count; r++) {
                if (mechanism.pushesOnly[r] && rows.gap[r] < CLOSED) {
                    return false;
                }
            }
            Mechanism.DriveData drive = mechanism.drive;
            Mechanism.BodyData lever = mechanism.bodies[drive.body()];
            int at = 3 * drive.body();
            double turn = drive.turn();
            loads.force(rows, load);
            // The lever itself stays in the scene: all less the lever.
            double ownX = lever.mass() * mechanism.gravityX;
            double ownY = lever.mass() * mechanism.gravityY;
            potential[k] = loads.potential(rows) + ownX * rows.x(drive.body()) + ownY * rows.y(drive.body());
            for (int c = 0; c < load.length; c++) {
                double rate = poses.velocity()[c] / turn;
                pose[c][k] = poses.pose()[c];
                poseSlope[c][k] = rate;
                potentialSlope[k] -= load[c] * rate;
                if (c < at || c > at + 2) {
                    inertia[k] += rate * rate / mechanism.inverseMass[c];
                }
            }
            potentialSlope[k] += ownX * poseSlope[at][k] + ownY * poseSlope[at + 1][k];
            return weigh(k, ownX, ownY);
        }

        private boolean weigh(int k, double ownX, double ownY) {
            Mechanism.DriveData drive = mechanism.drive;
            double arm = rows.fingerArm()
                    + drive.fingerX() * poseSlope[3 * drive.body()][k]
                    + drive.fingerY() * poseSlope[3 * drive.body() + 1][k];
            if (Math.abs(arm) < SHORTEST_ARM || !forces.solve(poses, Direction.PRESSING, 0)) {
                return false;
            }
            double free = forces.fingerForce();
            int pin = Arrays.asList(mechanism.pins).indexOf(pivot);
            double sign = pivot.b == Mechanism.GROUND ? 1 : -1;
            pivotX[k] = -(sign * forces.pinForceX(pin) + free * drive.fingerX() + ownX);
            pivotY[k] = -(sign * forces.pinForceY(pin) + free * drive.fingerY() + ownY);
            if (!forces.solve(poses, Direction.PRESSING, 1)) {
                return false;
            }
            pressing[k] = (forces.fingerForce() - free) * Math.abs(arm);
            if (!forces.solve(poses, Direction.RETURNING, 1)) {
                return false;
            }
            returning[k] = (free - forces.fingerForce()) * Math.abs(arm);
            return true;
        }
    }
}

package jackwork.motion.model;

/**
 * A figure whose every part stands where the lever's angle says, folded into the lever: over that angle its inertia
 * as felt there, its potential, its weight on the lever's pivot, and the friction of its joints under that weight.
 * What acceleration and blows add to the joints' friction is left out. Immutable.
 */
public final class FoldedFigure {

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

    /**
     * @param followed at even steps of the lever's angle, both ends included
     * @param number of each of the assembly's bodies in the figure's mechanism
     * @param pivot of the lever there
     * @param rest angle of the lever at rest, rad from the position drawn
     * @param turn from there to the end, rad
     */
    public FoldedFigure(Followed followed, int[] number, Pin pivot, double rest, double turn) {
        this.number = number;
        double step = turn / (followed.inertia().length - 1);
        this.inertia = EvenTable.of(rest, step, followed.inertia());
        this.potential = new EvenTable(rest, step, followed.potential(), followed.potentialSlope());
        this.pressing = EvenTable.of(rest, step, followed.pressing());
        this.returning = EvenTable.of(rest, step, followed.returning());
        this.pivotX = EvenTable.of(rest, step, followed.pivotX());
        this.pivotY = EvenTable.of(rest, step, followed.pivotY());
        this.pose = new EvenTable[followed.pose().length];
        for (int c = 0; c < pose.length; c++) {
            pose[c] = new EvenTable(rest, step, followed.pose()[c], followed.poseSlope()[c]);
        }
        boolean runs = pivot.heldByGround();
        this.pivotFromCentreX = runs ? pivot.a.ownX() : pivot.b.ownX();
        this.pivotFromCentreY = runs ? pivot.a.ownY() : pivot.b.ownY();
        this.turnsForward = turn > 0;
    }

    /**
     * A figure at even steps of the lever's angle, [step]; poses [coordinate][step].
     *
     * @param inertia as felt at the lever, g·mm²
     * @param potential µN·mm
     * @param potentialSlope µN·mm/rad
     * @param pressing moment of friction on the way there, µN·mm
     * @param returning the same on the way back
     * @param pivotX the figure's force on the lever's pivot, µN
     * @param poseSlope mm/rad, or a pure number for angles
     */
    public record Followed(
            double[] inertia,
            double[] potential,
            double[] potentialSlope,
            double[] pressing,
            double[] returning,
            double[] pivotX,
            double[] pivotY,
            double[][] pose,
            double[][] poseSlope) {

        /** All zero. */
        public static Followed empty(int coordinates, int steps) {
            return new Followed(
                    new double[steps],
                    new double[steps],
                    new double[steps],
                    new double[steps],
                    new double[steps],
                    new double[steps],
                    new double[steps],
                    new double[coordinates][steps],
                    new double[coordinates][steps]);
        }
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
    public void pose(int body, double angle, double[] into, int at) {
        for (int c = 0; c < 3; c++) {
            into[at + c] = pose[3 * number[body] + c].at(angle);
        }
    }
}

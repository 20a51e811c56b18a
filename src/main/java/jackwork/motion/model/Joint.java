package jackwork.motion.model;

/**
 * What holds two or more bodies together, as scalar rows of the pose. A row's gap is 0 when the joint
 * is closed (an equality) or at least 0 (a row that only pushes or only pulls). Each row's gradient,
 * written as blocks of three entries a body, carries its force to the bodies as well. Axes are
 * directions along which friction acts, its size bound by the force of the joint's own rows.
 *
 * <p>Immutable, and shared by all threads: everything that belongs to the moment is in {@link Rows}.
 */
public abstract class Joint {

    private final String name;

    public Joint(String name) {
        this.name = name;
    }

    public final String name() {
        return name;
    }

    /** Number of scalar rows. */
    public abstract int rows();

    /** Number of axes along which friction (or a force that follows a row's) acts. */
    public int axes() {
        return 0;
    }

    /** Greatest number of bodies in any one row or axis. */
    public int blocks() {
        return 2;
    }

    /** Whether a row only pushes: its gap may open, its force is never negative. */
    public boolean pushesOnly(int row) {
        return false;
    }

    /** Share of the approach speed that comes back after a blow on a row that only pushes. */
    public double restitution() {
        return 0;
    }

    /** How far its parts may go at once before it could overlook them passing through each other, mm. */
    public double longestMove() {
        return Double.POSITIVE_INFINITY;
    }

    /**
     * Longest time step in which it cannot overlook that its parts pass through each other, s.
     *
     * @param rows at the pose now
     * @param row number of this joint's first row
     */
    public double safeStep(Rows rows, int row, double[] velocity) {
        return Double.POSITIVE_INFINITY;
    }

    /** What a row is called when it takes hold, for people. */
    String what(int row) {
        return name;
    }

    /**
     * Fills gaps, gradients and axes at the pose that {@code rows} holds.
     *
     * @param row number of this joint's first row
     * @param axis number of its first axis
     */
    public abstract void evaluate(Rows rows, int row, int axis);
}

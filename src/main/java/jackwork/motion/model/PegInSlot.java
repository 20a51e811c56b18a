package jackwork.motion.model;

/**
 * Holds a peg of body A in a slot of body B, straight or bent: one row, and two more that only push where the slot has
 * ends. Coulomb friction along the slot.
 */
abstract class PegInSlot extends Joint {

    /** The peg. */
    final Anchor a;
    /** What the slot is drawn from. */
    final Anchor b;

    private final double friction;

    PegInSlot(String name, Anchor a, Anchor b, double friction) {
        super(name);
        this.a = a;
        this.b = b;
        this.friction = friction;
    }

    /** Whether the slot's ends stop the peg. */
    abstract boolean ends();

    @Override
    public int rows() {
        return ends() ? 3 : 1;
    }

    @Override
    public int axes() {
        return friction > 0 ? 1 : 0;
    }

    @Override
    public boolean pushesOnly(int row) {
        return row > 0;
    }

    @Override
    String what(int row) {
        return row == 0 ? name() : "the end of slot " + name();
    }

    /** A row with its gap, that pushes A in a direction, and B against it, at the peg. */
    final void hold(Rows rows, int row, double gap, double nx, double ny, double pegX, double pegY) {
        rows.row(row, gap);
        rows.between(row, a.body(), b.body(), nx, ny, pegX, pegY);
    }

    /** Friction along the slot, bound by the force across it. */
    final void rub(Rows rows, int row, int axis, double alongX, double alongY, double pegX, double pegY) {
        if (friction > 0) {
            rows.axis(axis, friction, row, -1);
            rows.between(rows.count + axis, a.body(), b.body(), alongX, alongY, pegX, pegY);
        }
    }
}

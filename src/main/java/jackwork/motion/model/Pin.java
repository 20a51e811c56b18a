package jackwork.motion.model;

/**
 * Holds point a of body A on point b of body B:
 * {@code x_A + R(θ_A) a − x_B − R(θ_B) b = 0}, two rows. Its friction is a moment of at most
 * µ r |R|, the friction circle (e.g. Beer and Johnston, Vector Mechanics for Engineers: Statics, ch. 8), and of a drag
 * that it has whatever it bears: layers that rub on each other beside it, paint or glue in its hole.
 */
public final class Pin extends Joint {

    final Anchor a;
    final Anchor b;
    /** Of the rod, mm. */
    final double radius;
    /** Coefficient between rod and hole. */
    final double friction;
    /** Moment that it takes to turn it while it bears nothing, µN·mm; told only of one that rubs. */
    final double drag;

    Pin(String name, Anchor a, Anchor b, double radius, double friction, double drag) {
        super(name);
        this.a = a;
        this.b = b;
        this.radius = radius;
        this.friction = friction;
        this.drag = drag;
    }

    /** Number of the body that it holds on the other. */
    public int bodyA() {
        return a.body();
    }

    /** Number of the other, {@link Mechanism#GROUND} for the ground. */
    public int bodyB() {
        return b.body();
    }

    /** Whether the ground is one of its two bodies. */
    public boolean grounded() {
        return a.body() == Mechanism.GROUND || heldByGround();
    }

    /** Whether body B is the ground. */
    public boolean heldByGround() {
        return b.body() == Mechanism.GROUND;
    }

    @Override
    public int rows() {
        return 2;
    }

    @Override
    public int axes() {
        return radius * friction > 0 ? 1 : 0;
    }

    @Override
    public void evaluate(Rows rows, int row, int axis) {
        double armAx = a.armX(rows);
        double armAy = a.armY(rows);
        double armBx = b.armX(rows);
        double armBy = b.armY(rows);
        rows.row(row, rows.x(a.body()) + armAx - rows.x(b.body()) - armBx);
        rows.block(row, a.body(), 1, 0, -armAy);
        rows.block(row, b.body(), -1, 0, armBy);
        rows.row(row + 1, rows.y(a.body()) + armAy - rows.y(b.body()) - armBy);
        rows.block(row + 1, a.body(), 0, 1, armAx);
        rows.block(row + 1, b.body(), 0, -1, -armBx);
        if (axes() > 0) {
            rows.axis(axis, radius * friction, drag, row, row + 1);
            rows.block(rows.count + axis, a.body(), 0, 0, 1);
            rows.block(rows.count + axis, b.body(), 0, 0, -1);
        }
    }
}

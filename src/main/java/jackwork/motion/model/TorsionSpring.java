package jackwork.motion.model;

/** A spring that turns two bodies against each other, {@code M = −k (θ_A − θ_B − θ₀)}; k in µN·mm/rad. */
final class TorsionSpring extends Spring {

    private final int a;
    private final int b;
    private final double stiffness;
    private final double free;

    /** @param free angle of A against B at which it bears nothing, rad, 0 as drawn */
    TorsionSpring(String name, int a, int b, double stiffness, double free) {
        super(name);
        this.a = a;
        this.b = b;
        this.stiffness = stiffness;
        this.free = free;
    }

    @Override
    void addForce(Rows rows, double[] force) {
        double moment = -stiffness * (rows.angle(a) - rows.angle(b) - free);
        if (a >= 0) {
            force[3 * a + 2] += moment;
        }
        if (b >= 0) {
            force[3 * b + 2] -= moment;
        }
    }

    @Override
    double energy(Rows rows) {
        double turned = rows.angle(a) - rows.angle(b) - free;
        return 0.5 * stiffness * turned * turned;
    }
}

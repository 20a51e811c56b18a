package jackwork.motion.model;

/** Weights, constant loads and springs at a pose: their forces on every coordinate, and their potential. */
public final class Loads {

    private final Mechanism mechanism;

    public Loads(Mechanism mechanism) {
        this.mechanism = mechanism;
    }

    /** Forces, µN and µN·mm, at the pose that {@code rows} holds, into {@code force}. */
    public void force(Rows rows, double[] force) {
        for (int i = 0; i < mechanism.bodies.length; i++) {
            double mass = mechanism.bodies[i].mass();
            force[3 * i] = mass * mechanism.gravityX;
            force[3 * i + 1] = mass * mechanism.gravityY;
            force[3 * i + 2] = 0;
        }
        for (Mechanism.LoadData load : mechanism.loads) {
            int i = load.body();
            double px = rows.armX(i, load.x(), load.y());
            double py = rows.armY(i, load.x(), load.y());
            force[3 * i] += load.forceX();
            force[3 * i + 1] += load.forceY();
            force[3 * i + 2] += px * load.forceY() - py * load.forceX() + load.moment();
        }
        for (Spring spring : mechanism.springs) {
            spring.addForce(rows, force);
        }
        if (mechanism.folded != null) {
            mechanism.folded.addForce(rows, mechanism.drive.body(), force);
        }
    }

    /** Potential energy, µN·mm, from wherever the coordinates are 0. */
    public double potential(Rows rows) {
        double sum = 0;
        for (int i = 0; i < mechanism.bodies.length; i++) {
            double mass = mechanism.bodies[i].mass();
            sum -= mass * (mechanism.gravityX * rows.x(i) + mechanism.gravityY * rows.y(i));
        }
        for (Mechanism.LoadData load : mechanism.loads) {
            int i = load.body();
            double px = rows.x(i) + rows.armX(i, load.x(), load.y());
            double py = rows.y(i) + rows.armY(i, load.x(), load.y());
            sum -= load.forceX() * px + load.forceY() * py + load.moment() * rows.angle(i);
        }
        for (Spring spring : mechanism.springs) {
            sum += spring.energy(rows);
        }
        if (mechanism.folded != null) {
            sum += mechanism.folded.potential(rows.angle(mechanism.drive.body()));
        }
        return sum;
    }
}

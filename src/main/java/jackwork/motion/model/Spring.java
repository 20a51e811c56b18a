package jackwork.motion.model;

/** A force that follows from the pose alone. */
abstract class Spring {

    private final String name;

    Spring(String name) {
        this.name = name;
    }

    final String name() {
        return name;
    }

    /** Adds its forces on the bodies, µN and µN·mm. */
    abstract void addForce(Rows rows, double[] force);

    /** Stored energy, µN·mm. */
    abstract double energy(Rows rows);
}

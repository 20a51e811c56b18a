package jackwork.motion.time;

/**
 * What acts on the lever in time.
 *
 * @param kind nothing, a finger that only pushes, or a drive that also holds back
 * @param force most that a finger pushes, µN
 * @param speed of the press point along the finger's direction (mm/s) for a finger; stroke per second for a drive
 */
public record Finger(Kind kind, double force, double speed) {

    /** How the lever is moved. */
    enum Kind {
        OFF,
        PUSHES,
        DRIVES
    }

    public static final Finger OFF = new Finger(Kind.OFF, 0, 0);

    /** A finger that pushes with limited force and speed, and never holds back. */
    public static Finger push(double force, double speed) {
        return new Finger(Kind.PUSHES, force, speed);
    }

    /** Moves the stroke at a given rate, 1/s, whichever force that takes; negative for the way back. */
    static Finger drive(double rate) {
        return new Finger(Kind.DRIVES, 0, rate);
    }
}

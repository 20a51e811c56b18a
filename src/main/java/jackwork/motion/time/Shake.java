package jackwork.motion.time;

/**
 * A box pushed to and fro along the mechanism's plane.
 *
 * @param acceleration greatest, mm/s²
 * @param frequency Hz
 * @param begun share of a period that is over at time 0
 */
public record Shake(double acceleration, double frequency, double begun) {

    public static final Shake NONE = new Shake(0, 0, 0);

    /** Acceleration of the box at a time, mm/s². */
    double at(double time) {
        return acceleration == 0 ? 0 : acceleration * Math.sin(2 * Math.PI * (frequency * time + begun));
    }
}

package jackwork.motion.model;

/** How far a change of all coordinates goes: in mm, an angle counted as the way it makes 100 mm off. */
public final class Moves {

    private Moves() {}

    /** Largest change of any coordinate, [3 × bodies]. */
    public static double size(double[] move) {
        double most = 0;
        for (int c = 0; c < move.length; c++) {
            most = Math.max(most, size(move, c));
        }
        return most;
    }

    /** Change of coordinate c. */
    public static double size(double[] move, int c) {
        return Math.abs(move[c]) * scale(c);
    }

    /** Largest difference of any coordinate of two poses. */
    public static double between(double[] from, double[] to) {
        double most = 0;
        for (int c = 0; c < from.length; c++) {
            most = Math.max(most, Math.abs(to[c] - from[c]) * scale(c));
        }
        return most;
    }

    private static double scale(int c) {
        return c % 3 == 2 ? ModelLimits.ARM : 1;
    }
}

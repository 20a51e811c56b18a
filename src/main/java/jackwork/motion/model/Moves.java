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

    /**
     * Where a body is on the way from one place to another, turning about the pole of the whole displacement; straight
     * where it does not turn, or by whole turns.
     *
     * @param at its first coordinate
     * @param share of the way, 0 to 1
     */
    static void along(double[] from, double[] to, int at, double share, double[] into) {
        double angle = to[at + 2] - from[at + 2];
        double dx = to[at] - from[at];
        double dy = to[at + 1] - from[at + 1];
        into[at] = from[at] + share * dx;
        into[at + 1] = from[at + 1] + share * dy;
        into[at + 2] = from[at + 2] + share * angle;
        if (Math.abs(Math.sin(angle / 2)) > ModelLimits.TURNS) {
            double off = 0.5 / Math.tan(angle / 2);
            double poleX = from[at] + dx / 2 - off * dy;
            double poleY = from[at + 1] + dy / 2 + off * dx;
            double c = Math.cos(share * angle);
            double s = Math.sin(share * angle);
            double armX = from[at] - poleX;
            double armY = from[at + 1] - poleY;
            into[at] = poleX + c * armX - s * armY;
            into[at + 1] = poleY + s * armX + c * armY;
        }
    }

    private static double scale(int c) {
        return c % 3 == 2 ? ModelLimits.ARM : 1;
    }
}

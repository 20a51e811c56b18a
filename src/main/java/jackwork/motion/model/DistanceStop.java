package jackwork.motion.model;

/** Keeps two points, of body A and body B, at least and at most so far apart, mm. */
public final class DistanceStop extends Stop {

    private final Anchor a;
    private final Anchor b;
    private final double least;
    private final double most;

    /** @param most infinite for a stop that only keeps them apart */
    DistanceStop(String name, Anchor a, Anchor b, double least, double most) {
        super(name);
        this.a = a;
        this.b = b;
        this.least = least;
        this.most = most;
    }

    @Override
    public void evaluate(Rows rows, int row, int axis) {
        double px = a.x(rows);
        double py = a.y(rows);
        double qx = b.x(rows);
        double qy = b.y(rows);
        double distance = Math.hypot(px - qx, py - qy);
        double nx = distance > 0 ? (px - qx) / distance : 1;
        double ny = distance > 0 ? (py - qy) / distance : 0;
        rows.row(row, least > 0 ? distance - least : Double.POSITIVE_INFINITY);
        rows.push(row, a.body(), nx, ny, px, py);
        rows.push(row, b.body(), -nx, -ny, qx, qy);
        rows.row(row + 1, most - distance);
        rows.push(row + 1, a.body(), -nx, -ny, px, py);
        rows.push(row + 1, b.body(), nx, ny, qx, qy);
    }
}

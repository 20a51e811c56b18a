package jackwork.motion.model;

import jackwork.geometry.Point;

/** Keeps two points, of body A and body B, at least and at most so far apart, mm. */
public final class DistanceStop extends Joint {

    private final int a;
    private final int b;
    private final double ax;
    private final double ay;
    private final double bx;
    private final double by;
    private final double least;
    private final double most;

    /** @param most infinite for a stop that only keeps them apart */
    DistanceStop(String name, int a, int b, Point onA, Point onB, double least, double most) {
        super(name);
        this.a = a;
        this.b = b;
        this.ax = onA.x();
        this.ay = onA.y();
        this.bx = onB.x();
        this.by = onB.y();
        this.least = least;
        this.most = most;
    }

    @Override
    public int rows() {
        return 2;
    }

    @Override
    public boolean pushesOnly(int row) {
        return true;
    }

    @Override
    String what(int row) {
        return "stop " + name();
    }

    @Override
    public void evaluate(Rows rows, int row, int axis) {
        double px = rows.x(a) + rows.armX(a, ax, ay);
        double py = rows.y(a) + rows.armY(a, ax, ay);
        double qx = rows.x(b) + rows.armX(b, bx, by);
        double qy = rows.y(b) + rows.armY(b, bx, by);
        double distance = Math.hypot(px - qx, py - qy);
        double nx = distance > 0 ? (px - qx) / distance : 1;
        double ny = distance > 0 ? (py - qy) / distance : 0;
        rows.row(row, least > 0 ? distance - least : Double.POSITIVE_INFINITY);
        rows.push(row, a, nx, ny, px, py);
        rows.push(row, b, -nx, -ny, qx, qy);
        rows.row(row + 1, most - distance);
        rows.push(row + 1, a, -nx, -ny, px, py);
        rows.push(row + 1, b, nx, ny, qx, qy);
    }
}

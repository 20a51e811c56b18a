package jackwork.motion.model;

import static jackwork.motion.model.Mechanism.GROUND;

import jackwork.geometry.Point;

/** A four-bar linkage for tests: a = crank, b = coupler, c = rocker, d = ground, mm; O2 at the origin, O4 at (d, 0). */
public final class FourBar {

    public final double a;
    public final double b;
    public final double c;
    public final double d;

    public FourBar(double a, double b, double c, double d) {
        this.a = a;
        this.b = b;
        this.c = c;
        this.d = d;
    }

    public Point crankEnd(double theta2) {
        return new Point(a * Math.cos(theta2), a * Math.sin(theta2));
    }

    /** Where coupler and rocker meet, by two circles; side +1 is the open branch for O2 left of O4. */
    public Point rockerEnd(double theta2, int side) {
        Point p = crankEnd(theta2);
        Point o4 = new Point(d, 0);
        double distance = p.distance(o4);
        double along = (b * b - c * c + distance * distance) / (2 * distance);
        double across = side * Math.sqrt(b * b - along * along);
        Point unit = o4.minus(p).times(1 / distance);
        return p.plus(unit.times(along)).plus(new Point(-unit.y(), unit.x()).times(across));
    }

    /** Bodies 0 crank, 1 coupler, 2 rocker, massless but for numerical unit masses; no gravity unless set. */
    public MechanismBuilder bodies(double theta2, int side) {
        Point p = crankEnd(theta2);
        Point q = rockerEnd(theta2, side);
        Point o4 = new Point(d, 0);
        MechanismBuilder builder = new MechanismBuilder().gravity(new Point(0, 0));
        builder.body("crank", 1, p.times(0.5), 1);
        builder.body("coupler", 1, p.plus(q).times(0.5), 1);
        builder.body("rocker", 1, q.plus(o4).times(0.5), 1);
        return builder.pin("o2", 0, GROUND, Point.ORIGIN, 0, 0)
                .pin("a", 1, 0, p, 0, 0)
                .pin("b", 2, 1, q, 0, 0)
                .pin("o4", 2, GROUND, o4, 0, 0);
    }

    /** Driven by its crank, which turns by {@code turn} rad over the stroke. */
    public MechanismBuilder drivenByCrank(double theta2, int side, double turn) {
        Point p = crankEnd(theta2);
        return bodies(theta2, side).lever(0, turn, p, new Point(-Math.sin(theta2), Math.cos(theta2)));
    }

    /** Driven by its rocker. */
    public MechanismBuilder drivenByRocker(double theta2, int side, double turn) {
        return bodies(theta2, side).lever(2, turn, rockerEnd(theta2, side), new Point(0, 1));
    }

    public static double angle(Point from, Point to) {
        return Math.atan2(to.y() - from.y(), to.x() - from.x());
    }
}

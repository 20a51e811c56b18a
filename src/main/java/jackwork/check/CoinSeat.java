package jackwork.check;

import jackwork.geometry.Point;
import jackwork.motion.model.Mechanism;
import jackwork.parts.Assembly;
import jackwork.parts.Body;
import jackwork.parts.CoinWorks;

/**
 * A coin lying in the bucket, and the moments about the bucket's pivot. The coin is a disc in the
 * mechanism's plane that touches the floor, and the lip's corner or the waiting kicker: where the floor leads it.
 */
public final class CoinSeat {

    /** Steps over the tip and the stroke: both are smooth, so the ends and this many between show the least. */
    static final int STEPS = 60;

    /** A kicker farther from the coin than this share of its radius does not hold it. */
    private static final double LEANS = 1e-9;

    private CoinSeat() {}

    /** Unit vector along the floor, toward the lip. */
    static Point along(CoinWorks works) {
        Point way = works.toe().minus(works.heel());
        return way.times(1 / way.length());
    }

    /** Unit vector square to the floor, upward. */
    static Point up(CoinWorks works) {
        Point along = along(works);
        Point left = new Point(-along.y(), along.x());
        return left.y() > 0 ? left : left.times(-1);
    }

    /** Centre of the coin at rest in the bucket, mm, when that has tipped by a share of its tip. */
    public static Point centre(CoinWorks works, double radius, double share) {
        Point atLip = tipped(works, atLip(works, radius), share);
        Point down = along(works).turned(works.tip() * share);
        if (down.y() <= 0) {
            return atLip;
        }
        // The floor falls away from the lip: the coin rolls to the rise, the kicker, or the floor's end short of them.
        Point toe = tipped(works, works.toe(), share);
        Point base = toe.plus(up(works).turned(works.tip() * share).times(radius));
        double way =
                Math.min(way(base, down, radius, works.kicker()), works.toe().distance(works.heel()));
        Point rise = works.rise();
        if (rise != null) {
            way = Math.min(way, way(base, down, radius, tipped(works, rise, share)));
        }
        double least = Math.max(base.minus(atLip).dot(down), way);
        return base.minus(down.times(least));
    }

    /** How far a disc rolls from above the toe, away from the lip, until it meets a point. */
    private static double way(Point base, Point down, double radius, Point met) {
        Point from = base.minus(met);
        double half = from.dot(down);
        double inside = half * half - from.dot(from) + radius * radius;
        return inside < 0 ? Double.POSITIVE_INFINITY : half - Math.sqrt(inside);
    }

    /** Centre of the coin where it touches floor and lip, mm, bucket not tipped. */
    static Point atLip(CoinWorks works, double radius) {
        Point toLip = works.lip().minus(works.toe());
        double height = toLip.dot(up(works));
        // The disc touches the floor (centre r above it) and the corner (distance r).
        double back = height >= radius ? radius : Math.sqrt(radius * radius - (radius - height) * (radius - height));
        double place = toLip.dot(along(works)) - back;
        return works.toe().plus(along(works).times(place)).plus(up(works).times(radius));
    }

    /** A point of the bucket when it has tipped by a share of its tip. */
    static Point tipped(CoinWorks works, Point point, double share) {
        return point.turnedAbout(works.pivot(), works.tip() * share);
    }

    /**
     * The coin's moment toward tipping, N·mm, at a share of the tip. Leaning on the kicker, without friction, it gives
     * that a part of its weight: floor N and kicker F hold it, {@code N n + F k + m g = 0}.
     */
    static double coinMoment(CoinWorks works, double mass, double radius, double share) {
        Point centre = centre(works, radius, share);
        double weight = weight(mass);
        Point arm = centre.minus(works.pivot());
        Point fromKicker = centre.minus(works.kicker());
        if (fromKicker.length() > radius * (1 + LEANS)) {
            return -works.sense() * arm.x() * weight;
        }
        Point floor = up(works).turned(works.tip() * share);
        Point kicker = fromKicker.times(1 / fromKicker.length());
        double onFloor = weight * kicker.x() / (kicker.x() * floor.y() - kicker.y() * floor.x());
        return -works.sense() * onFloor * arm.cross(floor);
    }

    /** The empty bucket's own moment against tipping, N·mm, at a share of the tip. */
    public static double closingMoment(Assembly assembly, double share) {
        CoinWorks works = assembly.coinWorks();
        Body bucket = assembly.body(works.bucket());
        Point centre = tipped(works, bucket.centre(), share);
        return works.sense() * (centre.x() - works.pivot().x()) * weight(bucket.mass());
    }

    /** Most that the bearing's friction can resist, N·mm: µ r times what it carries. */
    static double frictionMoment(Assembly assembly, double coinMass) {
        CoinWorks works = assembly.coinWorks();
        Body bucket = assembly.body(works.bucket());
        return works.bearingFriction().coefficient().value() * works.rodRadius() * weight(bucket.mass() + coinMass)
                + assembly.bucketBearing().pin().drag();
    }

    /** N for a mass in g. */
    public static double weight(double mass) {
        return mass * Mechanism.GRAVITY / 1e6;
    }
}

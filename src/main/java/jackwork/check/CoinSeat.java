package jackwork.check;

import jackwork.geometry.Point;
import jackwork.motion.Mechanism;
import jackwork.parts.Assembly;
import jackwork.parts.Body;
import jackwork.parts.CoinWorks;
import jackwork.stock.Coin;

/**
 * A coin lying in the bucket, and the moments about the bucket's pivot. The coin is a disc in the
 * mechanism's plane that touches the floor and the lip's corner.
 */
final class CoinSeat {

    /** Steps over the tip and the stroke: both are smooth, so the ends and this many between show the least. */
    static final int STEPS = 60;

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

    /** Centre of the coin at rest in the bucket, mm, bucket not tipped. */
    static Point centre(CoinWorks works, double radius) {
        Point toLip = works.lip().minus(works.toe());
        double height = toLip.dot(up(works));
        // The disc touches the floor (centre r above it) and the corner (distance r).
        double back = height >= radius ? radius : Math.sqrt(radius * radius - (radius - height) * (radius - height));
        double place = toLip.dot(along(works)) - back;
        return works.toe().plus(along(works).times(place)).plus(up(works).times(radius));
    }

    /** Centre of the coin when it stands plumb over the lip's corner, bucket tipped: past it, its weight takes it out. */
    static Point overLip(CoinWorks works, double radius) {
        return tipped(works, works.lip(), 1).plus(new Point(0, radius));
    }

    /** A point of the bucket when it has tipped by a share of its tip. */
    static Point tipped(CoinWorks works, Point point, double share) {
        return point.turnedAbout(works.pivot(), works.tip() * share);
    }

    /** The coin's moment toward tipping, N·mm, at a share of the tip. */
    static double coinMoment(CoinWorks works, Coin coin, double share) {
        Point centre = tipped(works, centre(works, coin.radius()), share);
        return works.sense() * (works.pivot().x() - centre.x()) * weight(coin.mass());
    }

    /** The empty bucket's own moment against tipping, N·mm, at a share of the tip. */
    static double closingMoment(Assembly assembly, double share) {
        CoinWorks works = assembly.coinWorks();
        Body bucket = assembly.body(works.bucket());
        Point centre = tipped(works, bucket.centre(), share);
        return works.sense() * (centre.x() - works.pivot().x()) * weight(bucket.mass());
    }

    /** Most that the bearing's friction can resist, N·mm: µ r times what it carries. */
    static double frictionMoment(Assembly assembly, double coinMass) {
        CoinWorks works = assembly.coinWorks();
        Body bucket = assembly.body(works.bucket());
        return works.bearingFriction().coefficient().value() * works.rodRadius() * weight(bucket.mass() + coinMass);
    }

    /** N for a mass in g. */
    static double weight(double mass) {
        return mass * Mechanism.GRAVITY / 1e6;
    }
}

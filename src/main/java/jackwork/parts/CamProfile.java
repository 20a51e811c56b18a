package jackwork.parts;

import jackwork.geometry.Curve;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A disc cam with a round follower. As a curve it is the follower's path about the cam (the pitch curve),
 * in the cam's frame as drawn, from its centre; the profile lies the follower's radius inside it.
 *
 * <p>With F(φ) the follower's centre in space when the cam has turned by φ, the pitch curve is
 * {@code P(t) = R(t) F(−t)}: counter-clockwise, by the angle t.
 */
public final class CamProfile implements Curve {

    private final CamMotion motion;
    private final Point start;
    private final Point direction;
    private final @Nullable Point pivot;
    private final double radius;

    private CamProfile(CamMotion motion, Point start, Point direction, @Nullable Point pivot, double radius) {
        this.motion = motion;
        this.start = start;
        this.direction = direction;
        this.pivot = pivot;
        this.radius = radius;
    }

    /**
     * A follower that goes straight.
     *
     * @param start its centre as drawn, from the cam's centre, mm
     * @param direction in which a positive move takes it
     * @param radius of the follower, mm; 0 for a knife edge
     */
    public static CamProfile straight(CamMotion motion, Point start, Point direction, double radius) {
        return new CamProfile(motion, start, direction.times(1 / direction.length()), null, radius);
    }

    /** A follower that swings about a pivot (from the cam's centre); a positive move is counter-clockwise, rad. */
    public static CamProfile swinging(CamMotion motion, Point start, Point pivot, double radius) {
        return new CamProfile(motion, start, Point.ORIGIN, pivot, radius);
    }

    public CamMotion motion() {
        return motion;
    }

    /** What the follower swings about, from the cam's centre; null when it goes straight. */
    public @Nullable Point pivot() {
        return pivot;
    }

    /** Unit vector in which a positive move takes a follower that goes straight. */
    public Point direction() {
        return direction;
    }

    @Override
    public double period() {
        return 2 * Math.PI;
    }

    @Override
    public void evaluate(double at, double[] into) {
        double[] s = new double[4];
        motion.at(-at, s);
        double fx;
        double fy;
        double gx;
        double gy;
        double hx;
        double hy;
        if (pivot == null) {
            fx = start.x() + s[0] * direction.x();
            fy = start.y() + s[0] * direction.y();
            gx = s[1] * direction.x();
            gy = s[1] * direction.y();
            hx = s[2] * direction.x();
            hy = s[2] * direction.y();
        } else {
            Point arm = start.minus(pivot).turned(s[0]);
            fx = pivot.x() + arm.x();
            fy = pivot.y() + arm.y();
            gx = -s[1] * arm.y();
            gy = s[1] * arm.x();
            hx = -s[2] * arm.y() - s[1] * s[1] * arm.x();
            hy = s[2] * arm.x() - s[1] * s[1] * arm.y();
        }
        // P' = R (J F − F'), P'' = R (−F − 2 J F' + F''), J a quarter turn; F by the cam's angle −t.
        turn(at, fx, fy, into, 0);
        turn(at, -fy - gx, fx - gy, into, 2);
        turn(at, -fx + 2 * gy + hx, -fy - 2 * gx + hy, into, 4);
    }

    private static void turn(double angle, double x, double y, double[] into, int at) {
        double c = Math.cos(angle);
        double n = Math.sin(angle);
        into[at] = c * x - n * y;
        into[at + 1] = n * x + c * y;
    }

    /** Angle between the push on the follower and the way it goes, at a cam angle, rad; 0 in a dwell. */
    public double pressureAngle(double camAngle) {
        double[] p = new double[6];
        evaluate(-camAngle, p);
        double[] s = new double[4];
        motion.at(camAngle, s);
        if (s[1] == 0) {
            return 0;
        }
        double speed = Math.hypot(p[2], p[3]);
        Point normal = new Point(p[3] / speed, -p[2] / speed).turned(camAngle);
        Point way = direction;
        if (pivot != null) {
            Point arm = start.minus(pivot).turned(s[0]);
            way = new Point(-arm.y(), arm.x()).times(1 / arm.length());
        }
        return Math.acos(Math.min(1, Math.abs(normal.dot(way))));
    }

    /** Radius of curvature of the pitch curve at a cam angle, mm; negative where it is hollow. */
    public double curvature(double camAngle) {
        double[] p = new double[6];
        evaluate(-camAngle, p);
        double speed = Math.hypot(p[2], p[3]);
        return speed * speed * speed / (p[2] * p[5] - p[3] * p[4]);
    }

    /** Whether the follower is too thick for the curve somewhere: the profile would cut away its own law. */
    public boolean isUndercut() {
        return sharpest() < radius;
    }

    /** Least radius of curvature of the pitch curve where it stands out, mm. */
    public double sharpest() {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 720; i++) {
            double curvature = curvature(Math.toRadians(i / 2.0));
            least = curvature > 0 ? Math.min(least, curvature) : least;
        }
        return least;
    }

    /** Greatest pressure angle of a turn, rad. */
    public double steepest() {
        double most = 0;
        for (int i = 0; i < 720; i++) {
            most = Math.max(most, pressureAngle(Math.toRadians(i / 2.0)));
        }
        return most;
    }

    /** The profile to cut, about a centre. */
    public Outline outline(Point centre, int corners) {
        List<Point> points = new ArrayList<>();
        double[] p = new double[6];
        for (int i = 0; i < corners; i++) {
            evaluate(2 * Math.PI * i / corners, p);
            double speed = Math.hypot(p[2], p[3]);
            points.add(centre.plus(new Point(p[0] - radius * p[3] / speed, p[1] + radius * p[2] / speed)));
        }
        return Outline.of(points);
    }
}

package jackwork.check;

import jackwork.geometry.AboutPivot;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.geometry.Pose;
import jackwork.geometry.SectionProperties;
import jackwork.geometry.TurnedMeeting;
import jackwork.parts.Assembly;
import jackwork.parts.CoinWorks;
import jackwork.parts.Lever;
import jackwork.parts.Part;
import jackwork.parts.Stopping;
import jackwork.parts.TurningEnd;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The press that is refused, as forces: the lever turned until the wood of its tooth meets the wood of the strut, one newton of
 * the finger straight down, lever and bucket each a body at rest (plane statics, any text).
 * <pre>
 *   lever:   (X − P) × F + (C − P) × N (n + φ t) = 0
 *   bucket: −(C − B) × N (n + φ t) + (S − B) × R s = 0,   R ≥ 0
 * </pre>
 * with X the finger, P and B the pivots, C where tooth and strut bear on each other, n out of the strut there and t along it, S
 * where the bucket's stop at rest meets it and s out of the stop. Friction may take any φ from −µ to µ that leaves the bucket shut;
 * loads are greatest at an end of that. Left out: weights, friction in the pivots and on the stop, what the figure takes of the
 * press, and that the layers of a body are pressed in different planes, by which it also tilts on its rod.
 */
final class RefusedPress {

    /** How far tooth and strut have crushed each other when they bear on all that overlaps, mm: common practice, no source. */
    static final double CRUSHED = 0.1;

    private static final Point DOWN = new Point(0, -1);

    /**
     * A layer in which tooth and strut bear on each other.
     *
     * @param width of what bears there, along the strut's face, mm
     */
    record Bite(Part tooth, Part strut, double width) {

        /** mm. */
        double thickness() {
            return Math.min(tooth.thickness().value(), strut.thickness().value());
        }
    }

    /**
     * Forces at one end of the cone for one newton of the finger, N.
     *
     * @param friction along the strut's face, a share of what presses square to it
     * @param normal what presses square to it
     * @param onTooth by the strut
     * @param onLever by the lever's pivot
     * @param onBucket by the bucket's pivot
     * @param onStrut by the tooth
     * @param byStop on the bucket, by what it rests on
     */
    record Loads(
            double friction,
            double normal,
            Point onTooth,
            Point onLever,
            Point onBucket,
            Point onStrut,
            Point byStop) {}

    private final Assembly assembly;
    private final List<Bite> bites;
    private final double turned;
    private final Point at;
    private final Point normal;

    private RefusedPress(Assembly assembly, List<Bite> bites, double turned, Point at, Point normal) {
        this.assembly = assembly;
        this.bites = bites;
        this.turned = turned;
        this.at = at;
        this.normal = normal;
    }

    /** Empty when no wood of the lever comes onto wood of the bucket as it is pressed. */
    static Optional<RefusedPress> of(Assembly assembly) {
        Lever lever = assembly.lever();
        CoinWorks works = assembly.coinWorks();
        Pose shut = Pose.about(works.pivot(), works.rest());
        List<Part> teeth = new ArrayList<>();
        List<Part> struts = new ArrayList<>();
        double least = Double.POSITIVE_INFINITY;
        TurnedMeeting first = null;
        for (Part strut : assembly.body(works.bucket()).parts()) {
            AboutPivot standing = new AboutPivot(strut.outline().moved(shut), lever.pivot());
            for (Part tooth : assembly.body(lever.body()).parts()) {
                if (tooth.layer() != strut.layer()) {
                    continue;
                }
                Optional<TurnedMeeting> meeting = TurnedMeeting.first(
                        new AboutPivot(tooth.outline(), lever.pivot()), standing, lever.rest(), lever.angle(1));
                if (meeting.isPresent()) {
                    teeth.add(tooth);
                    struts.add(strut);
                    double way = Math.abs(meeting.get().angle() - lever.rest());
                    if (way < least) {
                        least = way;
                        first = meeting.get();
                    }
                }
            }
        }
        return first == null ? Optional.empty() : bitten(assembly, first, teeth, struts);
    }

    /** Presses the tooth in by {@link #CRUSHED}: what then overlaps tells where they bear, and how widely. */
    private static Optional<RefusedPress> bitten(
            Assembly assembly, TurnedMeeting first, List<Part> teeth, List<Part> struts) {
        Lever lever = assembly.lever();
        CoinWorks works = assembly.coinWorks();
        double arm = Math.abs(first.at().minus(lever.pivot()).cross(first.out()));
        double in = first.angle() + Math.signum(lever.turn()) * CRUSHED / arm;
        Pose pressed = Pose.about(lever.pivot(), in);
        Pose shut = Pose.about(works.pivot(), works.rest());
        List<Bite> bites = new ArrayList<>();
        double area = 0;
        Point sum = Point.ORIGIN;
        for (int i = 0; i < teeth.size(); i++) {
            Part tooth = teeth.get(i);
            Part strut = struts.get(i);
            double width = 0;
            for (Outline shared :
                    tooth.outline().moved(pressed).shared(strut.outline().moved(shut))) {
                SectionProperties section = SectionProperties.of(shared);
                double thick =
                        Math.min(tooth.thickness().value(), strut.thickness().value());
                area += section.area() * thick;
                sum = sum.plus(section.centroid().times(section.area() * thick));
                width += section.area() / CRUSHED;
            }
            if (width > 0) {
                bites.add(new Bite(tooth, strut, width));
            }
        }
        return area > 0
                ? Optional.of(
                        new RefusedPress(assembly, List.copyOf(bites), first.angle(), sum.times(1 / area), first.out()))
                : Optional.empty();
    }

    Assembly assembly() {
        return assembly;
    }

    /** The layers that bear. */
    List<Bite> bites() {
        return bites;
    }

    /** How far the lever is turned from the position drawn when it is refused, rad. */
    double turned() {
        return turned;
    }

    /** Where tooth and strut bear on each other. */
    Point at() {
        return at;
    }

    /** Square to the strut's face, out of its wood. */
    Point normal() {
        return normal;
    }

    /** Where the finger then presses. */
    Point press() {
        return assembly.lever().pressDrawn().turnedAbout(assembly.lever().pivot(), turned);
    }

    /** Of the bucket at rest. */
    Optional<Stopping> rest() {
        return assembly.ends().stream()
                .filter(stopping -> stopping.end().kind() == TurningEnd.Kind.BUCKET_RESTS)
                .findFirst();
    }

    /** What the bucket rests on; null when nothing is there. */
    Stopping.@Nullable Obstacle stop() {
        return rest().map(Stopping::met).orElse(null);
    }

    /**
     * At both ends of what friction may be.
     *
     * @return none when the strut slips aside at any friction, or nothing stands where it would be pushed to: then it is not
     *     refused
     */
    List<Loads> loads(double friction) {
        Point way = at.minus(assembly.coinWorks().pivot());
        Point along = normal.turned(Math.PI / 2);
        // What the tooth gives turns the bucket by −(C − B) × (n + φ t), which opens it where that has the sign of its
        // tip.
        double sense = assembly.coinWorks().sense();
        double constant = -sense * way.cross(normal);
        double slope = -sense * way.cross(along);
        double from = -friction;
        double to = friction;
        if (constant + slope * from > 0 && constant + slope * to > 0) {
            return List.of();
        }
        if (constant + slope * from > 0) {
            from = -constant / slope;
        } else if (constant + slope * to > 0) {
            to = -constant / slope;
        }
        List<Loads> loads = new ArrayList<>();
        for (double one : new double[] {from, to}) {
            Loads found = at(one, along);
            if (found != null) {
                loads.add(found);
            }
        }
        return loads;
    }

    private @Nullable Loads at(double friction, Point along) {
        Point pivot = assembly.lever().pivot();
        Point direction = normal.plus(along.times(friction));
        double force = -press().minus(pivot).cross(DOWN) / at.minus(pivot).cross(direction);
        if (!(force > 0) || !Double.isFinite(force)) {
            // Friction alone holds the lever: any force would do, and statics cannot tell which.
            return null;
        }
        Point onTooth = direction.times(force);
        Point onLever = onTooth.plus(DOWN).times(-1);
        Point onStrut = onTooth.times(-1);
        Point bucket = assembly.coinWorks().pivot();
        double turning = at.minus(bucket).cross(onStrut);
        Point byStop = Point.ORIGIN;
        if (Math.abs(turning) > 1e-9 * force) {
            Stopping.Obstacle stop = stop();
            if (stop == null) {
                return null;
            }
            TurnedMeeting meeting = stop.meeting();
            double pushed = -turning / meeting.at().minus(bucket).cross(meeting.out());
            if (!(pushed >= 0) || !Double.isFinite(pushed)) {
                return null;
            }
            byStop = meeting.out().times(pushed);
        }
        Point onBucket = onStrut.plus(byStop).times(-1);
        return new Loads(friction, force, onTooth, onLever, onBucket, onStrut, byStop);
    }
}

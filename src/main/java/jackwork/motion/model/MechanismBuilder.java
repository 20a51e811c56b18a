package jackwork.motion.model;

import jackwork.geometry.Arc;
import jackwork.geometry.Curve;
import jackwork.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Puts a {@link Mechanism} together from points of the common frame, everything in the position drawn. */
public final class MechanismBuilder {

    private final List<Mechanism.BodyData> bodies = new ArrayList<>();
    private final List<Pin> pins = new ArrayList<>();
    private final List<Joint> others = new ArrayList<>();
    private final List<Spring> springs = new ArrayList<>();
    private final List<Mechanism.LoadData> loads = new ArrayList<>();
    private Mechanism.@Nullable DriveData drive;
    private @Nullable FoldedFigure folded;
    private double gravityX = 0;
    private double gravityY = -Mechanism.GRAVITY;
    private double stiction = 1;

    /**
     * What a string runs over.
     *
     * @param at its centre, common frame
     * @param radius 0 for an eyelet, mm
     * @param side +1 where the string passes counter-clockwise about it, −1 clockwise; any for an eyelet
     * @param wholeTurns round a post, beside what the drawing shows; 0 for an eyelet
     * @param friction string on guide
     */
    public record CordGuide(int body, Point at, double radius, int side, int wholeTurns, double friction) {

        /** Wound as drawn. */
        public CordGuide(int body, Point at, double radius, int side, double friction) {
            this(body, at, radius, side, 0, friction);
        }
    }

    /**
     * @param mass g
     * @param inertia about the centre, g·mm²
     * @return the body's number
     */
    public int body(String name, double mass, Point centre, double inertia) {
        bodies.add(new Mechanism.BodyData(name, mass, centre.x(), centre.y(), inertia));
        return bodies.size() - 1;
    }

    /** @param radius of the rod, mm */
    public MechanismBuilder pin(String name, int a, int b, Point at, double radius, double friction) {
        return pin(name, a, b, at, radius, friction, 0);
    }

    /**
     * @param radius of the rod, mm
     * @param drag moment that turns it while it bears nothing, µN·mm; none without a radius and a friction
     */
    public MechanismBuilder pin(String name, int a, int b, Point at, double radius, double friction, double drag) {
        return pin(name, a, at, b, at, radius, friction, drag);
    }

    /** The same, of two holes that came out apart: one is at {@code ofA} of body a as drawn, the other at {@code ofB} of b. */
    public MechanismBuilder pin(
            String name, int a, Point ofA, int b, Point ofB, double radius, double friction, double drag) {
        pins.add(new Pin(name, anchor(a, ofA), anchor(b, ofB), radius, friction, drag));
        return this;
    }

    /** A peg of body a at {@code peg} runs on the line from–to of body b. */
    public MechanismBuilder slide(String name, int a, int b, Point peg, Point from, Point to, double friction) {
        Anchor ofA = anchor(a, peg);
        Anchor start = anchor(b, from);
        double length = from.distance(to);
        Point direction = to.minus(from).times(1 / length);
        others.add(new Slide(name, ofA, start, direction, length, friction));
        return this;
    }

    /**
     * A peg of body a at {@code peg} runs on the arc of body b from {@code from} through {@code via} to {@code to}.
     *
     * @throws MechanismException when the three points stand in line
     */
    public MechanismBuilder arcSlide(
            String name, int a, int b, Point peg, Point from, Point via, Point to, double friction) {
        if (Math.abs(via.minus(from).cross(to.minus(from))) < 1e-9) {
            throw new MechanismException(
                    name, "slot " + name + ": its three points stand in line; leave out the middle one");
        }
        Point centre = Arc.centre(from, via, to);
        double start = Arc.angle(from.minus(centre));
        double span = Arc.span(centre, from, via, to);
        Anchor ofA = anchor(a, peg);
        Anchor ofB = anchor(b, centre);
        others.add(new ArcSlide(name, ofA, ofB, centre.distance(from), start + span / 2, Math.abs(span) / 2, friction));
        return this;
    }

    /**
     * Gears a and b mesh.
     *
     * @param teethB negative when a runs inside b
     * @param pressureAngle operating, rad
     */
    public MechanismBuilder mesh(
            String name,
            int a,
            Point centreA,
            int teethA,
            int b,
            Point centreB,
            int teethB,
            double pressureAngle,
            double friction) {
        double radiusA = centreA.distance(centreB) * teethA / Math.abs(teethA + teethB);
        double radiusB = radiusA * teethB / teethA;
        Anchor ofA = anchor(a, centreA);
        Anchor ofB = anchor(b, centreB);
        others.add(new Mesh(
                name, ofA, ofB, radiusA, radiusB, teethA, pressureAngle, friction, Arc.angle(centreB.minus(centreA))));
        return this;
    }

    /** Gear a rolls on rack b; {@code pitchPoint} is where its pitch circle touches the rack's pitch line. */
    public MechanismBuilder rack(
            String name,
            int a,
            Point centre,
            int teeth,
            int b,
            Point pitchPoint,
            double pressureAngle,
            double friction) {
        double radius = centre.distance(pitchPoint);
        Point toward = pitchPoint.minus(centre).times(1 / radius);
        Anchor ofA = anchor(a, centre);
        Anchor ofB = anchor(b, pitchPoint);
        others.add(new Rack(name, ofA, ofB, toward, radius, teeth, pressureAngle, friction));
        return this;
    }

    /**
     * A round follower of body a on a cam of body b.
     *
     * @param follower its centre
     * @param origin where the curve's own origin lies
     * @param pitch the path of the follower's centre about the cam, in the cam's frame as drawn
     */
    public MechanismBuilder cam(
            String name, int a, Point follower, double radius, int b, Point origin, Curve pitch, double friction) {
        Anchor ofA = anchor(a, follower);
        Anchor ofB = anchor(b, origin);
        others.add(new CamTouch(name, ofA, radius, ofB, pitch, 0, friction));
        return this;
    }

    /**
     * A string from a point of body a over guides to a point of body b.
     *
     * @param slack how much longer it is than its path as drawn, mm
     */
    public MechanismBuilder cord(
            String name, int a, Point from, List<CordGuide> guides, int b, Point to, double slack) {
        Anchor ofA = anchor(a, from);
        Anchor ofB = anchor(b, to);
        Cord.Guide[] over = guides.stream()
                .map(guide -> new Cord.Guide(
                        anchor(guide.body(), guide.at()),
                        guide.radius(),
                        guide.side(),
                        guide.wholeTurns(),
                        guide.friction()))
                .toArray(Cord.Guide[]::new);
        Cord measured = new Cord(name, ofA, ofB, over, 0);
        others.add(new Cord(name, ofA, ofB, over, slack - gapAsDrawn(measured)));
        return this;
    }

    private double gapAsDrawn(Joint joint) {
        Mechanism alone = new Mechanism(
                bodies,
                List.of(),
                List.of(joint),
                List.of(),
                List.of(),
                new Mechanism.DriveData(0, 0, 1, 0, 0, 0, 1),
                null,
                gravityX,
                gravityY,
                1);
        Rows rows = new Rows(alone);
        rows.at(alone.drawnPose());
        return rows.gap[0];
    }

    /** @param from least angle of a against b, rad, 0 as drawn */
    public MechanismBuilder stop(String name, int a, int b, double from, double to) {
        others.add(new AngleStop(name, a, b, from, to));
        return this;
    }

    /**
     * Body a turns no farther against b than to where it meets b's edge.
     *
     * @param at where they meet, b in the position drawn
     * @param out out of b's wood there, unit
     * @param loses mm the gap there loses for each rad that a turns counter-clockwise; negative where it opens
     * @param angle of a against b when they meet, rad, 0 as drawn
     * @param restitution share of the approach speed that comes back
     */
    public MechanismBuilder edgeStop(
            String name, int a, int b, Point at, Point out, double loses, double angle, double restitution) {
        others.add(new EdgeStop(name, a, anchor(b, at), out.x(), out.y(), loses, angle, restitution));
        return this;
    }

    /** Keeps two points at least and at most so far apart, mm; {@code most} may be infinite. */
    public MechanismBuilder distanceStop(String name, int a, Point onA, int b, Point onB, double least, double most) {
        Anchor ofA = anchor(a, onA);
        Anchor ofB = anchor(b, onB);
        others.add(new DistanceStop(name, ofA, ofB, least, most));
        return this;
    }

    /**
     * A disc of body a and an outline of body b push each other.
     *
     * @param restitution share of the approach speed that comes back
     */
    public MechanismBuilder touchDisc(
            String name,
            int a,
            Point centre,
            double radius,
            int b,
            List<Point> outline,
            double friction,
            double restitution) {
        TouchShape disc = TouchShape.disc(local(a, centre), radius);
        others.add(new Touch(name, a, disc, b, shape(b, outline), friction, restitution));
        return this;
    }

    /** Two discs push each other. */
    public MechanismBuilder touchDiscs(
            String name,
            int a,
            Point centreA,
            double radiusA,
            int b,
            Point centreB,
            double radiusB,
            double friction,
            double restitution) {
        TouchShape ofA = TouchShape.disc(local(a, centreA), radiusA);
        TouchShape ofB = TouchShape.disc(local(b, centreB), radiusB);
        others.add(new Touch(name, a, ofA, b, ofB, friction, restitution));
        return this;
    }

    /** Two outlines push each other. */
    public MechanismBuilder touch(
            String name, int a, List<Point> ofA, int b, List<Point> ofB, double friction, double restitution) {
        others.add(new Touch(name, a, shape(a, ofA), b, shape(b, ofB), friction, restitution));
        return this;
    }

    private TouchShape shape(int body, List<Point> outline) {
        return TouchShape.outline(
                outline.stream().map(corner -> local(body, corner)).toList());
    }

    /**
     * A spring between points of two bodies.
     *
     * @param stiffness µN/mm
     * @param free length at which it bears nothing, mm
     * @param pullsOnly an elastic band
     */
    public MechanismBuilder spring(
            String name, int a, Point onA, int b, Point onB, double stiffness, double free, boolean pullsOnly) {
        Anchor ofA = anchor(a, onA);
        Anchor ofB = anchor(b, onB);
        springs.add(new CoilSpring(name, ofA, ofB, stiffness, free, pullsOnly));
        return this;
    }

    /**
     * A spring that turns a against b.
     *
     * @param stiffness µN·mm/rad
     * @param free angle at which it bears nothing, rad, 0 as drawn
     */
    public MechanismBuilder torsionSpring(String name, int a, int b, double stiffness, double free) {
        springs.add(new TorsionSpring(name, a, b, stiffness, free));
        return this;
    }

    /** A steady moment on a body, µN·mm, counter-clockwise positive. */
    public MechanismBuilder torque(int body, double moment) {
        loads.add(new Mechanism.LoadData(body, 0, 0, 0, 0, moment));
        return this;
    }

    /** Any other joint, its points from the bodies' centres already. */
    public MechanismBuilder joint(Joint joint) {
        others.add(joint);
        return this;
    }

    /** A constant force (µN) on a body at a point of it, and a constant moment (µN·mm). */
    public MechanismBuilder load(int body, Point at, Point force, double moment) {
        Point ofBody = local(body, at);
        loads.add(new Mechanism.LoadData(body, ofBody.x(), ofBody.y(), force.x(), force.y(), moment));
        return this;
    }

    /**
     * @param rest lever angle at stroke 0, rad from the position drawn, counter-clockwise positive
     * @param turn from there to stroke 1, rad
     * @param press where the finger pushes
     * @param finger direction of its force
     */
    public MechanismBuilder lever(int body, double rest, double turn, Point press, Point finger) {
        Point ofBody = local(body, press);
        double length = finger.length();
        drive = new Mechanism.DriveData(
                body, rest, turn, ofBody.x(), ofBody.y(), finger.x() / length, finger.y() / length);
        return this;
    }

    /** A lever that rests as drawn. */
    public MechanismBuilder lever(int body, double turn, Point press, Point finger) {
        return lever(body, 0, turn, press, finger);
    }

    /** What the lever carries, folded into it. The lever is known by now. */
    public MechanismBuilder folded(FoldedFigure figure) {
        if (drive == null) {
            throw new IllegalStateException("a figure is folded into a lever that is there");
        }
        folded = figure;
        others.add(new FigureDrag(drive.body(), figure));
        return this;
    }

    /** Friction at rest, in frictions of what slides, in time; 1 when not called. */
    public MechanismBuilder stiction(double ratio) {
        stiction = ratio;
        return this;
    }

    /** mm/s²; straight down at 9806.65 when not called. */
    public MechanismBuilder gravity(Point acceleration) {
        gravityX = acceleration.x();
        gravityY = acceleration.y();
        return this;
    }

    /**
     * @throws MechanismException when there is no lever, when the joints hold it fast, or when nothing
     *     at all holds a body
     */
    public Mechanism build() {
        if (drive == null) {
            throw new MechanismException("the mechanism has no lever");
        }
        Mechanism mechanism =
                new Mechanism(bodies, pins, others, springs, loads, drive, folded, gravityX, gravityY, stiction);
        Sound.require(mechanism);
        return mechanism;
    }

    private Anchor anchor(int body, Point at) {
        return new Anchor(body, local(body, at));
    }

    private Point local(int body, Point at) {
        if (body == Mechanism.GROUND) {
            return at;
        }
        Mechanism.BodyData data = bodies.get(body);
        return new Point(at.x() - data.centreX(), at.y() - data.centreY());
    }
}

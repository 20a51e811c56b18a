package jackwork.motion;

import jackwork.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Puts a {@link Mechanism} together from points of the common frame, everything in the position drawn. */
public final class MechanismBuilder {

    private final List<Mechanism.BodyData> bodies = new ArrayList<>();
    private final List<Mechanism.PinData> pins = new ArrayList<>();
    private final List<Mechanism.SlideData> slides = new ArrayList<>();
    private final List<Mechanism.StopData> stops = new ArrayList<>();
    private final List<Mechanism.LoadData> loads = new ArrayList<>();
    private Mechanism.@Nullable DriveData drive;
    private double gravityX = 0;
    private double gravityY = -Mechanism.GRAVITY;

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
        Point ofA = local(a, at);
        Point ofB = local(b, at);
        pins.add(new Mechanism.PinData(name, a, b, ofA.x(), ofA.y(), ofB.x(), ofB.y(), radius, friction));
        return this;
    }

    /** A peg of body a at {@code peg} runs on the line from–to of body b. */
    public MechanismBuilder slide(String name, int a, int b, Point peg, Point from, Point to, double friction) {
        Point ofA = local(a, peg);
        Point start = local(b, from);
        double length = from.distance(to);
        Point direction = to.minus(from).times(1 / length);
        slides.add(new Mechanism.SlideData(
                name, a, b, ofA.x(), ofA.y(), start.x(), start.y(), direction.x(), direction.y(), length, friction));
        return this;
    }

    /** @param from least angle of a against b, rad, 0 as drawn */
    public MechanismBuilder stop(String name, int a, int b, double from, double to) {
        stops.add(new Mechanism.StopData(name, a, b, from, to));
        return this;
    }

    /** A constant force (µN) on a body at a point of it, and a constant moment (µN·mm). */
    public MechanismBuilder load(int body, Point at, Point force, double moment) {
        Point ofBody = local(body, at);
        loads.add(new Mechanism.LoadData(body, ofBody.x(), ofBody.y(), force.x(), force.y(), moment));
        return this;
    }

    /**
     * @param turn lever angle at stroke 1, rad, counter-clockwise positive
     * @param press where the finger pushes
     * @param finger direction of its force
     */
    public MechanismBuilder lever(int body, double turn, Point press, Point finger) {
        Point ofBody = local(body, press);
        double length = finger.length();
        drive = new Mechanism.DriveData(body, turn, ofBody.x(), ofBody.y(), finger.x() / length, finger.y() / length);
        return this;
    }

    /** mm/s²; straight down at 9806.65 when not called. */
    public MechanismBuilder gravity(Point acceleration) {
        gravityX = acceleration.x();
        gravityY = acceleration.y();
        return this;
    }

    /**
     * @throws MechanismException when there is no lever, or when the joints leave more or less than
     *     the lever's own freedom
     */
    public Mechanism build() {
        if (drive == null) {
            throw new MechanismException("the mechanism has no lever");
        }
        Mechanism mechanism = new Mechanism(bodies, pins, slides, stops, loads, drive, gravityX, gravityY);
        Freedoms.requireLeverOnly(mechanism);
        return mechanism;
    }

    private Point local(int body, Point at) {
        if (body == Mechanism.GROUND) {
            return at;
        }
        Mechanism.BodyData data = bodies.get(body);
        return new Point(at.x() - data.centreX(), at.y() - data.centreY());
    }
}

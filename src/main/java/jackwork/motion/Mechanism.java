package jackwork.motion;

import java.util.List;

/**
 * Bodies and how they are held, ready to be solved. Immutable; made by {@link MechanismBuilder}.
 *
 * <p>Moving bodies are numbered from 0; {@link #GROUND} is the box. Each body has three coordinates
 * (x, y of its centre of mass in mm; angle in rad, 0 as drawn), in that order. A point of a body is
 * given from its centre of mass as drawn; a point of the ground in the common frame.
 */
public final class Mechanism {

    /** Body number of everything that never moves. */
    public static final int GROUND = -1;

    /** Standard gravity, mm/s² (ISO 80000-3: 9.806 65 m/s²). */
    public static final double GRAVITY = 9806.65;

    /** @param inertia about the centre of mass, g·mm² */
    record BodyData(String name, double mass, double centreX, double centreY, double inertia) {}

    /**
     * Holds point a of body A on point b of body B.
     *
     * @param radius of the rod, mm
     * @param friction coefficient between rod and hole
     */
    record PinData(
            String name, int a, int b, double ax, double ay, double bx, double by, double radius, double friction) {}

    /**
     * Holds a peg of body A on a straight line of body B.
     *
     * @param directionX unit vector of the line in B as drawn
     * @param length of the line, from its first point, mm
     */
    record SlideData(
            String name,
            int a,
            int b,
            double pegX,
            double pegY,
            double lineX,
            double lineY,
            double directionX,
            double directionY,
            double length,
            double friction) {}

    /** Keeps angle(A) − angle(B) within [from, to], rad. */
    record StopData(String name, int a, int b, double from, double to) {}

    /** A constant force (µN) at a point of a body, and a constant moment (µN·mm). */
    record LoadData(int body, double x, double y, double forceX, double forceY, double moment) {}

    /**
     * The lever.
     *
     * @param turn its angle at stroke 1, rad
     * @param pressX where the finger pushes, from the lever's centre of mass as drawn
     * @param fingerX unit vector of the finger's force, fixed in space
     */
    record DriveData(int body, double turn, double pressX, double pressY, double fingerX, double fingerY) {}

    final BodyData[] bodies;
    final PinData[] pins;
    final SlideData[] slides;
    final StopData[] stops;
    final LoadData[] loads;
    final DriveData drive;
    final double gravityX;
    final double gravityY;

    Mechanism(
            List<BodyData> bodies,
            List<PinData> pins,
            List<SlideData> slides,
            List<StopData> stops,
            List<LoadData> loads,
            DriveData drive,
            double gravityX,
            double gravityY) {
        this.bodies = bodies.toArray(BodyData[]::new);
        this.pins = pins.toArray(PinData[]::new);
        this.slides = slides.toArray(SlideData[]::new);
        this.stops = stops.toArray(StopData[]::new);
        this.loads = loads.toArray(LoadData[]::new);
        this.drive = drive;
        this.gravityX = gravityX;
        this.gravityY = gravityY;
    }

    public int bodyCount() {
        return bodies.length;
    }

    public String bodyName(int body) {
        return body == GROUND ? "box" : bodies[body].name();
    }

    /** @throws IllegalArgumentException when there is no such moving body */
    public int bodyNumber(String name) {
        for (int i = 0; i < bodies.length; i++) {
            if (bodies[i].name().equals(name)) {
                return i;
            }
        }
        throw new IllegalArgumentException("no moving body is called " + name);
    }

    /** Number of coordinates: three a body. */
    int coordinates() {
        return 3 * bodies.length;
    }

    /** Number of joint equations, the lever's own not counted. */
    int jointEquations() {
        return 2 * pins.length + slides.length;
    }

    /** The pose as drawn, [3 × bodies]. */
    double[] drawnPose() {
        double[] pose = new double[coordinates()];
        for (int i = 0; i < bodies.length; i++) {
            pose[3 * i] = bodies[i].centreX();
            pose[3 * i + 1] = bodies[i].centreY();
        }
        return pose;
    }
}

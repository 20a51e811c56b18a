package jackwork.motion.model;

import java.util.List;
import org.jspecify.annotations.Nullable;

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
    public record BodyData(String name, double mass, double centreX, double centreY, double inertia) {}

    /** A constant force (µN) at a point of a body, and a constant moment (µN·mm). */
    record LoadData(int body, double x, double y, double forceX, double forceY, double moment) {}

    /**
     * The lever.
     *
     * @param turn its angle at stroke 1, rad
     * @param pressX where the finger pushes, from the lever's centre of mass as drawn
     * @param fingerX unit vector of the finger's force, fixed in space
     */
    public record DriveData(
            int body, double rest, double turn, double pressX, double pressY, double fingerX, double fingerY) {

        /** The lever's angle at a stroke, rad from the position drawn. */
        public double angle(double stroke) {
            return rest + turn * stroke;
        }
    }

    public final BodyData[] bodies;
    /** Pins first, in the order in which they were added. */
    public final Joint[] joints;

    public final Pin[] pins;
    final Spring[] springs;
    final LoadData[] loads;
    public final DriveData drive;
    /** What the lever carries without its bodies being here; null when there is nothing of the kind. */
    final @Nullable FoldedFigure folded;

    /** Friction at rest, in frictions of what slides, in time. */
    public final double stiction;

    public final double gravityX;
    public final double gravityY;
    /** First row and axis of each joint, [joints]. */
    public final int[] firstRow;

    final int[] firstAxis;
    public final int rowCount;
    public final int axisCount;
    /** Joint of each row and whether the row only pushes, [rows]. */
    public final int[] jointOfRow;

    public final boolean[] pushesOnly;
    /** 1/mass, 1/mass, 1/inertia of each body by itself, [3 × bodies]. */
    public final double[] inverseMass;

    /** How far parts may go at once, mm (rad × 100), before a joint could overlook them passing through each other. */
    public final double longestMove;

    public final Structure structure;

    Mechanism(
            List<BodyData> bodies,
            List<Pin> pins,
            List<Joint> others,
            List<Spring> springs,
            List<LoadData> loads,
            DriveData drive,
            @Nullable FoldedFigure folded,
            double gravityX,
            double gravityY,
            double stiction) {
        this.bodies = bodies.toArray(BodyData[]::new);
        this.pins = pins.toArray(Pin[]::new);
        this.joints = new Joint[pins.size() + others.size()];
        for (int j = 0; j < joints.length; j++) {
            joints[j] = j < pins.size() ? pins.get(j) : others.get(j - pins.size());
        }
        this.springs = springs.toArray(Spring[]::new);
        this.loads = loads.toArray(LoadData[]::new);
        this.drive = drive;
        this.folded = folded;
        this.stiction = stiction;
        this.gravityX = gravityX;
        this.gravityY = gravityY;
        this.firstRow = new int[joints.length];
        this.firstAxis = new int[joints.length];
        int rows = 0;
        int axes = 0;
        for (int j = 0; j < joints.length; j++) {
            firstRow[j] = rows;
            firstAxis[j] = axes;
            rows += joints[j].rows();
            axes += joints[j].axes();
        }
        this.rowCount = rows;
        this.axisCount = axes;
        this.jointOfRow = new int[rows];
        this.pushesOnly = new boolean[rows];
        for (int j = 0; j < joints.length; j++) {
            for (int r = 0; r < joints[j].rows(); r++) {
                jointOfRow[firstRow[j] + r] = j;
                pushesOnly[firstRow[j] + r] = joints[j].pushesOnly(r);
            }
        }
        this.inverseMass = new double[coordinates()];
        for (int i = 0; i < this.bodies.length; i++) {
            inverseMass[3 * i] = 1 / this.bodies[i].mass();
            inverseMass[3 * i + 1] = 1 / this.bodies[i].mass();
            inverseMass[3 * i + 2] = 1 / this.bodies[i].inertia();
        }
        double longest = Double.POSITIVE_INFINITY;
        for (Joint joint : this.joints) {
            longest = Math.min(longest, joint.longestMove());
        }
        this.longestMove = longest;
        this.structure = Structure.of(this);
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
    public int coordinates() {
        return 3 * bodies.length;
    }

    /** What a row is called, for people. */
    public String what(int row) {
        int joint = jointOfRow[row];
        return joints[joint].what(row - firstRow[joint]);
    }

    /** The name of a row's joint. */
    String nameOf(int row) {
        return joints[jointOfRow[row]].name();
    }

    /** Share of the approach speed that comes back after a blow on a row. */
    public double restitution(int row) {
        return joints[jointOfRow[row]].restitution();
    }

    /** The pose as drawn, [3 × bodies]. */
    public double[] drawnPose() {
        double[] pose = new double[coordinates()];
        for (int i = 0; i < bodies.length; i++) {
            pose[3 * i] = bodies[i].centreX();
            pose[3 * i + 1] = bodies[i].centreY();
        }
        return pose;
    }

    /** Weight of all bodies, µN: a measure of what forces are large here. */
    public double weight() {
        double mass = 0;
        for (BodyData body : bodies) {
            mass += body.mass();
        }
        return mass * Math.max(1, Math.hypot(gravityX, gravityY));
    }
}

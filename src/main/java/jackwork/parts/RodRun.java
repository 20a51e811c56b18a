package jackwork.parts;

import jackwork.design.Design;
import jackwork.geometry.Circle;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.util.List;

/**
 * A rod, or a screw of the case, as it goes through the layers of the position drawn.
 *
 * @param name of its joint
 * @param parts that have its hole or its slot, or that it rides on, ply by ply; of a peg the holder first
 * @param at its axis, common frame
 * @param diameter of what turns or is gripped there, mm: of the rod, or of the shoulder on it
 * @param from hindmost layer that it reaches
 * @param to foremost layer that it reaches
 */
public record RodRun(String name, Kind kind, List<String> parts, Point at, double diameter, int from, int to) {

    /** What it is there for. */
    public enum Kind {
        /** A pin or a dowel, through two parts or more. */
        PIN,
        /** A printed sleeve on a pin's rod, through what turns on it. */
        SHOULDER,
        /** Holds the figure on its box. */
        MOUNT,
        /** Held by one part, in another's slot, on a cam, against an edge, or under a string. */
        PEG,
        /** Holds the works in their case. */
        SCREW
    }

    /** Hole for a screw that holds the works in their case, mm: M3, ISO 273 medium. */
    public static final double SCREW_HOLE = 3.4;

    /** Outside of the column that keeps the plates apart around such a screw, mm. */
    static final double SCREW_COLUMN = 8;

    /** Two axes that are drawn as near as this are one, mm. */
    private static final double ONE = 0.01;

    /** All of a design, the box's first. */
    static List<RodRun> of(Design design, Assembly assembly) {
        return new RodRuns(design, assembly).collect();
    }

    /** mm. */
    public double radius() {
        return diameter / 2;
    }

    /** What it fills of each layer that it passes. */
    public Outline disc() {
        return Outline.disc(new Circle(at, radius()), Borings.RIM);
    }

    /** Whether some layer is passed by both. */
    public boolean passesLayerOf(RodRun other) {
        return from <= other.to && other.from <= to;
    }

    /** What it is, for people. */
    public String words() {
        return switch (kind) {
            case SHOULDER -> "the shoulder of " + name;
            case SCREW -> "the column of " + name;
            default -> "the rod of " + name;
        };
    }

    /**
     * Whether both are written for one rod: a peg serves several joints, or is the end of a pin through its holder; a
     * shoulder sits on the rod of its own pin.
     */
    public boolean isRodOf(RodRun other) {
        return isShoulderOn(other) || other.isShoulderOn(this) || isPeg(other);
    }

    private boolean isShoulderOn(RodRun other) {
        return kind == Kind.SHOULDER && other.kind == Kind.PIN && name.equals(other.name);
    }

    private boolean isPeg(RodRun other) {
        return at.distance(other.at) < ONE && diameter == other.diameter && (isPegIn(other) || other.isPegIn(this));
    }

    private boolean isPegIn(RodRun other) {
        return kind == Kind.PEG && other.parts.contains(parts.get(0));
    }
}

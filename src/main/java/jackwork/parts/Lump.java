package jackwork.parts;

import jackwork.geometry.Point;

/**
 * Mass that is not a flat part: nuts, rods.
 *
 * @param name of the weight or pin
 * @param kind the fastener or rod it is made of; {@code mass} when only a mass is given
 * @param at its centre, common frame, mm
 * @param mass g
 * @param radius mm, for its picture and its own inertia as a disc
 */
public record Lump(String name, String kind, Point at, double mass, double radius) {

    /** The name of what only its mass is given of. */
    public static final String MASS = "mass";

    public Lump timesMass(double factor) {
        return new Lump(name, kind, at, mass * factor, radius);
    }

    public Lump moved(Point by) {
        return new Lump(name, kind, at.plus(by), mass, radius);
    }
}

package jackwork.parts;

import jackwork.geometry.Point;

/**
 * Mass that is not a flat part: nuts, rods.
 *
 * @param at its centre, common frame, mm
 * @param mass g
 * @param radius mm, for its picture and its own inertia as a disc
 */
public record Lump(String name, Point at, double mass, double radius) {}

package jackwork.parts;

import jackwork.geometry.Point;
import jackwork.stock.FrictionPair;

/**
 * A peg of one body in a straight slot of another.
 *
 * @param peg body number of the peg's
 * @param slot body number of the slot's
 * @param at the peg as drawn
 * @param from one end of the slot's middle line
 * @param to the other
 */
public record SlideJoint(
        String name, int peg, int slot, Point at, Point from, Point to, double radius, FrictionPair friction) {

    SlideJoint rubbing(FrictionPair other) {
        return new SlideJoint(name, peg, slot, at, from, to, radius, other);
    }
}

package jackwork.parts;

import jackwork.geometry.Point;
import jackwork.stock.FrictionPair;
import org.jspecify.annotations.Nullable;

/**
 * A peg of one body in a slot of another, straight or an arc.
 *
 * @param peg body number of the peg's
 * @param slot body number of the slot's
 * @param at the peg as drawn
 * @param from one end of the slot's middle line
 * @param via a point between them on an arc; null for a straight slot
 * @param to the other
 * @param bore of its slot, across
 */
public record SlideJoint(
        String name,
        int peg,
        int slot,
        Point at,
        Point from,
        @Nullable Point via,
        Point to,
        double radius,
        Bore bore,
        FrictionPair friction) {

    SlideJoint rubbing(FrictionPair other) {
        return new SlideJoint(name, peg, slot, at, from, via, to, radius, bore, other);
    }
}

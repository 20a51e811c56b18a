package jackwork.parts;

import jackwork.geometry.Point;
import jackwork.stock.FrictionPair;

/**
 * Two bodies turning on a rod.
 *
 * @param holder body number of the one that grips the rod
 * @param runner body number of the one that turns on it
 * @param radius of the rod, mm
 * @param friction rod against the runner's hole
 * @param drag moment that turns it while it bears nothing, N·mm: layers that rub beside it, paint or glue in its hole
 * @param off how far the runner's hole came out from where it is drawn, mm
 */
public record PinJoint(
        String name, int holder, int runner, Point at, double radius, FrictionPair friction, double drag, Point off) {

    /** As drawn, and without drag. */
    PinJoint(String name, int holder, int runner, Point at, double radius, FrictionPair friction) {
        this(name, holder, runner, at, radius, friction, 0, Point.ORIGIN);
    }

    PinJoint rubbing(FrictionPair other) {
        return new PinJoint(name, holder, runner, at, radius, other, drag, off);
    }

    PinJoint dragging(double other) {
        return new PinJoint(name, holder, runner, at, radius, friction, other, off);
    }

    PinJoint drilled(Point other) {
        return new PinJoint(name, holder, runner, at, radius, friction, drag, other);
    }
}

package jackwork.parts;

import jackwork.design.CoinWorksEntry;
import jackwork.geometry.Point;
import jackwork.stock.FrictionPair;
import jackwork.stock.Uncertain;
import org.jspecify.annotations.Nullable;

/**
 * The coin works at rest, in the common frame: marks of lever and bucket where those rest.
 *
 * @param slotAt middle of its opening
 * @param slotLength opening for the coin's diameter, mm
 * @param slotWidth opening for the coin's thickness, mm
 * @param bucket number of the body that tips
 * @param layer in which the coin works
 * @param pin that it tips on
 * @param pivot where that is
 * @param rest the bucket's angle at rest, rad from the position drawn, counter-clockwise positive
 * @param tip from rest to its other stop, rad, signed: the way the coin's weight turns it
 * @param heel one point of the floor
 * @param rise the corner at the heel's end over which a coin does not roll; null when there is none
 * @param toe the floor's end at the lip's foot
 * @param lip the corner over which the coin leaves
 * @param rodRadius of the pivot's rod, mm
 * @param sideGap free space on either side, mm
 * @param reach from the pivot to the bucket's farthest point, mm
 * @param rebound share of a coin's approach speed that comes back from the bucket
 * @param bearingFriction rod against bucket
 * @param catchFriction tooth against strut
 * @param coinFriction coin against what it falls on
 * @param tooth of the lever
 * @param strut of the bucket
 * @param kicker of the lever
 * @param face of the gate, where the coin bridges to it; null when the coin's weight tips the bucket
 * @param cashRoom where the coins heap up; null when the design does not say
 */
public record CoinWorks(
        Point slotAt,
        double slotLength,
        double slotWidth,
        int bucket,
        int layer,
        String pin,
        Point pivot,
        double rest,
        double tip,
        Point heel,
        @Nullable Point rise,
        Point toe,
        Point lip,
        double rodRadius,
        double sideGap,
        double reach,
        Uncertain rebound,
        FrictionPair bearingFriction,
        FrictionPair catchFriction,
        FrictionPair coinFriction,
        Point tooth,
        Point strut,
        Point kicker,
        @Nullable Point face,
        CoinWorksEntry.@Nullable CashRoom cashRoom) {

    /** Whether the coin bridges a gap between kicker and gate, instead of tipping a bucket by its weight. */
    public boolean bridges() {
        return face != null;
    }

    /**
     * How far a coin leans in its gap, rad: {@code d sin α + t cos α = w}, to first order in the play.
     *
     * @param gap free width across the mechanism's plane, mm
     */
    public static double lean(double gap, double thickness, double diameter) {
        return Math.max(0, gap - thickness) / diameter;
    }

    /** What the body that the coin moves is called. */
    public String bucketWord() {
        return bridges() ? "gate" : "bucket";
    }

    CoinWorks rubbing(FrictionPair pair, FrictionPair other) {
        return new CoinWorks(
                slotAt,
                slotLength,
                slotWidth,
                bucket,
                layer,
                pin,
                pivot,
                rest,
                tip,
                heel,
                rise,
                toe,
                lip,
                rodRadius,
                sideGap,
                reach,
                rebound,
                bearingFriction.equals(pair) ? other : bearingFriction,
                catchFriction.equals(pair) ? other : catchFriction,
                coinFriction.equals(pair) ? other : coinFriction,
                tooth,
                strut,
                kicker,
                face,
                cashRoom);
    }

    /** How far the bucket's farthest point shifts sideways, mm, as it tilts on its bearing. */
    public double shift(Bearing bearing) {
        return bearing.tilt() * reach;
    }

    /** The bucket's angle when it has tipped by a share of its way, rad from the position drawn. */
    public double angle(double share) {
        return rest + tip * share;
    }

    /**
     * The same works between other stops.
     *
     * @param atRest angle of the bucket, rad from the position drawn
     * @param tipped likewise, at its other stop
     * @param lever as it stops now
     * @param before as it stopped
     */
    CoinWorks between(double atRest, double tipped, Lever lever, Lever before) {
        double turned = atRest - rest;
        // A gate's floor stands still.
        double floor = bridges() ? 0 : turned;
        double pressed = lever.rest() - before.rest();
        return new CoinWorks(
                slotAt,
                slotLength,
                slotWidth,
                bucket,
                layer,
                pin,
                pivot,
                atRest,
                tipped - atRest,
                heel.turnedAbout(pivot, floor),
                rise == null ? null : rise.turnedAbout(pivot, floor),
                toe.turnedAbout(pivot, floor),
                lip.turnedAbout(pivot, turned),
                rodRadius,
                sideGap,
                reach,
                rebound,
                bearingFriction,
                catchFriction,
                coinFriction,
                tooth.turnedAbout(lever.pivot(), pressed),
                strut.turnedAbout(pivot, turned),
                kicker.turnedAbout(lever.pivot(), pressed),
                face == null ? null : face.turnedAbout(pivot, turned),
                cashRoom);
    }

    /** +1 when the coin turns the bucket counter-clockwise, −1 otherwise. */
    public double sense() {
        return Math.signum(tip);
    }
}

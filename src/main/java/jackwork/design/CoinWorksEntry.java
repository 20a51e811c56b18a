package jackwork.design;

import jackwork.stock.Uncertain;
import org.jspecify.annotations.Nullable;

/**
 * The coin works of a box, seen from the side: the coin lies in the plane of the mechanism.
 *
 * @param slot where the coin goes in
 * @param bucket what its weight tips
 * @param holds what keeps the lever until then
 * @param kicker on the lever, the point that throws the coin out
 * @param bridge when there is one, the coin is no weight but a bridge: the kicker presses it against the bucket, which is
 *     a gate then, and that takes the strut away; else the coin's weight tips the bucket
 * @param cashRoom where the coins heap up; when absent nobody asks how many it holds
 */
@About("Slot, bucket, catch and kicker.")
public record CoinWorksEntry(
        Slot slot,
        Bucket bucket,
        @Key("catch") Catch holds,
        Place kicker,
        @Nullable Bridge bridge,
        @Nullable CashRoom cashRoom) {

    /** @param face where the coin touches the gate */
    public record Bridge(Place face) {}

    /**
     * @param toLeft from beneath the lip to the wall at the left, mm
     * @param toRight likewise at the right, mm
     * @param depth across the mechanism's plane, mm
     * @param below from the lowest that the bucket comes down to the floor, mm
     */
    public record CashRoom(
            @Unit("mm") double toLeft,
            @Unit("mm") double toRight,
            @Unit("mm") double depth,
            @Unit("mm") double below) {}

    /**
     * @param at the middle of its opening, where the coin is let go
     * @param length opening along the mechanism's plane, mm: the coin's diameter passes here
     * @param width opening across it, mm: the coin's thickness passes here
     */
    public record Slot(
            Place at, @Unit("mm") double length, @Unit("mm") double width) {}

    /**
     * @param part any part of the body that tips
     * @param pin the pin it tips on
     * @param tip how far it tips before its stop, degrees, without sign
     * @param heel a point of the floor's line, at the kicker's end
     * @param rise the corner at the heel's end over which a coin does not roll; none when absent
     * @param toe the floor's end at the foot of the lip
     * @param lip the corner over which the coin leaves
     * @param bearing length of its bearing along the pin, mm
     * @param clearance diametral clearance on the pin, mm
     * @param sideGap free space to the nearest part on either side, mm
     * @param rebound share of a coin's approach speed that comes back from its floor, when that is lined; as wood when
     *     absent
     */
    public record Bucket(
            String part,
            String pin,
            @Unit("deg") double tip,
            Place heel,
            @Nullable Place rise,
            Place toe,
            Place lip,
            @Unit("mm") double bearing,
            @Unit("mm") double clearance,
            @Unit("mm") double sideGap,
            @Unit("1") @Nullable Uncertain rebound) {}

    /**
     * @param tooth the lever's edge that comes to stand on the strut: the end nearest the strut's way out
     * @param strut the bucket's edge beneath it: the end that leaves last
     */
    public record Catch(Place tooth, Place strut) {}
}

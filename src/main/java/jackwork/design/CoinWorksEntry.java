package jackwork.design;

import jackwork.stock.Uncertain;
import org.jspecify.annotations.Nullable;

/** The coin works of a box, seen from the side: the coin lies in the plane of the mechanism. */
@About("Slot, bucket, catch and kicker.")
public record CoinWorksEntry(
        @About("Where the coin goes in.") Slot slot,

        @About("What its weight tips.") Bucket bucket,

        @About("What keeps the lever until then.") @Key("catch")
        Catch holds,

        @About("On the lever, the point that throws the coin out.")
        Place kicker,

        @About(
                "When there is one, the coin is no weight but a bridge: the kicker presses it against the bucket, which is a "
                        + "gate then, and that takes the strut away; else the coin's weight tips the bucket.")
        @Nullable
        Bridge bridge,

        @About("Where the coins heap up; when left out nobody asks how many it holds.") @Nullable
        CashRoom cashRoom) {

    @About("The coin as a bridge.")
    public record Bridge(
            @About("Where the coin touches the gate.") Place face) {}

    @About("Where the coins heap up, from beneath the lip.")
    public record CashRoom(
            @About("From beneath the lip to the wall at the left.")
            @Quantity(unit = "mm", least = 0, most = 1000, usualTo = 300, why = "it is inside a box that one carries")
            double toLeft,

            @About("Likewise at the right.")
            @Quantity(unit = "mm", least = 0, most = 1000, usualTo = 300, why = "it is inside a box that one carries")
            double toRight,

            @About("Across the mechanism's plane.")
            @Quantity(
                    unit = "mm",
                    least = 5,
                    most = 1000,
                    usualFrom = 20,
                    usualTo = 300,
                    why = "a coin lies flat in it, and it is inside a box that one carries")
            double depth,

            @About("From the lip of the bucket as drawn down to the floor.")
            @Quantity(
                    unit = "mm",
                    least = 0,
                    most = 1000,
                    usualTo = 300,
                    why = "the floor is beneath the bucket, inside a box that one carries")
            double below) {}

    @About("Where the coin goes in.")
    public record Slot(
            @About("The middle of its opening, where the coin is let go.")
            Place at,

            @About("Opening along the mechanism's plane: the coin's diameter passes here.")
            @Quantity(
                    unit = "mm",
                    least = 5,
                    most = 100,
                    usualFrom = 14,
                    usualTo = 60,
                    why = "no coin is smaller or larger")
            double length,

            @About("Opening across it: the coin's thickness passes here.")
            @Quantity(
                    unit = "mm",
                    least = 0.5,
                    most = 20,
                    usualFrom = 1,
                    usualTo = 8,
                    why = "no coin is thinner or thicker")
            double width) {}

    @About("What a coin's weight tips.")
    @Former(
            key = "clearance",
            now = "follows from the hole, bored for its rod and the workshop's fits.running",
            by = "fits.running")
    @Former(
            key = "bearing",
            now = "follows from the layers that turn on the rod, those of the bucket in its pin's parts")
    public record Bucket(
            @About("Any part of the body that tips.") @Names(value = NameKind.PART, whose = Names.Whose.BOX)
            String part,

            @About("The pin it tips on.") @Names(value = NameKind.PIN, whose = Names.Whose.BOX)
            String pin,

            @About("How far it is wished to tip, without sign; as far as something stops it when left out.")
            @Quantity(
                    unit = "deg",
                    least = 0.5,
                    most = 170,
                    usualFrom = 2,
                    usualTo = 90,
                    why = "it must tip, and not turn over")
            @Nullable
            Double tip,

            @About("A point of the floor's line, at the kicker's end.")
            Place heel,

            @About("The corner at the heel's end over which a coin does not roll; none when left out.") @Nullable
            Place rise,

            @About("The floor's end at the foot of the lip.")
            Place toe,

            @About("The corner over which the coin leaves.") Place lip,

            @About("Free space to the nearest part on either side.")
            @Quantity(
                    unit = "mm",
                    least = 0.1,
                    most = 50,
                    usualFrom = 0.3,
                    usualTo = 15,
                    why = "less rubs, more lets the bucket wander along its pin")
            double sideGap,

            @About(
                    "Share of a coin's approach speed that comes back from its floor, when that is lined; as wood when left out.")
            @Quantity(least = 0, most = 0.95, usualTo = 0.7, why = "nothing jumps back as fast as it came")
            @Nullable
            Uncertain rebound) {}

    @About("What keeps the lever until a coin is there.")
    public record Catch(
            @About("The lever's edge that comes to stand on the strut: the end nearest the strut's way out.")
            Place tooth,

            @About("The bucket's edge beneath it: the end that leaves last.")
            Place strut) {}
}

package jackwork.design;

import org.jspecify.annotations.Nullable;

@About("The drive: at 0 % of the stroke the lever is as drawn, at 100 % turned as far as it goes.")
public record LeverEntry(
        @About("The lever.") @Names(value = NameKind.PART, whose = Names.Whose.BOX)
        String part,

        @About("Its pin in the box.") @Names(value = NameKind.PIN, whose = Names.Whose.BOX)
        String pin,

        @About("Where the finger pushes, straight down.") Place press,

        @About("How far a full press is wished to turn it, without sign; as far as something stops it when left out.")
        @Key("throw")
        @Nullable
        @Quantity(
                unit = "deg",
                least = 1,
                most = 80,
                usualFrom = 4,
                usualTo = 45,
                why = "a short press of a lever that lies about level")
        Double turn) {}

package jackwork.design;

@About("The drive: at 0 % of the stroke the lever is as drawn, at 100 % turned by `throw`.")
public record LeverEntry(
        @About("The lever.") @Names(value = NameKind.PART, whose = Names.Whose.BOX)
        String part,

        @About("Its pin in the box.") @Names(value = NameKind.PIN, whose = Names.Whose.BOX)
        String pin,

        @About("Where the finger pushes, straight down.") Place press,

        @About("How far a full press turns it, without sign.")
        @Key("throw")
        @Quantity(
                unit = "deg",
                least = 1,
                most = 80,
                usualFrom = 4,
                usualTo = 45,
                why = "a short press of a lever that lies about level")
        double turn) {}

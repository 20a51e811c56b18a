package jackwork.design;

import org.jspecify.annotations.Nullable;

@About("A peg of one part that runs in a slot of another, straight or an arc.")
public record SlideEntry(
        @About("The part that carries the peg.") @Names(value = NameKind.PART, orGround = true)
        String part,

        @About("Where the peg sits in that part; the circle with the slide's own name when left out.")
        @OwnCircle
        @Nullable
        Place peg,

        @About("The part with the slot.") @Names(NameKind.PART)
        String in,

        @About("One end of the slot's middle line.") Place from,

        @About("A point between them when the slot is an arc; straight when left out.") @Nullable
        Place via,

        @About("The other end.") Place to,

        @About("The peg's rod.") @Names(NameKind.ROD) String rod)
        implements Entry {}

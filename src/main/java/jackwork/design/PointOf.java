package jackwork.design;

@About("A point of a part.")
public record PointOf(
        @About("The part.") @Names(value = NameKind.PART, orGround = true)
        String part,

        @About("Where on it.") Place at) {}

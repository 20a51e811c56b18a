package jackwork.design;

@About("A steady torque on a part, such as a clockwork's.")
public record TorqueEntry(
        @About("The part.") @Names(NameKind.PART) String on,

        @About("Counter-clockwise positive.")
        @Quantity(
                unit = "N mm",
                least = -5000,
                most = 5000,
                usualFrom = -500,
                usualTo = 500,
                why = "more breaks what a figure is made of")
        double moment)
        implements JointEntry {}

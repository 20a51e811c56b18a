package jackwork.design;

import org.jspecify.annotations.Nullable;

@About("Nuts, washers or any other mass fixed to a part.")
public record WeightEntry(
        @About("The part that carries it.") @Names(value = NameKind.PART, whose = Names.Whose.OWN)
        String on,

        @About("Where; the circle with the weight's own name when left out.") @OwnCircle @Nullable
        Place at,

        @About("A nut or washer of the catalogue; else its mass is given.") @Names(NameKind.FASTENER) @Nullable
        String what,

        @About("How many of them; 1 when left out.")
        @Quantity(least = 0, most = 1000, usualTo = 60, why = "a figure has no room for more")
        @Nullable
        Integer count,

        @About("For anything that is not in the catalogue.")
        @Quantity(
                unit = "g",
                least = 0,
                most = 5000,
                usualTo = 1000,
                why = "nothing weighs less than nothing, and a money box is no anvil")
        @Nullable
        Double mass)
        implements Entry {

    @Override
    public void check(String path, Around around) {
        if ((what == null) == (mass == null)) {
            around.problem(path, "expected either what (a nut or washer) or mass (grams)");
        }
    }
}

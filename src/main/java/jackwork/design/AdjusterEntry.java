package jackwork.design;

@About("Something that is set at the bench until the piece runs: washers on a bolt, a knot that slides, a spare hole.")
public record AdjusterEntry(
        @About("The number of the box or figure that it changes, as in `change`: `figure.weights.tail.mass`.") @Text
        String number,

        @About("What one step adds to that number, in its own unit.")
        @Quantity(least = 0.001, most = 1000, why = "a smaller step changes nothing")
        double step,

        @About("How many steps it goes down from what is drawn.")
        @Quantity(least = 0, most = 10, usualTo = 6, why = "each step is tried, at the bench as here")
        int down,

        @About("How many steps it goes up.")
        @Quantity(least = 0, most = 10, usualTo = 6, why = "each step is tried, at the bench as here")
        int up,

        @About("What the maker turns, adds or takes off: `M6 washers on the tail's bolt`.") @Text
        String what) {

    /** What that number is so many steps up. */
    public double at(double drawn, int steps) {
        return drawn + steps * step;
    }
}

package jackwork.design;

@About("A band of prices: what people pay for a thing of this kind.")
public record BandEntry(
        @About("In the maker's words.") @Text String name,

        @About("The highest price of the band.")
        @Quantity(least = 0.01, most = 10000000, usualFrom = 1, usualTo = 100000, why = "somebody pays it")
        double to) {}

package jackwork.design;

/**
 * What people pay for a thing of this kind.
 *
 * @param name in the maker's words
 * @param to the highest price of the band
 */
@About("A band of prices: what people pay for a thing of this kind.")
public record BandEntry(String name, @Unit("1") double to) {}

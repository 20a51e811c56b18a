package jackwork.design;

/**
 * @param part the part
 * @param at where on it
 */
@About("A point of a part.")
public record PointOf(String part, Place at) {}

package jackwork.price;

/**
 * A sheet as laid out.
 *
 * @param area as bought, m²
 * @param seconds of the laser's
 * @param kept share of it that is left to be used again
 */
public record LaidSheet(String stock, double area, double seconds, double kept) {}

package jackwork.make;

/**
 * A piece packed for the post.
 *
 * @param width mm
 * @param depth mm
 * @param height mm
 * @param mass g
 */
public record ParcelSize(double width, double depth, double height, double mass) {}

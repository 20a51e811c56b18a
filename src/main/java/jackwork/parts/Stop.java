package jackwork.parts;

/**
 * Limits the angle of body {@code a} against body {@code b}.
 *
 * @param from least angle, rad, 0 as drawn
 */
public record Stop(String name, int a, int b, double from, double to) {}

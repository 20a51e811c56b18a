package jackwork.parts;

import jackwork.geometry.Point;

/**
 * Limits the angle of body {@code a} against body {@code b}.
 *
 * @param at the pin that they share
 * @param from least angle, rad, 0 as drawn
 */
public record Stop(String name, int a, int b, Point at, double from, double to) {

    Stop between(double least, double greatest) {
        return new Stop(name, a, b, at, least, greatest);
    }
}

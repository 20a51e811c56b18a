package jackwork.parts;

import jackwork.geometry.Point;

/**
 * The drive. It rests where something stops it, which need not be quite as drawn.
 *
 * @param body number of the lever's body
 * @param pivot its pin
 * @param press where the finger pushes, straight down; at rest
 * @param rest its angle at rest, rad from the position drawn, counter-clockwise positive
 * @param turn from rest to stroke 1, rad
 */
public record Lever(int body, String pin, Point pivot, Point press, double rest, double turn) {

    /** Where the finger pushes in the position drawn. */
    public Point pressDrawn() {
        return press.turnedAbout(pivot, -rest);
    }

    /** Its angle at a stroke, rad from the position drawn. */
    public double angle(double stroke) {
        return rest + turn * stroke;
    }

    /** The same lever between other stops, rad from the position drawn. */
    Lever between(double atRest, double pressed) {
        return new Lever(body, pin, pivot, press.turnedAbout(pivot, atRest - rest), atRest, pressed - atRest);
    }
}

package jackwork.parts;

import jackwork.geometry.Point;

/**
 * The drive.
 *
 * @param body number of the lever's body
 * @param pivot its pin
 * @param press where the finger pushes, straight down
 * @param turn its angle at stroke 1, rad, counter-clockwise positive
 */
public record Lever(int body, String pin, Point pivot, Point press, double turn) {}

package jackwork.design;

import jackwork.geometry.Point;

/** A point of a design: a circle of the drawing named by its id, or two numbers in the drawing's millimetres. */
public sealed interface Place {

    /** {@code at: shoulder} : the centre of the circle with that id. */
    record Drawn(String id) implements Place {}

    /** {@code at: [12, 80]} : mm right of and above the drawing's origin. */
    record At(Point point) implements Place {}
}

package jackwork.make;

import jackwork.geometry.Circle;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.parts.Hole;
import java.util.ArrayList;
import java.util.List;

/**
 * A panel of the case where it stands. The case's frame: x to the right, y up, z toward the viewer from the rear face of
 * the works; mm.
 *
 * @param number engraved on its hidden face
 * @param axis the direction that it is thin in
 * @param from its lower face along that axis
 * @param to its upper face
 * @param outline in the other two axes: (x, y) for Z, (z, y) for X, (x, z) for Y
 * @param holes round ones, in the same two axes
 * @param insideUp whether its hidden face is the one seen when those two axes point right and up
 */
record Panel(
        String name,
        int number,
        Axis axis,
        double from,
        double to,
        Outline outline,
        List<Circle> holes,
        boolean insideUp) {

    /** Directions of the case's frame. */
    enum Axis {
        X,
        Y,
        Z
    }

    private static final double DIGIT = 5;

    /**
     * g, without what its round holes take away.
     *
     * @param density kg/m³
     */
    double mass(double density) {
        return outline.area() * (to - from) * density / 1000;
    }

    /** As it lies under the beam: hidden face up, so that its number is never seen again. */
    FlatPiece piece(String stock) {
        Outline face = insideUp ? outline : outline.mirrored();
        List<Hole> bored = new ArrayList<>();
        for (Circle hole : holes) {
            Point at = insideUp
                    ? hole.centre()
                    : new Point(-hole.centre().x(), hole.centre().y());
            bored.add(Hole.open(new Circle(at, hole.radius()), "screw-" + (bored.size() + 1)));
        }
        List<List<Point>> strokes = Numerals.strokes(number, spot(face, bored), DIGIT);
        return new FlatPiece(name, stock, to - from, false, face, List.copyOf(bored), strokes);
    }

    /** A place for the number: where there is most wood around it. */
    private static Point spot(Outline face, List<Hole> bored) {
        var bounds = face.bounds();
        Point best = face.centroid();
        double most = 0;
        for (int i = 1; i < 20; i++) {
            for (int j = 1; j < 20; j++) {
                Point at = new Point(bounds.minX() + bounds.width() * i / 20, bounds.minY() + bounds.height() * j / 20);
                double room = face.contains(at) ? face.distanceToEdge(at) : 0;
                for (Hole hole : bored) {
                    room = Math.min(
                            room,
                            hole.circle().centre().distance(at) - hole.circle().radius());
                }
                if (room > most) {
                    most = room;
                    best = at;
                }
            }
        }
        return best;
    }
}

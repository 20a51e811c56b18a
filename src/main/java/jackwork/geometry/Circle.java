package jackwork.geometry;

/** A circle: a drawn pivot, or a round hole. Centre and radius in mm. */
public record Circle(Point centre, double radius) {

    public Circle {
        if (!centre.isFinite() || !Double.isFinite(radius) || radius < 0) {
            throw new IllegalArgumentException("circle: centre " + centre + " and radius " + radius
                    + " must be finite numbers and the radius not negative");
        }
    }

    public double diameter() {
        return 2 * radius;
    }

    public Circle moved(Point by) {
        return new Circle(centre.plus(by), radius);
    }
}

package jackwork.drawing;

import jackwork.geometry.Circle;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a maker's SVG holds, in mm with y up. The origin is the centre of the circle with id
 * {@code origin} when there is one, else the page's lower left corner.
 *
 * @param width page width, mm
 * @param height page height, mm
 * @param outlines closed paths and other closed shapes by id, curves flattened within 0.002 mm
 * @param circles circles by id
 * @param lines open paths by id
 */
public record Drawing(
        double width,
        double height,
        Map<String, Outline> outlines,
        Map<String, Circle> circles,
        Map<String, List<Point>> lines) {

    public Optional<Circle> circle(String id) {
        return Optional.ofNullable(circles.get(id));
    }

    public Optional<Outline> outline(String id) {
        return Optional.ofNullable(outlines.get(id));
    }
}

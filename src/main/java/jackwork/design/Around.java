package jackwork.design;

import jackwork.drawing.Drawing;
import jackwork.geometry.Circle;
import jackwork.geometry.Point;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What an entry stands among.
 *
 * @param works of its own file
 * @param yaml its own file
 * @param drawing of its own file
 */
public record Around(WorkshopFile workshop, Works works, YamlFile yaml, Drawing drawing) {

    /** @param path from the file's root */
    void problem(String path, String message) {
        yaml.problem(path, message);
    }

    /** Centre of a gear of the same file, in its drawing's frame; empty where it is of another, or its place is not there. */
    Optional<Point> centre(String gear) {
        GearEntry entry = works.gears().get(gear);
        return entry == null ? Optional.empty() : point(entry.at(), gear);
    }

    /** A place in its drawing's frame; empty where the drawing has no such circle, which is said elsewhere. */
    Optional<Point> point(@Nullable Place place, String fallback) {
        if (place instanceof Place.At at) {
            return Optional.of(at.point());
        }
        String id = place instanceof Place.Drawn drawn ? drawn.id() : fallback;
        return drawing.circle(id).map(Circle::centre);
    }
}

package jackwork.drawing;

import jackwork.geometry.Circle;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.util.List;

/**
 * A part's picture as it is printed; mm, in one frame, y up.
 *
 * @param name the part's
 * @param at the picture's lower left corner
 * @param width of the whole picture
 * @param edge of the part
 * @param bleed how far the picture goes beyond the edge
 * @param holes for rods, to lay the print on the wood by
 * @param bare where another part is glued on
 */
public record ArtworkFigure(
        String name,
        Picture picture,
        Point at,
        double width,
        Outline edge,
        double bleed,
        List<Circle> holes,
        List<Outline> bare) {

    /** What the picture may miss of its bleed without a word, mm². */
    private static final double MISSED = 1;

    public ArtworkFigure {
        holes = List.copyOf(holes);
        bare = List.copyOf(bare);
    }

    double height() {
        return width * picture.height() / picture.width();
    }

    /** Where the picture shows: the part without its cut-outs, and the bleed. */
    Outline shown() {
        return Outline.of(edge.outer()).offset(bleed);
    }

    /** Whether the picture covers all that it should. */
    boolean covered() {
        Outline shown = shown();
        Outline all = Outline.rectangle(at.x(), at.y(), at.x() + width, at.y() + height());
        return shown.sharedArea(all) > shown.area() - MISSED;
    }
}

package jackwork.app.bring;

import jackwork.app.wire.Pair;
import jackwork.app.wire.Payload;
import java.util.List;

/**
 * What the maker says about a drawing: its parts, its points and the box that it goes on. All lengths mm at true size, y
 * up, in the drawing's own frame.
 *
 * @param name of the design
 * @param box its file, from the workshop's folder
 * @param scale how much larger than its file the drawing was made; kept for when it is drawn again
 * @param placed whether {@code shift} is the maker's; else the program looks for a place
 * @param shift from the drawing's frame to the box's
 */
public record BringPlan(
        String name,
        String box,
        double scale,
        boolean placed,
        Pair shift,
        List<PlannedPart> parts,
        List<PlannedPoint> points,
        List<PlannedLine> lines)
        implements Payload {

    /** What stands on the box and never moves. */
    static final String STANDS = "box";

    /** What a circle, or a point set by the maker, is for. */
    public enum PointRole {
        /** A mark, for nothing yet; kept so that it is known when the drawing comes again. */
        NONE,
        /** A rod through parts of the drawing: they turn on each other, or are held together where they are glued. */
        PIN,
        /** The parts turn here on a post that the program makes. */
        POST,
        /** The lever lifts the parts here, by a rod that the program makes. */
        LIFT,
        /** The lever pulls the parts down here, by a rod that the program makes. */
        PULL,
        /** The parts are pinned to the lever itself. */
        LEVER,
        /** A cord from here down to the lever. */
        CORD,
        /** Steel, lead or a coin fixed here. */
        WEIGHT,
        /** An opening. */
        HOLE
    }

    /**
     * @param rings its outline, then its openings
     * @param stock a sheet of the workshop
     * @param layer counted from the back
     * @param body parts that have the same word here are glued together; {@code box}: it stands on the box and never
     *     moves; empty: it is a body of its own
     * @param paint {@code #rrggbb}; empty for bare wood
     */
    public record PlannedPart(
            String name, List<List<Pair>> rings, String stock, int layer, String body, String paint) {}

    /**
     * @param parts the parts it goes through; for a weight the one it is fixed to
     * @param grams of a weight
     */
    public record PlannedPoint(String name, Pair at, double radius, PointRole role, List<String> parts, double grams) {}

    /** A line burnt on a part. */
    public record PlannedLine(String part, List<Pair> points) {}
}

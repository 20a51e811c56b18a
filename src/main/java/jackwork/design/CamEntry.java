package jackwork.design;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * @param part the cam; its outline is made from the motion
 * @param at its centre; the circle with the cam's own name when absent
 * @param follower the peg that rides on it, as drawn
 * @param rod the peg's rod
 * @param swings the pin about which the follower swings; moves are then degrees, counter-clockwise positive
 * @param along direction in which a follower goes straight, degrees; moves are then mm
 * @param motion what the follower does while the cam makes one turn counter-clockwise, from the drawn position on
 */
@About("A cam and its round follower; the cam only pushes, weight keeps the follower on it.")
public record CamEntry(
        String part,
        @Nullable Place at,
        PointOf follower,
        String rod,
        @Nullable String swings,
        @Unit("deg") @Nullable Double along,
        List<PieceEntry> motion) {

    /**
     * @param law harmonic, cycloidal, 3-4-5, 4-5-6-7, modified-sine or modified-trapezoid; any for a dwell
     * @param turn degrees of the cam
     * @param move mm or degrees of the follower; a dwell when absent
     */
    @About("One piece of a cam's motion.")
    public record PieceEntry(
            @Nullable String law,
            @Unit("deg") double turn,
            @Nullable Double move) {

        /** mm or degrees; 0 for a dwell. */
        public double moved() {
            return move == null ? 0 : move;
        }
    }
}

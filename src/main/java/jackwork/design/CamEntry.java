package jackwork.design;

import java.util.List;
import org.jspecify.annotations.Nullable;

@About("A cam and its round follower; the cam only pushes, weight keeps the follower on it.")
public record CamEntry(
        @About("The cam; its outline is made from the motion.")
        @Names(value = NameKind.PART, whose = Names.Whose.OWN, shapes = true)
        String part,

        @About("Its centre; the circle with the cam's own name when left out.") @OwnCircle @Nullable
        Place at,

        @About("The peg that rides on it, as drawn.") PointOf follower,

        @About("The peg's rod.") @Names(NameKind.ROD) String rod,

        @About("The pin about which the follower swings; moves are then degrees, counter-clockwise positive.")
        @Names(NameKind.PIN)
        @Nullable
        String swings,

        @About("Direction in which a follower goes straight; moves are then mm.")
        @Quantity(unit = "deg", least = -360, most = 360, why = "a full turn holds every direction")
        @Nullable
        Double along,

        @About("What the follower does while the cam makes one turn counter-clockwise, from the drawn position on.")
        List<PieceEntry> motion)
        implements JointEntry {

    @About("One piece of a cam's motion.")
    public record PieceEntry(
            @About("How it moves; any for a dwell.")
            @OneOf({"harmonic", "cycloidal", "3-4-5", "4-5-6-7", "modified-sine", "modified-trapezoid"})
            @Nullable
            String law,

            @About("Of the cam.")
            @Quantity(unit = "deg", least = 0.1, most = 360, usualFrom = 2, why = "all pieces together make one turn")
            double turn,

            @About("Of the follower, mm or degrees; a dwell when left out.")
            @Quantity(
                    least = -180,
                    most = 180,
                    usualFrom = -60,
                    usualTo = 60,
                    why = "no follower on a figure goes further")
            @Nullable
            Double move) {

        /** mm or degrees; 0 for a dwell. */
        public double moved() {
            return move == null ? 0 : move;
        }
    }

    @Override
    public void check(String path, Around around) {
        if ((swings == null) == (along == null)) {
            around.problem(path, "expected either swings (a pin) or along (a direction), to say how the follower goes");
        }
        double turn = 0;
        double move = 0;
        for (int i = 0; i < motion.size(); i++) {
            PieceEntry piece = motion.get(i);
            if (piece.law() == null && piece.moved() != 0) {
                around.problem(path + ".motion." + i, "a piece that moves needs a law: harmonic, cycloidal, ...");
            }
            turn += piece.turn();
            move += piece.moved();
        }
        if (Math.abs(turn - 360) > 1e-6 || Math.abs(move) > 1e-6) {
            around.problem(
                    path + ".motion",
                    "the pieces turn by " + turn + " degrees and leave the follower " + move
                            + " away; expected 360 and 0: lengthen a dwell, and let every rise fall again");
        }
    }
}

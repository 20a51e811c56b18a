package jackwork.parts;

import java.util.List;

/**
 * A whole turn of a cam: what its follower does, piece by piece. Angles in rad of the cam's turning,
 * counter-clockwise; moves in mm, or rad for a follower that swings.
 */
public final class CamMotion {

    private static final double NOTHING = 1e-9;

    /**
     * @param turn rad of the cam
     * @param move of the follower away from where it was, mm or rad; 0 for a dwell
     */
    public record Piece(CamLaw law, double turn, double move) {}

    private final List<Piece> pieces;

    /** @throws IllegalArgumentException unless the pieces make one turn and bring the follower back */
    public CamMotion(List<Piece> pieces) {
        double turn = pieces.stream().mapToDouble(Piece::turn).sum();
        double move = pieces.stream().mapToDouble(Piece::move).sum();
        if (Math.abs(turn - 2 * Math.PI) > 1e-6) {
            throw new IllegalArgumentException(String.format(
                    java.util.Locale.ROOT,
                    "the pieces turn by %.3f degrees in all, expected 360; lengthen or shorten a dwell",
                    Math.toDegrees(turn)));
        }
        if (Math.abs(move) > 1e-6) {
            throw new IllegalArgumentException(String.format(
                    java.util.Locale.ROOT,
                    "the pieces leave the follower %.4f from where it began, expected 0: every rise must fall again",
                    move));
        }
        if (pieces.stream().anyMatch(piece -> !(piece.turn() > NOTHING))) {
            throw new IllegalArgumentException("every piece must turn by more than 0 degrees");
        }
        this.pieces = List.copyOf(pieces);
    }

    /** In order, counter-clockwise from how it is drawn. */
    public List<Piece> pieces() {
        return pieces;
    }

    /**
     * @param angle of the cam, any
     * @param into move, and its first and second derivative by the angle, [≥ 4]
     */
    void at(double angle, double[] into) {
        double left = angle % (2 * Math.PI);
        left = left < 0 ? left + 2 * Math.PI : left;
        double moved = 0;
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            if (left <= piece.turn() || i == pieces.size() - 1) {
                piece.law().at(Math.min(1, left / piece.turn()), into);
                into[0] = moved + piece.move() * into[0];
                into[1] *= piece.move() / piece.turn();
                into[2] *= piece.move() / (piece.turn() * piece.turn());
                return;
            }
            left -= piece.turn();
            moved += piece.move();
        }
    }
}

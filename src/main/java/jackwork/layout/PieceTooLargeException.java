package jackwork.layout;

/** A piece fits its sheet at none of the angles it may lie at. */
public final class PieceTooLargeException extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final transient Piece piece;

    PieceTooLargeException(Piece piece, double length, double width) {
        super(String.format(
                java.util.Locale.ROOT,
                "%s is %.1f x %.1f mm with its clearance and fits %.1f x %.1f mm at none of its angles",
                piece.name(),
                piece.outline().bounds().width(),
                piece.outline().bounds().height(),
                length,
                width));
        this.piece = piece;
    }

    public Piece piece() {
        return piece;
    }
}

package jackwork.bench;

/** A piece that was made, of a revision, in a batch. */
public record Piece(Stamp stamp, String serial, RevisionName revision, String batch) implements Stamped {

    public Piece {
        Texts.require("serial", serial, 1, 40);
        Texts.require("batch", batch, 0, 80);
    }
}

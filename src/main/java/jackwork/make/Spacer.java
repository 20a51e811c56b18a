package jackwork.make;

/** A printed column that holds the plates of the works apart; a screw goes through it. */
final class Spacer {

    /** mm. */
    static final double OUTSIDE = 8;

    private Spacer() {}
}

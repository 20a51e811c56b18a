package jackwork.builds;

import jackwork.motion.coin.CycleStage;

/** Why a build fails with a coin: the first thing that does not happen. */
public enum Cause {
    SLOT("the coin does not go through the slot"),
    GAP("the coin sticks between its walls"),
    BEARING("the bucket's bearing binds on its rod"),
    TWIST("the bucket twists against its neighbours"),
    LANDS("the coin does not reach the bucket"),
    FREES("the coin does not take the strut out of the lever's way"),
    ACTS("the lever does not go all the way down"),
    THROWN("the coin is not thrown into the box"),
    RETURNS("the lever does not come back"),
    LOCKS("the bucket does not lock the lever again"),
    REFUSES("the lever goes down again without a coin");

    private final String words;

    Cause(String words) {
        this.words = words;
    }

    /** As a sentence about the piece. */
    public String words() {
        return words;
    }

    static Cause of(CycleStage stage) {
        return valueOf(stage.name());
    }
}

package jackwork.motion.model;

/** Which way the lever goes: friction always acts against it. */
public enum Direction {
    PRESSING(+1),
    RETURNING(-1);

    private final int sign;

    Direction(int sign) {
        this.sign = sign;
    }

    /** +1 while the stroke grows, −1 while it shrinks. */
    public int sign() {
        return sign;
    }
}

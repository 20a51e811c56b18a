package jackwork.motion.coin;

/**
 * How a coin's whole way is followed: its visitor, and what counts as down, back and locked. Why each stands where it
 * does, and what goes wrong when it is moved, is reasoned; counts are those of {@code check --builds 20} of the four
 * demos. {@code docs/benchmarks/refinement.md} says what finer steps change.
 */
public final class CoinLimits {

    private CoinLimits() {}

    /** Longest step, s. Longer, and what happens between events is off by its square; shorter takes as much longer. */
    public static final double STEP = 2e-3;

    /**
     * How long each stage is waited for, s, beyond what the finger takes by its own speed. Less, and a slow return counts as hung up; more, and one that hangs up is
     * told later.
     */
    public static final double PATIENCE = 1.5;

    /** The visitor presses so long after the lever came free, s. More, and a bucket that bounces has come to rest first. */
    public static final double REACTION = 0.15;

    /** The visitor holds it down so long, s. More, and what swings settles before it is let go. */
    public static final double HOLD = 0.1;

    /** A visitor in a hurry presses again for so long, s; a slow one for as long as the press takes. */
    public static final double SECOND_PRESS = 0.2;

    /**
     * A coin is down when it is so near the ledge, mm. Less, and a coin that bounces is waited for; more, and it counts
     * as down in the air.
     */
    public static final double AT_LEDGE = 0.5;

    /**
     * A box is shaken so long before the press, and during it, s. Less than a swing of the bucket, and a shake does
     * nothing.
     */
    public static final double SHAKEN = 1;

    /** Coins follow each other so long after, s: the first has come to rest, nobody has pressed yet. */
    public static final double APART = 0.4;

    /** A coin not yet let go falls where it meets nothing, mm from the box. Anything that no part reaches. */
    static final double FAR_AWAY = 1e5;

    /**
     * Steps that a cycle may try, more for a slow press; one to two thousand as a rule. One that tries so many gets nowhere and is not
     * computed.
     */
    static final int MOST_ATTEMPTS = 40_000;

    /** Times closer together are the same, s. */
    static final double INSTANT = 1e-9;

    /** Stroke at which the lever counts as down. Less, and a gesture that ends early counts as whole. */
    public static final double DOWN = 0.98;

    /** Stroke at which it counts as back. More, and a lever that hangs up a little counts as back. */
    public static final double BACK = 0.02;

    /**
     * A catch that overlaps by this share of what it does at rest has locked. Less, and half a catch counts as one;
     * more, and a bucket that still swings counts as open.
     */
    public static final double LOCKED = 0.8;

    /**
     * A second press is held when the lever never gets so far, as a stroke. More, and a lever that gives way counts as
     * held; less, and one that gives a little before its tooth bears counts as free.
     */
    public static final double HELD = 0.5;

    /** Friction of coin on coin, metal on metal, dry: a guess, from memory. More, and coins climb each other. */
    public static final double COIN_ON_COIN = 0.2;

    /**
     * Outlines are followed within this, mm. More, and gaps are off by as much; less takes longer, with the number of
     * their sides.
     */
    public static final double OUTLINE = 0.05;

    /**
     * Strokes at which a figure is worked out to be folded into the lever, both ends included. Fewer, and quick passages
     * are smoothed over.
     */
    static final int FOLDING_SAMPLES = 65;

    /**
     * Something that only pushes must not be closed by more on the way, mm: it would bear, and the figure is not folded.
     * Farther from 0, and a figure is folded that leans on its stop; nearer, and rounding forbids it.
     */
    static final double FOLDING_CLOSED = -1e-6;

    /** A finger nearer the pivot tells nothing of moments, mm. */
    static final double SHORTEST_ARM = 1;
}

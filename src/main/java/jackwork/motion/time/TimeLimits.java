package jackwork.motion.time;

/**
 * What the engine of motion in time takes for closed, for still and for unchanged. Why each stands where it does, and
 * what goes wrong when it is moved, is reasoned; counts are those of {@code check --builds 20} of the four demos.
 * {@code docs/benchmarks/refinement.md} says what finer steps change.
 */
public final class TimeLimits {

    private TimeLimits() {}

    /**
     * Gaps up to this are closed, mm. Larger, and parts hover by as much; smaller, and what lies at rest opens and
     * closes for ever.
     */
    public static final double CLOSED = 1e-5;

    /**
     * A gap may be this far below 0 before the step is shortened to land on it, mm. Larger, and overlaps grow; smaller,
     * and landings take many more steps.
     */
    static final double OVERRUN = 5e-7;

    /**
     * Steps are not shortened further for accuracy's sake, s: a two-hundredth of the usual one. Larger, and blows are
     * placed so much off; smaller takes longer at each landing.
     */
    static final double SHORTEST = 1e-5;

    /**
     * Joints that miss by no more need no projection, mm. Larger, and closure drifts by as much a step; smaller than
     * 1e-12, and every step is projected.
     */
    static final double CLOSE_ENOUGH = 1e-10;

    /**
     * Projections of a step at the most: one to three, all of them in one step of a hundred. Fewer, and quick steps are
     * halved.
     */
    static final int PROJECTIONS = 4;

    /**
     * Tries to land on a gap: half need four or five, one in a hundred uses all. Fewer, and a step ends a little before
     * the touch.
     */
    static final int LANDINGS = 12;

    /**
     * Solutions of one step until forces that hang on each other settle: two to five; one in a hundred of the windmill's
     * needs twenty-five.
     */
    static final int RESOLVES = 40;

    /**
     * As many again, led half way, for what has not settled by then. Fewer of either, and steps are halved, at last not
     * computed.
     */
    static final int LED = 60;

    /**
     * What is so small a share of the largest impulse of the step moves nothing. Larger, and light parts feel no
     * friction; smaller takes more rounds.
     */
    static final double NO_IMPULSE = 1e-6;

    /**
     * Change of a reaction, or a force that follows another, that counts as settled, as a share. Larger, and friction is
     * wrong by as much; smaller takes more rounds.
     */
    static final double UNCHANGED = 1e-3;

    /**
     * The same in a blow: there are few, and none that comes after evens out what one has wrong. Larger, and friction in
     * blows is wrong by as much; smaller than 1e-12, and rounding never settles.
     */
    static final double BLOW_UNCHANGED = 1e-9;

    /** The same of a string's spans, whose tensions multiply. Larger, and the error grows with each eye. */
    static final double CHAIN_UNCHANGED = 1e-6;

    /**
     * Slower approaches are not a blow, mm/s. Larger, and parts sink in slowly; smaller, and what lies at rest is struck
     * for ever.
     */
    static final double FAINT = 1e-6;

    /**
     * How often restitution is lowered for a blow that would raise the energy; never in the demos. The last time takes
     * all of it away; fewer, and such a blow loses more than it must.
     */
    static final int LOWERINGS = 30;

    /** Pivots smaller than this share of the greatest stand for rows that repeat others. As in {@code ModelLimits}. */
    static final double REPEATED_PIVOT = 1e-11;

    /**
     * Miss of joints at which a run counts as not computed, mm; steps that miss by half of it are halved, so the demos
     * come to 5e-4.
     */
    static final double MOST_CLOSURE = 1e-3;

    /**
     * The same for overlap of what touches before it is set apart, mm: it comes where a touch goes round a corner within
     * a step; 0.013 at the most in the demos. Larger, and a catch can be passed through by as much; smaller, and whole
     * runs are lost at corners.
     */
    static final double MOST_OVERLAP = 0.05;

    /** The same for the miss of the complementarity, as a share of its scale; 2e-6 at the most in the demos. */
    static final double MOST_MISS = 1e-3;

    /**
     * The same for energy from nowhere, as a share of the most that has been exchanged (and of the weight lifted by
     * {@link #CLOSED} at the least: what only stands exchanges rounding); 1e-8 at the most in the demos. Larger, and parts
     * may be thrown that would not be; smaller, and rests in many touches count as not computed.
     */
    static final double MOST_GAIN = 0.02;

    /**
     * An axis that slides slower than this sticks unless its bound is passed, mm/s (rad/s × 100). Larger, and slow
     * sliding creeps in steps; smaller, and what sticks is taken to slide by rounding.
     */
    static final double STILL = 1e-6;

    /**
     * A gap no wider, between bodies that go no farther in a step, stays as it is, mm: closing it would move what
     * friction holds still, and no forces fit both. Larger, and parts hover; smaller, and such steps are not computed.
     */
    static final double SHUT = 1e-6;
}

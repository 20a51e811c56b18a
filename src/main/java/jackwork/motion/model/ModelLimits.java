package jackwork.motion.model;

/**
 * What the model of a mechanism takes for nothing, for near and for too deep. Why each stands where it does, and what
 * goes wrong when it is moved, is reasoned; counts are those of {@code check --builds 20} of the four demos.
 * {@code docs/benchmarks/refinement.md} says what finer steps change.
 */
public final class ModelLimits {

    private ModelLimits() {}

    /**
     * How far off its turning point an angle is counted, mm: angles and ways are then of one size. Stands for the size
     * of a figure; ten times as much would let angles settle ten times as finely as ways, and the same for the reverse.
     */
    public static final double ARM = 100;

    /**
     * A pivot below this share of the greatest diagonal entry stands for a row that repeats others. Rounding leaves
     * 1e-15; larger, and a long figure's light links are taken for repetitions; smaller, and the force of a repeated row
     * is noise.
     */
    static final double REPEATED_PIVOT = 1e-12;

    /**
     * An entry of the joints' rows (1 to 100 as a rule) that is nothing: which coordinates the lever decides hangs on
     * it. Larger, and a link that nearly stands in line counts as free; smaller, and rounding decides what is free.
     */
    static final double DECIDED = 1e-7;

    /**
     * A joint may miss by this share of the lever's way before it holds the lever fast. Larger, and a figure that is
     * pinned to the box passes; smaller, and one that is drawn by hand is refused.
     */
    static final double GIVES = 1e-3;

    /**
     * Closure of joints that counts as closed, mm: two orders below the 1e-9 mm that is promised. Larger, and what is
     * promised is missed; smaller than 1e-13, and rounding never lets it close.
     */
    public static final double CLOSED = 1e-11;

    /**
     * Rounds in which rows that do not fit change all together: nine of ten problems need three at most. Fewer only
     * sends more problems to the slower search.
     */
    static final int ROUNDS_AT_ONCE = 12;

    /**
     * Rounds in which one row changes at a time, once all together went in circles. Fewer only sends more problems to
     * the sweeps.
     */
    static final int ROUNDS = 40;

    /** Rounds begun with what the sweeps found. Most use all of them, and go on to sweep. */
    static final int ROUNDS_AS_SWEPT = 12;

    /**
     * Sweeps through all rows at the most. Half of the problems that come to them need ten, some use all; fewer, and
     * stiff stacks of touches count as not solved.
     */
    static final int SWEEPS = 10_000;

    /** After so many sweeps it looks whether the answer is near enough: time alone hangs on it. */
    static final int LOOKS = 10;

    /**
     * Miss at which sweeps end, as a share of the greatest motion. Larger, and the rounds after them begin with wrong
     * rows; smaller takes longer.
     */
    static final double SWEPT = 1e-7;

    /**
     * Miss of an answer that counts as fitting, as a share of the greatest motion without forces. Larger, and touches
     * overlap by as much in each step; smaller than 1e-12, and rounding makes right answers count as wrong.
     */
    static final double FITS = 1e-9;

    /**
     * A sticking row gives way by this share of what its force would move without it: of rows that share a force the
     * split is then one and the same. Larger, and what sticks creeps; smaller, and the split is rounding's.
     */
    static final double YIELD = 1e-9;

    /**
     * How far a row may be on the wrong side, as a share, before its state is changed. Larger than what fits, and wrong
     * states stay; smaller, and rounding changes states to and fro.
     */
    static final double SLACK = 1e-11;

    /**
     * Places of one pair that are looked at together. Fewer, and a near one may be dropped before a nearer one is merged
     * with another.
     */
    static final int PLACES_LOOKED_AT = 8;

    /**
     * Places of one pair that can bear at the same time: two for a flat rest, two more for a corner's other side. Fewer,
     * and a part that lies flat rocks; more repeat each other.
     */
    static final int PLACES = 4;

    /**
     * Gaps wider than this are not looked at, mm. Less than a part goes in one step, and it passes through; more only
     * takes longer.
     */
    static final double RANGE = 3;

    /**
     * Deeper than this is not a touch but the far side of a thin part, mm. More than half the thinnest web, and a part
     * is thrown out on its far side; less than a step's way, and it passes through.
     */
    static final double DEEPEST = 1.5;

    /**
     * Sides that a corner is behind by so much more than by another are none that it touches, mm. Larger, and a corner
     * in a notch touches sides that it does not reach; smaller, and rounding chooses.
     */
    static final double SAME_DEPTH = 0.01;

    /**
     * Places closer together than this with nearly the same normal are one, mm. Smaller, and rows repeat each other
     * along a curve; larger, and a short flat rest loses its second place.
     */
    static final double SAME_PLACE = 1.0;

    /**
     * Cosine of the angle up to which normals are nearly the same: 8°, two corners of a curve as it is followed. As the
     * one above.
     */
    static final double SAME_NORMAL = Math.cos(Math.toRadians(8));

    /** Parts may move so far before it is looked again which sides are near, mm: time alone hangs on it. */
    static final double SKIN = 2;

    /** Sides in a row that share one box: time alone hangs on it. */
    static final int CHUNK = 8;

    /**
     * Places of a cam's curve that are tried for the follower's foot. Fewer than its bumps need, and the follower begins
     * on the wrong bump.
     */
    static final int CAM_SCANNED = 360;

    /**
     * Steps in which strings are wound to a pose that was not come to step by step, mm (rad × 100). Longer than half a
     * turn between two guides, and whole turns are lost; shorter only takes longer.
     */
    static final double WINDING = 25;

    /** Such steps at the most: 400 turns. More only takes longer. */
    static final int MOST_WINDING = 10_000;

    /** Sine of half an angle from which on a displacement has a pole. Smaller, and the pole is far off and uncertain. */
    static final double TURNS = 1e-3;

    /** Sweeps of Jacobi's rotations; the demos need one. Too few, and stiffness is not told from rounding. */
    static final int EIGEN_SWEEPS = 30;
}

package jackwork.motion.rest;

/**
 * What the engine of poses at rest takes for still, for settled and for no rest at all. Why each stands where it does,
 * and what goes wrong when it is moved, is reasoned; counts are those of {@code check --builds 20} of the four demos.
 * {@code docs/benchmarks/refinement.md} says what finer steps change.
 */
public final class RestLimits {

    private RestLimits() {}

    /**
     * Newton's steps for one pose; the demos need four at most. Fewer, and steps along the stroke are halved; more only
     * delays that.
     */
    static final int POSE_ITERATIONS = 12;

    /**
     * A prediction corrected by more than this has perhaps met another way of putting the links together, mm (rad ×
     * 100): the step is halved. Larger, and a link can flip over unseen; smaller only takes more steps.
     */
    static final double MOST_CORRECTION = 4.0;

    /**
     * A determinant so far below the drawn one is none, as a natural logarithm: links stand in line. Higher, and a lever
     * near its dead point is called dead; lower, and steps go on into rounding.
     */
    static final double SINGULAR = Math.log(1e-5);

    /**
     * Correction as a share of the way predicted; more, and the path has a kink there that is located. Higher, and a
     * change of what holds is placed a sample late; lower only takes more steps.
     */
    static final double KINK = 0.2;

    /**
     * Corrections smaller than this are no kink, mm (rad × 100). Higher, and small changes are placed late; lower, and
     * rounding is located.
     */
    static final double LEAST_KINK = 1e-7;

    /** Stroke within which a change of what holds, or a jump, is placed. Larger, and events are told so much off. */
    static final double CHANGE_LOCATED = 1e-6;

    /**
     * How far past an edge the other rest is looked for, as a share of the stroke. Less, and a part that tips slowly
     * counts as jammed; more, and one that jams counts as tipped.
     */
    static final double FARTHEST_EDGE = 0.05;

    /**
     * Newton's steps for the forces of one pose: two to five, fourteen at the most. Fewer, and friction is brought in by
     * smaller shares.
     */
    static final int FORCE_ITERATIONS = 40;

    /**
     * A joint that turns or slides less than this per unit of stroke has no sense of sliding, rad (mm). Larger, and slow
     * joints have no friction; smaller, and rounding gives a fixed joint a sense.
     */
    static final double STILL = 1e-9;

    /** Newton's steps for a pose on a branch. Fewer, and a way that leads on is missed. */
    static final int BRANCH_ITERATIONS = 12;

    /**
     * Poses that differ by less are one, mm (rad × 100). Larger, and two branches count as one; smaller, and one counts
     * as two.
     */
    static final double SAME_BRANCH = 1e-4;

    /**
     * A branch begins where the pose is: what lies farther off per unit of stroke is none of it, mm (rad × 100). Larger,
     * and the other way of putting the links together counts as a branch; smaller, and a steep one is missed.
     */
    static final double NEAR_BRANCH = 400;

    /**
     * Softer directions are taken as stiff as this, as a share of weight/100 mm: steps then stay within sight. Larger,
     * and rests are reached slowly; smaller, and a step can pass the rest.
     */
    static final double LEAST_STIFFNESS = 0.02;

    /**
     * Step of the central differences of forces, mm (rad × 100). Larger, and curvature enters; smaller, and rounding
     * does.
     */
    static final double DIFFERENCE = 1e-4;

    /**
     * Changes of what holds between two samples; more means that parts flutter, and the stroke is not computed. Fewer,
     * and a rattling chain is not computed.
     */
    static final int MOST_CHANGES = 12;

    /** Steps to a dead point at the most; the demos look for none. */
    static final int DEAD_POINT_STEPS = 4000;

    /**
     * Step by which forces at the ends of the stroke are looked for within it, as a share of the stroke; three such
     * steps make a parabola. Larger, and what bends more than that is told wrong; smaller, and what slides slowly has no
     * sense of sliding yet.
     */
    static final double WITHIN = 1e-4;

    /** Stroke within which a dead point is placed. Larger, and it is told so much off. */
    static final double DEAD_POINT_LOCATED = 1e-10;

    /**
     * How far past a change point its branches are looked at, as a share of the stroke. Less, and branches are not yet
     * apart; more, and the next event is among them.
     */
    static final double PAST = 0.01;

    /**
     * Forces beyond so many times the whole weight come of rows that contradict each other: it jams. Less, and a strong
     * wedge counts as jammed; more, and a jam counts as a rest with wild forces.
     */
    static final double JAMMED = 1000;

    /**
     * Steps to a rest at the most: five to ten as a rule; of the windmill's rests one in ten takes forty or more, and
     * three in a hundred are none. Fewer, and slow rests count as none.
     */
    static final int BALANCE_STEPS = 120;

    /**
     * Rows with gaps wider than this cannot take hold within one step, mm. Less than a part can fall in one step, and it
     * passes through; more only takes longer.
     */
    static final double NEAR = 25;

    /**
     * Longest step of any coordinate, mm (rad × 100). Longer, and a part can pass a thin stop; shorter only takes
     * longer.
     */
    static final double LONGEST = 2;

    /**
     * Settled when a step moves no coordinate by more than this, mm (rad × 100). Larger, and forces are told before they
     * balance; smaller than 1e-12, and rounding never settles.
     */
    static final double SETTLED = 1e-10;

    /** Share to which the joints' forces must come out alike from step to step. */
    static final double ALIKE = 1e-10;

    /**
     * The same once {@link #PATIENT} steps did not bring them so near. Larger, and a friction that swings counts as
     * settled.
     */
    static final double LESS_ALIKE = 1e-6;

    /** Steps after which the coarser share will do. */
    static final int PATIENT = 40;

    /**
     * Softer than this, as a share of weight/100 mm, is no rest; what differences of forces cannot tell from 0 is.
     * Nearer 0, and rounding tips a part that leans on nothing; farther, and a part stands on its edge.
     */
    static final double ON_EDGE = -1e-6;

    /**
     * How far a part is pushed off its edge, mm (rad × 100). Less, and it stays; more, and it may land past its next
     * rest.
     */
    static final double TIPPED = 0.5;

    /**
     * How often friction may lock it on the way to one rest before it counts as locked. Fewer, and a passing lock is
     * told as one; more only takes longer.
     */
    static final int MOST_LOCKS = 3;
}

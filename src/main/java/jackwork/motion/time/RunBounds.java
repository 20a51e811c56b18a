package jackwork.motion.time;

/**
 * What a run in time may miss and still count: closure of joints, overlap of what touches, complementarity, friction
 * that has not settled, and energy that came from nowhere; of each step, and the most so far. One per thread; allocates nothing after construction.
 */
final class RunBounds {

    double stepClosure;
    double stepOverlap;
    double stepResidual;
    boolean stepSettled;
    private double closure;
    private double overlap;
    private double residual;
    private boolean settled;
    private double energyAtStart;
    /** Most energy that was kinetic, went into height and springs, or came from outside so far, µN·mm. */
    private double exchanged;

    private double fromNowhere;

    /**
     * @param energy at the start, and how much of it kinetic, µN·mm
     * @param nothing energy so small that it does not count: what only stands exchanges no more than rounding does
     */
    void begin(double energy, double kinetic, double nothing) {
        closure = 0;
        overlap = 0;
        residual = 0;
        settled = true;
        energyAtStart = energy;
        exchanged = Math.max(kinetic, nothing);
        fromNowhere = 0;
    }

    /** Energy that somebody put in or took out between steps, µN·mm. */
    void put(double energy) {
        energyAtStart += energy;
    }

    /** Whether the last attempt strained the joints so much that a shorter step must do. */
    boolean isCoarse() {
        return !stepSettled
                || stepClosure > TimeLimits.MOST_CLOSURE / 2
                || stepOverlap > TimeLimits.MOST_OVERLAP / 2
                || stepResidual > TimeLimits.MOST_MISS / 2;
    }

    /** Takes the step in. */
    void takeStep() {
        closure = Math.max(closure, stepClosure);
        overlap = Math.max(overlap, stepOverlap);
        residual = Math.max(residual, stepResidual);
        settled &= stepSettled;
    }

    void takeBlow(double miss, boolean blowSettled) {
        residual = Math.max(residual, miss);
        settled &= blowSettled;
    }

    /**
     * Whether the run counts so far.
     *
     * @param energy now, and how much of it kinetic, µN·mm
     * @param work that came from outside since the start, µN·mm
     */
    boolean hold(double energy, double kinetic, double work) {
        double gained = energy - energyAtStart;
        exchanged = Math.max(exchanged, Math.max(kinetic, Math.abs(gained - kinetic)));
        exchanged = Math.max(exchanged, Math.abs(work));
        if (exchanged > 0) {
            fromNowhere = Math.max(fromNowhere, (gained - work) / exchanged);
        }
        return settled
                && closure <= TimeLimits.MOST_CLOSURE
                && overlap <= TimeLimits.MOST_OVERLAP
                && residual <= TimeLimits.MOST_MISS
                && fromNowhere <= TimeLimits.MOST_GAIN;
    }

    double gained(double energy) {
        return energy - energyAtStart;
    }

    double closure() {
        return closure;
    }

    double overlap() {
        return overlap;
    }

    double residual() {
        return residual;
    }

    boolean isSettled() {
        return settled;
    }

    double fromNowhere() {
        return fromNowhere;
    }
}

package jackwork.motion.time;

import jackwork.geometry.Wanted;
import jackwork.motion.model.Complementarity;
import jackwork.motion.model.Loads;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.Rows;

/**
 * A mechanism in time. Between events a midpoint rule of second order:
 * <pre>
 *   M (v⁺ − v⁻) = h F(q_mid) + Jᵀλ + Cᵀp + Tᵀφ,   J (v⁺ + v⁻) = 0 at q_mid = q + h v⁻/2
 *   q⁺ = q + h (v⁺ + v⁻)/2
 * </pre>
 * then positions and velocities are projected on the joints in the mass metric. Joints are solved directly
 * ({@link JointProjector}); touches, strings, stops, friction and the finger are a complementarity problem on
 * top ({@link Complementarity}). A step is shortened to land where a gap closes, and a blow is a step of its
 * own ({@link Blow}). Friction of pins is bound by this step's own reaction, solved again until that settles; where it does
 * not in the shortest step, the run is not computed. The same input gives the same bits. One per thread; allocates nothing after construction.
 */
public final class TimeStepper {

    private final Mechanism mechanism;
    private final Rows rows;
    private final Loads loads;
    private final StepForces forces;
    private final Blow blow;
    private final JointProjector projector;
    private final int n;
    private final double[] pose;
    private final double[] velocity;
    private final double[] startPose;
    private final double[] startVelocity;
    private final double[] middle;
    private final double[] load;
    private final double[] correction;
    private Finger finger = Finger.OFF;
    private Shake shake = Shake.NONE;
    /** Work that a shaken box has done on its parts, µN·mm. */
    private double shaken;

    private double time;
    private double longest;
    private double start;
    private final RunBounds bounds = new RunBounds();
    private int blows;
    private int attempts;
    private int mostAttempts = Integer.MAX_VALUE;
    private boolean computed = true;
    private double lastStep;

    /** @param longest step, s */
    public TimeStepper(Mechanism mechanism, double longest) {
        this.mechanism = mechanism;
        this.longest = longest;
        this.n = mechanism.coordinates();
        this.rows = new Rows(mechanism);
        this.loads = new Loads(mechanism);
        this.forces = new StepForces(mechanism, rows);
        this.blow = new Blow(mechanism, rows, forces);
        this.projector = new JointProjector(rows);
        this.pose = mechanism.drawnPose();
        this.velocity = new double[n];
        this.startPose = new double[n];
        this.startVelocity = new double[n];
        this.middle = new double[n];
        this.load = new double[n];
        this.correction = new double[rows.count];
        begin(pose, velocity);
    }

    /** Starts a run at time 0. */
    public void begin(double[] fromPose, double[] fromVelocity) {
        System.arraycopy(fromPose, 0, pose, 0, n);
        System.arraycopy(fromVelocity, 0, velocity, 0, n);
        time = 0;
        blows = 0;
        attempts = 0;
        computed = true;
        rows.forget();
        forces.forget();
        rows.at(pose);
        bounds.begin(energy(), kinetic(), mechanism.weight() * TimeLimits.CLOSED);
        shaken = 0;
    }

    public void finger(Finger next) {
        finger = next;
    }

    /** Shakes the box from now on; poses are as seen from the box. */
    public void shake(Shake next) {
        shake = next;
    }

    /** Puts a body somewhere, in the midst of a run; it touches nothing before or after. */
    public void put(int body, double x, double y, double fallsAt) {
        double before = energy();
        pose[3 * body] = x;
        pose[3 * body + 1] = y;
        pose[3 * body + 2] = 0;
        velocity[3 * body] = 0;
        velocity[3 * body + 1] = -fallsAt;
        velocity[3 * body + 2] = 0;
        rows.at(pose);
        bounds.put(energy() - before);
    }

    /** Ends a run that tries more steps than this, as one that is not computed: blows may follow each other without end. */
    public void mostAttempts(int most) {
        mostAttempts = most;
    }

    /** Longest step from now on, s. */
    void longest(double step) {
        longest = step;
    }

    /**
     * Runs until a time, s.
     *
     * @return false when the run left its bounds and is not computed
     */
    public boolean runTo(double until) {
        while (computed && until - time > 1e-12 * Math.max(1, until)) {
            Wanted.goOn();
            // The rest is parted evenly, so that no sliver of a step is left.
            double left = until - time;
            double parts = Math.ceil(left / longest - 1e-9);
            step(left / Math.max(1, parts));
        }
        return computed;
    }

    /** One step of at most {@code wanted} s, shortened to land on the first gap that closes. */
    public void step(double wanted) {
        System.arraycopy(pose, 0, startPose, 0, n);
        System.arraycopy(velocity, 0, startVelocity, 0, n);
        start = time;
        forces.keep();
        rows.keepWound();
        forces.places.noteStart();
        double most = wanted;
        for (int j = 0; j < mechanism.joints.length; j++) {
            most = Math.min(most, mechanism.joints[j].safeStep(rows, mechanism.firstRow[j], velocity));
        }
        double gap = attempt(most);
        while (bounds.isCoarse() && most > TimeLimits.SHORTEST) {
            most /= 2;
            forces.restore();
            gap = attempt(most);
        }
        if (gap < -TimeLimits.OVERRUN) {
            land(most, gap);
            while (bounds.isCoarse() && lastStep > TimeLimits.SHORTEST) {
                forces.restore();
                attempt(lastStep / 2);
            }
        }
        double carried = shake.at(start + lastStep / 2);
        for (int i = 0; i < n && carried != 0; i += 3) {
            shaken -= carried / mechanism.inverseMass[i] * (pose[i] - startPose[i]);
        }
        bounds.takeStep();
        if (blow.strike(pose, velocity, Math.max(lastStep, 0.1 * longest), finger)) {
            blows++;
            bounds.takeBlow(blow.residual(), forces.isSettled());
        }
        note();
    }

    /** Illinois' method on the step length for the least gap; ends at most a hair beyond the touch. */
    private void land(double wanted, double gapAtEnd) {
        double low = 0;
        double gapLow = forces.leastGapAtStart();
        double high = wanted;
        double gapHigh = gapAtEnd;
        int stuck = 0;
        for (int k = 0; k < TimeLimits.LANDINGS; k++) {
            double share = gapLow > 0 ? gapLow / (gapLow - gapHigh) : 0.5;
            double next = low + Math.max(0.02, Math.min(0.98, share)) * (high - low);
            forces.restore();
            double gap = attempt(next);
            if (Math.abs(gap) <= TimeLimits.OVERRUN || next < 1e-9) {
                return;
            }
            if (gap > 0) {
                low = next;
                gapLow = gap;
                gapHigh = stuck > 0 ? gapHigh / 2 : gapHigh;
                stuck = Math.max(1, stuck + 1);
            } else {
                high = next;
                gapHigh = gap;
                gapLow = stuck < 0 ? gapLow / 2 : gapLow;
                stuck = Math.min(-1, stuck - 1);
            }
        }
        // The least gap may change over from one row to another: then it ends short of the touch, never beyond it.
        if (high == lastStep && low > 0) {
            forces.restore();
            attempt(low);
        }
    }

    /** Steps by h from the start that is kept; returns the least gap at the end. */
    private double attempt(double h) {
        attempts++;
        lastStep = h;
        System.arraycopy(startPose, 0, pose, 0, n);
        System.arraycopy(startVelocity, 0, velocity, 0, n);
        rows.giveBackWound();
        for (int i = 0; i < n; i++) {
            middle[i] = pose[i] + 0.5 * h * velocity[i];
        }
        rows.at(middle);
        loads.force(rows, load);
        rows.stepInertia(h, startVelocity, load);
        double carried = shake.at(start + h / 2);
        for (int i = 0; i < n && carried != 0; i += 3) {
            load[i] -= carried / mechanism.inverseMass[i];
        }
        bounds.stepResidual = forces.solve(h, load, velocity, finger);
        bounds.stepSettled = forces.isSettled();
        for (int i = 0; i < n; i++) {
            pose[i] += 0.5 * h * (startVelocity[i] + velocity[i]);
        }
        time = start + h;
        return project();
    }

    /**
     * Brings positions back on the joints, and out of each other but not into anything that the step has left open; then
     * velocities. Returns the least open gap.
     */
    private double project() {
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < TimeLimits.PROJECTIONS; k++) {
            rows.at(pose);
            if (k == 0) {
                forces.places.noteEnd();
            }
            projector.clear();
            double miss = 0;
            double deep = 0;
            least = Double.POSITIVE_INFINITY;
            for (int r = 0; r < rows.count; r++) {
                if (rows.gap[r] == Double.POSITIVE_INFINITY) {
                    continue;
                }
                int was = forces.places.inTheMiddle(r);
                boolean bears = was >= 0 && forces.bears(was);
                if (!mechanism.pushesOnly[r]) {
                    projector.add(r);
                    miss = Math.max(miss, Math.abs(rows.gap[r]));
                } else if ((bears || forces.places.leftOpen(r)) && rows.gap[r] < 0) {
                    // Only ever apart: a bearing row that has opened is left to close by itself.
                    projector.add(r);
                    deep = Math.max(deep, -rows.gap[r]);
                } else if (!bears && (was < 0 || !forces.places.wasClosed(was))) {
                    least = Math.min(least, rows.gap[r]);
                }
            }
            if (k == 0) {
                bounds.stepClosure = miss;
                bounds.stepOverlap = deep;
            }
            if (Math.max(miss, deep) <= TimeLimits.CLOSE_ENOUGH) {
                break;
            }
            projector.factor();
            for (int i = 0; i < projector.size(); i++) {
                correction[i] = -rows.gap[projector.row(i)];
            }
            projector.solve(correction);
            projector.apply(correction, pose);
        }
        projector.clear();
        for (int r = 0; r < rows.count; r++) {
            if (!mechanism.pushesOnly[r] || (rows.gap[r] <= TimeLimits.CLOSED && bore(r))) {
                projector.add(r);
            }
        }
        projector.factor();
        projector.project(velocity, correction);
        return least;
    }

    private boolean bore(int row) {
        int was = forces.places.inTheMiddle(row);
        return was >= 0 && forces.bears(was);
    }

    private void note() {
        rows.at(pose);
        boolean finite = true;
        for (int i = 0; i < n; i++) {
            finite &= Double.isFinite(pose[i]) && Double.isFinite(velocity[i]);
        }
        // Asked in any case, so that its books are kept.
        boolean holds = bounds.hold(energy(), kinetic(), forces.fingerWork() + shaken);
        computed = finite && holds && attempts <= mostAttempts;
    }

    // What came of it.

    public double time() {
        return time;
    }

    /** [3 × bodies], the stepper's own array. */
    public double[] pose() {
        return pose;
    }

    /** Per second, [3 × bodies], the stepper's own array. */
    double[] velocity() {
        return velocity;
    }

    /** Kinetic and potential energy, µN·mm. */
    double energy() {
        return loads.potential(rows) + kinetic();
    }

    private double kinetic() {
        double sum = 0;
        for (int i = 0; i < n; i++) {
            sum += 0.5 * velocity[i] * velocity[i] / rows.inverseMass[i];
        }
        return sum;
    }

    /** Energy gained since the start, µN·mm: at most the finger's work. */
    double energyGained() {
        return bounds.gained(energy());
    }

    /** Force of a row in the last step, µN. */
    double rowForce(int row) {
        return forces.rowForce(row);
    }

    /** Force of the finger or the drive in the last step, µN. */
    double fingerForce() {
        return forces.fingerForce();
    }

    /** Work that the finger has done since the start, µN·mm. */
    double fingerWork() {
        return forces.fingerWork();
    }

    /** Largest miss of a joint before projection so far, mm. */
    public double closure() {
        return bounds.closure();
    }

    /** Largest overlap of what touches before it was set apart so far, mm. */
    double overlap() {
        return bounds.overlap();
    }

    /** Largest miss of the complementarity so far, as a share of its scale. */
    public double residual() {
        return bounds.residual();
    }

    /** Whether friction and all that hangs on loads has settled in every step and blow so far. */
    boolean isSettled() {
        return bounds.isSettled();
    }

    /** Most energy so far that came from nowhere, as a share of the most exchanged. */
    public double energyFromNowhere() {
        return bounds.fromNowhere();
    }

    int blows() {
        return blows;
    }

    /** Steps tried so far, those of landings included. */
    public int attempts() {
        return attempts;
    }

    /** False once a run has left its bounds: nothing of it counts. */
    public boolean isComputed() {
        return computed;
    }

    /** Whether joints repeat each other here: their loads are then shared as clearances decide. */
    boolean sharesLoads() {
        return forces.sharesLoads();
    }

    /** Whether a row that only pushes bears. */
    public boolean bears(int row) {
        return forces.bears(row);
    }
}

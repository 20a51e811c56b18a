package jackwork.motion;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoublePredicate;
import java.util.function.DoubleSupplier;

/** Solves a mechanism over the whole stroke in both directions and names what happens on the way. */
public final class StrokeSolver {

    private static final double LOCATED = 1e-10;

    private final Mechanism mechanism;
    private final PoseSolver poses;
    private final ForceSolver forces;
    private final List<MotionEvent> events = new ArrayList<>();

    private StrokeSolver(Mechanism mechanism) {
        this.mechanism = mechanism;
        this.poses = new PoseSolver(mechanism);
        this.forces = new ForceSolver(mechanism);
    }

    /** @param samples number of poses, both ends included, at least 2 */
    public static StrokeResult solve(Mechanism mechanism, int samples) {
        return new StrokeSolver(mechanism).run(samples);
    }

    private StrokeResult run(int samples) {
        double[] stroke = new double[samples];
        double[][] pose = new double[samples][mechanism.coordinates()];
        double[] press = new double[samples];
        double[] back = new double[samples];
        double[] free = new double[samples];
        double[] share = new double[samples];
        double[][] load = new double[samples][mechanism.pins.length];
        double closureError = 0;
        double reach = 1;
        for (int i = 0; i < samples; i++) {
            stroke[i] = (double) i / (samples - 1);
            if (reach == 1) {
                reach = advance(stroke[i]);
            }
            if (stroke[i] > reach) {
                Arrays.fill(pose[i], Double.NaN);
                Arrays.fill(load[i], Double.NaN);
                press[i] = back[i] = free[i] = share[i] = Double.NaN;
                continue;
            }
            System.arraycopy(poses.pose(), 0, pose[i], 0, pose[i].length);
            closureError = Math.max(closureError, poses.closureError());
            free[i] = force(Direction.PRESSING, 0);
            press[i] = force(Direction.PRESSING, 1);
            share[i] = forces.determinantShare();
            takeLoads(load[i]);
            back[i] = force(Direction.RETURNING, 1);
            share[i] = Math.min(share[i], forces.determinantShare());
            takeLoads(load[i]);
        }
        nameSpans(stroke, press, Direction.PRESSING);
        nameSpans(stroke, back, Direction.RETURNING);
        events.sort(Comparator.comparingDouble(MotionEvent::stroke));
        return new StrokeResult(
                mechanism, stroke, pose, press, back, free, share, load, List.copyOf(events), reach, closureError);
    }

    /** Moves on; returns 1, or the stroke at which it ends short and why is noted. */
    private double advance(double wanted) {
        double before = poses.stroke();
        if (!poses.moveTo(wanted)) {
            DeadPointSearch search = new DeadPointSearch(mechanism);
            double at = poses.stroke();
            var dead = search.find(poses, Direction.PRESSING);
            String what = dead.map(found -> moving(found.slack())).orElse("the mechanism's reach ends here");
            double where = dead.map(DeadPointSearch.DeadPoint::stroke).orElse(at);
            events.add(new MotionEvent(MotionEvent.Kind.DEAD_POINT, where, where, Direction.PRESSING, what));
            return Math.min(where, Math.nextDown(1.0));
        }
        for (Limit limit : limits()) {
            if (limit.gap().getAsDouble() < -LOCATED) {
                double low = before;
                double high = wanted;
                while (high - low > LOCATED) {
                    double middle = (low + high) / 2;
                    poses.moveTo(middle);
                    if (limit.gap().getAsDouble() < 0) {
                        high = middle;
                    } else {
                        low = middle;
                    }
                }
                events.add(new MotionEvent(MotionEvent.Kind.STOP_REACHED, low, low, Direction.PRESSING, limit.name()));
                return Math.min(low, Math.nextDown(1.0));
            }
        }
        return 1;
    }

    /** Something that ends a motion when its gap would become negative. */
    private record Limit(String name, DoubleSupplier gap) {}

    private List<Limit> limits() {
        List<Limit> limits = new ArrayList<>();
        double[] q = poses.pose();
        for (Mechanism.StopData stop : mechanism.stops) {
            limits.add(new Limit("stop " + stop.name(), () -> {
                double angle = Equations.angle(q, stop.a()) - Equations.angle(q, stop.b());
                return Math.min(angle - stop.from(), stop.to() - angle);
            }));
        }
        for (Mechanism.SlideData slide : mechanism.slides) {
            if (Double.isFinite(slide.length())) {
                limits.add(new Limit("the end of slot " + slide.name(), () -> {
                    double along = along(slide, q);
                    return Math.min(along, slide.length() - along);
                }));
            }
        }
        return limits;
    }

    /** How far a peg is along its slot, mm. */
    private double along(Mechanism.SlideData slide, double[] q) {
        Equations e = poses.equations;
        e.at(q);
        double dx = Equations.x(q, slide.a())
                + e.armX(slide.a(), slide.pegX(), slide.pegY())
                - Equations.x(q, slide.b())
                - e.armX(slide.b(), slide.lineX(), slide.lineY());
        double dy = Equations.y(q, slide.a())
                + e.armY(slide.a(), slide.pegX(), slide.pegY())
                - Equations.y(q, slide.b())
                - e.armY(slide.b(), slide.lineX(), slide.lineY());
        return dx * e.armX(slide.b(), slide.directionX(), slide.directionY())
                + dy * e.armY(slide.b(), slide.directionX(), slide.directionY());
    }

    /** Finger force at the present pose, µN; NaN where it locks. */
    private double force(Direction direction, double frictionScale) {
        return forces.solve(poses, direction, frictionScale) ? forces.fingerForce() : Double.NaN;
    }

    private void takeLoads(double[] load) {
        for (int p = 0; p < load.length; p++) {
            load[p] = Math.max(load[p], Math.hypot(forces.pinForceX(p), forces.pinForceY(p)));
        }
    }

    /** Names the stretches where it locks, and where the force is negative, with their ends located. */
    private void nameSpans(double[] stroke, double[] force, Direction direction) {
        MotionEvent.Kind negative =
                direction == Direction.PRESSING ? MotionEvent.Kind.RUNS_AHEAD : MotionEvent.Kind.HANGS_UP;
        nameSpans(stroke, force, direction, MotionEvent.Kind.LOCK_UP, Double::isNaN);
        nameSpans(stroke, force, direction, negative, f -> f < 0);
    }

    private void nameSpans(
            double[] stroke, double[] force, Direction direction, MotionEvent.Kind kind, DoublePredicate trouble) {
        double begin = Double.NaN;
        boolean was = false;
        double last = 0;
        for (int i = 0; i < stroke.length && canReach(stroke[i]); i++) {
            boolean is = trouble.test(force[i]);
            if (is && !was) {
                begin = i == 0 ? 0 : turn(stroke[i - 1], stroke[i], was, direction, trouble);
            }
            if (was && !is) {
                double end = turn(stroke[i - 1], stroke[i], was, direction, trouble);
                events.add(new MotionEvent(kind, begin, end, direction, ""));
            }
            was = is;
            last = stroke[i];
        }
        if (was) {
            events.add(new MotionEvent(kind, begin, last, direction, ""));
        }
    }

    private boolean canReach(double u) {
        return events.stream()
                .filter(e -> e.kind() == MotionEvent.Kind.DEAD_POINT || e.kind() == MotionEvent.Kind.STOP_REACHED)
                .allMatch(e -> u <= e.stroke());
    }

    /** Where between two strokes the trouble begins or ends, by halving; {@code first} as found at {@code from}. */
    private double turn(double from, double to, boolean first, Direction direction, DoublePredicate trouble) {
        double low = from;
        double high = to;
        while (high - low > LOCATED) {
            double middle = (low + high) / 2;
            if (trouble.test(forceAt(middle, direction)) == first) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private double forceAt(double u, Direction direction) {
        poses.moveTo(u);
        return force(direction, 1);
    }

    private String moving(double[] slack) {
        double most = 0;
        for (int b = 0; b < mechanism.bodyCount(); b++) {
            most = Math.max(most, Math.abs(slack[3 * b + 2]));
        }
        List<String> names = new ArrayList<>();
        for (int b = 0; b < mechanism.bodyCount(); b++) {
            if (Math.abs(slack[3 * b + 2]) > 1e-3 * most) {
                names.add(mechanism.bodyName(b));
            }
        }
        return "here the lever stands still while these still move: " + String.join(", ", names);
    }
}

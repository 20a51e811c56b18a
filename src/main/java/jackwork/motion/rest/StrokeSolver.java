package jackwork.motion.rest;

import jackwork.geometry.Wanted;
import jackwork.motion.model.Direction;
import jackwork.motion.model.Mechanism;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoublePredicate;

/** Solves a mechanism over the whole stroke in both directions and names what happens on the way. */
public final class StrokeSolver {

    private final Mechanism mechanism;
    private final PoseSolver poses;
    private final ForceSolver forces;
    private final List<MotionEvent> events = new ArrayList<>();
    private double reach = 1;

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
        StrokeTable table = new StrokeTable(mechanism, samples);
        if (poses.isDetermined()) {
            runDetermined(table);
        } else {
            new FreeStroke(mechanism, poses, events).run(table);
        }
        reach = table.reach;
        nameSpans(table.stroke, table.press, Direction.PRESSING);
        nameSpans(table.stroke, table.back, Direction.RETURNING);
        events.sort(Comparator.comparingDouble(MotionEvent::stroke));
        return table.result(List.copyOf(events));
    }

    /** The lever decides every pose: the way back is the way there. */
    private void runDetermined(StrokeTable table) {
        for (int i = 0; i < table.stroke.length; i++) {
            Wanted.goOn();
            if (table.reach == 1) {
                table.reach = advance(table.stroke[i]);
            }
            if (table.stroke[i] > table.reach) {
                table.outOfReach(i);
                continue;
            }
            System.arraycopy(poses.pose(), 0, table.pose[i], 0, table.pose[i].length);
            table.closureError = Math.max(table.closureError, poses.closureError());
            table.free[i] = force(Direction.PRESSING, 0);
            table.press[i] = force(Direction.PRESSING, 1);
            table.share[i] = forces.determinantShare();
            takeLoads(table, i);
            table.back[i] = force(Direction.RETURNING, 1);
            table.share[i] = Math.min(table.share[i], forces.determinantShare());
            takeLoads(table, i);
        }
        table.sameWayBack();
    }

    /** Moves on; returns 1, or the stroke at which it ends short and why is noted. */
    private double advance(double wanted) {
        double before = poses.stroke();
        if (!poses.moveTo(wanted)) {
            double at = poses.stroke();
            List<double[]> branches = new BranchSearch(mechanism).find(poses, Math.min(1, at + RestLimits.PAST));
            if (branches.size() > 1) {
                String ways = "links stand in line and two ways lead on: " + ways(branches);
                events.add(new MotionEvent(MotionEvent.Kind.CHANGE_POINT, at, at, Direction.PRESSING, ways));
                return Math.min(at, Math.nextDown(1.0));
            }
            DeadPointSearch search = new DeadPointSearch(mechanism);
            var dead = search.find(poses, Direction.PRESSING);
            String what = dead.map(found -> moving(found.slack())).orElse("the mechanism's reach ends here");
            double where = dead.map(DeadPointSearch.DeadPoint::stroke).orElse(at);
            events.add(new MotionEvent(MotionEvent.Kind.DEAD_POINT, where, where, Direction.PRESSING, what));
            return Math.min(where, Math.nextDown(1.0));
        }
        for (int row = 0; row < mechanism.rowCount; row++) {
            if (mechanism.pushesOnly[row] && gap(row) < -RestLimits.DEAD_POINT_LOCATED) {
                double low = before;
                double high = wanted;
                while (high - low > RestLimits.DEAD_POINT_LOCATED) {
                    double middle = (low + high) / 2;
                    poses.moveTo(middle);
                    if (gap(row) < 0) {
                        high = middle;
                    } else {
                        low = middle;
                    }
                }
                String what = mechanism.what(row);
                events.add(new MotionEvent(MotionEvent.Kind.STOP_REACHED, low, low, Direction.PRESSING, what));
                return Math.min(low, Math.nextDown(1.0));
            }
        }
        return 1;
    }

    /** How the body that differs most between two branches turns in each. */
    private String ways(List<double[]> branches) {
        double[] one = branches.get(0);
        double[] two = branches.get(1);
        int body = 0;
        for (int b = 0; b < mechanism.bodyCount(); b++) {
            if (Math.abs(one[3 * b + 2] - two[3 * b + 2]) > Math.abs(one[3 * body + 2] - two[3 * body + 2])) {
                body = b;
            }
        }
        double was = poses.pose()[3 * body + 2];
        return String.format(
                java.util.Locale.ROOT,
                "%s turns by %+.2f or %+.2f degrees",
                mechanism.bodyName(body),
                Math.toDegrees(one[3 * body + 2] - was),
                Math.toDegrees(two[3 * body + 2] - was));
    }

    private double gap(int row) {
        poses.rows.at(poses.pose());
        return poses.rows.gap[row];
    }

    /** Finger force at the present pose, µN; NaN where it locks. */
    private double force(Direction direction, double frictionScale) {
        return forces.solve(poses, direction, frictionScale) ? forces.fingerForce() : Double.NaN;
    }

    private void takeLoads(StrokeTable table, int sample) {
        for (int row = 0; row < mechanism.rowCount; row++) {
            table.takeRow(sample, row, forces.rowForce(row));
        }
        table.endLoads(sample);
    }

    /** Names the stretches where it locks, and where the force is negative, with their ends located. */
    private void nameSpans(double[] stroke, double[] force, Direction direction) {
        MotionEvent.Kind negative =
                direction == Direction.PRESSING ? MotionEvent.Kind.RUNS_AHEAD : MotionEvent.Kind.HANGS_UP;
        if (poses.isDetermined()) {
            nameSpans(stroke, force, direction, MotionEvent.Kind.LOCK_UP, Double::isNaN);
        }
        nameSpans(stroke, force, direction, negative, f -> f < 0);
    }

    private void nameSpans(
            double[] stroke, double[] force, Direction direction, MotionEvent.Kind kind, DoublePredicate trouble) {
        double begin = Double.NaN;
        boolean was = false;
        double last = 0;
        for (int i = 0; i < stroke.length && stroke[i] <= reach; i++) {
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

    /** Where between two strokes the trouble begins or ends, by halving; {@code first} as found at {@code from}. */
    private double turn(double from, double to, boolean first, Direction direction, DoublePredicate trouble) {
        double low = from;
        double high = to;
        double located = poses.isDetermined() ? RestLimits.DEAD_POINT_LOCATED : 1e-3 * (to - from);
        while (high - low > located) {
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
        if (!poses.isDetermined()) {
            return FreeStroke.forceAt(mechanism, u, direction, reach);
        }
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

package jackwork.motion.rest;

import jackwork.motion.model.Direction;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.Moves;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoublePredicate;

/**
 * The stroke of a mechanism with parts that the lever does not decide: pressed from rest to the end of its
 * reach and let back, each pose following from the one before, with what takes hold and lets go.
 *
 * <p>Friction is against what moves, and at the ends of the way nothing has moved yet: where a way begins its forces
 * are the limits from within, of poses a little farther on, by a parabola through them. Where the way leads nowhere
 * they are those that hold it; where friction locks it nothing is told.
 */
final class FreeStroke {

    private final Mechanism mechanism;
    private final PoseSolver poses;
    private final List<MotionEvent> events;
    private final double[] before;
    /** Whether what was looked at last within the stroke could not be gone to. */
    private boolean stopped;

    FreeStroke(Mechanism mechanism, PoseSolver poses, List<MotionEvent> events) {
        this.mechanism = mechanism;
        this.poses = poses;
        this.events = events;
        this.before = new double[mechanism.coordinates()];
    }

    void run(StrokeTable table) {
        int samples = table.stroke.length;
        int last = samples - 1;
        if (poses.jump() == PoseSolver.Jump.FELL) {
            System.arraycopy(mechanism.drawnPose(), 0, before, 0, before.length);
            events.add(new MotionEvent(MotionEvent.Kind.FALLS_OVER, 0, 0, Direction.PRESSING, fallen()));
        }
        for (int i = 0; i < samples; i++) {
            if (table.reach == 1) {
                table.reach = advance(table.stroke[i], Direction.PRESSING);
            }
            if (table.stroke[i] > table.reach) {
                table.outOfReach(i);
                last = Math.min(last, i - 1);
            } else {
                System.arraycopy(poses.pose(), 0, table.pose[i], 0, table.pose[i].length);
                table.press[i] = i == 0 ? takeBeginning(table) : take(table, i);
                table.free[i] = Double.NaN;
                table.share[i] = Double.NaN;
            }
        }
        boolean back = true;
        for (int i = last; i >= 0; i--) {
            boolean begins = poses.stroke() == table.stroke[i];
            back = back && advance(table.stroke[i], Direction.RETURNING) == table.stroke[i];
            table.backPose[i] = poses.pose().clone();
            table.back[i] = !back ? Double.NaN : begins ? takeTurn(table, i) : take(table, i);
            back = back && !(begins && stopped);
        }
    }

    /** The forces with which a press begins, looked for apart from the press itself. */
    private double takeBeginning(StrokeTable table) {
        PoseSolver ahead = new PoseSolver(mechanism);
        return within(table, 0, ahead, table.stroke[1], ahead::moveTo);
    }

    /** The forces with which the way back begins. It goes on from the last pose that was looked at. */
    private double takeTurn(StrokeTable table, int i) {
        double other = i == 0 ? 0 : table.stroke[i - 1];
        return within(table, i, poses, other, u -> advance(u, Direction.RETURNING) == u);
    }

    /**
     * Takes in the limits that forces come to at a sample from the side of another.
     *
     * @param mover brings {@code solver} to a stroke; false when it cannot
     * @return the finger's, µN; NaN where friction locks it
     */
    private double within(StrokeTable table, int i, PoseSolver solver, double other, DoublePredicate mover) {
        double from = table.stroke[i];
        double step = Math.copySign(Math.min(RestLimits.WITHIN, Math.abs(other - from) / 4), other - from);
        double[][] found = new double[3][];
        boolean[] held = null;
        int count = 0;
        stopped = false;
        while (other != from && count < found.length) {
            stopped = !mover.test(from + (count + 1) * step);
            if (stopped) {
                break;
            }
            boolean[] now = held(solver);
            if (held != null && !Arrays.equals(held, now)) {
                break;
            }
            held = now;
            found[count++] = forces(solver);
        }
        if (count == 0) {
            double holds = take(table, i);
            return solver.balance().isLocked() ? Double.NaN : holds;
        }
        for (int row = 0; row < mechanism.rowCount; row++) {
            table.takeRow(i, row, limit(found, count, row));
        }
        table.endLoads(i);
        return limit(found, count, mechanism.rowCount);
    }

    /** Of every row, and of the finger last, µN. */
    private double[] forces(PoseSolver solver) {
        double[] forces = new double[mechanism.rowCount + 1];
        for (int row = 0; row < mechanism.rowCount; row++) {
            forces[row] = solver.balance().forces.of(row);
        }
        forces[mechanism.rowCount] = solver.balance().forces.finger();
        return forces;
    }

    /** Where evenly spaced forces lead to one step before the first. */
    private static double limit(double[][] found, int count, int at) {
        return switch (count) {
            case 1 -> found[0][at];
            case 2 -> 2 * found[0][at] - found[1][at];
            default -> 3 * (found[0][at] - found[1][at]) + found[2][at];
        };
    }

    private double take(StrokeTable table, int i) {
        table.closureError = Math.max(table.closureError, poses.closureError());
        for (int row = 0; row < mechanism.rowCount; row++) {
            table.takeRow(i, row, poses.balance().forces.of(row));
        }
        table.endLoads(i);
        return poses.balance().forces.finger();
    }

    /**
     * Moves on, naming what takes hold, lets go or falls on the way.
     *
     * @return for a press 1 or the stroke at which it ends short, for the way back the stroke reached
     */
    private double advance(double wanted, Direction direction) {
        for (int changes = 0; changes < RestLimits.MOST_CHANGES; changes++) {
            System.arraycopy(poses.pose(), 0, before, 0, before.length);
            boolean[] held = held(poses);
            if (!poses.moveTo(wanted, true)) {
                double at = poses.stroke();
                String jam = poses.balance().jam();
                if (poses.balance().isLocked()) {
                    double end = direction == Direction.PRESSING ? 1 : 0;
                    events.add(new MotionEvent(
                            MotionEvent.Kind.LOCK_UP, Math.min(at, end), Math.max(at, end), direction, ""));
                } else if (!jam.isEmpty()) {
                    events.add(new MotionEvent(MotionEvent.Kind.STOP_REACHED, at, at, direction, jam));
                } else if (poses.balance().isUnsettled()) {
                    String restless = poses.balance().restless();
                    events.add(new MotionEvent(MotionEvent.Kind.FALLS_OVER, at, at, direction, restless));
                } else {
                    events.add(new MotionEvent(MotionEvent.Kind.STOP_REACHED, at, at, direction, jam()));
                }
                return direction == Direction.PRESSING ? Math.min(at, Math.nextDown(1.0)) : at;
            }
            name(held, direction);
            if (poses.stroke() == wanted) {
                return direction == Direction.PRESSING ? 1 : wanted;
            }
        }
        double at = poses.stroke();
        events.add(
                new MotionEvent(MotionEvent.Kind.STOP_REACHED, at, at, direction, "parts that find no rest: " + jam()));
        return direction == Direction.PRESSING ? Math.min(at, Math.nextDown(1.0)) : at;
    }

    private boolean[] held(PoseSolver solver) {
        boolean[] held = new boolean[mechanism.rowCount];
        for (int r = 0; r < held.length; r++) {
            held[r] = solver.isHeld(r);
        }
        return held;
    }

    private void name(boolean[] held, Direction direction) {
        double at = poses.jump() == PoseSolver.Jump.FELL ? poses.jumpedAt() : poses.stroke();
        if (poses.jump() == PoseSolver.Jump.FELL) {
            events.add(new MotionEvent(MotionEvent.Kind.FALLS_OVER, at, at, direction, fallen()));
        }
        for (int r = 0; r < held.length; r++) {
            if (held[r] != poses.isHeld(r)) {
                MotionEvent.Kind kind = held[r] ? MotionEvent.Kind.LETS_GO : MotionEvent.Kind.TAKES_HOLD;
                String what = mechanism.what(r);
                boolean known = events.stream()
                        .anyMatch(e -> e.kind() == kind && e.what().equals(what) && Math.abs(e.stroke() - at) < 1e-5);
                if (!known) {
                    events.add(new MotionEvent(kind, at, at, direction, what));
                }
            }
        }
    }

    private String fallen() {
        double[] pose = poses.pose();
        double most = Moves.between(before, pose);
        List<String> names = new ArrayList<>();
        for (int b = 0; b < mechanism.bodyCount(); b++) {
            double moved = Math.max(
                    100 * Math.abs(pose[3 * b + 2] - before[3 * b + 2]),
                    Math.hypot(pose[3 * b] - before[3 * b], pose[3 * b + 1] - before[3 * b + 1]));
            if (moved > 0.3 * most) {
                names.add(mechanism.bodyName(b));
            }
        }
        return String.join(", ", names);
    }

    /** What holds at the end of the way, the greatest force first. */
    private String jam() {
        int most = -1;
        for (int r = 0; r < mechanism.rowCount; r++) {
            if (poses.isHeld(r) && (most < 0 || poses.balance().forces.push[r] > poses.balance().forces.push[most])) {
                most = r;
            }
        }
        return most < 0 ? "the mechanism's reach" : mechanism.what(most);
    }

    /** Finger force at a stroke, µN, reached afresh from rest: for locating where it turns. */
    static double forceAt(Mechanism mechanism, double u, Direction direction, double reach) {
        PoseSolver poses = new PoseSolver(mechanism);
        if (direction == Direction.RETURNING) {
            poses.moveTo(reach);
        }
        return poses.moveTo(u) ? poses.balance().forces.finger() : Double.NaN;
    }
}

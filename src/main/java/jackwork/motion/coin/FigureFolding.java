package jackwork.motion.coin;

import jackwork.geometry.Point;
import jackwork.motion.model.Direction;
import jackwork.motion.model.FoldedFigure;
import jackwork.motion.model.Loads;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.MechanismCompiler;
import jackwork.motion.model.Pin;
import jackwork.motion.model.Rows;
import jackwork.motion.rest.ForceSolver;
import jackwork.motion.rest.PoseSolver;
import jackwork.parts.Assembly;
import jackwork.parts.Lever;
import java.util.Arrays;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Follows a figure over the stroke and folds it into the lever, where that may be. */
final class FigureFolding {

    private final Mechanism mechanism;
    private final Pin pivot;
    private final FoldedFigure.Followed figure;
    private final Rows rows;
    private final Loads loads;
    private final double[] load;
    private final PoseSolver poses;
    private final ForceSolver forces;

    private FigureFolding(Mechanism mechanism, Pin pivot) {
        this.mechanism = mechanism;
        this.pivot = pivot;
        this.figure = FoldedFigure.Followed.empty(mechanism.coordinates(), CoinLimits.FOLDING_SAMPLES);
        this.rows = new Rows(mechanism);
        this.loads = new Loads(mechanism);
        this.load = new double[mechanism.coordinates()];
        this.poses = new PoseSolver(mechanism);
        this.forces = new ForceSolver(mechanism);
    }

    /**
     * @param gravity mm/s²
     * @return nothing when something of it can lag behind the lever or lock it, or when the coin meets it
     */
    static Optional<FoldedFigure> of(Assembly assembly, Point gravity) {
        Lever lever = assembly.lever();
        boolean meetsCoin = assembly.parts().stream()
                .filter(part ->
                        part.ofBox() && part.layer() == assembly.coinWorks().layer())
                .mapToInt(part -> assembly.bodyOf(part.name()))
                .anyMatch(body -> body != 0
                        && body != lever.body()
                        && body != assembly.coinWorks().bucket());
        boolean leverAlone = assembly.slides().stream()
                        .anyMatch(slide -> ofLeverAlone(slide.peg(), lever) && ofLeverAlone(slide.slot(), lever))
                || assembly.links().stream()
                        .anyMatch(link -> link.bodies().stream().allMatch(body -> ofLeverAlone(body, lever)));
        if (meetsCoin || leverAlone) {
            return Optional.empty();
        }
        int[] number = new int[assembly.bodies().size()];
        Mechanism mechanism = MechanismCompiler.figure(assembly, number, false)
                .gravity(gravity)
                .build();
        Pin pivot = pivot(mechanism, lever.pin());
        if (!mechanism.structure.freeBodies().isEmpty() || pivot == null) {
            return Optional.empty();
        }
        FigureFolding folding = new FigureFolding(mechanism, pivot);
        return folding.run()
                ? Optional.of(new FoldedFigure(folding.figure, number, pivot, lever.rest(), lever.turn()))
                : Optional.empty();
    }

    private static boolean ofLeverAlone(int body, Lever lever) {
        return body == 0 || body == lever.body();
    }

    private static @Nullable Pin pivot(Mechanism mechanism, String name) {
        for (Pin pin : mechanism.pins) {
            if (pin.name().equals(name) && pin.grounded()) {
                return pin;
            }
        }
        return null;
    }

    /** @return false when it is no figure to fold */
    private boolean run() {
        for (int k = 0; k < CoinLimits.FOLDING_SAMPLES; k++) {
            if (!poses.moveTo((double) k / (CoinLimits.FOLDING_SAMPLES - 1)) || !sample(k)) {
                return false;
            }
        }
        return true;
    }

    private boolean sample(int k) {
        rows.at(poses.pose());
        for (int r = 0; r < rows.count; r++) {
            if (mechanism.pushesOnly[r] && rows.gap[r] < CoinLimits.FOLDING_CLOSED) {
                return false;
            }
        }
        Mechanism.DriveData drive = mechanism.drive;
        Mechanism.BodyData lever = mechanism.bodies[drive.body()];
        int at = 3 * drive.body();
        double turn = drive.turn();
        loads.force(rows, load);
        // The lever itself stays in the scene: all less the lever.
        double ownX = lever.mass() * mechanism.gravityX;
        double ownY = lever.mass() * mechanism.gravityY;
        figure.potential()[k] = loads.potential(rows) + ownX * rows.x(drive.body()) + ownY * rows.y(drive.body());
        for (int c = 0; c < load.length; c++) {
            double rate = poses.velocity()[c] / turn;
            figure.pose()[c][k] = poses.pose()[c];
            figure.poseSlope()[c][k] = rate;
            figure.potentialSlope()[k] -= load[c] * rate;
            if (c < at || c > at + 2) {
                figure.inertia()[k] += rate * rate / mechanism.inverseMass[c];
            }
        }
        figure.potentialSlope()[k] += ownX * figure.poseSlope()[at][k] + ownY * figure.poseSlope()[at + 1][k];
        return weigh(k, ownX, ownY);
    }

    private boolean weigh(int k, double ownX, double ownY) {
        Mechanism.DriveData drive = mechanism.drive;
        double arm = rows.fingerArm()
                + drive.fingerX() * figure.poseSlope()[3 * drive.body()][k]
                + drive.fingerY() * figure.poseSlope()[3 * drive.body() + 1][k];
        if (Math.abs(arm) < CoinLimits.SHORTEST_ARM || !forces.solve(poses, Direction.PRESSING, 0)) {
            return false;
        }
        double free = forces.fingerForce();
        int pin = Arrays.asList(mechanism.pins).indexOf(pivot);
        double sign = pivot.heldByGround() ? 1 : -1;
        figure.pivotX()[k] = -(sign * forces.pinForceX(pin) + free * drive.fingerX() + ownX);
        figure.pivotY()[k] = -(sign * forces.pinForceY(pin) + free * drive.fingerY() + ownY);
        if (!forces.solve(poses, Direction.PRESSING, 1)) {
            return false;
        }
        figure.pressing()[k] = (forces.fingerForce() - free) * Math.abs(arm);
        if (!forces.solve(poses, Direction.RETURNING, 1)) {
            return false;
        }
        figure.returning()[k] = (free - forces.fingerForce()) * Math.abs(arm);
        return true;
    }
}

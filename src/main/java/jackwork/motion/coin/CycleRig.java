package jackwork.motion.coin;

import jackwork.geometry.Point;
import jackwork.motion.model.FoldedFigure;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.MechanismCompiler;
import jackwork.motion.model.Rows;
import jackwork.motion.rest.PoseSolver;
import jackwork.motion.time.TimeLimits;
import jackwork.parts.Assembly;
import jackwork.parts.Part;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A piece made ready for cycles with any coin: its outlines as cut, and the figure folded into the lever where that
 * can be. Immutable.
 */
public final class CycleRig {

    final Assembly assembly;
    /** mm/s². */
    final Point gravity;

    final Optional<FoldedFigure> figure;
    /** Where the lever's and figure's bodies rest, when that is not as drawn: x, y, angle of each but the ground. */
    final Optional<double[]> rest;

    /** Parts of the box that something may touch, and their outlines as cut. */
    final Map<Part, List<Point>> outlines = new LinkedHashMap<>();

    private CycleRig(Assembly assembly, double kerf, double tilt, boolean folds) {
        this.assembly = assembly;
        // A table turned counter-clockwise is lower on its left: seen from it, gravity turns clockwise.
        this.gravity = new Point(0, -Mechanism.GRAVITY).turned(-tilt);
        this.figure = folds ? FigureFolding.of(assembly, gravity) : Optional.empty();
        this.rest = figure.isPresent() ? Optional.empty() : restOf(assembly, gravity);
        for (Part part : assembly.parts()) {
            if (part.ofBox() && mayTouch(part)) {
                outlines.put(part, part.drawn().offset(-kerf / 2).outerWithin(CoinLimits.OUTLINE));
            }
        }
    }

    /** A string shorter than its path as drawn pulls what it holds to another rest. */
    private static Optional<double[]> restOf(Assembly assembly, Point gravity) {
        int[] number = new int[assembly.bodies().size()];
        Mechanism mechanism = MechanismCompiler.figure(assembly, number, true)
                .gravity(gravity)
                .build();
        Rows rows = new Rows(mechanism);
        rows.at(mechanism.drawnPose());
        boolean strained = false;
        for (int r = 0; r < rows.count; r++) {
            strained |= mechanism.pushesOnly[r] && rows.gap[r] < -TimeLimits.CLOSED;
        }
        if (!strained) {
            return Optional.empty();
        }
        double[] solved = new PoseSolver(mechanism).pose();
        double[] rest = new double[3 * (number.length - 1)];
        Arrays.fill(rest, Double.NaN);
        for (int body = 1; body < number.length; body++) {
            if (number[body] >= 0) {
                System.arraycopy(solved, 3 * number[body], rest, 3 * (body - 1), 3);
            }
        }
        return Optional.of(rest);
    }

    /** What is in the coin's layer; and what of lever and bucket is in a layer that they share. */
    private boolean mayTouch(Part part) {
        int lever = assembly.lever().body();
        int bucket = assembly.coinWorks().bucket();
        int body = assembly.bodyOf(part.name());
        int other = body == lever ? bucket : lever;
        boolean shared = (body == lever || body == bucket)
                && assembly.body(other).parts().stream().anyMatch(of -> of.layer() == part.layer());
        return shared || part.layer() == assembly.coinWorks().layer();
    }

    /**
     * @param kerf by which every part is smaller than drawn, mm, half of it all round
     * @param tilt of the table in the mechanism's plane, rad, counter-clockwise
     */
    public static CycleRig of(Assembly assembly, double kerf, double tilt) {
        return new CycleRig(assembly, kerf, tilt, true);
    }

    /** With every body of the figure by itself, whether or not it could be folded. */
    public static CycleRig unfolded(Assembly assembly, double kerf, double tilt) {
        return new CycleRig(assembly, kerf, tilt, false);
    }
}

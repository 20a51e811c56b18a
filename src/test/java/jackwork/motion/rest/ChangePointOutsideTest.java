package jackwork.motion.rest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.motion.model.FourBar;
import jackwork.motion.model.Mechanism;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Four-bars whose shortest and longest links are together as long as the other two (Norton, Design of Machinery,
 * Table 2-4, special cases): where all links stand in line, both branches are found.
 */
@Tag("outside")
@Tag("quick")
class ChangePointOutsideTest {

    @ParameterizedTest
    @CsvSource({"50, 120, 50, 120", "60, 60, 60, 60"})
    void bothBranchesAreFound(double crank, double coupler, double rocker, double ground) {
        // From 60° the crank turns counter-clockwise; at 180° all links stand in line.
        FourBar bar = new FourBar(crank, coupler, rocker, ground);
        Mechanism mechanism =
                bar.drivenByCrank(Math.toRadians(60), 1, Math.toRadians(200)).build();
        StrokeResult result = StrokeSolver.solve(mechanism, 51);
        MotionEvent change = result.events(MotionEvent.Kind.CHANGE_POINT).get(0);
        assertThat(change.stroke() * 200).isCloseTo(120, within(0.01));
        PoseSolver poses = new PoseSolver(mechanism);
        assertThat(poses.moveTo(0.62)).isFalse();
        double target = 0.61;
        var branches = new BranchSearch(mechanism).find(poses, target);
        assertThat(branches).hasSize(2);
        // One keeps crank and rocker parallel, the other crosses them: the two circles' intersections.
        double theta = Math.toRadians(60 + 200 * target);
        double open = FourBar.angle(new jackwork.geometry.Point(ground, 0), bar.rockerEnd(theta, 1));
        double crossed = FourBar.angle(new jackwork.geometry.Point(ground, 0), bar.rockerEnd(theta, -1));
        double drawn = FourBar.angle(new jackwork.geometry.Point(ground, 0), bar.rockerEnd(Math.toRadians(60), 1));
        assertThat(branches.stream().map(pose -> Math.IEEEremainder(pose[8] + drawn, 2 * Math.PI)))
                .anySatisfy(angle -> assertThat(Math.abs(Math.IEEEremainder(angle - open, 2 * Math.PI)))
                        .isLessThan(1e-9))
                .anySatisfy(angle -> assertThat(Math.abs(Math.IEEEremainder(angle - crossed, 2 * Math.PI)))
                        .isLessThan(1e-9));
    }
}

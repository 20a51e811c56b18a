package jackwork.motion.rest;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.design.DesignReader;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.geometry.Pose;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.MechanismCompiler;
import jackwork.parts.Assembler;
import jackwork.parts.Assembly;
import jackwork.parts.Body;
import jackwork.parts.Part;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The demo heron moved: no two parts of one layer in one place, at 41 strokes with the bucket tipped and
 * at 11 tips with the lever at rest. Sampled, not swept: a clash shorter than a sample would be missed.
 */
@Tag("quick")
class DemoClashTest {

    private record Placed(Part part, Body body, Outline outline) {}

    private final Assembly assembly = Assembler.assemble(DesignReader.read(Path.of("demo/heron")));
    private final Mechanism mechanism = MechanismCompiler.compile(assembly);
    private final PoseSolver poses = new PoseSolver(mechanism);

    private Outline now(Body body, Part part, double tip) {
        if (body.isGround()) {
            return part.drawn();
        }
        if (body == assembly.body(assembly.coinWorks().bucket())) {
            return turned(
                    part.drawn(),
                    assembly.coinWorks().pivot(),
                    assembly.coinWorks().pivot(),
                    tip);
        }
        int number = mechanism.bodyNumber(body.name());
        double[] pose = poses.pose();
        return turned(
                part.drawn(), body.centre(), new Point(pose[3 * number], pose[3 * number + 1]), pose[3 * number + 2]);
    }

    /** The outline with its point {@code from} carried to {@code to} and turned about it. */
    private static Outline turned(Outline outline, Point from, Point to, double angle) {
        Point shift = to.minus(from.turned(angle));
        return outline.moved(new Pose(shift.x(), shift.y(), angle));
    }

    private List<String> clashes(double tip) {
        List<Placed> placed = new ArrayList<>();
        for (Body body : assembly.bodies()) {
            for (Part part : body.parts()) {
                placed.add(new Placed(part, body, now(body, part, tip)));
            }
        }
        List<String> clashes = new ArrayList<>();
        for (int i = 0; i < placed.size(); i++) {
            for (int j = i + 1; j < placed.size(); j++) {
                Placed a = placed.get(i);
                Placed b = placed.get(j);
                if (a.body() != b.body()
                        && a.part().layer() == b.part().layer()
                        && a.outline().overlaps(b.outline())
                        && a.outline().sharedArea(b.outline()) > 1e-6) {
                    clashes.add(a.part().name() + " and " + b.part().name() + " share "
                            + a.outline().sharedArea(b.outline()) + " mm²");
                }
            }
        }
        return clashes;
    }

    @Test
    void pressed() {
        for (int i = 0; i <= 40; i++) {
            assertThat(poses.moveTo(i / 40.0)).isTrue();
            assertThat(clashes(assembly.coinWorks().tip()))
                    .as("at stroke " + i / 40.0)
                    .isEmpty();
        }
    }

    @Test
    void tipped() {
        for (int i = 0; i <= 10; i++) {
            assertThat(clashes(assembly.coinWorks().tip() * i / 10))
                    .as("at tip " + i)
                    .isEmpty();
        }
    }
}

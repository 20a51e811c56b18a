package jackwork.make;

import jackwork.drawing.CutKind;
import jackwork.drawing.CutPath;
import jackwork.drawing.CutShape;
import jackwork.drawing.CutSheet;
import jackwork.drawing.Label;
import jackwork.geometry.Bounds;
import jackwork.geometry.Circle;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.parts.Assembly;
import jackwork.parts.Body;
import jackwork.parts.Hole;
import jackwork.parts.Lump;
import jackwork.parts.Part;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The sheet of jigs, in true size: every glued stack with all its outlines and rods, to be taped to a board and drilled, so
 * that the rods stand while the glue sets.
 */
final class Jigs {

    private static final double EDGE = 8;
    private static final double CROSS = 2.5;

    private Jigs() {}

    /** One page for each stack of two parts or more; null when there is none. */
    static @Nullable List<CutSheet> of(Assembly assembly) {
        List<CutSheet> sheets = new ArrayList<>();
        for (BuildOrder.Stack stack : BuildOrder.of(assembly)) {
            if (stack.parts().size() > 1) {
                sheets.add(sheet(assembly, stack));
            }
        }
        return sheets.isEmpty() ? null : sheets;
    }

    private static CutSheet sheet(Assembly assembly, BuildOrder.Stack stack) {
        Bounds all = stack.parts().get(0).drawn().bounds();
        for (Part part : stack.parts()) {
            all = all.union(part.drawn().bounds());
        }
        Point shift = new Point(EDGE - all.minX(), EDGE + 6 - all.minY());
        List<CutPath> paths = new ArrayList<>();
        Map<String, Circle> rods = new LinkedHashMap<>();
        for (Part part : stack.parts()) {
            Outline moved = part.drawn().moved(shift);
            paths.add(new CutPath(CutKind.MARK, new CutShape.Ring(moved.outer()), part.name()));
            for (Hole hole : part.holes()) {
                rods.putIfAbsent(hole.joint(), hole.circle().moved(shift));
            }
        }
        List<Label> labels = new ArrayList<>();
        rods.forEach((name, circle) -> {
            paths.add(new CutPath(CutKind.MARK, new CutShape.Round(circle), "rod-" + name));
            labels.add(new Label(CutKind.MARK, circle.centre().plus(new Point(circle.radius() + 0.8, 0.8)), 1.6, name));
        });
        Body body = assembly.bodies().stream()
                .filter(b -> b.name().equals(stack.body()))
                .findFirst()
                .orElseThrow();
        if (!body.isGround()) {
            for (Lump lump : body.lumps()) {
                if (!rods.containsKey(lump.name())) {
                    cross(paths, labels, lump, shift);
                }
            }
        }
        return new CutSheet(
                "jig for " + stack.name() + ", from the front",
                all.width() + 2 * EDGE,
                all.height() + 2 * EDGE + 6,
                paths,
                labels);
    }

    private static void cross(List<CutPath> paths, List<Label> labels, Lump lump, Point shift) {
        Point at = lump.at().plus(shift);
        paths.add(new CutPath(
                CutKind.MARK,
                new CutShape.Line(List.of(at.minus(new Point(CROSS, 0)), at.plus(new Point(CROSS, 0)))),
                "weight-" + lump.name() + "-across"));
        paths.add(new CutPath(
                CutKind.MARK,
                new CutShape.Line(List.of(at.minus(new Point(0, CROSS)), at.plus(new Point(0, CROSS)))),
                "weight-" + lump.name() + "-up"));
        labels.add(new Label(CutKind.MARK, at.plus(new Point(1, 1)), 1.6, "weight " + lump.name()));
    }
}

package jackwork.make;

import jackwork.drawing.CutKind;
import jackwork.drawing.CutPath;
import jackwork.drawing.CutShape;
import jackwork.geometry.Circle;
import jackwork.geometry.InvalidOutlineException;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.geometry.Pose;
import jackwork.parts.Hole;
import java.util.ArrayList;
import java.util.List;

/**
 * The beam's way around a part. The beam takes half a kerf on either side of its middle, so it runs
 * half a kerf outside the part's edge and half a kerf inside each hole: the region is grown by half a
 * kerf all round, which closes its holes by as much.
 */
final class KerfCut {

    private KerfCut() {}

    /**
     * @param kerf width of the cut, mm
     * @param pose from the piece's own frame to the sheet
     * @param name unique in the sheet
     */
    static List<CutPath> paths(FlatPiece piece, double kerf, Pose pose, String name) {
        List<CutPath> paths = new ArrayList<>();
        int line = 0;
        for (List<Point> engraved : piece.engraving()) {
            List<Point> moved = engraved.stream().map(pose::apply).toList();
            paths.add(new CutPath(CutKind.ENGRAVE, new CutShape.Line(moved), name + ".engrave-" + ++line));
        }
        for (Hole hole : piece.holes()) {
            Circle circle = hole.circle();
            Circle cut = new Circle(pose.apply(circle.centre()), circle.radius() - kerf / 2);
            paths.add(new CutPath(CutKind.INSIDE, new CutShape.Round(cut), name + ".hole-" + hole.joint()));
        }
        Outline beam;
        try {
            beam = piece.drawn().moved(pose).offset(kerf / 2);
        } catch (InvalidOutlineException e) {
            throw LaserException.of(name, kerf, e);
        }
        int opening = 0;
        for (List<Point> ring : beam.holes()) {
            paths.add(new CutPath(CutKind.INSIDE, new CutShape.Ring(ring), name + ".opening-" + ++opening));
        }
        paths.add(new CutPath(CutKind.OUTSIDE, new CutShape.Ring(beam.outer()), name));
        return paths;
    }
}

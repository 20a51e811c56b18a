package jackwork.make;

import jackwork.drawing.CutKind;
import jackwork.drawing.CutPath;
import jackwork.drawing.CutShape;
import jackwork.geometry.Circle;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.parts.Hole;
import jackwork.parts.Part;
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
     * @param shift from the common frame to the sheet
     * @param name unique in the sheet
     */
    static List<CutPath> paths(Part part, double kerf, Point shift, String name) {
        List<CutPath> paths = new ArrayList<>();
        int line = 0;
        for (List<Point> engraved : part.engraving()) {
            List<Point> moved = engraved.stream().map(p -> p.plus(shift)).toList();
            paths.add(new CutPath(CutKind.ENGRAVE, new CutShape.Line(moved), name + ".engrave-" + ++line));
        }
        for (Hole hole : part.holes()) {
            Circle circle = hole.circle();
            Circle cut = new Circle(circle.centre().plus(shift), circle.radius() - kerf / 2);
            paths.add(new CutPath(CutKind.INSIDE, new CutShape.Round(cut), name + ".hole-" + hole.joint()));
        }
        Outline beam = part.drawn().moved(shift).offset(kerf / 2);
        int opening = 0;
        for (List<Point> ring : beam.holes()) {
            paths.add(new CutPath(CutKind.INSIDE, new CutShape.Ring(ring), name + ".opening-" + ++opening));
        }
        paths.add(new CutPath(CutKind.OUTSIDE, new CutShape.Ring(beam.outer()), name));
        return paths;
    }
}

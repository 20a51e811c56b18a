package jackwork.make;

import jackwork.drawing.CutKind;
import jackwork.drawing.CutPath;
import jackwork.drawing.CutSheet;
import jackwork.drawing.Label;
import jackwork.geometry.Circle;
import jackwork.geometry.Point;
import jackwork.geometry.Pose;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;

/** A sheet as the laser gets it: cut lines at the workshop's kerf; each piece's name upon it, for the eye alone. */
final class SheetDrawing {

    private static final double LARGEST = 2;
    private static final double SMALLEST = 0.7;
    /** Width of a letter over the height of a capital: Helvetica's mean is near it, common practice, no source. */
    private static final double LETTER = 0.8;

    private SheetDrawing() {}

    static CutSheet of(SheetLayout layout, double kerf) {
        List<CutPath> paths = new ArrayList<>();
        List<Label> labels = new ArrayList<>();
        // Copies of one piece are the same piece.
        IdentityHashMap<FlatPiece, Circle> widest = new IdentityHashMap<>();
        for (Placement placement : layout.placements()) {
            paths.addAll(KerfCut.paths(placement.piece(), kerf, placement.pose(), placement.name()));
            Circle here = widest.computeIfAbsent(
                    placement.piece(), piece -> piece.drawn().inscribed(0.2));
            labels.add(label(placement.name(), here, placement.pose()));
        }
        return new CutSheet(layout.name(), layout.width(), layout.height(), paths, labels);
    }

    /** Where the piece is widest, and no wider than that while it can still be read. */
    private static Label label(String name, Circle widest, Pose pose) {
        double fitting = 2 * widest.radius() / (LETTER * name.length());
        double height = Math.max(SMALLEST, Math.min(LARGEST, fitting));
        Point half = new Point(LETTER * height * name.length() / 2, height / 2);
        return new Label(CutKind.MARK, pose.apply(widest.centre()).minus(half), height, name);
    }
}

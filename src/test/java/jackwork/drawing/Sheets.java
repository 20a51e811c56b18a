package jackwork.drawing;

import jackwork.geometry.Circle;
import jackwork.geometry.Point;
import java.util.List;

/** A small sheet with one path of every kind, for the writers' tests. */
final class Sheets {

    static final List<String> CAUTIONS = List.of(
            "Watch the laser while it runs; never leave it alone. Cut only wood and plastics known to hold no chlorine.",
            "Contains small parts and coins; keep from children under three.");

    private Sheets() {}

    static CutSheet small() {
        List<Point> body = List.of(
                new Point(5, 5), new Point(95, 5), new Point(95, 30), new Point(60, 55.12345), new Point(5, 40));
        List<Point> slot = List.of(new Point(70, 10), new Point(90, 10), new Point(90, 13.1), new Point(70, 13.1));
        List<Point> wing = List.of(new Point(15, 35), new Point(30, 28), new Point(45, 33), new Point(55, 25));
        List<Point> frame = List.of(new Point(0, 0), new Point(120, 0), new Point(120, 60), new Point(0, 60));
        return new CutSheet(
                "Heron, birch 3 mm, sheet 1 <a> & \"b\"",
                120,
                60,
                List.of(
                        new CutPath(CutKind.MARK, new CutShape.Ring(frame), "frame"),
                        new CutPath(CutKind.OUTSIDE, new CutShape.Ring(body), "body"),
                        new CutPath(CutKind.INSIDE, new CutShape.Round(new Circle(new Point(20, 20), 1.6)), "pivot"),
                        new CutPath(CutKind.INSIDE, new CutShape.Ring(slot), "slot"),
                        new CutPath(CutKind.OUTSIDE, new CutShape.Round(new Circle(new Point(108, 48), 10)), "disc"),
                        new CutPath(CutKind.ENGRAVE, new CutShape.Line(wing), "wing")),
                List.of(
                        new Label(CutKind.ENGRAVE, new Point(30, 12), 4, "HERON body"),
                        new Label(CutKind.MARK, new Point(100, 3), 2, "sheet <1>")));
    }
}

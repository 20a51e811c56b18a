package jackwork.app;

import jackwork.app.BringPlan.PlannedPart;
import jackwork.app.BringPlan.PlannedPoint;
import jackwork.app.BringPlan.PointRole;
import jackwork.design.WorkshopFile;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.parts.Slot;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** Bare boards with a real mechanism, to go on from: one part, one pivot, what moves it, what brings it back. */
final class BareStarts {

    /** @param words what it shows */
    record Bare(String id, String name, String words, List<PlannedPoint> points) {}

    private static final Outline BOARD = Slot.along(new Point(-45, 0), new Point(45, 0), 24);
    private static final String NAME = "board";

    static final List<Bare> ALL = List.of(
            new Bare(
                    "nodding",
                    "A board that nods",
                    "the lever lifts its tail by a rod",
                    List.of(
                            point("pivot", 0, PointRole.POST, 0),
                            point("crank", -16, PointRole.LIFT, 0),
                            point("tail", -40, PointRole.WEIGHT, 30))),
            new Bare(
                    "bowing",
                    "A board that bows",
                    "the lever pulls its head down by a rod",
                    List.of(
                            point("pivot", 0, PointRole.POST, 0),
                            point("crank", 18, PointRole.PULL, 0),
                            point("tail", -40, PointRole.WEIGHT, 30))));

    private BareStarts() {}

    private static PlannedPoint point(String name, double x, PointRole role, double grams) {
        return new PlannedPoint(name, new Pair(x, 0), 1.5, role, List.of(NAME), grams);
    }

    /** A bare start as a plan for a box. */
    static BringPlan plan(Bare bare, String title, String box, WorkshopFile workshop) {
        String stock = workshop.sheets().entrySet().stream()
                .max(Map.Entry.comparingByValue(
                        Comparator.comparing(sheet -> sheet.thickness().value())))
                .map(Map.Entry::getKey)
                .orElse("");
        PlannedPart board = new PlannedPart(NAME, List.of(Pair.ring(BOARD.outer())), stock, 3, "", "");
        // High enough over the box for the rod to be one.
        return new BringPlan(title, box, 1, false, new Pair(0, 0), List.of(board), bare.points(), List.of());
    }
}

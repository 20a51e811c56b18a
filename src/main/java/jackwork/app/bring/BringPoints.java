package jackwork.app.bring;

import jackwork.geometry.Circle;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.parts.Slot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/** What the points of a plan become: pins, weights, and the rods and cords that the program makes. */
final class BringPoints {

    /** Width of a rod that the program makes, mm: 3 mm bamboo with wood enough all round. */
    private static final double ROD_WIDTH = 10;

    private final BringFigure figure;

    BringPoints(BringFigure figure) {
        this.figure = figure;
    }

    /** What a point is for becomes pins, rods, cords and weights. */
    void add(BringPlan.PlannedPoint point) {
        if (point.role() == BringPlan.PointRole.NONE) {
            figure.circles().put(point.name(), BringFigure.circle(point, point.radius()));
            return;
        }
        List<String> on = point.parts().stream()
                .filter(figure.parts()::containsKey)
                .distinct()
                .toList();
        if (on.isEmpty()) {
            figure.complain(point.name(), "Say which part this point belongs to.");
            return;
        }
        Point at = point.at().point();
        switch (point.role()) {
            case PIN -> {
                if (on.size() < 2) {
                    figure.complain(point.name(), "A pin joins two parts: choose the second.");
                }
                pin(point.name(), at, on);
            }
            case POST -> pin(point.name(), at, with(standName(), on));
            case LIFT, PULL -> rod(point, on);
            case LEVER -> {
                if (!figure.place().lever().contains(at.plus(figure.shift()))) {
                    figure.complain(
                            point.name(),
                            "The lever is not there: move the figure on its box until this point lies on the lever.");
                }
                pin(point.name(), at, with(leverName(), on));
            }
            case CORD -> cord(point, on);
            case WEIGHT -> {
                if (!(point.grams() > 0 && point.grams() < 5000)) {
                    figure.complain(point.name(), "Say how heavy it is, in grams.");
                }
                figure.circles().put(point.name(), new Circle(at, BringFigure.POINT_MARK));
                figure.weights().put(point.name(), new BringFigure.Heavy(on.get(0), point.grams()));
            }
            // Cut from its parts already.
            case HOLE, NONE -> figure.circles().put(point.name(), BringFigure.circle(point, point.radius()));
        }
    }

    private String standName() {
        return figure.parts().values().stream()
                .filter(part ->
                        figure.plan().parts().stream().noneMatch(p -> p.name().equals(part.name()))
                                && part.body().equals(BringPlan.STANDS))
                .map(BringFigure.Made::name)
                .findFirst()
                .orElse(BringFigure.STAND);
    }

    private String leverName() {
        return figure.box().box().lever().part();
    }

    private static List<String> with(String first, List<String> others) {
        List<String> all = new ArrayList<>(List.of(first));
        all.addAll(others);
        return all;
    }

    private void pin(String name, Point at, List<String> on) {
        figure.circles().put(name, new Circle(at, BringFigure.HOLE_MARK));
        List<String> order = new ArrayList<>(on);
        order.sort(Comparator.comparing((String part) -> !stands(part)));
        figure.pins().put(name, new BringFigure.Pinned(order));
    }

    private boolean stands(String part) {
        BringFigure.Made made = figure.parts().get(part);
        return made != null && made.body().equals(BringPlan.STANDS);
    }

    /** A rod from a point down to the lever, in a layer where nothing is in its way. */
    private void rod(BringPlan.PlannedPoint point, List<String> on) {
        Point from = point.at().point();
        boolean lifts = point.role() == BringPlan.PointRole.LIFT;
        Point end = figure.place()
                .leverPoint(from.plus(figure.shift()), lifts)
                .map(at -> at.minus(figure.shift()))
                .orElse(null);
        if (end == null || end.distance(from) < ROD_WIDTH) {
            figure.complain(
                    point.name(), "No rod fits between this point and the lever; move it, or the figure on its box.");
            return;
        }
        Outline bar = Slot.along(from, end, ROD_WIDTH);
        int wanted = on.stream()
                        .map(figure.parts()::get)
                        .filter(Objects::nonNull)
                        .mapToInt(BringFigure.Made::layer)
                        .max()
                        .orElse(1)
                + 1;
        String name = figure.unused(point.name() + "-rod");
        figure.parts()
                .put(
                        name,
                        new BringFigure.Made(
                                name,
                                bar,
                                figure.thinnest(),
                                figure.place()
                                        .freeLayer(bar, wanted, figure.parts().values(), figure.shift()),
                                "",
                                ""));
        List<String> through = new ArrayList<>(on);
        through.add(name);
        pin(point.name(), from, through);
        pin(figure.unused(point.name() + "-lever"), end, List.of(leverName(), name));
    }

    private void cord(BringPlan.PlannedPoint point, List<String> on) {
        Point from = point.at().point();
        Point end = figure.place()
                .leverPoint(from.plus(figure.shift()), false)
                .map(at -> at.minus(figure.shift()))
                .orElse(null);
        if (figure.workshop().cords().isEmpty() || end == null) {
            figure.complain(
                    point.name(),
                    figure.workshop().cords().isEmpty()
                            ? "The workshop has no cord; add one in My workshop."
                            : "No cord reaches the lever from here.");
            return;
        }
        String tied = figure.unused(point.name() + "-lever");
        figure.circles().put(point.name(), new Circle(from, BringFigure.POINT_MARK));
        figure.circles().put(tied, new Circle(end, BringFigure.POINT_MARK));
        figure.strings().put(point.name(), new BringFigure.Tied(on.get(0), tied));
    }
}

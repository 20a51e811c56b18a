package jackwork.app.bring;

import jackwork.app.core.Attempt;
import jackwork.app.wire.Pair;
import jackwork.design.BoxDrawn;
import jackwork.design.WorkshopFile;
import jackwork.geometry.Bounds;
import jackwork.geometry.Circle;
import jackwork.geometry.InvalidOutlineException;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A figure made from what a maker says about a drawing: parts, joints and what the program adds, a post and rods. What is
 * missing or cannot be is collected in words, each with what it is about.
 */
final class BringFigure {

    static final double HOLE_MARK = 1.5;
    static final double POINT_MARK = 0.5;
    private static final int MOST_PARTS = 200;
    static final String STAND = "stand";

    /** A part as it is made; {@code body} as in the plan. */
    record Made(String name, Outline outline, String stock, int layer, String body, String paint) {}

    /** A pin's parts, those that stand first. */
    record Pinned(List<String> parts) {}

    record Tied(String part, String leverPoint) {}

    record Heavy(String part, double grams) {}

    private final BringPlan plan;
    private final BoxDrawn box;
    private final WorkshopFile workshop;
    private final BringPlace place;
    private final List<Attempt.Complaint> complaints = new ArrayList<>();
    private final Map<String, Made> parts = new LinkedHashMap<>();
    private final Map<String, Circle> circles = new LinkedHashMap<>();
    private final Map<String, List<Point>> lines = new LinkedHashMap<>();
    private final Map<String, Pinned> pins = new LinkedHashMap<>();
    private final Map<String, Tied> strings = new LinkedHashMap<>();
    private final Map<String, Heavy> weights = new LinkedHashMap<>();
    private final Map<String, List<String>> mounts = new LinkedHashMap<>();
    private Point shift = Point.ORIGIN;

    private BringFigure(BringPlan plan, BoxDrawn box, WorkshopFile workshop) {
        this.plan = plan;
        this.box = box;
        this.workshop = workshop;
        this.place = new BringPlace(box);
    }

    static BringFigure of(BringPlan plan, BoxDrawn box, WorkshopFile workshop) {
        BringFigure figure = new BringFigure(plan, box, workshop);
        figure.names();
        figure.shapes();
        if (figure.complaints.isEmpty() && !figure.parts.isEmpty()) {
            figure.stand();
            BringPoints points = new BringPoints(figure);
            plan.points().forEach(points::add);
            figure.mounts();
            figure.engraving();
            figure.complaints.addAll(BringHolds.complaints(figure));
        }
        return figure;
    }

    BringPlan plan() {
        return plan;
    }

    WorkshopFile workshop() {
        return workshop;
    }

    BoxDrawn box() {
        return box;
    }

    List<Attempt.Complaint> complaints() {
        return complaints;
    }

    Point shift() {
        return shift;
    }

    Map<String, Made> parts() {
        return parts;
    }

    Map<String, Circle> circles() {
        return circles;
    }

    Map<String, List<Point>> lines() {
        return lines;
    }

    Map<String, Pinned> pins() {
        return pins;
    }

    Map<String, Tied> strings() {
        return strings;
    }

    Map<String, Heavy> weights() {
        return weights;
    }

    Map<String, List<String>> mountParts() {
        return mounts;
    }

    BringPlace place() {
        return place;
    }

    void complain(String about, String words) {
        complaints.add(new Attempt.Complaint(about, words));
    }

    /** Every name may stand once in the drawing, and none may be the box's. */
    private void names() {
        Set<String> taken = new LinkedHashSet<>(box.box().works().parts().keySet());
        taken.addAll(box.box().works().pins().keySet());
        taken.addAll(box.mounts().keySet());
        List<String> names = new ArrayList<>(
                plan.parts().stream().map(BringPlan.PlannedPart::name).toList());
        names.addAll(plan.points().stream().map(BringPlan.PlannedPoint::name).toList());
        for (String name : names) {
            if (!BringNames.isPlain(name)) {
                complain(name, "\"" + name + "\" is no name here: use small letters, digits and hyphens.");
            } else if (!taken.add(name)) {
                complain(name, "There is a \"" + name + "\" already, here or on the box; choose another name.");
            }
        }
        if (plan.parts().isEmpty()) {
            complain("", "Nothing is a part yet: choose an outline.");
        } else if (plan.parts().size() > MOST_PARTS) {
            complain("", "More than " + MOST_PARTS + " parts: leave some out.");
        }
        if (!(plan.scale() > 0 && plan.scale() < 1e6)) {
            complain("", "The drawing has no size yet.");
        }
    }

    private void shapes() {
        for (BringPlan.PlannedPart part : plan.parts()) {
            if (!workshop.sheets().containsKey(part.stock())) {
                complain(part.name(), "Say what it is made of: the workshop has no \"" + part.stock() + "\".");
            }
            if (part.layer() < 1 || part.layer() > 99) {
                complain(part.name(), "Its layer must be 1 (at the back) or more.");
            }
            if (!part.paint().isEmpty() && !part.paint().matches("#[0-9a-fA-F]{6}")) {
                complain(part.name(), "Its colour reads \"" + part.paint() + "\".");
            }
            try {
                Outline outline = outline(part);
                parts.put(
                        part.name(),
                        new Made(part.name(), outline, part.stock(), part.layer(), part.body(), part.paint()));
            } catch (InvalidOutlineException | IndexOutOfBoundsException e) {
                complain(part.name(), "Its outline bounds no one region (" + e.getMessage() + ").");
            }
        }
    }

    private Outline outline(BringPlan.PlannedPart part) {
        List<List<Point>> rings = part.rings().stream()
                .map(ring -> ring.stream().map(Pair::point).toList())
                .toList();
        Outline outline = Outline.of(rings.get(0), rings.subList(1, rings.size()));
        for (BringPlan.PlannedPoint point : plan.points()) {
            if (point.role() == BringPlan.PointRole.HOLE && point.parts().contains(part.name())) {
                outline = outline.without(circle(point, point.radius()), 0.005);
            }
        }
        return outline;
    }

    static Circle circle(BringPlan.PlannedPoint point, double radius) {
        if (!(radius > 0.05 && radius < 1000)) {
            return new Circle(point.at().point(), POINT_MARK);
        }
        return new Circle(point.at().point(), radius);
    }

    /** Where the figure stands, and the post it stands on where the drawing has none. */
    private void stand() {
        List<Outline> standing = parts.values().stream()
                .filter(part -> part.body().equals(BringPlan.STANDS))
                .map(Made::outline)
                .toList();
        List<Point> posts = plan.points().stream()
                .filter(point -> point.role() == BringPlan.PointRole.POST)
                .map(point -> point.at().point())
                .toList();
        if (plan.placed()) {
            shift = plan.shift().point();
        } else {
            Bounds all = parts.values().stream()
                    .map(part -> part.outline().bounds())
                    .reduce(Bounds::union)
                    .orElseThrow();
            double middle = posts.isEmpty()
                    ? (all.minX() + all.maxX()) / 2
                    : posts.get(0).x();
            shift = place.stand(standing).orElse(place.above(all, middle));
        }
        if (!posts.isEmpty()) {
            Outline post = place.post(posts, shift);
            int back = parts.values().stream().mapToInt(Made::layer).min().orElse(2) - 1;
            int layer = place.freeLayer(post, Math.max(1, back), parts.values(), shift);
            String name = unused(STAND);
            parts.put(name, new Made(name, post, thickest(), layer, BringPlan.STANDS, ""));
        } else if (standing.isEmpty()) {
            complain("", "Nothing stands on the box: choose a part that does, or a point that turns on a post.");
        }
    }

    /** The box's mounts, drawn where they meet. */
    private void mounts() {
        box.mounts().forEach((name, mount) -> {
            Point at = mount.minus(shift);
            List<String> on = parts.values().stream()
                    .filter(part -> part.body().equals(BringPlan.STANDS))
                    .filter(part ->
                            part.outline().contains(at) && part.outline().distanceToEdge(at) > 2)
                    .map(Made::name)
                    .toList();
            circles.put(name, new Circle(at, HOLE_MARK));
            mounts.put(name, on);
            if (on.isEmpty() && complaints.isEmpty()) {
                complain(
                        "",
                        "No standing part has wood at the box's " + name
                                + ": move the figure, draw it a foot, or let a point turn on a post.");
            }
        });
    }

    private void engraving() {
        for (BringPlan.PlannedLine line : plan.lines()) {
            if (parts.containsKey(line.part()) && line.points().size() > 1) {
                lines.put(
                        "engrave-" + line.part() + "-" + (lines.size() + 1),
                        line.points().stream().map(Pair::point).toList());
            }
        }
    }

    String unused(String wanted) {
        String name = wanted;
        for (int i = 2; isTaken(name); i++) {
            name = wanted + "-" + i;
        }
        return name;
    }

    private boolean isTaken(String name) {
        return parts.containsKey(name)
                || circles.containsKey(name)
                || box.box().works().parts().containsKey(name)
                || plan.points().stream().anyMatch(point -> point.name().equals(name));
    }

    String thinnest() {
        return sheet(Comparator.naturalOrder());
    }

    private String thickest() {
        return sheet(Comparator.reverseOrder());
    }

    private String sheet(Comparator<Double> order) {
        return workshop.sheets().entrySet().stream()
                .min(Map.Entry.comparingByValue(
                        Comparator.comparing(entry -> entry.thickness().value(), order)))
                .map(Map.Entry::getKey)
                .orElse("");
    }
}

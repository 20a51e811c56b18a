package jackwork.make;

import static jackwork.check.Measure.degrees;
import static jackwork.check.Measure.mm;
import static jackwork.check.Measure.newtons;
import static jackwork.check.Sentence.say;

import jackwork.check.Finding;
import jackwork.check.Measure;
import jackwork.check.Sentence;
import jackwork.check.Spread;
import jackwork.check.Status;
import jackwork.check.Subject;
import jackwork.check.Topic;
import jackwork.check.Where;
import jackwork.check.Words;
import jackwork.design.CaseEntry;
import jackwork.design.Design;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.motion.model.Mechanism;
import jackwork.parts.Assembly;
import jackwork.parts.Body;
import jackwork.parts.Layers;
import jackwork.parts.Lever;
import jackwork.parts.Part;
import jackwork.stock.Basis;
import jackwork.stock.Uncertain;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Whether the strongest press tips the piece or pushes it away: weight and press together must come down within its feet (the
 * resultant of two forces, any text on statics), and what friction holds must be more than what goes sideways. The piece is
 * empty: coins lie within its feet and only make it firmer. The lever is pressed at rest, as when it is locked, and all the way
 * down.
 */
final class StandsFirm {

    /** Degrees by which a finger presses off straight down, to any side. */
    private static final Uncertain LEAN =
            new Uncertain(5, 2, 10, "deg", Basis.GUESS, "whoever means to press it down; common practice, no source");

    /** What a piece stands on. */
    private static final Uncertain TABLE = new Uncertain(
            0.3, 0.2, 0.4, "1", Basis.GUESS, "wood on wood 0.2 to 0.5 (tables of friction), smooth and varnished less");

    /** Directions in which a press leans. */
    private static final int ALL_ROUND = 24;

    private static final String TIPS = "Does it stand when it is pressed hard?";

    private final Assembly assembly;
    private final Outline feet;
    private final double table;
    /** Weight, N; where it acts, x and z, mm. */
    private final double weight;

    private final Point centre;
    private final double pressedAt;

    /**
     * Where weight and press come down together.
     *
     * @param at x and z, mm
     * @param margin from there to the edge of the feet, mm; negative outside
     */
    private record Down(Point at, double margin, Point press) {}

    private StandsFirm(Assembly assembly, Case housing) {
        this.assembly = assembly;
        List<double[]> masses = new ArrayList<>();
        Layers layers = Layers.of(assembly.parts());
        assembly.bodies().forEach(body -> masses.add(mass(body, layers)));
        double density = PartsList.density(assembly.workshop(), housing.stock());
        List<double[]> corners = new ArrayList<>();
        for (Panel panel : housing.panels()) {
            masses.add(mass(panel, density));
            for (Point point : panel.outline().outer()) {
                corners.addAll(corners(panel, point));
            }
        }
        double grams = masses.stream().mapToDouble(mass -> mass[0]).sum();
        this.weight = grams * Mechanism.GRAVITY / 1e6;
        this.centre = new Point(mean(masses, 1, grams), mean(masses, 2, grams));
        this.table = corners.stream().mapToDouble(corner -> corner[1]).min().orElseThrow();
        this.feet = Outline.around(corners.stream()
                .filter(corner -> corner[1] < table + 1e-6)
                .map(corner -> new Point(corner[0], corner[2]))
                .toList());
        this.pressedAt = layers.middle(pressed().layer());
    }

    /** Open for a box without a case, since what it will stand on is not known. */
    static List<Finding> ask(Design design, Subject subject) {
        CaseEntry entry = design.box().housing();
        if (entry == null) {
            return List.of(notKnown(subject.assembly()));
        }
        Case housing = housing(design, subject);
        if (housing == null) {
            return List.of();
        }
        StandsFirm piece = new StandsFirm(subject.assembly(), housing);
        Uncertain strongest = subject.assembly().workshop().finger().strongest();
        return List.of(piece.tips(strongest, design, entry), piece.slides(strongest));
    }

    private static Finding notKnown(Assembly assembly) {
        return Finding.ask(Topic.STANDS_FIRM, "tips", say(TIPS))
                .answer(Status.OPEN, null, null, null, "mm")
                .at(lever(assembly, assembly.lever().press()))
                .because(
                        say("the box's file has no case, so it is not known what the piece stands on"),
                        say("Press the finished piece at its lever's end as hard as a child would, on a smooth table."),
                        "no case in the box's file");
    }

    private static Where lever(Assembly assembly, Point press) {
        return new Where(assembly.body(assembly.lever().body()).name(), 0.0, press);
    }

    /** A case that would fall apart is told by who makes it. */
    private static @Nullable Case housing(Design design, Subject subject) {
        try {
            return Case.of(design, subject);
        } catch (CaseException e) {
            return null;
        }
    }

    private Finding tips(Uncertain strongest, Design design, CaseEntry entry) {
        Down down = down(strongest.value(), LEAN.value());
        Spread spread = new Spread(down.margin)
                .add("strongest press", strongest, force -> down(force, LEAN.value()).margin)
                .add("lean of the finger", LEAN, lean -> down(strongest.value(), lean).margin);
        boolean passes = spread.status() == Status.PASS;
        return Finding.ask(Topic.STANDS_FIRM, "tips", say(TIPS))
                .answer(spread.status(), down.margin, 0.0, down.margin, "mm")
                .at(lever(assembly, down.press))
                .because(
                        down.margin > 0
                                ? say(
                                        "a press of {}, leaning to the worst side, and its own weight come down {} within its feet",
                                        newtons(strongest.value()),
                                        mm(down.margin))
                                : say(
                                        "a press of {}, leaning to the worst side, tips it: with its own weight it comes down {}"
                                                + " beyond its feet; {} is the most that it stands",
                                        newtons(strongest.value()),
                                        mm(-down.margin),
                                        newtons(mostBorne(strongest.high()))),
                        passes ? Sentence.NOTHING : remedy(strongest, design, entry),
                        formula(strongest, down),
                        spread);
    }

    /** The strongest press that does not tip it, N. */
    private double mostBorne(double most) {
        double low = 0;
        double high = most;
        while (high - low > 0.01) {
            double middle = (low + high) / 2;
            if (down(middle, LEAN.value()).margin > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** What would do with all of it at its worst, to every side to which it tips. */
    private Sentence remedy(Uncertain strongest, Design design, CaseEntry entry) {
        List<Down> worst = all(strongest.high(), LEAN.high());
        double right = most(worst, down -> down.at.x() - feet.bounds().maxX());
        double left = most(worst, down -> feet.bounds().minX() - down.at.x());
        double near = most(worst, down -> down.at.y() - feet.bounds().maxY());
        double far = most(worst, down -> feet.bounds().minY() - down.at.y());
        Sentence board = say(
                "set the piece on a board that reaches {} beyond its {} wall",
                mm(Math.ceil(Math.max(near, far)) + 1).to(0),
                near > far ? "near" : "far");
        if (right <= 0 && left <= 0) {
            return say("Lower the lever, or {}.", board);
        }
        boolean changed = design.file().change().keySet().stream().anyMatch(path -> path.startsWith("box.case.toes"));
        List<String> toes = new ArrayList<>();
        toe(toes, "left", entry.toeLeft(), left);
        toe(toes, "right", entry.toeRight(), right);
        Sentence reach = say(
                "Let its long walls reach out at the table, {}; or take a shorter lever",
                changed
                        ? "in the design's file, under change: "
                                + toes.stream()
                                        .map(toe -> "box.case.toes." + toe)
                                        .collect(Collectors.joining(", "))
                        : "in the box's file: case: toes: {" + String.join(", ", toes) + "}");
        return near <= 0 && far <= 0 ? say("{}.", reach) : say("{}. Lower the lever as well, or {}.", reach, board);
    }

    private static double most(List<Down> worst, ToDoubleFunction<Down> beyond) {
        return worst.stream().mapToDouble(beyond).max().orElse(0);
    }

    private static void toe(List<String> toes, String side, double is, double more) {
        int reach = (int) Math.ceil(is + Math.max(0, more)) + (more > 0 ? 1 : 0);
        if (reach > 0) {
            toes.add(side + ": " + reach);
        }
    }

    private String formula(Uncertain strongest, Down down) {
        return "weight " + Words.number(weight) + " N at x = " + Words.number(centre.x()) + ", z = "
                + Words.number(centre.y()) + " mm, empty, paint, glue and screws not counted; press "
                + Words.number(strongest.value()) + " N at x = " + Words.number(down.press.x()) + ", z = "
                + Words.number(pressedAt) + " mm, " + Words.number(down.press.y() - table)
                + " mm above the table, leaning " + Words.number(LEAN.value()) + " deg (a guess); feet x = "
                + Words.number(feet.bounds().minX()) + " to "
                + Words.number(feet.bounds().maxX()) + ", z = "
                + Words.number(feet.bounds().minY()) + " to "
                + Words.number(feet.bounds().maxY()) + " mm";
    }

    private Finding slides(Uncertain strongest) {
        double needed = needed(strongest.value(), LEAN.value());
        double margin = TABLE.value() - needed;
        Spread spread = new Spread(margin)
                .add("friction on the table", TABLE, friction -> friction - needed)
                .add("lean of the finger", LEAN, lean -> TABLE.value() - needed(strongest.value(), lean))
                .add("strongest press", strongest, force -> TABLE.value() - needed(force, LEAN.value()));
        return Finding.ask(Topic.STANDS_FIRM, "slides", say("Does it stay where it is when it is pressed hard?"))
                .answer(spread.status(), needed, TABLE.value(), margin, "1")
                .at(lever(assembly, assembly.lever().press()))
                .because(
                        say(
                                "a press of {} that leans {} needs a friction of {} on the table, where wood has {} or so",
                                newtons(strongest.value()),
                                degrees(LEAN.value()),
                                Measure.of(needed, "1"),
                                Measure.of(TABLE.value(), "1")),
                        spread.status() == Status.PASS
                                ? Sentence.NOTHING
                                : say("Put dots of rubber or felt under its feet, and try it on a smooth table."),
                        "F sin φ / (W + F cos φ), F = " + Words.number(strongest.value()) + " N, W = "
                                + Words.number(weight) + " N, φ = " + Words.number(LEAN.value()) + " deg",
                        spread);
    }

    private double needed(double force, double lean) {
        double angle = Math.toRadians(lean);
        return force * Math.sin(angle) / (weight + force * Math.cos(angle));
    }

    private Down down(double force, double lean) {
        return all(force, lean).stream()
                .min(Comparator.comparingDouble(Down::margin))
                .orElseThrow();
    }

    /**
     * In all directions, pressed at rest and all the way down; and not pressed at all: what comes down of a lighter press lies
     * between, and the feet have no hollow.
     */
    private List<Down> all(double force, double lean) {
        Lever lever = assembly.lever();
        List<Down> all = new ArrayList<>();
        for (Point press : List.of(lever.press(), lever.press().turnedAbout(lever.pivot(), lever.turn()))) {
            all.add(down(0, 0, 0, press));
            all.add(down(force, 0, 0, press));
            for (int i = 0; i < ALL_ROUND; i++) {
                all.add(down(force, Math.toRadians(lean), 2 * Math.PI * i / ALL_ROUND, press));
            }
        }
        return all;
    }

    private Down down(double force, double lean, double toward, Point press) {
        double straight = force * Math.cos(lean);
        double aside = force * Math.sin(lean) * (press.y() - table);
        double x = (weight * centre.x() + straight * press.x() + aside * Math.cos(toward)) / (weight + straight);
        double z = (weight * centre.y() + straight * pressedAt + aside * Math.sin(toward)) / (weight + straight);
        Point at = new Point(x, z);
        double edge = feet.distanceToEdge(at);
        return new Down(at, feet.contains(at) ? edge : -edge, press);
    }

    /** The part of the lever that the finger is on. */
    private Part pressed() {
        Point press = assembly.lever().pressDrawn();
        return assembly.body(assembly.lever().body()).parts().stream()
                .min(Comparator.comparingDouble(
                        part -> part.drawn().contains(press) ? 0 : part.drawn().distanceToEdge(press)))
                .orElseThrow();
    }

    /** {g, x, z}; what is not cut from a sheet stands where the parts of its body do on the average. */
    private static double[] mass(Body body, Layers layers) {
        double flat = 0;
        double moment = 0;
        for (Part part : body.parts()) {
            flat += part.mass();
            moment += part.mass() * layers.middle(part.layer());
        }
        return new double[] {body.mass(), body.centre().x(), moment / flat};
    }

    private static double[] mass(Panel panel, double density) {
        double grams = panel.mass(density);
        Point middle = panel.outline().centroid();
        double thin = (panel.from() + panel.to()) / 2;
        return switch (panel.axis()) {
            case X -> new double[] {grams, thin, middle.x()};
            case Y -> new double[] {grams, middle.x(), middle.y()};
            case Z -> new double[] {grams, middle.x(), thin};
        };
    }

    /** {x, y, z} of a point of a panel's outline, at both of its faces. */
    private static List<double[]> corners(Panel panel, Point point) {
        List<double[]> both = new ArrayList<>();
        for (double thin : new double[] {panel.from(), panel.to()}) {
            both.add(
                    switch (panel.axis()) {
                        case X -> new double[] {thin, point.y(), point.x()};
                        case Y -> new double[] {point.x(), thin, point.y()};
                        case Z -> new double[] {point.x(), point.y(), thin};
                    });
        }
        return both;
    }

    private static double mean(List<double[]> masses, int axis, double grams) {
        return masses.stream().mapToDouble(mass -> mass[0] * mass[axis]).sum() / grams;
    }
}

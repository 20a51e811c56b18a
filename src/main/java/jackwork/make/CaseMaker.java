package jackwork.make;

import jackwork.check.Subject;
import jackwork.design.CaseEntry;
import jackwork.design.Design;
import jackwork.design.Named;
import jackwork.geometry.Circle;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.parts.Assembly;
import jackwork.parts.CoinWorks;
import jackwork.parts.Layers;
import jackwork.parts.Part;
import jackwork.stock.Fastener;
import jackwork.stock.Fasteners;
import java.util.ArrayList;
import java.util.List;

/**
 * Makes the panels. Ends stand between the long walls, the floor between all four; their tabs go through the walls. The
 * walls' tabs go through the lid, which is always screwed: it changes with the figure.
 */
final class CaseMaker {

    /** Free space around what moves through a wall, in the mechanism's plane and across it, mm: a guess. */
    private static final double CLEAR = 1.5;

    private static final double CLEAR_ACROSS = 0.8;
    /** A bar between two openings thinner than this breaks, mm: they become one. */
    private static final double LEAST_BAR = 4;
    /** Lid beyond the walls, and walls beyond the ends where screws go through them, mm. */
    private static final double OVERHANG = 4;
    /** Width of a corner's foot, mm. */
    private static final double FOOT = 15;
    /** Height of a toe at its tip, mm: it bears there all that would tip the piece. */
    private static final double TOE = 6;

    static final String DOOR = "case-door";

    /** The door's frame reaches so far under the wall and so far into the opening, mm. */
    private static final double FRAME_OUT = 9;

    private static final double FRAME_IN = 3;
    private static final double FINGER_HOLE = 7;
    private static final double BUTTON_LONG = 24;
    private static final double BUTTON_WIDE = 10;

    private final Design design;
    private final CaseEntry entry;
    private final Subject subject;
    private final Assembly assembly;
    private final double t;
    private final double fit;
    private final double x0;
    private final double x1;
    private final double y0;
    private final double y1;
    private final double z0;
    private final double z1;
    /** Walls beyond the ends. */
    private final double wing;

    private final PanelShape.Nut nut;
    private final List<Point> screws = new ArrayList<>();
    private int caught;

    private final PanelShape near;
    private final PanelShape far;
    private final PanelShape left;
    private final PanelShape right;
    private final PanelShape floor;
    private final PanelShape lid;

    CaseMaker(Design design, CaseEntry entry, Subject subject) {
        this.design = design;
        this.entry = entry;
        this.subject = subject;
        this.assembly = subject.assembly();
        this.t = Named.in(design.workshop().sheets(), entry.stock()).thickness().value();
        this.fit = design.workshop().fits().pushOrGuess().value();
        Fastener m3 = Fasteners.catalogue().find("nut-m3").orElseThrow();
        this.nut = new PanelShape.Nut(Case.SCREW_HOLE, 11, 5, m3.across() + 0.2, m3.height() + 0.2);
        x0 = entry.left();
        x1 = x0 + entry.width();
        y0 = entry.floor();
        y1 = y0 + entry.height();
        z1 = front(assembly);
        z0 = z1 - entry.depth();
        wing = entry.screwed() ? OVERHANG : 0;
        double foot = y0 - 2 * t - entry.feetOrUsual();
        near = new PanelShape("case-near", x0 - t - wing, x1 + t + wing, foot, y1);
        far = new PanelShape("case-far", x0 - t - wing, x1 + t + wing, foot, y1);
        left = new PanelShape("case-left", z0, z1, foot, y1);
        right = new PanelShape("case-right", z0, z1, foot, y1);
        floor = new PanelShape("case-floor", x0, x1, z0, z1);
        double over = t + wing + OVERHANG;
        lid = new PanelShape("case-lid", x0 - over, x1 + over, z0 - t - OVERHANG, z1 + t + OVERHANG);
        entry.screws().forEach(place -> screws.add(design.inBox(place, "")));
    }

    /** The foremost face of the box's own fixed parts, mm. */
    static double front(Assembly assembly) {
        Layers layers = Layers.of(assembly.parts());
        return assembly.body(0).parts().stream()
                .filter(Part::ofBox)
                .mapToDouble(part -> layers.front(part.layer()))
                .max()
                .orElse(layers.total());
    }

    Case make() {
        // First of all: what is cut into the walls later is cut into their toes as well.
        cutting("its toes", List.of("toes", "height"), this::toes);
        cutting("the tabs and nuts of its corners", List.of("height", "tab"), this::corners);
        cutting("the tabs and nuts of the floor", List.of("width", "depth", "tab"), this::ground);
        cutting("the tabs and nuts of the lid", List.of("width", "depth", "tab"), this::top);
        cutting("the gap between its feet", List.of("feet", "height"), this::feet);
        openings();
        List<Panel> panels = new ArrayList<>();
        screws.forEach(near::hole);
        List<Panel> doors = new ArrayList<>();
        cutting("its door", List.of("door"), () -> doors.addAll(door()));
        panels.add(panel(1, Panel.Axis.Z, z1, near, false));
        panels.add(panel(2, Panel.Axis.Z, z0 - t, far, true));
        panels.add(panel(3, Panel.Axis.X, x0 - t, left, false));
        panels.add(panel(4, Panel.Axis.X, x1, right, true));
        panels.add(panel(5, Panel.Axis.Y, y0 - t, floor, false));
        panels.add(panel(6, Panel.Axis.Y, y1, lid, true));
        panels.addAll(doors);
        double[] between = Case.betweenPlates(assembly, screws);
        return new Case(
                entry.stock(),
                List.copyOf(panels),
                List.copyOf(screws),
                between[1] - between[0],
                t + z1 + nut.high(),
                entry.screwed(),
                caught,
                entry.door() == null ? 0 : entry.screwed() ? 3 : 1);
    }

    /** Cuts, and tells a panel that does not survive it by what the maker can change. */
    private void cutting(String what, List<String> keys, Runnable cut) {
        try {
            cut.run();
        } catch (PanelShape.BrokenException e) {
            throw new CaseException(
                    file(design), keys.stream().map(key -> "case." + key).toList(), e.panel(), what);
        }
    }

    /** The box's file, by its own name. */
    static String file(Design design) {
        String path = design.file().box();
        return path.substring(path.lastIndexOf('/') + 1);
    }

    private Panel panel(int number, Panel.Axis axis, double from, PanelShape shape, boolean insideUp) {
        return new Panel(shape.name(), number, axis, from, from + t, shape.outline(), shape.holes(), insideUp);
    }

    /** Tabs along an edge, so spaced that tab and gap are alike and a gap stands at either end: {from, to} each. */
    private List<double[]> tabs(double from, double to) {
        int count = Math.max(1, (int) Math.floor((to - from) / entry.tabOrUsual() / 2 - 0.5));
        double step = (to - from) / (2 * count + 1);
        List<double[]> tabs = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            tabs.add(new double[] {from + step * (2 * i + 1), from + step * (2 * i + 2)});
        }
        return tabs;
    }

    /** Middle of a gap between two tabs, as near to a share of the edge as there is one. */
    private double gap(double from, double to, double share) {
        int count = tabs(from, to).size();
        double step = (to - from) / (2 * count + 1);
        return from + step * (0.5 + 2 * Math.round(share * count));
    }

    /** Ends into the long walls. */
    private void corners() {
        for (double[] tab : tabs(y0, y1)) {
            for (PanelShape end : List.of(left, right)) {
                end.tab(z0 - t, z0, tab[0], tab[1]);
                end.tab(z1, z1 + t, tab[0], tab[1]);
            }
            for (PanelShape wall : List.of(near, far)) {
                wall.slot(x0 - t, x0, tab[0], tab[1], fit);
                wall.slot(x1, x1 + t, tab[0], tab[1], fit);
            }
        }
        if (entry.screwed()) {
            // Near the ends: between them is what the lever's opening needs.
            for (double share : new double[] {0.2, 0.8}) {
                double y = gap(y0, y1, share);
                for (PanelShape end : List.of(left, right)) {
                    end.caught(new Point(z0, y), new Point(1, 0), nut);
                    end.caught(new Point(z1, y), new Point(-1, 0), nut);
                }
                for (PanelShape wall : List.of(near, far)) {
                    wall.hole(new Point(x0 - t / 2, y));
                    wall.hole(new Point(x1 + t / 2, y));
                }
                caught += 4;
            }
        }
    }

    private void ground() {
        for (double[] tab : tabs(x0, x1)) {
            floor.tab(tab[0], tab[1], z0 - t, z0);
            floor.tab(tab[0], tab[1], z1, z1 + t);
            near.slot(tab[0], tab[1], y0 - t, y0, fit);
            far.slot(tab[0], tab[1], y0 - t, y0, fit);
        }
        for (double[] tab : tabs(z0, z1)) {
            floor.tab(x0 - t, x0, tab[0], tab[1]);
            floor.tab(x1, x1 + t, tab[0], tab[1]);
            left.slot(tab[0], tab[1], y0 - t, y0, fit);
            right.slot(tab[0], tab[1], y0 - t, y0, fit);
        }
        if (entry.screwed()) {
            double x = gap(x0, x1, 0.5);
            floor.caught(new Point(x, z0), new Point(0, 1), nut);
            floor.caught(new Point(x, z1), new Point(0, -1), nut);
            near.hole(new Point(x, y0 - t / 2));
            far.hole(new Point(x, y0 - t / 2));
            caught += 2;
        }
    }

    /** The walls' tabs through the lid, and the screws that hold it. */
    private void top() {
        for (double[] tab : tabs(x0, x1)) {
            near.tab(tab[0], tab[1], y1, y1 + t);
            far.tab(tab[0], tab[1], y1, y1 + t);
            lid.slot(tab[0], tab[1], z0 - t, z0, fit);
            lid.slot(tab[0], tab[1], z1, z1 + t, fit);
        }
        for (double share : new double[] {0, 1}) {
            double x = gap(x0, x1, share);
            near.caught(new Point(x, y1), new Point(0, -1), nut);
            far.caught(new Point(x, y1), new Point(0, -1), nut);
            lid.hole(new Point(x, z0 - t / 2));
            lid.hole(new Point(x, z1 + t / 2));
            caught += 2;
        }
    }

    private void feet() {
        double height = entry.feetOrUsual();
        if (height > 0) {
            double foot = y0 - 2 * t - height;
            for (PanelShape wall : List.of(near, far)) {
                free(wall, x0 + FOOT, x1 - FOOT, foot, height);
            }
            for (PanelShape end : List.of(left, right)) {
                free(end, z0 + FOOT, z1 - FOOT, foot, height);
            }
        }
    }

    /** Wedges at both ends of the long walls, as low at the tip as a toe and half as steep as a roof. */
    private void toes() {
        double foot = y0 - 2 * t - entry.feetOrUsual();
        double end = t + wing;
        for (PanelShape wall : List.of(near, far)) {
            toe(wall, x0 - end, -entry.toeLeft(), foot);
            toe(wall, x1 + end, entry.toeRight(), foot);
        }
    }

    private void toe(PanelShape wall, double end, double reach, double foot) {
        if (reach == 0) {
            return;
        }
        double within = end - Math.signum(reach) * t;
        double top = Math.min(y1, foot + TOE + Math.abs(reach) / 2);
        wall.join(Outline.of(List.of(
                new Point(within, foot),
                new Point(end + reach, foot),
                new Point(end + reach, foot + TOE),
                new Point(end, top),
                new Point(within, top))));
    }

    /** A wall so narrow that its two feet meet stands on all of its lower edge. */
    private void free(PanelShape wall, double from, double to, double foot, double height) {
        if (to - from > t) {
            wall.cut(Outline.rectangle(from, foot - 1, to, foot + height));
        }
    }

    private void openings() {
        CoinWorks works = assembly.coinWorks();
        Layers layers = Layers.of(assembly.parts());
        double middle = (layers.back(works.layer()) + layers.front(works.layer())) / 2;
        String through = "openings for what goes through it when the lever is pressed";
        cutting(
                through,
                List.of("floor", "height", "depth"),
                () -> cutAll(
                        lid,
                        around(
                                Sweep.through(subject, false, y1, y1 + t, CLEAR, x0 - t - OVERHANG, x1 + t + OVERHANG),
                                false)));
        // Never one with its neighbours: a coin must find no other way in.
        cutting(
                "the coin's slot",
                List.of("left", "width", "depth"),
                () -> lid.cut(Outline.rectangle(
                        works.slotAt().x() - works.slotLength() / 2,
                        middle - works.slotWidth() / 2,
                        works.slotAt().x() + works.slotLength() / 2,
                        middle + works.slotWidth() / 2)));
        cutting(
                through,
                List.of("left"),
                () -> cutAll(left, around(Sweep.through(subject, true, x0 - t, x0, CLEAR, y0, y1), true)));
        cutting(
                through,
                List.of("left", "width"),
                () -> cutAll(right, around(Sweep.through(subject, true, x1, x1 + t, CLEAR, y0, y1), true)));
    }

    private static List<Outline> around(List<Sweep.Crossing> crossings, boolean upright) {
        List<Outline> openings = new ArrayList<>();
        for (Sweep.Crossing c : crossings) {
            double low = c.from() - FingerRoom.beside(c.nearsFrom(), CLEAR);
            double high = c.to() + FingerRoom.beside(c.nearsTo(), CLEAR);
            double back = c.back() - CLEAR_ACROSS;
            double front = c.front() + CLEAR_ACROSS;
            openings.add(
                    upright ? Outline.rectangle(back, low, front, high) : Outline.rectangle(low, back, high, front));
        }
        return openings;
    }

    /** Openings with too thin a bar between them become one. */
    private static void cutAll(PanelShape panel, List<Outline> openings) {
        Outline.closed(openings, LEAST_BAR).forEach(panel::cut);
    }

    /** An opening in the far wall, a frame behind it that the door leans on, and a button that holds it. */
    private List<Panel> door() {
        CaseEntry.Door door = entry.door();
        if (door == null) {
            return List.of();
        }
        Point at = design.inBox(door.at(), "");
        double right = at.x() + door.width();
        double above = at.y() + door.height();
        double running = design.workshop().fits().running().value();
        far.cut(Outline.rectangle(at.x(), at.y(), right, above));
        PanelShape plate = new PanelShape(
                DOOR, at.x() + running / 2, right - running / 2, at.y() + running / 2, above - running / 2);
        double middle = (at.x() + right) / 2;
        plate.cut(Outline.disc(new Circle(new Point(middle, at.y() + 2 * FINGER_HOLE), FINGER_HOLE), 0.002));
        PanelShape frame = new PanelShape(
                "case-door-frame", at.x() - FRAME_OUT, right + FRAME_OUT, at.y() - FRAME_OUT, above + FRAME_OUT);
        frame.cut(Outline.rectangle(at.x() + FRAME_IN, at.y() + FRAME_IN, right - FRAME_IN, above - FRAME_IN));
        if (entry.screwed()) {
            for (double x : new double[] {at.x() - FRAME_OUT / 2, right + FRAME_OUT / 2}) {
                far.hole(new Point(x, (at.y() + above) / 2));
                frame.hole(new Point(x, (at.y() + above) / 2));
            }
        }
        Point turns = new Point(middle, above + FRAME_OUT / 2);
        far.hole(turns);
        frame.hole(turns);
        PanelShape button = new PanelShape(
                "case-button",
                turns.x() - BUTTON_WIDE / 2,
                turns.x() + BUTTON_WIDE / 2,
                turns.y() - BUTTON_LONG / 2,
                turns.y() + BUTTON_LONG / 2);
        button.hole(turns);
        return List.of(
                panel(7, Panel.Axis.Z, z0 - t, plate, true),
                panel(8, Panel.Axis.Z, z0, frame, true),
                panel(9, Panel.Axis.Z, z0 - 2 * t, button, true));
    }
}

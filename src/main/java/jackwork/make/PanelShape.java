package jackwork.make;

import jackwork.geometry.Circle;
import jackwork.geometry.InvalidOutlineException;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** A panel in the making: a rectangle that gains tabs and loses slots. */
final class PanelShape {

    /** How far a cut runs past an open edge, mm, so that no sliver stands. */
    private static final double PAST = 1;

    private final String name;
    private Outline outline;
    private final List<Circle> holes = new ArrayList<>();

    /** @param name of the panel, as it is called where it falls apart */
    PanelShape(String name, double fromU, double toU, double fromV, double toV) {
        this.name = name;
        outline = Outline.rectangle(fromU, fromV, toU, toV);
    }

    String name() {
        return name;
    }

    void tab(double fromU, double toU, double fromV, double toV) {
        join(Outline.rectangle(fromU, fromV, toU, toV));
    }

    void join(Outline more) {
        outline = whole(() -> outline.with(more));
    }

    /** An opening wider all round by half a fit. */
    void slot(double fromU, double toU, double fromV, double toV, double fit) {
        cut(Outline.rectangle(fromU - fit / 2, fromV - fit / 2, toU + fit / 2, toV + fit / 2));
    }

    void cut(Outline opening) {
        outline = whole(() -> outline.without(opening));
    }

    private Outline whole(Supplier<Outline> made) {
        try {
            return made.get();
        } catch (InvalidOutlineException e) {
            throw new BrokenException(name, e);
        }
    }

    void hole(Point at) {
        holes.add(Case.screwHole(at));
    }

    /**
     * A channel from an edge with a nest for a nut across it: the screw comes in through the neighbour.
     *
     * @param at middle of the channel on the edge
     * @param inward one step into the panel
     */
    void caught(Point at, Point inward, Nut nut) {
        Point aside = new Point(-inward.y(), inward.x());
        // A hair past the edge: the channel is open there.
        cut(along(at, inward, aside, -PAST, nut.deep(), nut.channel() / 2));
        cut(along(at, inward, aside, nut.nest(), nut.nest() + nut.high(), nut.wide() / 2));
    }

    private static Outline along(Point at, Point inward, Point aside, double from, double to, double half) {
        Point low = at.plus(inward.times(from));
        Point high = at.plus(inward.times(to));
        return Outline.of(List.of(
                low.plus(aside.times(-half)),
                high.plus(aside.times(-half)),
                high.plus(aside.times(half)),
                low.plus(aside.times(half))));
    }

    Outline outline() {
        return outline;
    }

    List<Circle> holes() {
        return List.copyOf(holes);
    }

    /**
     * A nut caught in a panel's plane.
     *
     * @param channel width for the screw, mm
     * @param deep how far the channel reaches, mm
     * @param nest from the edge to the nest, mm: the wood that bears the pull
     * @param wide the nest along the edge, mm
     * @param high the nest across it, mm
     */
    record Nut(double channel, double deep, double nest, double wide, double high) {}

    /** A panel that a cut leaves in pieces, or of which it leaves nothing. */
    static final class BrokenException extends RuntimeException {

        private static final long serialVersionUID = 1L;

        private final String panel;

        BrokenException(String panel, InvalidOutlineException why) {
            super(why);
            this.panel = panel;
        }

        String panel() {
            return panel;
        }
    }
}

package jackwork.parts;

import jackwork.design.StringEntry;
import jackwork.design.WorkshopFile;
import jackwork.geometry.Point;
import jackwork.geometry.TautPath;
import jackwork.stock.FrictionPair;
import jackwork.stock.Uncertain;
import java.util.ArrayList;
import java.util.List;

/**
 * A string from one body over guides to another.
 *
 * @param holds pull that the cord bears, N
 * @param slack how much longer it is than its path as drawn, mm
 */
public record StringRun(
        String name,
        int a,
        Point from,
        String fromPart,
        List<Guide> over,
        int b,
        Point to,
        String toPart,
        String cord,
        Uncertain holds,
        double slack)
        implements Link {

    private static final String CORD = "cord";

    /**
     * @param radius of a post with the cord's half thickness, mm; 0 for an eyelet
     * @param side +1 where the string bends to its left, −1 to its right
     * @param wholeTurns round a post, beside what the drawing shows
     */
    public record Guide(int body, Point at, double radius, int side, int wholeTurns, FrictionPair friction) {}

    @Override
    public List<Integer> bodies() {
        List<Integer> bodies = new ArrayList<>(List.of(a, b));
        over.forEach(guide -> bodies.add(guide.body()));
        return bodies;
    }

    @Override
    public List<FrictionPair> frictions() {
        return over.stream().map(Guide::friction).toList();
    }

    /** Its way as drawn, taut. */
    public TautPath path() {
        return TautPath.of(
                from,
                over.stream()
                        .map(guide -> new TautPath.Round(guide.at(), guide.radius(), guide.side(), guide.wholeTurns()))
                        .toList(),
                to);
    }

    /**
     * How many times the tension at one end is at the other while it slips over its guides: e to the friction times the
     * turn, guide by guide, as drawn.
     */
    public double capstan() {
        List<Double> wraps = path().wraps();
        double power = 0;
        for (int i = 0; i < over.size(); i++) {
            power += over.get(i).friction().coefficient().value() * Math.max(0, wraps.get(i));
        }
        return Math.exp(power);
    }

    /** From knot to knot, mm. */
    public double length() {
        return path().length() + slack;
    }

    /** The same, its cord longer by a share of what it is. */
    StringRun stretched(double share) {
        double length = length();
        return new StringRun(name, a, from, fromPart, over, b, to, toPart, cord, holds, slack + share * length);
    }

    @Override
    public Link rubbing(FrictionPair pair, FrictionPair other) {
        List<Guide> now = over.stream()
                .map(g -> new Guide(
                        g.body(),
                        g.at(),
                        g.radius(),
                        g.side(),
                        g.wholeTurns(),
                        Link.changed(g.friction(), pair, other)))
                .toList();
        return new StringRun(name, a, from, fromPart, now, b, to, toPart, cord, holds, slack);
    }

    /** As it is written. */
    public static StringRun of(String name, StringEntry string, Joining around) {
        WorkshopFile.CordEntry cord = around.cord(string.cord());
        List<Guide> guides = new ArrayList<>();
        for (StringEntry.GuideEntry guide : string.over()) {
            String rod = guide.rod();
            String eye = guide.eyelet() == null ? around.surface(guide.part()) : Printing.SURFACE;
            String surface = rod == null ? eye : around.rodSurface(rod);
            guides.add(new Guide(
                    around.body(guide.part()),
                    around.at(guide.at(), ""),
                    rod == null ? 0 : around.rodRadius(rod) + cord.diameter().value() / 2,
                    "right".equals(guide.turns()) ? -1 : 1,
                    guide.wholeTurns() == null ? 0 : guide.wholeTurns(),
                    around.rubbing(CORD, surface)));
        }
        Double slack = string.slack();
        return new StringRun(
                name,
                around.body(string.from().part()),
                around.at(string.from()),
                string.from().part(),
                guides,
                around.body(string.to().part()),
                around.at(string.to()),
                string.to().part(),
                string.cord(),
                cord.holds(),
                slack == null ? 0 : slack);
    }
}

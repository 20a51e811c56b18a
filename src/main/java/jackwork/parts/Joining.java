package jackwork.parts;

import jackwork.design.Design;
import jackwork.design.Named;
import jackwork.design.Place;
import jackwork.design.PointOf;
import jackwork.design.Works;
import jackwork.design.WorkshopFile;
import jackwork.geometry.Point;
import jackwork.stock.FrictionPair;
import jackwork.stock.Rods;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What an entry of a joint needs to know to hold bodies: where its points are, which bodies its parts belong to, what rubs. */
public final class Joining {

    private final Design design;
    private final Works works;
    private final Map<String, Part> parts;
    private final Map<String, Integer> bodyOf;
    private final Map<String, Teeth.Placed> teeth;

    Joining(
            Design design,
            Works works,
            Map<String, Part> parts,
            Map<String, Integer> bodyOf,
            Map<String, Teeth.Placed> teeth) {
        this.design = design;
        this.works = works;
        this.parts = parts;
        this.bodyOf = bodyOf;
        this.teeth = teeth;
    }

    Design design() {
        return design;
    }

    /** The file that the entry is in. */
    Works works() {
        return works;
    }

    Teeth.Placed gear(String name) {
        return Named.in(teeth, name);
    }

    /** Number of the body that a part belongs to. */
    public int body(String part) {
        return Named.in(bodyOf, part);
    }

    public Point at(PointOf point) {
        return at(point.at(), "");
    }

    /** @param fallback the circle that serves where no place is written */
    public Point at(@Nullable Place place, String fallback) {
        return Places.at(design, works, place, fallback);
    }

    /** mm. */
    public double rodRadius(String rod) {
        return Named.in(design.workshop().rods(), rod).diameter().value() / 2;
    }

    public WorkshopFile.CordEntry cord(String name) {
        return Named.in(design.workshop().cords(), name);
    }

    /** A part's outer edge before it is bored. */
    public List<Point> edge(String part) {
        return Named.in(parts, part).drawn().outer();
    }

    public FrictionPair onRod(String rod, String part) {
        return rubbing(rodSurface(rod), surface(part));
    }

    public FrictionPair between(String a, String b) {
        return rubbing(surface(a), surface(b));
    }

    FrictionPair rubbing(String surface, String other) {
        return Friction.between(design.workshop(), surface, other);
    }

    String rodSurface(String rod) {
        return Rods.catalogue()
                .find(Named.in(design.workshop().rods(), rod).kind())
                .orElseThrow()
                .surface();
    }

    String surface(String part) {
        return part.equals(Body.GROUND) ? "wood" : Named.in(parts, part).kind().surface();
    }
}

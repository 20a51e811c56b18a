package jackwork.make;

import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.parts.Assembly;
import jackwork.parts.Part;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A tongue that fills the lever's opening beneath the lever, so that it cannot go down in the post; its head stays outside,
 * to be taped down and pulled out by the buyer.
 */
final class TransitLock {

    private static final double PLAY = 0.3;
    private static final double HEAD = 12;
    private static final double OVER = 6;
    private static final double INTO = 8;

    private TransitLock() {}

    /** @return null when no end of the case is passed by the lever */
    static @Nullable FlatPiece of(Assembly assembly, Case housing) {
        boolean rightward =
                assembly.lever().press().x() > assembly.lever().pivot().x();
        Panel end = housing.panels().stream()
                .filter(panel -> panel.name().equals(rightward ? "case-right" : "case-left"))
                .findFirst()
                .orElseThrow();
        double outward = rightward ? 1 : -1;
        // Of all that comes out there, what the finger presses.
        Part lever = assembly.body(assembly.lever().body()).parts().stream()
                .filter(part -> part.drawn().bounds().maxX() > end.to()
                        && part.drawn().bounds().minX() < end.from())
                .max(Comparator.comparingDouble(part -> rightward
                        ? part.drawn().bounds().maxX()
                        : -part.drawn().bounds().minX()))
                .orElse(null);
        if (lever == null) {
            return null;
        }
        double z = jackwork.parts.Layers.of(assembly.parts()).back(lever.layer());
        double face = rightward ? end.to() : end.from();
        double thick = end.to() - end.from();
        double inner = face - outward * (thick + INTO);
        double outer = face + outward * HEAD;
        double under = lowest(lever, Math.min(inner, outer), Math.max(inner, outer)) - PLAY;
        double bottom = openingBottom(end, z + lever.thickness().value() / 2) + PLAY;
        if (!(under - bottom > 2)) {
            return null;
        }
        List<Point> ring = new ArrayList<>(List.of(
                new Point(inner, bottom),
                new Point(face, bottom),
                new Point(face, bottom - OVER),
                new Point(outer, bottom - OVER),
                new Point(outer, under),
                new Point(inner, under)));
        return new FlatPiece(
                "transit-lock",
                lever.stock(),
                lever.thickness().value(),
                false,
                Outline.of(ring),
                List.of(),
                List.of());
    }

    private static double lowest(Part lever, double fromX, double toX) {
        double lowest = Double.POSITIVE_INFINITY;
        List<Point> ring = lever.drawn().outer();
        for (int i = 0; i < ring.size(); i++) {
            Point p = ring.get(i);
            Point q = ring.get((i + 1) % ring.size());
            for (int k = 0; k <= 4; k++) {
                Point at = p.plus(q.minus(p).times(k / 4.0));
                if (at.x() >= fromX && at.x() <= toX) {
                    lowest = Math.min(lowest, at.y());
                }
            }
        }
        return lowest;
    }

    /** The end panel's coordinates are (z, y). */
    private static double openingBottom(Panel end, double z) {
        double bottom = Double.POSITIVE_INFINITY;
        double tallest = 0;
        for (List<Point> hole : end.outline().holes()) {
            Outline opening = Outline.of(hole);
            var bounds = opening.bounds();
            if (bounds.minX() <= z && z <= bounds.maxX() && bounds.height() > tallest) {
                tallest = bounds.height();
                bottom = bounds.minY();
            }
        }
        return bottom;
    }
}

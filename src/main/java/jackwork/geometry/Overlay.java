package jackwork.geometry;

import java.util.Collection;
import java.util.function.Supplier;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.TopologyException;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/**
 * Regions laid over each other. The usual way keeps every corner where it was, and fails where edges run so near each other that
 * rounding decides on which side; there the library's robust one answers, which may shift corners by the last digits.
 */
final class Overlay {

    private Overlay() {}

    static Geometry shared(Geometry one, Geometry other) {
        return usual(() -> one.intersection(other), () -> robust(one, other, OverlayNG.INTERSECTION));
    }

    static Geometry less(Geometry one, Geometry other) {
        return usual(() -> one.difference(other), () -> robust(one, other, OverlayNG.DIFFERENCE));
    }

    static Geometry together(Geometry one, Geometry other) {
        return usual(() -> one.union(other), () -> robust(one, other, OverlayNG.UNION));
    }

    /** Lines are cut where they cross. */
    static Geometry together(Collection<Geometry> all, GeometryFactory factory) {
        return usual(() -> UnaryUnionOp.union(all, factory), () -> OverlayNGRobust.union(all, factory));
    }

    private static Geometry robust(Geometry one, Geometry other, int operation) {
        return OverlayNGRobust.overlay(one, other, operation);
    }

    private static Geometry usual(Supplier<Geometry> usual, Supplier<Geometry> robust) {
        try {
            return usual.get();
        } catch (TopologyException e) {
            return robust.get();
        }
    }
}

package jackwork.geometry;

import java.util.List;

/**
 * A body built of flat slabs, each as thick everywhere: what can be glued of sheets can be printed as well. Slabs may
 * overlap; mm.
 */
public record Solid(List<Slab> slabs) {

    /**
     * @param from its lower face, mm
     * @param to its upper face, mm
     */
    public record Slab(Outline outline, double from, double to) {
        public Slab {
            if (!(from < to) || !Double.isFinite(to - from)) {
                throw new IllegalArgumentException(
                        "a slab from " + from + " to " + to + " mm is no slab; from less than to was expected");
            }
        }
    }

    public Solid {
        slabs = List.copyOf(slabs);
        if (slabs.isEmpty()) {
            throw new IllegalArgumentException("a solid needs at least one slab");
        }
    }
}

package jackwork.app.make;

import jackwork.app.wire.Payload;
import jackwork.app.wire.Places;
import java.util.List;

/** The printed parts as they go to the printer. */
record MakeSolids(List<Surface> solids) implements Payload {

    /**
     * A closed surface, counter-clockwise seen from outside.
     *
     * @param vertices x, y, z of each, mm
     * @param triangles three vertex numbers each
     */
    record Surface(String name, @Places(4) List<Double> vertices, List<Integer> triangles) {}
}

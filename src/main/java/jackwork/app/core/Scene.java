package jackwork.app.core;

import jackwork.app.wire.Pair;
import jackwork.app.wire.Places;
import jackwork.app.wire.Tuple;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the page draws: every outline in the position drawn, by body, with layers and materials; mm, y up. */
public record Scene(
        String name,
        @Places(3) Room bounds,
        List<Body> bodies,
        List<Pin> pins,
        List<Cord> strings,
        List<Picture> pictures,
        List<Cloth> cloths,
        Handle lever,
        Works coinWorks) {

    record Room(double minX, double minY, double maxX, double maxY) {}

    /** @param centre of mass, as finely as the poses, so that a body stands exactly where it is drawn at rest */
    record Body(String name, boolean ground, Centre centre, List<Part> parts, List<Weight> weights) {}

    @Tuple
    record Centre(double x, double y) {}

    /**
     * @param material its surface: {@code wood}, {@code card}, {@code acrylic}, {@code plastic}
     * @param rings the outline, then its holes
     */
    public record Part(
            String name,
            int layer,
            boolean ofBox,
            String material,
            @Nullable String paint,
            List<List<Pair>> rings,
            List<List<Pair>> engraving) {}

    record Weight(String name, Pair at, @Places(3) double radius) {}

    /** @param body that grips it */
    record Pin(String name, Pair at, @Places(3) double radius, String body, int layer) {}

    /** A string's ends and the middles of its guides. */
    record Cord(String name, List<On> points) {}

    /** A point with the body that carries it. */
    record On(String body, Pair at) {}

    /**
     * A printed picture on a part.
     *
     * @param at its lower left corner
     * @param state another word once the file is another
     */
    record Picture(
            String part,
            Pair at,
            @Places(3) double width,
            @Places(3) double height,
            String state) {}

    /**
     * Cloth as it lies at rest.
     *
     * @param body that carries it
     */
    record Cloth(String name, String body, int layer, List<Pair> ring) {}

    record Handle(String body, Pair press, Pair pin, double throwDeg) {}

    /** @param layer that the coin rolls in */
    record Works(
            Slot slot, Pair lip, Pair heel, Pair toe, String body, Pair pin, double tipDeg, Pair letGo, int layer) {}

    record Slot(@Places(3) double length, @Places(3) double width) {}
}

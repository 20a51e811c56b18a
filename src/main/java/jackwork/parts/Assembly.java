package jackwork.parts;

import java.util.List;
import jackwork.design.WorkshopFile;

/**
 * A design put together in the position drawn. Bodies are numbered by their place in the list;
 * number 0 is the ground.
 *
 * @param bodies the ground first
 * @param pins between different bodies; dowels within one body hold but do not turn
 */
public record Assembly(
        String name,
        WorkshopFile workshop,
        List<Body> bodies,
        List<PinJoint> pins,
        List<SlideJoint> slides,
        List<Stop> stops,
        Lever lever,
        CoinWorks coinWorks) {

    public Body body(int number) {
        return bodies.get(number);
    }

    /** Every flat part, box and figure, in the order of bodies. */
    public List<Part> parts() {
        return bodies.stream().flatMap(body -> body.parts().stream()).toList();
    }
}

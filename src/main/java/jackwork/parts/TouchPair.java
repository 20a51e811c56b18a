package jackwork.parts;

import jackwork.design.TouchEntry;
import jackwork.geometry.Point;
import jackwork.stock.FrictionPair;
import java.util.List;

/**
 * Two bodies that may push each other.
 *
 * @param radius of a peg of body a that touches, mm; 0 when a's outline does
 * @param shapeA the peg's centre alone, or a's outline
 * @param shapeB b's outline
 */
public record TouchPair(
        String name,
        int a,
        String partA,
        double radius,
        List<Point> shapeA,
        int b,
        String partB,
        List<Point> shapeB,
        FrictionPair friction)
        implements Rubbing {

    @Override
    public List<Integer> bodies() {
        return List.of(a, b);
    }

    @Override
    public Link with(FrictionPair other) {
        return new TouchPair(name, a, partA, radius, shapeA, b, partB, shapeB, other);
    }

    /** As it is written. */
    public static TouchPair of(String name, TouchEntry touch, Joining around) {
        String rod = touch.rod();
        boolean peg = rod != null;
        return new TouchPair(
                name,
                around.body(touch.part()),
                touch.part(),
                peg ? around.rodRadius(String.valueOf(rod)) : 0,
                peg ? List.of(around.at(touch.peg(), "")) : around.edge(touch.part()),
                around.body(touch.on()),
                touch.on(),
                around.edge(touch.on()),
                peg ? around.onRod(String.valueOf(rod), touch.on()) : around.between(touch.part(), touch.on()));
    }
}

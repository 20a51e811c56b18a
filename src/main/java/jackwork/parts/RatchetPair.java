package jackwork.parts;

import jackwork.design.PawlEntry;
import jackwork.geometry.Point;
import jackwork.stock.FrictionPair;
import java.util.List;

/**
 * A pawl on a ratchet wheel.
 *
 * @param pawl body of the pawl
 * @param tip centre of its rounded tip
 * @param radius of the tip, mm
 * @param wheel body of the wheel
 * @param teeth the wheel's outline as drawn
 */
public record RatchetPair(
        String name,
        int pawl,
        Point tip,
        double radius,
        int wheel,
        String wheelPart,
        RatchetWheel shape,
        List<Point> teeth,
        FrictionPair friction)
        implements Rubbing {

    @Override
    public List<Integer> bodies() {
        return List.of(pawl, wheel);
    }

    @Override
    public Link with(FrictionPair other) {
        return new RatchetPair(name, pawl, tip, radius, wheel, wheelPart, shape, teeth, other);
    }

    /** As it is written. */
    public static RatchetPair of(String name, PawlEntry pawl, Joining around) {
        RatchetWheel wheel = RatchetWheel.of(pawl);
        return new RatchetPair(
                name,
                around.body(pawl.tip().part()),
                around.at(pawl.tip()),
                pawl.tipRadius(),
                around.body(pawl.wheel()),
                pawl.wheel(),
                wheel,
                wheel.outline(around.at(pawl.at(), name), RatchetWheel.firstTooth(pawl))
                        .outer(),
                around.between(pawl.tip().part(), pawl.wheel()));
    }
}

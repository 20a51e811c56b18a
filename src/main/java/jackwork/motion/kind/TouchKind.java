package jackwork.motion.kind;

import jackwork.design.TouchEntry;
import jackwork.motion.model.MechanismBuilder;
import jackwork.motion.model.MechanismKind;
import jackwork.motion.model.Touch;
import jackwork.parts.Description;
import jackwork.parts.TouchPair;

/** Two parts that push each other: {@link Touch}. */
public final class TouchKind extends MechanismKind<TouchEntry, TouchPair> {

    public TouchKind() {
        super("touches", "touch", TouchEntry.class, TouchPair.class, TouchPair::of);
    }

    @Override
    public void compile(TouchPair link, MechanismBuilder builder, int[] number) {
        int a = number[link.a()];
        int b = number[link.b()];
        double friction = link.friction().coefficient().value();
        if (link.radius() > 0) {
            builder.touchDisc(
                    link.name(), a, link.shapeA().get(0), link.radius(), b, link.shapeB(), friction, WOOD_ON_WOOD);
        } else {
            builder.touch(link.name(), a, link.shapeA(), b, link.shapeB(), friction, WOOD_ON_WOOD);
        }
    }

    @Override
    public void describe(TouchPair link, Description out) {
        out.put("radius", link.radius(), 6);
        out.put("shapeA", link.shapeA());
        out.put("shapeB", link.shapeB());
    }
}

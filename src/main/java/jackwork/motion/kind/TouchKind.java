package jackwork.motion.kind;

import jackwork.design.TouchEntry;
import jackwork.motion.model.MechanismBuilder;
import jackwork.motion.model.MechanismKind;
import jackwork.motion.model.Touch;
import jackwork.parts.Description;
import jackwork.parts.Joining;
import jackwork.parts.TouchPair;

/** Two parts that push each other: {@link Touch}. */
public final class TouchKind implements MechanismKind<TouchEntry, TouchPair> {

    @Override
    public String section() {
        return "touches";
    }

    @Override
    public String label() {
        return "touch";
    }

    @Override
    public Class<TouchEntry> entry() {
        return TouchEntry.class;
    }

    @Override
    public Class<TouchPair> link() {
        return TouchPair.class;
    }

    @Override
    public TouchPair make(String name, TouchEntry entry, Joining around) {
        return TouchPair.of(name, entry, around);
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
        out.put("kind", "touch");
        out.put("radius", link.radius(), 6);
        out.put("shapeA", link.shapeA());
        out.put("shapeB", link.shapeB());
    }
}

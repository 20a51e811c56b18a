package jackwork.motion;

import jackwork.geometry.Point;
import jackwork.parts.Assembly;
import jackwork.parts.Body;
import jackwork.parts.Link;
import jackwork.parts.PinJoint;
import jackwork.parts.SlideJoint;
import jackwork.parts.Stop;
import java.util.Arrays;

/**
 * Compiles an assembly into the mechanism that the lever drives: lever and figure. The bucket is
 * not driven by the lever, so it is left out; its own balance is a question of the coin works.
 */
public final class MechanismCompiler {

    private static final Point DOWN = new Point(0, -1);

    private MechanismCompiler() {}

    /** @throws MechanismException when the lever does not decide where every part is */
    public static Mechanism compile(Assembly assembly) {
        int[] number = new int[assembly.bodies().size()];
        return builder(assembly, number, false).build();
    }

    /**
     * A builder with all of an assembly but what is not asked for.
     *
     * @param number receives each of the assembly's bodies' number in the mechanism
     * @param withBucket whether the bucket is part of it
     */
    static MechanismBuilder builder(Assembly assembly, int[] number, boolean withBucket) {
        Arrays.fill(number, Mechanism.GROUND);
        MechanismBuilder builder = new MechanismBuilder();
        int left = withBucket ? -1 : assembly.coinWorks().bucket();
        for (int i = 1; i < number.length; i++) {
            Body body = assembly.body(i);
            if (i != left) {
                number[i] = builder.body(body.name(), body.mass(), body.centre(), body.inertia());
            }
        }
        for (PinJoint pin : assembly.pins()) {
            if (pin.runner() != left && pin.holder() != left) {
                builder.pin(
                        pin.name(),
                        number[pin.runner()],
                        number[pin.holder()],
                        pin.at(),
                        pin.radius(),
                        pin.friction().coefficient().value());
            }
        }
        for (SlideJoint slide : assembly.slides()) {
            if (slide.peg() != left && slide.slot() != left) {
                addSlide(builder, slide, number);
            }
        }
        for (Stop stop : assembly.stops()) {
            if (stop.a() != left && stop.b() != left) {
                builder.stop(stop.name(), number[stop.a()], number[stop.b()], stop.from(), stop.to());
            }
        }
        for (Link link : assembly.links()) {
            if (!link.bodies().contains(left)) {
                LinkCompiler.add(builder, link, number);
            }
        }
        return builder.lever(
                number[assembly.lever().body()],
                assembly.lever().turn(),
                assembly.lever().press(),
                DOWN);
    }

    private static void addSlide(MechanismBuilder builder, SlideJoint slide, int[] number) {
        int peg = number[slide.peg()];
        int slot = number[slide.slot()];
        double friction = slide.friction().coefficient().value();
        Point via = slide.via();
        if (via == null) {
            builder.slide(slide.name(), peg, slot, slide.at(), slide.from(), slide.to(), friction);
        } else {
            builder.arcSlide(slide.name(), peg, slot, slide.at(), slide.from(), via, slide.to(), friction);
        }
    }
}

package jackwork.motion.model;

import jackwork.geometry.Point;
import jackwork.parts.Assembly;
import jackwork.parts.Body;
import jackwork.parts.Link;
import jackwork.parts.PinJoint;
import jackwork.parts.SlideJoint;
import jackwork.parts.Stop;
import java.util.Arrays;
import java.util.function.IntPredicate;

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
        return figure(assembly, number, true).build();
    }

    /**
     * Lever and figure.
     *
     * @param number receives each of the assembly's bodies' number in the mechanism
     * @param leverRubs whether the lever's own pivot has friction
     */
    public static MechanismBuilder figure(Assembly assembly, int[] number, boolean leverRubs) {
        int bucket = assembly.coinWorks().bucket();
        return builder(assembly, number, body -> body != bucket, leverRubs);
    }

    /**
     * A builder with the bodies asked for, and what holds those alone.
     *
     * @param number receives each of the assembly's bodies' number in the mechanism
     * @param kept bodies of the assembly that are part of it; the ground always is
     * @param leverRubs whether the lever's own pivot has friction
     */
    public static MechanismBuilder builder(Assembly assembly, int[] number, IntPredicate kept, boolean leverRubs) {
        Arrays.fill(number, Mechanism.GROUND);
        MechanismBuilder builder = new MechanismBuilder();
        for (int i = 1; i < number.length; i++) {
            Body body = assembly.body(i);
            if (kept.test(i)) {
                number[i] = builder.body(body.name(), body.mass(), body.centre(), body.inertia());
            }
        }
        IntPredicate there = body -> body == 0 || kept.test(body);
        for (PinJoint pin : assembly.pins()) {
            if (there.test(pin.runner()) && there.test(pin.holder())) {
                boolean ofLever = pin.name().equals(assembly.lever().pin());
                builder.pin(
                        pin.name(),
                        number[pin.runner()],
                        number[pin.holder()],
                        pin.at(),
                        ofLever && !leverRubs ? 0 : pin.radius(),
                        pin.friction().coefficient().value());
            }
        }
        for (SlideJoint slide : assembly.slides()) {
            if (there.test(slide.peg()) && there.test(slide.slot())) {
                addSlide(builder, slide, number);
            }
        }
        for (Stop stop : assembly.stops()) {
            if (there.test(stop.a()) && there.test(stop.b())) {
                builder.stop(stop.name(), number[stop.a()], number[stop.b()], stop.from(), stop.to());
            }
        }
        for (Link link : assembly.links()) {
            if (link.bodies().stream().allMatch(there::test)) {
                MechanismKind.add(link, builder, number);
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

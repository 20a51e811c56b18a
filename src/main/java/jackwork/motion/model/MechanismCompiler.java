package jackwork.motion.model;

import jackwork.geometry.Point;
import jackwork.parts.Assembly;
import jackwork.parts.Body;
import jackwork.parts.Link;
import jackwork.parts.PinJoint;
import jackwork.parts.SlideJoint;
import jackwork.parts.Stopping;
import jackwork.parts.TurningEnd;
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
                        pin.at().plus(pin.off()),
                        number[pin.holder()],
                        pin.at(),
                        ofLever && !leverRubs ? 0 : pin.radius(),
                        pin.friction().coefficient().value(),
                        MechanismKind.MICRO * pin.drag());
            }
        }
        for (SlideJoint slide : assembly.slides()) {
            if (there.test(slide.peg()) && there.test(slide.slot())) {
                addSlide(builder, slide, number);
            }
        }
        for (Stopping stopping : assembly.ends()) {
            if (stopping.end().isWritten()
                    && there.test(stopping.end().body())
                    && there.test(stopping.end().against())) {
                end(builder, assembly, stopping, number, MechanismKind.WOOD_ON_WOOD);
            }
        }
        for (Link link : assembly.links()) {
            if (link.bodies().stream().allMatch(there::test)) {
                MechanismKind.add(link, builder, number);
            }
        }
        return builder.lever(
                number[assembly.lever().body()],
                assembly.lever().rest(),
                assembly.lever().turn(),
                assembly.lever().pressDrawn(),
                DOWN);
    }

    /**
     * Ends a body's way: at what stops it there, or, where nothing does, at the angle that is wished.
     *
     * @param number of each of the assembly's bodies in the mechanism
     * @param restitution share of the approach speed that comes back from what stops it
     */
    public static void end(
            MechanismBuilder builder, Assembly assembly, Stopping stopping, int[] number, double restitution) {
        TurningEnd end = stopping.end();
        int body = number[end.body()];
        int against = number[end.against()];
        double angle = stopping.angle();
        String name = end.isWritten() ? end.of() : end.name();
        Stopping.Obstacle met = stopping.met();
        if (met != null && stopping.holds()) {
            builder.edgeStop(
                    name,
                    body,
                    against,
                    met.meeting().at(),
                    met.meeting().out(),
                    end.sense() * stopping.lever(),
                    angle,
                    restitution);
        } else if (end.sense() > 0) {
            builder.stop(name, body, against, Double.NEGATIVE_INFINITY, angle);
        } else {
            builder.stop(name, body, against, angle, Double.POSITIVE_INFINITY);
        }
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

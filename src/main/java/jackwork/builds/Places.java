package jackwork.builds;

import jackwork.geometry.Point;
import jackwork.motion.model.MechanismCompiler;
import jackwork.motion.model.MechanismException;
import jackwork.parts.Assembly;
import jackwork.parts.Body;
import jackwork.parts.Lump;
import jackwork.parts.Part;
import jackwork.parts.PinJoint;
import jackwork.parts.StringRun;
import jackwork.stock.Basis;
import jackwork.stock.Fasteners;
import jackwork.stock.Uncertain;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;

/**
 * Where things come to be beside where they are drawn, each in both directions by itself: holes of pivots and joints once
 * cut, the parts of lever and bucket once glued up, and with them tooth, strut, lip and kicker; weights fixed by hand.
 * Pegs, string ends, what runs on teeth, cams and pawls, and what is printed in one piece are where they are drawn.
 */
final class Places {

    /** Of a hole against the outline it is cut with: a laser cutting service states 0.127 mm. */
    static final Uncertain HOLE =
            new Uncertain(0, -0.13, 0.13, "mm", Basis.GUESS, "0.127 mm as a laser cutting service states it");

    /** Of a part against those it is glued to, on dowels: a guess. */
    static final Uncertain GLUED =
            new Uncertain(0, -0.15, 0.15, "mm", Basis.GUESS, "dowels in press holes, common practice, no source");

    /** Of a weight that is fixed by hand: a guess. */
    static final Uncertain WEIGHT =
            new Uncertain(0, -0.5, 0.5, "mm", Basis.GUESS, "fixed by hand, common practice, no source");

    /** Of what is cut or filled by hand to a mass in grams, a share of that. */
    static final Uncertain HEAVIER = new Uncertain(
            0, -0.05, 0.05, "1", Basis.GUESS, "cut by hand and weighed in grams, common practice, no source");

    private Places() {}

    static List<Unknown> of(Assembly assembly) {
        List<Unknown> all = new ArrayList<>();
        String lever = assembly.leverBearing().pin().name();
        String bucket = assembly.bucketBearing().pin().name();
        both(all, lever, HOLE, (build, by) -> build.leverPlace = build.leverPlace.plus(by));
        both(all, bucket, HOLE, (build, by) -> build.bucketPlace = build.bucketPlace.plus(by));
        for (int number : List.of(assembly.lever().body(), assembly.coinWorks().bucket())) {
            Body body = assembly.body(number);
            List<Part> cut =
                    body.parts().stream().filter(part -> part.printed() == null).toList();
            // A single part has its hole and its edges in one.
            for (Part part : body.parts().size() > 1 ? cut : List.<Part>of()) {
                both(all, part.name(), GLUED, (build, by) -> add(build.slips, part.name(), by));
            }
        }
        if (nothingRepeats(assembly)) {
            Set<Integer> running = running(assembly);
            for (PinJoint pin : assembly.pins()) {
                boolean ofWheel = running.contains(pin.runner()) || running.contains(pin.holder());
                if (!pin.name().equals(lever) && !pin.name().equals(bucket) && !ofWheel) {
                    both(all, pin.name(), HOLE, (build, by) -> add(build.holes, pin.name(), by));
                }
            }
        }
        assembly.bodies().stream()
                .filter(body -> !body.isGround())
                .flatMap(body -> body.lumps().stream())
                .filter(Places::isWeight)
                .map(Lump::name)
                .distinct()
                .forEach(name -> both(all, name, WEIGHT, (build, by) -> add(build.weightPlaces, name, by)));
        assembly.bodies().stream()
                .flatMap(body -> body.lumps().stream())
                .filter(lump -> lump.kind().equals(Lump.MASS))
                .map(Lump::name)
                .distinct()
                .forEach(name ->
                        all.add(Unknown.of("weight of " + name, HEAVIER, (build, v) -> build.heavier.put(name, v))));
        return all;
    }

    private static void both(List<Unknown> all, String what, Uncertain size, BiConsumer<Build, Point> put) {
        all.add(Unknown.of(
                "place of " + what + ", left or right", size, (build, v) -> put.accept(build, new Point(v, 0))));
        all.add(Unknown.of(
                "place of " + what + ", up or down", size, (build, v) -> put.accept(build, new Point(0, v))));
    }

    private static void add(Map<String, Point> places, String name, Point by) {
        places.merge(name, by, Point::plus);
    }

    private static boolean isWeight(Lump lump) {
        return lump.kind().equals(Lump.MASS)
                || Fasteners.catalogue().find(lump.kind()).isPresent();
    }

    /** Bodies that run on others by teeth, cams and pawls: what those are off by is their own question. */
    private static Set<Integer> running(Assembly assembly) {
        Set<Integer> running = new HashSet<>();
        assembly.links().stream()
                .filter(link -> !(link instanceof StringRun))
                .forEach(link -> running.addAll(link.bodies()));
        running.removeAll(Set.of(0, assembly.lever().body()));
        return running;
    }

    /** Joints that repeat each other close as drawn or not at all, unless their play is counted: of those none is moved. */
    private static boolean nothingRepeats(Assembly assembly) {
        try {
            return MechanismCompiler.compile(assembly).structure.redundant().length == 0;
        } catch (MechanismException e) {
            return false;
        }
    }
}

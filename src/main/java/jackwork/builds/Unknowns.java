package jackwork.builds;

import jackwork.design.Handling;
import jackwork.design.WorkshopFile;
import jackwork.motion.model.MechanismKind;
import jackwork.parts.Assembly;
import jackwork.parts.Part;
import jackwork.parts.PinJoint;
import jackwork.parts.Stopping;
import jackwork.parts.StringRun;
import jackwork.parts.Variation;
import jackwork.stock.Basis;
import jackwork.stock.Uncertain;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Everything that differs from build to build, each drawn once a build. */
final class Unknowns {

    /** Plywood's mass and thickness against its moisture, share per percent: guesses. */
    private static final double HEAVIER = 0.0075;

    private static final double THICKER = 0.003;
    /** What damp and pull do to a cord, as a share of its length. */
    private static final Uncertain CORD =
            new Uncertain(0, -0.005, 0.005, "1", Basis.GUESS, "thread, damp and stretch, common practice, no source");

    /** Thickness of dry paint, mm for each g/m² of a face: at 1.2 g/cm³, a guess. */
    private static final double THICK = 1e-3 / 1.2;
    /** How much wider than published, mm. */
    static final Uncertain COIN_WIDTH =
            new Uncertain(0, -0.08, 0.05, "mm", Basis.GUESS, "tolerance and wear, common practice, no source");

    /** Where the edge of a stop comes to stand, mm farther back than drawn. */
    static final Uncertain STOP_PLACE = new Uncertain(
            0, -0.15, 0.15, "mm", Basis.GUESS, "hole, rod and glue of a stop, common practice, no source");

    /** Share of the approach speed that a stop gives back. */
    private static final Uncertain STOP_REBOUND = new Uncertain(
            MechanismKind.WOOD_ON_WOOD, 0.15, 0.5, "1", Basis.GUESS, "wood on wood, common practice, no source");

    /**
     * Friction at rest over friction in motion, of all pairs alike; a hold of hours counts as any. Sawn Scots pine has 1.4
     * and 1.5 (Aira and others, Materiales de Construcción 64, 2014), waxed or worn wood less.
     */
    static final Uncertain STICTION = new Uncertain(
            1.25,
            1,
            1.5,
            "1",
            Basis.GUESS,
            "sawn pine 1.4 to 1.5 (Aira and others, 2014), waxed wood less, from memory");

    /** By how much bowed sheets narrow the gaps between them, mm. */
    private static final Uncertain WARP =
            new Uncertain(0.05, 0, 0.3, "mm", Basis.GUESS, "3 mm sheets as delivered, from memory");

    /** How much thicker a rod is than its diameter where it is thickest, mm. */
    private static final Uncertain OUT_OF_ROUND =
            new Uncertain(0.03, 0, 0.1, "mm", Basis.GUESS, "oval skewers sorted through a gauge, from memory");

    /** Growth of a bearing's clearance, mm a press: a guess. */
    private static final double WEARS = 1e-5;

    /** Of what decides the holes, what every design has. */
    private static final Set<String> ALWAYS = Set.of(Variation.KERF, Variation.RUNNING_FIT);

    static final String MOISTURE = "moisture of the wood";
    static final String WEAR = "wear, presses";

    private Unknowns() {}

    static List<Unknown> of(Assembly assembly) {
        WorkshopFile workshop = assembly.workshop();
        Handling handling = workshop.handlingOrGuess();
        Map<String, Unknown> all = new LinkedHashMap<>();
        List<Variation> variations = new ArrayList<>(Variation.of(assembly));
        variations.addAll(Variation.ofCoinWorks(assembly));
        for (Variation variation : variations) {
            add(
                    all,
                    Unknown.of(
                            variation.name(),
                            variation.number(),
                            (build, v) -> build.assembly = variation.with().apply(build.assembly, v)));
        }
        List<Variation> holes = Variation.ofHoles(assembly, false);
        holes.stream()
                .filter(variation -> ALWAYS.contains(variation.name()))
                .forEach(variation -> add(all, ofHoles(variation)));
        add(
                all,
                Unknown.of(
                        WEAR,
                        handling.presses(),
                        (build, v) -> build.assembly = build.assembly.worn(Math.max(0, v) * WEARS)));
        add(all, Unknown.of(MOISTURE, handling.moisture(), (build, v) -> {
            double more = v - handling.moisture().value();
            build.assembly = Variation.damper(build.assembly, 1 + THICKER * more, 1 + HEAVIER * more);
        }));
        if (assembly.links().stream().anyMatch(link -> link instanceof StringRun)) {
            add(
                    all,
                    Unknown.of(
                            "length of cords",
                            CORD,
                            (build, v) -> build.assembly = Variation.stretched(build.assembly, v)));
        }
        add(all, Unknown.of("paint and glue", handling.finish(), (build, v) -> {
            double more = v - handling.finish().value();
            build.assembly = Variation.heavier(build.assembly, part -> 1 + more * 1e-6 / arealDensity(part));
            build.film = Math.max(0, v) / 2 * THICK;
        }));
        add(all, Unknown.of("diameter of coins in use", COIN_WIDTH, (build, v) -> build.coinWidth = v));
        add(all, Unknown.of("mass of coins in use", handling.coinMass(), (build, v) -> build.coinMass = v));
        add(all, Unknown.even("place of the drop", -1, 1, (build, v) -> build.offset = v));
        add(all, Unknown.of("speed of the drop", handling.dropSpeed(), (build, v) -> build.dropSpeed = Math.max(0, v)));
        add(
                all,
                Unknown.of(
                        "rebound of the coin",
                        handling.rebound(),
                        (build, v) -> build.rebound = Math.max(0, Math.min(0.95, v))));
        add(
                all,
                Unknown.of(
                        "rebound from the bucket",
                        assembly.coinWorks().rebound(),
                        (build, v) -> build.bucketRebound = Math.max(0, Math.min(0.95, v))));
        add(
                all,
                Unknown.of(
                        "strength of the press", workshop.finger().comfortable(), (build, v) -> build.pressForce = v));
        add(
                all,
                Unknown.of(
                        "speed of the press", handling.pressSpeed(), (build, v) -> build.pressSpeed = Math.max(1, v)));
        for (Stopping stopping : assembly.ends()) {
            if (stopping.holds()) {
                String name = "place of what stops the " + stopping.end().name();
                String id = stopping.end().id();
                add(all, Unknown.of(name, STOP_PLACE, (build, v) -> build.drawnBack.put(id, v)));
            }
        }
        if (assembly.ends().stream().anyMatch(Stopping::holds)) {
            add(
                    all,
                    Unknown.of(
                            "rebound from stops",
                            STOP_REBOUND,
                            (build, v) -> build.stopRebound = Math.max(0, Math.min(0.95, v))));
        }
        add(all, Unknown.of("tilt of the table", handling.tilt(), (build, v) -> build.tilt = v));
        // What not every design has comes last: all before it keeps its draws.
        holes.forEach(variation -> add(all, ofHoles(variation)));
        add(all, Unknown.even("side on which the lever lies in its play", -1, 1, (build, v) -> build.leverSide = v));
        add(all, Unknown.even("side on which the bucket lies in its play", -1, 1, (build, v) -> build.bucketSide = v));
        add(
                all,
                Unknown.of(
                        "grip at rest over friction in motion",
                        STICTION,
                        (build, v) -> build.stiction = Math.max(1, v)));
        add(all, Unknown.of("warp of the sheets", WARP, (build, v) -> build.warp = Math.max(0, v)));
        add(
                all,
                Unknown.of(
                        "roundness of the bucket's rod",
                        OUT_OF_ROUND,
                        (build, v) -> build.outOfRound = Math.max(0, v)));
        Places.of(assembly).forEach(unknown -> add(all, unknown));
        for (PinJoint pin : assembly.pins()) {
            add(
                    all,
                    Unknown.of(
                            "drag of " + pin.name(),
                            handling.drag(),
                            (build, v) -> build.drags.put(pin.name(), Math.max(0, v))));
        }
        return List.copyOf(all.values());
    }

    /** One kerf cuts edges and holes. */
    private static Unknown ofHoles(Variation variation) {
        boolean isKerf = variation.name().equals(Variation.KERF);
        return Unknown.of(variation.name(), variation.number(), (build, v) -> {
            if (isKerf) {
                build.kerf += v - variation.number().value();
            }
            build.assembly = variation.with().apply(build.assembly, v);
        });
    }

    /** g/mm². */
    private static double arealDensity(Part part) {
        return part.thickness().value() * part.kind().density().value() / 1000;
    }

    private static void add(Map<String, Unknown> all, Unknown unknown) {
        all.putIfAbsent(unknown.name(), unknown);
    }
}

package jackwork.builds;

import jackwork.design.Handling;
import jackwork.design.WorkshopFile;
import jackwork.parts.Assembly;
import jackwork.parts.Part;
import jackwork.parts.StringRun;
import jackwork.parts.Variation;
import jackwork.stock.Basis;
import jackwork.stock.Uncertain;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

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
    private static final Uncertain COIN_WIDTH =
            new Uncertain(0, -0.08, 0.05, "mm", Basis.GUESS, "tolerance and wear, common practice, no source");

    /** Growth of a bearing's clearance, mm a press: a guess. */
    private static final double WEARS = 1e-5;

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
        double kerf = workshop.laser().kerf().value();
        double fit = workshop.fits().running().value();
        add(all, Unknown.of("kerf", workshop.laser().kerf(), (build, v) -> build.kerf += v - kerf));
        add(all, Unknown.of("running fit", workshop.fits().running(), (build, v) -> build.clearance += v - fit));
        add(all, Unknown.of(WEAR, handling.presses(), (build, v) -> build.clearance += Math.max(0, v) * WEARS));
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
                        "speed of the press", handling.pressSpeed(), (build, v) -> build.pressSpeed = Math.max(20, v)));
        add(all, Unknown.of("tilt of the table", handling.tilt(), (build, v) -> build.tilt = v));
        return List.copyOf(all.values());
    }

    /** g/mm². */
    private static double arealDensity(Part part) {
        return part.thickness().value() * part.kind().density().value() / 1000;
    }

    private static void add(Map<String, Unknown> all, Unknown unknown) {
        all.putIfAbsent(unknown.name(), unknown);
    }
}

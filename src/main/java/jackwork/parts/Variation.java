package jackwork.parts;

import jackwork.design.Named;
import jackwork.design.WorkshopFile;
import jackwork.stock.Fastener;
import jackwork.stock.Fasteners;
import jackwork.stock.FrictionPair;
import jackwork.stock.SheetKind;
import jackwork.stock.Uncertain;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * One uncertain number of a design, and the design as it would be with another value of it.
 *
 * @param name for people: {@code friction of bamboo on wood}
 * @param number its value and interval
 * @param with the assembly with that number changed
 */
public record Variation(String name, Uncertain number, BiFunction<Assembly, Double, Assembly> with) {

    /** What the laser takes, by the name that findings and builds give it. */
    public static final String KERF = "kerf";

    /** Likewise what holes are wider than the rods that turn in them. */
    public static final String RUNNING_FIT = "running fit";

    /** Every number that decides motion and balance: friction, thickness, density, mass of nuts. */
    public static List<Variation> of(Assembly assembly) {
        Map<String, Variation> all = new LinkedHashMap<>();
        for (PinJoint pin : assembly.pins()) {
            addFriction(all, pin.friction());
        }
        for (SlideJoint slide : assembly.slides()) {
            addFriction(all, slide.friction());
        }
        for (Link link : assembly.links()) {
            link.frictions().forEach(pair -> addFriction(all, pair));
        }
        for (Part part : assembly.parts()) {
            put(all, thickness(part));
            String kind = part.kind().name();
            put(
                    all,
                    new Variation(
                            "density of " + part.kind().label(),
                            part.kind().density(),
                            (a, v) -> parts(
                                    a,
                                    p -> p.kind().name().equals(kind) ? p.of(p.thickness(), dense(p.kind(), v)) : p)));
        }
        for (Body body : assembly.bodies()) {
            for (Lump lump : body.lumps()) {
                Fasteners.catalogue().find(lump.kind()).ifPresent(fastener -> addFastener(all, fastener));
            }
        }
        return new ArrayList<>(all.values());
    }

    /** Friction in the coin works, which lever and figure do not feel. */
    public static List<Variation> ofCoinWorks(Assembly assembly) {
        Map<String, Variation> all = new LinkedHashMap<>();
        addFriction(all, assembly.coinWorks().catchFriction());
        addFriction(all, assembly.coinWorks().coinFriction());
        return new ArrayList<>(all.values());
    }

    /**
     * All that decides how much room is in the holes that rods run in, or in those that grip them: fit, kerf, the
     * diameter of each rod, and what a printer makes of holes and shoulders.
     */
    public static List<Variation> ofHoles(Assembly assembly, boolean grips) {
        WorkshopFile workshop = assembly.workshop();
        Uncertain fit = grips ? workshop.fits().press() : workshop.fits().running();
        Uncertain kerf = workshop.laser().kerf();
        Map<String, Variation> all = new LinkedHashMap<>();
        put(all, made(KERF, kerf, (made, v) -> made.withKerf(v - kerf.value())));
        put(
                all,
                grips
                        ? made("press fit", fit, (made, v) -> made.withPress(v - fit.value()))
                        : made(RUNNING_FIT, fit, (made, v) -> made.withRunning(v - fit.value())));
        for (Bore bore : bores(assembly, grips)) {
            String rod = bore.rod();
            if (rod != null) {
                Uncertain diameter = Named.in(workshop.rods(), rod).diameter();
                put(all, made("diameter of " + rod, diameter, (made, v) -> made.withRod(rod, v - diameter.value())));
            }
            if (rod == null || bore.printed()) {
                put(all, made("printed holes", workshop.printerOrGuess().off(), AsMade::withOff));
            }
        }
        return new ArrayList<>(all.values());
    }

    private static Variation made(String name, Uncertain number, BiFunction<AsMade, Double, AsMade> with) {
        return new Variation(name, number, (a, v) -> a.withMade(with.apply(a.made(), v)));
    }

    private static List<Bore> bores(Assembly assembly, boolean grips) {
        return Stream.concat(
                        assembly.parts().stream()
                                .flatMap(part -> part.holes().stream())
                                .flatMap(hole -> Optional.ofNullable(hole.bore()).stream()),
                        assembly.slides().stream().map(SlideJoint::bore))
                .filter(bore -> bore.grips() == grips)
                .toList();
    }

    /** How thick each sheet and printed piece is of which some parts are. */
    public static List<Variation> ofThickness(Collection<Part> parts) {
        Map<String, Variation> all = new LinkedHashMap<>();
        parts.forEach(part -> put(all, thickness(part)));
        return new ArrayList<>(all.values());
    }

    private static Variation thickness(Part part) {
        String printed = part.printed();
        String stock = printed == null ? part.stock() : "printed " + printed + " as " + part.stock();
        return new Variation(
                "thickness of " + stock,
                part.thickness(),
                (a, v) -> parts(a, p -> sameSheet(p, part) ? p.of(at(p.thickness(), v), p.kind()) : p));
    }

    /** Whether two parts are as thick as each other come what may: of one sheet, or of one layer of one printed piece. */
    private static boolean sameSheet(Part a, Part b) {
        return a.stock().equals(b.stock()) && Objects.equals(a.printed(), b.printed());
    }

    /** The assembly with all its wood heavier or lighter. */
    public static Assembly heavier(Assembly assembly, java.util.function.ToDoubleFunction<Part> factor) {
        return parts(
                assembly,
                part -> part.printed() != null
                        ? part
                        : part.of(
                                part.thickness(),
                                dense(part.kind(), part.kind().density().value() * factor.applyAsDouble(part))));
    }

    /** The assembly with all its wood damper or drier: each part as much thicker, and as much heavier. */
    public static Assembly damper(Assembly assembly, double thicker, double heavier) {
        return parts(
                assembly,
                part -> part.printed() != null
                        ? part
                        : part.of(
                                at(part.thickness(), part.thickness().value() * thicker),
                                dense(part.kind(), part.kind().density().value() * heavier / thicker)));
    }

    /** The assembly with all its cords longer by a share of what they are. */
    public static Assembly stretched(Assembly assembly, double share) {
        return assembly.withLinks(assembly.links().stream()
                .map(link -> link instanceof StringRun string ? string.stretched(share) : link)
                .toList());
    }

    private static void put(Map<String, Variation> all, Variation variation) {
        all.putIfAbsent(variation.name(), variation);
    }

    private static void addFriction(Map<String, Variation> all, FrictionPair pair) {
        put(
                all,
                new Variation(
                        "friction of " + pair.a() + " on " + pair.b(),
                        pair.coefficient(),
                        (a, v) -> friction(a, pair, v)));
    }

    private static void addFastener(Map<String, Variation> all, Fastener fastener) {
        put(
                all,
                new Variation(
                        "mass of " + fastener.name(),
                        fastener.mass(),
                        (a, v) -> a.withLumps(lump -> lump.kind().equals(fastener.name())
                                ? lump.timesMass(v / fastener.mass().value())
                                : lump)));
    }

    private static Uncertain at(Uncertain number, double value) {
        return new Uncertain(value, value, value, number.unit(), number.basis(), number.source());
    }

    private static SheetKind dense(SheetKind kind, double density) {
        return new SheetKind(
                kind.name(),
                kind.label(),
                kind.surface(),
                at(kind.density(), density),
                kind.grain(),
                kind.tolerance(),
                kind.strength(),
                kind.note());
    }

    private static Assembly parts(Assembly assembly, UnaryOperator<Part> change) {
        return assembly.withBodies(assembly.bodies().stream()
                .map(body ->
                        Body.of(body.name(), body.parts().stream().map(change).toList(), body.lumps()))
                .toList());
    }

    private static Assembly friction(Assembly assembly, FrictionPair pair, double value) {
        FrictionPair changed = new FrictionPair(pair.a(), pair.b(), at(pair.coefficient(), value), pair.note());
        return assembly.withFriction(pair, changed);
    }
}

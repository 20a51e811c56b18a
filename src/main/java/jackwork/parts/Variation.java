package jackwork.parts;

import jackwork.stock.Fastener;
import jackwork.stock.Fasteners;
import jackwork.stock.FrictionPair;
import jackwork.stock.SheetKind;
import jackwork.stock.Uncertain;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;

/**
 * One uncertain number of a design, and the design as it would be with another value of it.
 *
 * @param name for people: {@code friction of bamboo on wood}
 * @param number its value and interval
 * @param with the assembly with that number changed
 */
public record Variation(String name, Uncertain number, BiFunction<Assembly, Double, Assembly> with) {

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
            String printed = part.printed();
            String stock = printed == null ? part.stock() : "printed " + printed + " as " + part.stock();
            put(
                    all,
                    new Variation(
                            "thickness of " + stock,
                            part.thickness(),
                            (a, v) -> parts(a, p -> sameSheet(p, part) ? p.of(at(p.thickness(), v), p.kind()) : p)));
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
                        (a, v) -> lumps(
                                a,
                                lump -> lump.kind().equals(fastener.name())
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
                kind.note());
    }

    private static Assembly parts(Assembly assembly, UnaryOperator<Part> change) {
        return assembly.withBodies(assembly.bodies().stream()
                .map(body ->
                        Body.of(body.name(), body.parts().stream().map(change).toList(), body.lumps()))
                .toList());
    }

    private static Assembly lumps(Assembly assembly, UnaryOperator<Lump> change) {
        return assembly.withBodies(assembly.bodies().stream()
                .map(body -> Body.of(
                        body.name(),
                        body.parts(),
                        body.lumps().stream().map(change).toList()))
                .toList());
    }

    private static Assembly friction(Assembly assembly, FrictionPair pair, double value) {
        FrictionPair changed = new FrictionPair(pair.a(), pair.b(), at(pair.coefficient(), value), pair.note());
        return assembly.withFriction(pair, changed);
    }
}

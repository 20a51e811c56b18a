package jackwork.check;

import static jackwork.check.Measure.newtons;
import static jackwork.check.Measure.stroke;
import static jackwork.check.Sentence.say;

import jackwork.motion.rest.StrokeResult;
import jackwork.parts.Bearing;
import jackwork.parts.PinJoint;
import jackwork.stock.Basis;
import jackwork.stock.Uncertain;
import java.util.List;

/**
 * The most loaded pin, as a round rod bent between the layers that grip it: {@code F L / 4 ≤ σ π d³ / 32}, L between their
 * outer faces (simple beam), or, where one side alone grips it, four times the way from there to the bearing's middle
 * (cantilever; any text on strength of materials).
 */
final class PinsBear implements Question {

    /** A rod that no drawn layer holds is gripped beside its bearing by the usual sheet, mm. */
    private static final double LAYER = 3;

    /** Bending strength of a bamboo skewer, N/mm². */
    private static final Uncertain STRENGTH =
            new Uncertain(100, 60, 150, "N/mm²", Basis.GUESS, "bamboo in bending, from memory");

    @Override
    public List<Finding> ask(Subject subject) {
        StrokeResult stroke = subject.stroke();
        List<String> names = stroke.pinNames();
        double least = Double.POSITIVE_INFINITY;
        Finding worst = null;
        for (int p = 0; p < names.size(); p++) {
            Bearing bearing = bearing(subject, names.get(p));
            double load = 0;
            int at = 0;
            for (int i = 0; i < stroke.stroke().length; i++) {
                if (stroke.pinLoad()[i][p] > load) {
                    load = stroke.pinLoad()[i][p];
                    at = i;
                }
            }
            double borne = borne(bearing, STRENGTH.value());
            if (borne - load / 1e6 < least) {
                least = borne - load / 1e6;
                worst = finding(bearing, load / 1e6, stroke.stroke()[at], stroke.sharesLoads());
            }
        }
        return worst == null ? List.of() : List.of(worst);
    }

    private static Bearing bearing(Subject subject, String name) {
        return subject.assembly().bearings().stream()
                .filter(bearing -> bearing.pin().name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** L, mm. */
    private static double span(Bearing bearing) {
        Bearing.Supports supports = bearing.supports();
        if (supports.behind() && supports.before()) {
            return supports.span();
        }
        return supports.behind() || supports.before() ? 4 * supports.span() : bearing.length() + 2 * LAYER;
    }

    private static double borne(Bearing bearing, double strength) {
        double d = 2 * bearing.pin().radius();
        return 4 * strength * Math.PI * d * d * d / 32 / span(bearing);
    }

    private static Finding finding(Bearing bearing, double load, double at, boolean shared) {
        PinJoint pin = bearing.pin();
        double borne = borne(bearing, STRENGTH.value());
        Spread spread = new Spread(borne - load);
        spread.add("bending strength of the rod", STRENGTH, value -> borne(bearing, value) - load);
        return Finding.ask(Topic.PINS_BEAR, say("Do the pins bear their loads?"))
                .answer(spread.status(), load, borne, borne - load, "N")
                .at(new Where(pin.name(), at, pin.at()))
                .because(
                        say(
                                "{} bears most, {} at {}{}",
                                pin.name(),
                                newtons(load),
                                stroke(at),
                                (shared
                                        ? "; joints repeat each other, so" + " loads are shared as clearances decide"
                                        : "")),
                        spread.status() == Status.PASS
                                ? Sentence.NOTHING
                                : say("Take a thicker rod for {}.", pin.name()),
                        "F = " + Words.number(load) + " N; bears 4 σ π d³ / (32 L) = 4 · "
                                + Words.number(STRENGTH.value()) + " · π · " + Words.number(2 * pin.radius())
                                + "³ / (32 · " + Words.number(span(bearing)) + ") = " + Words.number(borne) + " N",
                        spread);
    }
}

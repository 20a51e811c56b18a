package jackwork.check;

import static jackwork.check.Sentence.say;

import jackwork.design.WeightEntry;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.geometry.Pose;
import jackwork.parts.Layers;
import jackwork.parts.Part;
import jackwork.stock.Fastener;
import jackwork.stock.Fasteners;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Each weight has room where it lies, and is no heavier than metal that fills the room. The room is taken large: all that
 * can balance about the weight's middle over its part and a little beyond the edge, in its pockets and in the layers before
 * and behind until other wood is in the way, at rest. What it bumps into on the way is not looked at.
 */
final class WeightsFit implements Question {

    /** A lump may stand out beyond the part that carries it, mm: common practice, no source. */
    private static final double OVER = 3;
    /** Beyond the foremost and the hindmost layer a lump may stand out so far, mm: common practice, no source. */
    private static final double PROUD = 10;
    /** Less room in a layer than this share of the whole ends it there. */
    private static final double BLOCKED = 0.1;

    /** g/mm³, from memory. */
    private static final double STEEL = 7.85e-3;

    private static final double LEAD = 11.34e-3;
    /** Across the corners of a hexagon, in widths across its flats. */
    private static final double CORNERS = 2 / Math.sqrt(3);

    @Override
    public boolean isQuick() {
        return false;
    }

    @Override
    public List<Finding> ask(Subject subject) {
        List<Finding> findings = new ArrayList<>();
        for (WeightPlace weight : WeightPlace.of(subject)) {
            double room = room(subject, weight);
            findings.add(bought(weight.entry())
                    .map(fastener -> counted(weight, fastener, room))
                    .orElseGet(() -> weighed(weight, room)));
        }
        return findings;
    }

    private static Optional<Fastener> bought(WeightEntry entry) {
        return Optional.ofNullable(entry.what())
                .flatMap(what -> Fasteners.catalogue().find(what));
    }

    private static Finding counted(WeightPlace weight, Fastener fastener, double room) {
        Integer said = weight.entry().count();
        int count = said == null ? 1 : said;
        double across = fastener.kind().equals("nut") ? fastener.across() * CORNERS : fastener.across();
        double each = Math.PI / 4 * across * across * fastener.height();
        double fit = room / each;
        boolean fits = count <= fit;
        return finding(
                weight,
                fits ? Status.PASS : Status.FAIL,
                count,
                fit,
                fastener.name(),
                say("{} of {} where there is room for {}", count, fastener.name(), (int) fit),
                "room " + Words.number(room / 1000) + " cm³ / " + Words.number(each / 1000) + " cm³ for one of "
                        + fastener.name() + " = " + Words.number(fit));
    }

    private static Finding weighed(WeightPlace weight, double room) {
        Integer said = weight.entry().count();
        Double each = weight.entry().mass();
        double mass = (each == null ? 0 : each) * (said == null ? 1 : said);
        Status status = mass > LEAD * room ? Status.FAIL : mass > STEEL * room ? Status.DOUBTFUL : Status.PASS;
        double limit = status == Status.PASS ? STEEL * room : LEAD * room;
        if (room <= 0) {
            return finding(
                    weight,
                    mass > 0 ? Status.FAIL : Status.PASS,
                    mass,
                    0,
                    "g",
                    say("there is no wood at {}, and so no room", weight.name()),
                    "room 0 cm³");
        }
        return finding(
                weight,
                status,
                mass,
                limit,
                "g",
                say(
                        "{} where {} that fills the room weighs {}{}",
                        Measure.of(mass, "g"),
                        status == Status.PASS ? "steel" : "lead",
                        Measure.of(limit, "g"),
                        status == Status.DOUBTFUL ? ", and steel less than is wanted" : ""),
                "room " + Words.number(room / 1000) + " cm³ · steel 7.85 g/cm³ = " + Words.number(STEEL * room)
                        + " g, lead 11.34 g/cm³ = " + Words.number(LEAD * room) + " g (densities from memory)");
    }

    private static Finding finding(
            WeightPlace weight, Status status, double value, double limit, String unit, Sentence why, String formula) {
        return Finding.ask(Topic.WEIGHT_FITS, weight.name(), say("Is there room for {}?", weight.name()))
                .answer(status, value, limit, limit - value, unit)
                .at(new Where(weight.entry().on(), 0.0, weight.at()))
                .because(
                        why,
                        status == Status.PASS
                                ? Sentence.NOTHING
                                : say(
                                        "Make {} lighter and set it farther from the pivot, or make {} larger around it.",
                                        weight.name(),
                                        weight.entry().on()),
                        formula);
    }

    /** mm³. */
    private static double room(Subject subject, WeightPlace weight) {
        List<Part> all = subject.assembly().parts();
        int hindmost = all.stream().mapToInt(Part::layer).min().orElse(0);
        int foremost = all.stream().mapToInt(Part::layer).max().orElse(0);
        Layers layers = Layers.of(all);
        double room = 0;
        int low = Integer.MAX_VALUE;
        int high = Integer.MIN_VALUE;
        Outline over = null;
        for (Part part : weight.on()) {
            low = Math.min(low, part.layer());
            high = Math.max(high, part.layer());
            if (over == null) {
                over = balanced(part.drawn().filled().offset(OVER), weight.at());
            }
            room += (part.drawn().filled().area() - part.drawn().area())
                    * part.thickness().value();
        }
        if (over == null) {
            return 0;
        }
        room += towards(layers, all, over, high + 1, foremost, 1);
        room += towards(layers, all, over, low - 1, hindmost, -1);
        return room;
    }

    /** What a lump that balances about a point can cover. */
    private static Outline balanced(Outline over, Point at) {
        List<Outline> both = over.shared(over.moved(new Pose(2 * at.x(), 2 * at.y(), Math.PI)));
        return both.stream()
                .filter(piece -> piece.contains(at))
                .findFirst()
                .orElseGet(() -> Outline.rectangle(at.x(), at.y(), at.x() + 1e-6, at.y() + 1e-6));
    }

    private static double towards(Layers layers, List<Part> parts, Outline over, int from, int last, int step) {
        double room = 0;
        for (int layer = from; step * (last - layer) >= 0; layer += step) {
            double free = over.area();
            for (Part part : parts) {
                if (part.layer() == layer) {
                    free -= over.sharedArea(part.drawn());
                }
            }
            if (free < BLOCKED * over.area()) {
                return room;
            }
            room += free * layers.thickness(layer);
        }
        return room + over.area() * PROUD;
    }
}

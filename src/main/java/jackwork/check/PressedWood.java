package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.geometry.Pose;
import jackwork.parts.Bearing;
import jackwork.parts.Part;
import jackwork.stock.Uncertain;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * The wood of lever or bucket under forces in its plane that balance: cut across the straight way from its pivot to each force,
 * <pre>
 *   σ = |N| / A + |M| c / I,   τ = 1.5 |V| / A
 * </pre>
 * with A, I and c of all layers that lie face on face there with one that the force is on, wood round holes left out; and each
 * glued face by the force and the twist that go through it,
 * <pre>
 *   τ = |Q| / A + |T| r / J
 * </pre>
 * with A, J and r of where two neighbouring layers cover each other (any text on strength of materials). Left out: rods that also
 * hold the layers together, the length that a force needs to get from one layer into the next, stress that a notch
 * concentrates, and layers that are not in one plane bending each other.
 *
 * @param word what it is, for people
 * @param parts of the body
 * @param pose where they are
 * @param pivot on which the body turns
 * @param bearing of it
 * @param forces all but the pivot's, for one newton of the finger
 */
record PressedWood(String word, List<Part> parts, Pose pose, Point pivot, Bearing bearing, List<Force> forces) {

    /** From section to section, mm. */
    private static final double STEP = 1;

    /** A force begins in the wood around where it is on, so nearer to it nothing is cut, mm. */
    private static final double AROUND = 1.5;

    /** The way to a force may run so far outside a layer's wood and still cut it, mm. */
    private static final double BESIDE = 2;

    /**
     * On the body.
     *
     * @param name what presses there
     * @param shares of each layer
     */
    record Force(String name, Point at, Point on, Map<Integer, Double> shares) {

        static Force inLayer(String name, Point at, Point on, int layer) {
            return new Force(name, at, on, Map.of(layer, 1.0));
        }
    }

    /** A stretch of wood on a cut. */
    private record Stretch(Part part, double from, double to) {

        private WoodSection.Strip strip() {
            return new WoodSection.Strip(part.thickness().value(), from, to);
        }

        private boolean meets(Stretch other) {
            return from < other.to && other.from < to;
        }
    }

    List<Gives> gives() {
        List<Gives> all = new ArrayList<>();
        for (Force force : forces) {
            all.addAll(along(force));
        }
        all.addAll(glue());
        return all;
    }

    private List<Gives> along(Force to) {
        List<Gives> all = new ArrayList<>();
        double length = to.at.distance(pivot);
        Point way = to.at.minus(pivot).times(1 / length);
        for (double place = 0; place < length - AROUND; place += STEP) {
            List<Stretch> wood = cut(pivot.plus(way.times(place)), way, to.shares.keySet());
            if (!wood.isEmpty()) {
                section(to, way, place, wood, all);
            }
        }
        return all;
    }

    private void section(Force to, Point way, double place, List<Stretch> wood, List<Gives> all) {
        WoodSection section = WoodSection.of(wood.stream().map(Stretch::strip).toList());
        Point across = way.turned(Math.PI / 2);
        Point centre = pivot.plus(way.times(place)).plus(across.times(section.middle()));
        Point sum = Point.ORIGIN;
        double moment = 0;
        for (Force force : forces) {
            if (force.at.minus(pivot).dot(way) > place) {
                sum = sum.plus(force.on);
                moment += force.at.minus(centre).cross(force.on);
            }
        }
        Sentence where = say("{}, {} from its pivot towards {}", word, mm(place), to.name);
        Part weakest = weakest(wood.stream().map(Stretch::part).toList());
        all.add(new Gives(
                where,
                "breaks",
                section.stress(sum.dot(way), moment),
                weakest.kind().strength().edgewise(),
                "strength of " + weakest.kind().label() + " edgewise",
                "N / A + M c / I with A = " + Words.number(section.area()) + " mm², I / c = "
                        + Words.number(section.modulus()) + " mm³, M = " + Words.number(moment) + " N·mm"));
        all.add(new Gives(
                where,
                "shears",
                section.shear(sum.dot(across)),
                weakest.kind().strength().shear(),
                "strength of " + weakest.kind().label() + " in shear",
                "1.5 V / A with A = " + Words.number(section.area()) + " mm²"));
    }

    static Part weakest(List<Part> parts) {
        return parts.stream()
                .min(Comparator.comparingDouble(
                        part -> part.kind().strength().edgewise().value()))
                .orElseThrow();
    }

    /** Wood of the layers that lie face on face with one that is loaded: of that the stretch about the way, then the largest that meets it. */
    private List<Stretch> cut(Point at, Point way, Set<Integer> loaded) {
        TreeMap<Integer, List<List<Stretch>>> byLayer = new TreeMap<>();
        for (Part part : parts) {
            byLayer.computeIfAbsent(part.layer(), layer -> new ArrayList<>())
                    .addAll(stretches(part, at, way.turned(Math.PI / 2)));
        }
        Map<Integer, List<Stretch>> joined = new TreeMap<>();
        for (int layer : loaded) {
            nearest(byLayer.getOrDefault(layer, List.of())).ifPresent(begun -> {
                if (joined.putIfAbsent(layer, begun) == null) {
                    join(byLayer, joined, layer, 1);
                    join(byLayer, joined, layer, -1);
                }
            });
        }
        return joined.values().stream().flatMap(List::stream).toList();
    }

    private static void join(
            Map<Integer, List<List<Stretch>>> byLayer, Map<Integer, List<Stretch>> joined, int from, int step) {
        List<Stretch> last = joined.getOrDefault(from, List.of());
        int layer = from + step;
        while (!last.isEmpty() && !joined.containsKey(layer)) {
            List<Stretch> before = last;
            Optional<List<Stretch>> next = byLayer.getOrDefault(layer, List.of()).stream()
                    .filter(one -> one.stream().anyMatch(a -> before.stream().anyMatch(a::meets)))
                    .max(Comparator.comparingDouble(PressedWood::wood));
            last = next.orElse(List.of());
            if (!last.isEmpty()) {
                joined.put(layer, last);
            }
            layer += step;
        }
    }

    private static double wood(List<Stretch> stretches) {
        return stretches.stream().mapToDouble(one -> one.to - one.from).sum();
    }

    /** The one that the way goes through, or runs beside. */
    private static Optional<List<Stretch>> nearest(List<List<Stretch>> all) {
        return all.stream().filter(one -> off(one) < BESIDE).min(Comparator.comparingDouble(PressedWood::off));
    }

    private static double off(List<Stretch> one) {
        double from = one.get(0).from;
        double to = one.get(one.size() - 1).to;
        return from > 0 ? from : to < 0 ? -to : 0;
    }

    /** What a line goes through of a part, from edge to edge, each less the holes on it. */
    private List<List<Stretch>> stretches(Part part, Point at, Point across) {
        Outline outline = part.outline().moved(pose);
        double[] around = crossings(outline.outer(), at, across);
        List<double[]> open = new ArrayList<>();
        for (List<Point> hole : outline.holes()) {
            double[] through = crossings(hole, at, across);
            for (int i = 0; i + 1 < through.length; i += 2) {
                open.add(new double[] {through[i], through[i + 1]});
            }
        }
        open.sort(Comparator.comparingDouble(hole -> hole[0]));
        List<List<Stretch>> all = new ArrayList<>();
        for (int i = 0; i + 1 < around.length; i += 2) {
            List<Stretch> one = new ArrayList<>();
            double begun = around[i];
            for (double[] hole : open) {
                if (hole[0] >= around[i] && hole[1] <= around[i + 1]) {
                    one.add(new Stretch(part, begun, hole[0]));
                    begun = hole[1];
                }
            }
            one.add(new Stretch(part, begun, around[i + 1]));
            one.removeIf(stretch -> !(stretch.to > stretch.from));
            if (!one.isEmpty()) {
                all.add(one);
            }
        }
        return all;
    }

    /** Places on a line at which it goes through a ring, in order. */
    private static double[] crossings(List<Point> ring, Point at, Point along) {
        List<Double> places = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            Point a = ring.get(i).minus(at);
            Point b = ring.get((i + 1) % ring.size()).minus(at);
            double before = along.cross(a);
            double after = along.cross(b);
            if (before < 0 != after < 0) {
                double share = before / (before - after);
                places.add(a.dot(along) + share * b.minus(a).dot(along));
            }
        }
        return places.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    }

    private List<Gives> glue() {
        TreeMap<Integer, List<Part>> layers = new TreeMap<>();
        parts.forEach(part ->
                layers.computeIfAbsent(part.layer(), layer -> new ArrayList<>()).add(part));
        List<Gives> all = new ArrayList<>();
        for (int layer : layers.keySet()) {
            List<Part> behind = layers.getOrDefault(layer, List.of());
            List<Part> before = layers.getOrDefault(layer + 1, List.of());
            lap(behind, before).ifPresent(lap -> all.add(glue(behind, before, layer, lap)));
        }
        return all;
    }

    private Gives glue(List<Part> behind, List<Part> before, int layer, GluedLap lap) {
        Point sum = Point.ORIGIN;
        double twist = 0;
        Point total = Point.ORIGIN;
        for (Force force : forces) {
            double share = force.shares.entrySet().stream()
                    .filter(one -> one.getKey() <= layer)
                    .mapToDouble(Map.Entry::getValue)
                    .sum();
            total = total.plus(force.on);
            sum = sum.plus(force.on.times(share));
            twist += share * force.at.minus(lap.middle()).cross(force.on);
        }
        double thick = 0;
        double thickBehind = 0;
        for (Bearing.Ply ply : bearing.bored()) {
            double one = ply.front() - ply.back();
            thick += one;
            if (parts.stream().anyMatch(part -> part.name().equals(ply.part()) && part.layer() <= layer)) {
                thickBehind += one;
            }
        }
        Point byPivot = total.times(-thickBehind / thick);
        sum = sum.plus(byPivot);
        twist += pivot.minus(lap.middle()).cross(byPivot);
        Part one = behind.get(0);
        Part other = before.get(0);
        Part weaker = planar(one).value() <= planar(other).value() ? one : other;
        return new Gives(
                say("the glue between {} and {}", one.name(), other.name()),
                "shears",
                lap.stress(sum, twist),
                planar(weaker),
                "strength of " + weaker.kind().label() + " ply on ply",
                "Q / A + T r / J with A = " + Words.number(lap.area()) + " mm², T = " + Words.number(twist) + " N·mm");
    }

    private static Uncertain planar(Part part) {
        return part.kind().strength().planar();
    }

    private Optional<GluedLap> lap(List<Part> behind, List<Part> before) {
        List<Outline> shared = new ArrayList<>();
        for (Part one : behind) {
            for (Part other : before) {
                shared.addAll(one.outline().moved(pose).shared(other.outline().moved(pose)));
            }
        }
        return GluedLap.of(shared);
    }
}

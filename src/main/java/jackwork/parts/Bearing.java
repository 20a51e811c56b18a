package jackwork.parts;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A body on the rod that it turns on: its layers that are bored to run there, and the layers that grip the rod behind and
 * before them. Lengths mm.
 *
 * <p>What keeps the body upright is the distance between the outer faces of its outermost bored layers, so that is the
 * bearing's length. A glued body has its layers face on face; one between them that is not bored is as thick there as any
 * other, and where the body leaves a layer free, that is as thick as what else fills it.
 *
 * @param bored from the back, at least one
 * @param supports what holds the rod
 */
public record Bearing(PinJoint pin, List<Ply> bored, Supports supports) {

    /** Points are resolved in one way for holes and joints alike; this is for what arithmetic may leave, mm. */
    private static final double SAME = 1e-9;

    /**
     * A bored layer.
     *
     * @param back its rear face, from the bearing's rear face
     * @param front its front face, likewise
     * @param bore its hole
     * @param clearance of that as it came out, diametral
     */
    public record Ply(String part, double back, double front, Bore bore, double clearance) {}

    /**
     * The layers nearest to the bearing that grip the rod.
     *
     * @param behind whether there is one behind it
     * @param before whether there is one in front of it
     * @param span between their outer faces when there are both, else from the only one's near face to the bearing's
     *     middle; 0 when nothing grips the rod but between the bored layers
     */
    public record Supports(boolean behind, boolean before, double span) {}

    /** Of every pin that joins two bodies. */
    static List<Bearing> of(Assembly assembly) {
        Layers layers = Layers.of(assembly.parts());
        return assembly.pins().stream().map(pin -> of(assembly, pin, layers)).toList();
    }

    static Bearing of(Assembly assembly, PinJoint pin) {
        return of(assembly, pin, Layers.of(assembly.parts()));
    }

    private static Bearing of(Assembly assembly, PinJoint pin, Layers layers) {
        List<Part> body = assembly.body(pin.runner()).parts();
        List<Part> running =
                body.stream().filter(part -> bore(part, pin, false).isPresent()).toList();
        Map<Integer, Double> back = backs(body, running, layers);
        List<Ply> plies = new ArrayList<>();
        for (Part part : running) {
            double from = back.getOrDefault(part.layer(), 0.0);
            Bore bore = bore(part, pin, false).orElseThrow();
            plies.add(
                    new Ply(part.name(), from, from + part.thickness().value(), bore, bore.clearance(assembly.made())));
        }
        plies.sort(Comparator.comparingDouble(Ply::back));
        List<Part> gripping = assembly.body(pin.holder()).parts().stream()
                .filter(part -> bore(part, pin, true).isPresent())
                .toList();
        return new Bearing(pin, List.copyOf(plies), supports(running, gripping, layers));
    }

    /** What a part is bored for on a pin's axis, to run or to grip. */
    private static Optional<Bore> bore(Part part, PinJoint pin, boolean grips) {
        return part.holes().stream()
                .filter(hole -> hole.circle().centre().distance(pin.at()) < SAME)
                .flatMap(hole -> Optional.ofNullable(hole.bore()).stream())
                .filter(bore -> bore.grips() == grips)
                .findFirst();
    }

    /** The rear face of each layer from the first that is bored to the last. */
    private static Map<Integer, Double> backs(Collection<Part> body, Collection<Part> bored, Layers layers) {
        Map<Integer, Double> own = new TreeMap<>();
        body.forEach(part -> own.merge(part.layer(), part.thickness().value(), Math::max));
        int last = bored.stream().mapToInt(Part::layer).max().orElseThrow();
        Map<Integer, Double> backs = new TreeMap<>();
        double back = 0;
        for (int layer = bored.stream().mapToInt(Part::layer).min().orElseThrow(); layer <= last; layer++) {
            backs.put(layer, back);
            back += own.getOrDefault(layer, layers.thickness(layer));
        }
        return backs;
    }

    /** Of a bearing whose holes are not bored yet: a printed shoulder is made as long. */
    static double length(Collection<Part> body, Collection<Part> bored, Layers layers) {
        Map<Integer, Double> backs = backs(body, bored, layers);
        return bored.stream()
                .mapToDouble(part ->
                        backs.getOrDefault(part.layer(), 0.0) + part.thickness().value())
                .max()
                .orElseThrow();
    }

    private static Supports supports(List<Part> running, List<Part> gripping, Layers layers) {
        int first = running.stream().mapToInt(Part::layer).min().orElseThrow();
        int last = running.stream().mapToInt(Part::layer).max().orElseThrow();
        Optional<Integer> behind = gripping.stream()
                .map(Part::layer)
                .filter(layer -> layer < first)
                .max(Comparator.naturalOrder());
        Optional<Integer> before =
                gripping.stream().map(Part::layer).filter(layer -> layer > last).min(Comparator.naturalOrder());
        double middle = (layers.back(first) + layers.front(last)) / 2;
        double span = 0;
        if (behind.isPresent() && before.isPresent()) {
            span = layers.front(before.get()) - layers.back(behind.get());
        } else if (behind.isPresent()) {
            span = middle - layers.front(behind.get());
        } else if (before.isPresent()) {
            span = layers.back(before.get()) - middle;
        }
        return new Supports(behind.isPresent(), before.isPresent(), span);
    }

    /** Whether it turns on a printed shoulder, and not on the rod. */
    public boolean isOnShoulder() {
        return bored.stream().anyMatch(ply -> ply.bore().rod() == null);
    }

    /** Between the outer faces of the outermost bored layers, mm. */
    public double length() {
        return bored.stream().mapToDouble(Ply::front).max().orElseThrow();
    }

    /** Diametral, of the layer in which the rod has least room, mm; not above 0 when it binds there. */
    public double clearance() {
        return bored.stream().mapToDouble(Ply::clearance).min().orElseThrow();
    }

    /** How far the body can move square to the rod from where it is centred, mm. */
    public double play() {
        return Math.max(0, clearance()) / 2;
    }

    /**
     * Most that the body tilts on its rod from square, as a slope. Its axis {@code a + θ z} stays within half of each
     * layer's clearance all through that layer; of two such bounds {@code a} falls out, and the greatest slope is
     * <pre>
     *   θ = min over layers i, j with front_i &gt; back_j of (c_i + c_j) / 2 / (front_i − back_j)
     * </pre>
     * which for one clearance everywhere is c over the bearing's length.
     */
    public double tilt() {
        double least = Double.POSITIVE_INFINITY;
        for (Ply upper : bored) {
            for (Ply lower : bored) {
                if (upper.front() > lower.back()) {
                    double room = (upper.clearance() + lower.clearance()) / 2;
                    least = Math.min(least, Math.max(0, room) / (upper.front() - lower.back()));
                }
            }
        }
        return least;
    }
}

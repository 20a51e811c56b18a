package jackwork.parts;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Where each layer stands, counted from the back: every layer is as thick as the thickest part in it, since the next one
 * cannot lie nearer. A layer that the box leaves to the figure is as thick as the box's thickest sheet, so that one box
 * serves many figures.
 */
public final class Layers {

    private final TreeMap<Integer, Double> from = new TreeMap<>();
    private final TreeMap<Integer, Double> thickness = new TreeMap<>();
    private double total;

    private Layers() {}

    public static Layers of(List<Part> parts) {
        Layers layers = new Layers();
        double thickest = 0;
        TreeSet<Integer> ofBox = new TreeSet<>();
        for (Part part : parts) {
            layers.thickness.merge(part.layer(), part.thickness().value(), Math::max);
            if (part.ofBox()) {
                ofBox.add(part.layer());
                thickest = Math.max(thickest, part.thickness().value());
            }
        }
        if (!ofBox.isEmpty()) {
            for (int layer = ofBox.first(); layer < ofBox.last(); layer++) {
                if (!ofBox.contains(layer)) {
                    layers.thickness.merge(layer, thickest, Math::max);
                }
            }
        }
        layers.thickness.forEach((layer, thick) -> {
            layers.from.put(layer, layers.total);
            layers.total += thick;
        });
        return layers;
    }

    /** Its rear face, mm from the rear face of the hindmost. */
    public double back(int layer) {
        return at(from, layer);
    }

    /** Its front face, mm from the rear face of the hindmost. */
    public double front(int layer) {
        return at(from, layer) + at(thickness, layer);
    }

    /** Half-way between its faces, mm from the rear face of the hindmost. */
    public double middle(int layer) {
        return (back(layer) + front(layer)) / 2;
    }

    /** Of a layer, mm; of one that holds no part as thick as the thickest of all, since nothing tells it. */
    public double thickness(int layer) {
        Double known = thickness.get(layer);
        return known == null
                ? thickness.values().stream()
                        .mapToDouble(Double::doubleValue)
                        .max()
                        .orElse(0)
                : known;
    }

    /** From the rear face of the hindmost to the front face of the foremost, mm. */
    public double total() {
        return total;
    }

    private static double at(Map<Integer, Double> values, int layer) {
        Double value = values.get(layer);
        if (value == null) {
            throw new IllegalArgumentException("no part is in layer " + layer + "; layers are " + values.keySet());
        }
        return value;
    }
}

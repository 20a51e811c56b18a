package jackwork.check;

import static jackwork.check.Sentence.say;

import jackwork.parts.Part;
import java.util.List;
import java.util.TreeSet;

/**
 * Before and behind the box no layer is left out: one that holds no part has no thickness, and what is written to lie beyond
 * it lies directly on the last.
 */
final class LayersFilled implements Question {

    @Override
    public List<Finding> ask(Subject subject) {
        List<Part> parts = subject.assembly().parts();
        TreeSet<Integer> used = new TreeSet<>();
        parts.forEach(part -> used.add(part.layer()));
        parts.stream()
                .filter(Part::ofBox)
                .mapToInt(Part::layer)
                .min()
                .ifPresent(low -> parts.stream()
                        .filter(Part::ofBox)
                        .mapToInt(Part::layer)
                        .max()
                        .ifPresent(high -> {
                            for (int layer = low; layer <= Math.min(high, low + used.size() + 1000); layer++) {
                                used.add(layer);
                            }
                        }));
        int missing = 0;
        int beyond = used.first();
        int last = used.first();
        for (int layer : used) {
            if (layer - last - 1 > missing) {
                missing = layer - last - 1;
                beyond = layer;
            }
            last = layer;
        }
        int far = beyond;
        String part = parts.stream()
                .filter(one -> one.layer() == far)
                .map(Part::name)
                .findFirst()
                .orElse("");
        boolean filled = missing == 0;
        return List.of(Finding.ask(Topic.LAYERS_FILLED, say("Does every layer before and behind the box hold a part?"))
                .answer(filled ? Status.PASS : Status.DOUBTFUL, (double) missing, 0.0, (double) -missing, "layers")
                .at(filled ? Where.nowhere() : new Where(part, null, null))
                .because(
                        filled
                                ? say("layer lies on layer, none is left out")
                                : say(
                                        "{}{} left out next to layer {} of {}, and nothing says how thick they are",
                                        missing,
                                        (missing == 1 ? " layer is" : " layers are"),
                                        beyond,
                                        part),
                        filled
                                ? Sentence.NOTHING
                                : say("Number the layers on from the next, or add the spacer that lies between."),
                        "layers without a part = " + missing));
    }
}

package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.geometry.Bounds;
import jackwork.parts.Part;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What is printed has room in the printer, whichever way it is laid. */
final class PrintsFit implements Question {

    @Override
    public List<Finding> ask(Subject subject) {
        Map<String, List<Part>> pieces = new LinkedHashMap<>();
        for (Part part : subject.assembly().parts()) {
            String printed = part.printed();
            if (printed != null) {
                pieces.computeIfAbsent(printed, name -> new ArrayList<>()).add(part);
            }
        }
        List<Double> bed = subject.assembly().workshop().printerOrGuess().bed().stream()
                .sorted()
                .toList();
        List<Finding> findings = new ArrayList<>();
        pieces.forEach((name, parts) -> findings.add(finding(name, size(parts), bed)));
        return findings;
    }

    /** Of all its parts together, the shortest side first, mm. */
    private static List<Double> size(List<Part> parts) {
        double left = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        Map<Integer, Double> layers = new LinkedHashMap<>();
        for (Part part : parts) {
            Bounds bounds = part.drawn().bounds();
            left = Math.min(left, bounds.minX());
            right = Math.max(right, bounds.maxX());
            low = Math.min(low, bounds.minY());
            high = Math.max(high, bounds.maxY());
            layers.merge(part.layer(), part.thickness().value(), Math::max);
        }
        double thick = layers.values().stream().mapToDouble(Double::doubleValue).sum();
        return List.of(right - left, high - low, thick).stream().sorted().toList();
    }

    private static Finding finding(String name, List<Double> size, List<Double> bed) {
        double room = Double.POSITIVE_INFINITY;
        for (int side = 0; side < size.size(); side++) {
            room = Math.min(room, bed.get(side) - size.get(side));
        }
        Sentence sides = fromTheLongest(size);
        Sentence within = fromTheLongest(bed);
        boolean fits = room >= 0;
        return Finding.ask(Topic.PRINTS_FIT, name, say("Has {} room in the printer?", name))
                .answer(fits ? Status.PASS : Status.FAIL, room, 0.0, room, "mm")
                .at(new Where(name, null, null))
                .because(
                        say("{} is {}, the printer takes {}", name, sides, within),
                        fits
                                ? Sentence.NOTHING
                                : say("Print it in more pieces, cut it from a sheet, or write printer.bed as it is."),
                        sides + " in " + within + ", side by side from the longest: " + Words.number(room)
                                + " mm to spare");
    }

    /** @param sides the shortest first, mm */
    private static Sentence fromTheLongest(List<Double> sides) {
        return say("{} × {} × {}", mm(sides.get(2)).bare(), mm(sides.get(1)).bare(), mm(sides.get(0)));
    }
}

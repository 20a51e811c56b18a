package jackwork.app.bring;

import static jackwork.design.YamlWords.quoted;

import jackwork.design.DesignEdit;
import jackwork.design.Format;
import jackwork.design.YamlWords;
import jackwork.drawing.DrawingSvg;
import jackwork.geometry.Outline;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The texts of a new design's files. */
final class BringText {

    private final BringFigure figure;
    private final String rod;
    private final StringBuilder out = new StringBuilder();

    private BringText(BringFigure figure) {
        this.figure = figure;
        this.rod = figure.workshop().rods().keySet().stream().findFirst().orElse("");
    }

    /**
     * @param boxPath from the design's folder
     * @param coins that it must take
     */
    static String design(BringPlan plan, String boxPath, List<String> coins) {
        return "format: " + Format.NOW + "\nname: " + quoted(plan.name()) + "\nbox: " + quoted(boxPath)
                + "\nfigure: figure.yaml\ncoins: " + list(coins) + "\n";
    }

    static String drawing(BringFigure figure) {
        Map<String, Outline> outlines = new LinkedHashMap<>();
        figure.parts().forEach((name, part) -> outlines.put(name, part.outline()));
        return DrawingSvg.write(
                figure.plan().name() + ", drawn at rest. One unit is one millimetre.",
                figure.plan().scale(),
                outlines,
                figure.circles(),
                figure.lines());
    }

    static String figure(BringFigure figure) {
        BringText text = new BringText(figure);
        text.parts();
        text.bodies();
        text.joints();
        text.mounts();
        return text.out.toString();
    }

    private void parts() {
        out.append("format: ")
                .append(Format.NOW)
                .append("\nname: ")
                .append(quoted(figure.plan().name()))
                .append("\ndrawing: figure.svg\n\n");
        out.append("# layers are counted from the back\nparts:\n");
        figure.parts().values().forEach(part -> {
            out.append("  ").append(quoted(part.name())).append(": {stock: ").append(quoted(part.stock()));
            out.append(", layer: ").append(part.layer());
            if (!part.paint().isEmpty()) {
                out.append(", paint: ").append(quoted(part.paint()));
            }
            out.append("}\n");
        });
    }

    private void bodies() {
        Map<String, List<String>> bodies = figure.parts().values().stream()
                .filter(part -> !part.body().isEmpty())
                .collect(Collectors.groupingBy(
                        BringFigure.Made::body,
                        LinkedHashMap::new,
                        Collectors.mapping(BringFigure.Made::name, Collectors.toList())));
        List<String> fixed = bodies.remove(BringPlan.STANDS);
        out.append("\nfixed: ").append(list(fixed == null ? List.of() : fixed)).append("\n");
        bodies.values().removeIf(group -> group.size() < 2);
        if (!bodies.isEmpty()) {
            out.append("glued:\n");
            bodies.values()
                    .forEach(group -> out.append("  - ").append(list(group)).append("\n"));
        }
    }

    private void joints() {
        if (!figure.pins().isEmpty()) {
            out.append("\npins:\n");
            figure.pins().forEach((name, pin) -> holes(name, pin.parts()));
        }
        if (!figure.strings().isEmpty()) {
            String cord = figure.workshop().cords().keySet().iterator().next();
            out.append("\nstrings:\n");
            figure.strings()
                    .forEach((name, string) -> out.append("  ")
                            .append(quoted(name))
                            .append(":\n    cord: ")
                            .append(quoted(cord))
                            .append("\n    from: {part: ")
                            .append(quoted(string.part()))
                            .append(", at: ")
                            .append(quoted(name))
                            .append("}\n    to: {part: ")
                            .append(quoted(figure.box().box().lever().part()))
                            .append(", at: ")
                            .append(quoted(string.leverPoint()))
                            .append("}\n"));
        }
        if (!figure.weights().isEmpty()) {
            out.append("\nweights:\n");
            figure.weights()
                    .forEach((name, weight) -> out.append("  ")
                            .append(quoted(name))
                            .append(": {on: ")
                            .append(quoted(weight.part()))
                            .append(", mass: ")
                            .append(DesignEdit.words(weight.grams()))
                            .append("}\n"));
        }
    }

    private void mounts() {
        out.append("\nmounts:\n");
        figure.mountParts().forEach(this::holes);
    }

    private void holes(String name, List<String> parts) {
        out.append("  ")
                .append(quoted(name))
                .append(": {parts: ")
                .append(list(parts))
                .append(", rod: ")
                .append(quoted(rod))
                .append("}\n");
    }

    private static String list(List<String> words) {
        return words.stream().map(YamlWords::quoted).collect(Collectors.joining(", ", "[", "]"));
    }
}

package jackwork.app;

import jackwork.design.DesignEdit;
import jackwork.drawing.DrawingSvg;
import jackwork.geometry.Outline;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The texts of a new design's files. Names in them are plain words; what is typed freely is quoted. */
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
        return "format: 1\nname: " + quoted(plan.name()) + "\nbox: " + quoted(boxPath)
                + "\nfigure: figure.yaml\ncoins: [" + String.join(", ", coins) + "]\n";
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
        out.append("format: 1\nname: ").append(quoted(figure.plan().name())).append("\ndrawing: figure.svg\n\n");
        out.append("# layers are counted from the back\nparts:\n");
        figure.parts().values().forEach(part -> {
            out.append("  ").append(part.name()).append(": {stock: ").append(part.stock());
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
        out.append("\nfixed: [")
                .append(String.join(", ", fixed == null ? List.of() : fixed))
                .append("]\n");
        bodies.values().removeIf(group -> group.size() < 2);
        if (!bodies.isEmpty()) {
            out.append("glued:\n");
            bodies.values()
                    .forEach(group ->
                            out.append("  - [").append(String.join(", ", group)).append("]\n"));
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
                            .append(name)
                            .append(":\n    cord: ")
                            .append(cord)
                            .append("\n    from: {part: ")
                            .append(string.part())
                            .append(", at: ")
                            .append(name)
                            .append("}\n    to: {part: ")
                            .append(figure.box().box().lever().part())
                            .append(", at: ")
                            .append(string.leverPoint())
                            .append("}\n"));
        }
        if (!figure.weights().isEmpty()) {
            out.append("\nweights:\n");
            figure.weights()
                    .forEach((name, weight) -> out.append("  ")
                            .append(name)
                            .append(": {on: ")
                            .append(weight.part())
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
                .append(name)
                .append(": {parts: [")
                .append(String.join(", ", parts))
                .append("], rod: ")
                .append(rod)
                .append("}\n");
    }

    /** Bare where YAML takes it for nothing else; a JSON string is a YAML string. */
    static String quoted(String text) {
        boolean plain = text.matches("\\p{L}[\\p{L}0-9_-]+( [\\p{L}0-9_-]+)*")
                && !text.matches("(?i)true|false|null|yes|no|on|off");
        return plain ? text : Json.mapper().writeValueAsString(text);
    }
}

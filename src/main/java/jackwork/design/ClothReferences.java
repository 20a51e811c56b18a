package jackwork.design;

import jackwork.drawing.Drawing;
import org.jspecify.annotations.Nullable;

/** Holds a figure's cloth against its drawing and its parts. */
final class ClothReferences {

    private static final double MOST_HEM = 100;
    private static final double LONGEST = 5000;

    private ClothReferences() {}

    static void check(FigureFile figure, YamlFile yaml, Drawing drawing) {
        figure.cloths().forEach((name, cloth) -> {
            String path = "cloths." + name;
            References.known(
                    path + ".outline",
                    cloth.outline(),
                    drawing.outlines().keySet(),
                    "the id of a closed outline in the drawing",
                    yaml);
            String on = cloth.on();
            if (on != null) {
                References.known(path + ".on", on, figure.parts().keySet(), "a part of this file", yaml);
            }
            double hem = cloth.hemOrUsual();
            if (!(hem >= 0 && hem <= MOST_HEM)) {
                yaml.problem(path + ".hem", "read " + hem + ", expected 0 to " + MOST_HEM + " mm");
            }
            if ((cloth.from() == null) != (cloth.to() == null)) {
                yaml.problem(path, "expected both from and to, or neither");
            }
            Double length = cloth.length();
            if (length != null && !(length > 0 && length <= LONGEST)) {
                yaml.problem(
                        path + ".length", "read " + length + ", expected more than 0 and at most " + LONGEST + " mm");
            }
            tie(path + ".from", cloth.from(), figure, yaml, drawing);
            tie(path + ".to", cloth.to(), figure, yaml, drawing);
        });
    }

    private static void tie(String path, @Nullable PointOf tie, FigureFile figure, YamlFile yaml, Drawing drawing) {
        if (tie != null) {
            References.known(path + ".part", tie.part(), figure.parts().keySet(), "a part of this file", yaml);
            References.place(path + ".at", tie.at(), "", drawing, yaml);
        }
    }
}

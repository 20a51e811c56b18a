package jackwork.check;

import jackwork.design.Design;
import jackwork.design.PartEntry;
import jackwork.design.WeightEntry;
import jackwork.design.Works;
import jackwork.geometry.Point;
import jackwork.parts.Part;
import java.util.ArrayList;
import java.util.List;

/**
 * A weight as written, in the common frame.
 *
 * @param on the part that carries it, ply by ply
 */
record WeightPlace(String name, WeightEntry entry, Point at, List<Part> on) {

    static List<WeightPlace> of(Subject subject) {
        Design design = subject.design();
        List<WeightPlace> places = new ArrayList<>();
        for (Works works : List.of(design.box().works(), design.figure().works())) {
            works.weights()
                    .forEach((name, entry) -> places.add(new WeightPlace(
                            name,
                            entry,
                            design.isOfBox(works) ? design.inBox(entry.at(), name) : design.inFigure(entry.at(), name),
                            plies(subject, entry.on()))));
        }
        return places;
    }

    private static List<Part> plies(Subject subject, String on) {
        List<Part> plies = new ArrayList<>();
        for (int ply = 1; ply == 1 + plies.size(); ply++) {
            String name = PartEntry.ply(on, ply);
            subject.assembly().parts().stream()
                    .filter(part -> part.name().equals(name))
                    .forEach(plies::add);
        }
        return plies;
    }
}

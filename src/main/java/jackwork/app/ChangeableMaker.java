package jackwork.app;

import jackwork.design.Adjustable;
import jackwork.design.Design;
import jackwork.design.EntryEdit;
import jackwork.stock.Fasteners;
import java.util.List;

/** Makes the list of what can be changed. */
final class ChangeableMaker {

    private ChangeableMaker() {}

    static Changeable of(Design design, List<String> sharedWith) {
        Adjustable adjustable = Adjustable.of(design);
        return new Changeable(
                adjustable.numbers().stream()
                        .map(number ->
                                new Changeable.Setting(number.path(), number.value(), number.unit(), number.whole()))
                        .toList(),
                adjustable.points().stream()
                        .map(spot -> new Changeable.Spot(spot.paths(), Pair.of(spot.at())))
                        .toList(),
                EntryEdit.entries(design).stream()
                        .map(entry -> new Changeable.Entry(
                                entry.path(), entry.section(), entry.name(), String.join(", ", entry.about())))
                        .toList(),
                design.figureDrawing().outlines().keySet().stream()
                        .filter(outline -> !design.figure().parts().containsKey(outline))
                        .sorted()
                        .toList(),
                new Changeable.Choices(
                        List.copyOf(design.workshop().sheets().keySet()),
                        List.copyOf(design.workshop().rods().keySet()),
                        List.copyOf(design.workshop().cords().keySet()),
                        Fasteners.catalogue().names()),
                sharedWith);
    }
}

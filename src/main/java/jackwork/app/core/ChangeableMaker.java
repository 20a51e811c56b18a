package jackwork.app.core;

import jackwork.app.wire.Pair;
import jackwork.design.Adjustable;
import jackwork.design.Design;
import jackwork.design.EntryEdit;
import jackwork.design.PinEntry;
import jackwork.design.Place;
import jackwork.design.Works;
import jackwork.geometry.Point;
import jackwork.stock.Fasteners;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;

/** Makes the list of what can be changed. */
final class ChangeableMaker {

    private ChangeableMaker() {}

    static Changeable of(Design design, List<String> sharedWith) {
        Adjustable adjustable = Adjustable.of(design);
        return new Changeable(
                adjustable.numbers().stream()
                        .map(number -> Changeable.Setting.of(number))
                        .toList(),
                adjustable.points().stream()
                        .map(spot -> new Changeable.Spot(spot.paths(), Pair.of(spot.at())))
                        .toList(),
                stops(design),
                EntryEdit.entries(design).stream()
                        .map(entry -> new Changeable.Entry(
                                entry.path(), entry.section(), entry.name(), String.join(", ", entry.about())))
                        .toList(),
                design.figureDrawing().outlines().keySet().stream()
                        .filter(outline -> !design.figure().works().parts().containsKey(outline))
                        .sorted()
                        .toList(),
                new Changeable.Choices(
                        List.copyOf(design.workshop().sheets().keySet()),
                        List.copyOf(design.workshop().rods().keySet()),
                        List.copyOf(design.workshop().cords().keySet()),
                        Fasteners.catalogue().names()),
                sharedWith);
    }

    private static List<Changeable.Stop> stops(Design design) {
        List<Changeable.Stop> stops = new ArrayList<>();
        add(stops, "box", design.box().works(), design::inBox);
        add(stops, "figure", design.figure().works(), design::inFigure);
        return stops;
    }

    private static void add(
            List<Changeable.Stop> stops, String file, Works works, BiFunction<@Nullable Place, String, Point> where) {
        works.stops().forEach((name, stop) -> {
            PinEntry pin = works.pins().get(stop.pin());
            if (pin != null) {
                stops.add(new Changeable.Stop(
                        file + ".stops." + name,
                        stop.between().get(0),
                        Pair.of(where.apply(pin.at(), stop.pin())),
                        stop.from(),
                        stop.to()));
            }
        });
    }
}

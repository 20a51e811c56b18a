package jackwork.app.core;

import jackwork.app.wire.Pair;
import jackwork.geometry.Bounds;
import jackwork.geometry.Point;
import jackwork.parts.Assembly;
import jackwork.parts.Body;
import jackwork.parts.CoinWorks;
import jackwork.parts.Lump;
import jackwork.parts.Part;
import jackwork.parts.StringRun;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;

/** Makes the page's drawing of an assembly. */
public final class SceneMaker {

    private SceneMaker() {}

    /** All of it. */
    public static Scene of(Assembly assembly) {
        return of(assembly, part -> true, ScenePictures.of(assembly), ScenePictures.cloths(assembly));
    }

    /**
     * What moves while something is dragged: neither pictures nor cloth.
     *
     * @param shown parts whose outlines are told; the others are left out
     */
    public static Scene of(Assembly assembly, Predicate<Part> shown) {
        return of(assembly, shown, List.of(), List.of());
    }

    private static Scene of(
            Assembly assembly, Predicate<Part> shown, List<Scene.Picture> pictures, List<Scene.Cloth> cloths) {
        List<Scene.Pin> pins = new ArrayList<>();
        for (Body body : assembly.bodies()) {
            body.lumps().stream()
                    .filter(lump -> isRod(assembly, lump))
                    .forEach(rod -> pins.add(pin(assembly, body, rod)));
        }
        return new Scene(
                assembly.name(),
                bounds(assembly.parts()),
                assembly.bodies().stream()
                        .map(body -> body(assembly, body, shown))
                        .toList(),
                pins,
                assembly.links().stream()
                        .filter(StringRun.class::isInstance)
                        .map(link -> string(assembly, (StringRun) link))
                        .toList(),
                pictures,
                cloths,
                new Scene.Handle(
                        assembly.body(assembly.lever().body()).name(),
                        Pair.of(assembly.lever().pressDrawn()),
                        Pair.of(assembly.lever().pivot()),
                        Math.toDegrees(assembly.lever().turn())),
                coinWorks(assembly));
    }

    private static boolean isRod(Assembly assembly, Lump lump) {
        return assembly.workshop().rods().containsKey(lump.kind());
    }

    private static Scene.Room bounds(List<Part> parts) {
        Bounds all = parts.stream()
                .map(part -> part.drawn().bounds())
                .reduce(Bounds::union)
                .orElseThrow();
        return new Scene.Room(all.minX(), all.minY(), all.maxX(), all.maxY());
    }

    private static Scene.Body body(Assembly assembly, Body body, Predicate<Part> shown) {
        return new Scene.Body(
                body.name(),
                body.isGround(),
                new Scene.Centre(body.centre().x(), body.centre().y()),
                body.parts().stream().filter(shown).map(SceneMaker::part).toList(),
                body.lumps().stream()
                        .filter(lump -> !isRod(assembly, lump))
                        .map(lump -> new Scene.Weight(lump.name(), Pair.of(lump.at()), lump.radius()))
                        .toList());
    }

    /** Whether two states of a part look the same; much quicker than to bore all their holes. */
    static boolean looksAlike(Part one, Part other) {
        return one.layer() == other.layer()
                && one.kind().equals(other.kind())
                && Objects.equals(one.paint(), other.paint())
                && one.holes().equals(other.holes())
                && one.drawn().outer().equals(other.drawn().outer())
                && one.drawn().holes().equals(other.drawn().holes())
                && one.engraving().equals(other.engraving());
    }

    private static Scene.Cord string(Assembly assembly, StringRun string) {
        List<Scene.On> points = new ArrayList<>();
        points.add(on(assembly, string.a(), string.from()));
        string.over().forEach(guide -> points.add(on(assembly, guide.body(), guide.at())));
        points.add(on(assembly, string.b(), string.to()));
        return new Scene.Cord(string.name(), points);
    }

    private static Scene.On on(Assembly assembly, int body, Point at) {
        return new Scene.On(assembly.body(body).name(), Pair.of(at));
    }

    public static Scene.Part part(Part part) {
        List<List<Pair>> rings = new ArrayList<>();
        var outline = part.outline();
        rings.add(Pair.ring(outline.outer()));
        outline.holes().forEach(hole -> rings.add(Pair.ring(hole)));
        return new Scene.Part(
                part.name(),
                part.layer(),
                part.ofBox(),
                part.kind().surface(),
                part.paint(),
                rings,
                part.engraving().stream().map(Pair::ring).toList());
    }

    /** A rod moves with the body that grips it, and shows where the frontmost of its parts ends. */
    private static Scene.Pin pin(Assembly assembly, Body holder, Lump rod) {
        return new Scene.Pin(rod.name(), Pair.of(rod.at()), rod.radius(), holder.name(), top(assembly, rod.at()));
    }

    /** The frontmost layer that has a hole there. */
    private static int top(Assembly assembly, Point at) {
        return assembly.parts().stream()
                .filter(part -> part.holes().stream()
                        .anyMatch(hole -> hole.circle().centre().distance(at) < 0.01))
                .mapToInt(Part::layer)
                .max()
                .orElse(0);
    }

    private static Scene.Works coinWorks(Assembly assembly) {
        CoinWorks works = assembly.coinWorks();
        return new Scene.Works(
                new Scene.Slot(works.slotLength(), works.slotWidth()),
                Pair.of(works.lip()),
                Pair.of(works.heel()),
                Pair.of(works.toe()),
                assembly.body(works.bucket()).name(),
                Pair.of(works.pivot()),
                Math.toDegrees(works.angle(1)),
                Pair.of(works.slotAt()),
                works.layer());
    }
}

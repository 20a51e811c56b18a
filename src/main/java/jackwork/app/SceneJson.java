package jackwork.app;

import jackwork.geometry.Bounds;
import jackwork.geometry.Point;
import jackwork.parts.Assembly;
import jackwork.parts.Body;
import jackwork.parts.CoinWorks;
import jackwork.parts.Lump;
import jackwork.parts.Part;
import jackwork.parts.StringRun;
import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What the page draws: every outline in the position drawn, by body, with layers and materials. */
final class SceneJson {

    private SceneJson() {}

    static ObjectNode of(Assembly assembly) {
        ObjectNode scene = Json.object();
        scene.put("name", assembly.name());
        scene.set("bounds", bounds(assembly.parts()));
        ArrayNode bodies = scene.putArray("bodies");
        assembly.bodies().forEach(body -> bodies.add(body(assembly, body)));
        ArrayNode pins = scene.putArray("pins");
        for (Body body : assembly.bodies()) {
            body.lumps().stream()
                    .filter(lump -> assembly.workshop().rods().containsKey(lump.kind()))
                    .forEach(rod -> pins.add(pin(assembly, body, rod)));
        }
        ArrayNode strings = scene.putArray("strings");
        assembly.links().stream()
                .filter(StringRun.class::isInstance)
                .forEach(link -> strings.add(string(assembly, (StringRun) link)));
        scene.set("lever", lever(assembly));
        scene.set("coinWorks", coinWorks(assembly));
        return scene;
    }

    private static ObjectNode bounds(List<Part> parts) {
        Bounds all = parts.stream()
                .map(part -> part.drawn().bounds())
                .reduce(Bounds::union)
                .orElseThrow();
        ObjectNode node = Json.object();
        Json.put(node, "minX", all.minX(), 3);
        Json.put(node, "minY", all.minY(), 3);
        Json.put(node, "maxX", all.maxX(), 3);
        Json.put(node, "maxY", all.maxY(), 3);
        return node;
    }

    private static ObjectNode body(Assembly assembly, Body body) {
        ObjectNode node = Json.object();
        node.put("name", body.name());
        node.put("ground", body.isGround());
        ArrayNode centre = Json.array();
        // As finely as the poses, so that a body stands exactly where it is drawn at rest.
        Json.add(centre, body.centre().x(), 6);
        Json.add(centre, body.centre().y(), 6);
        node.set("centre", centre);
        ArrayNode parts = node.putArray("parts");
        body.parts().forEach(part -> parts.add(part(part)));
        ArrayNode weights = node.putArray("weights");
        for (Lump lump : body.lumps()) {
            if (!assembly.workshop().rods().containsKey(lump.kind())) {
                ObjectNode weight = weights.addObject();
                weight.put("name", lump.name());
                weight.set("at", Json.point(lump.at()));
                Json.put(weight, "radius", lump.radius(), 3);
            }
        }
        return node;
    }

    /** A string's ends and the middles of its guides, each with the body that carries it. */
    private static ObjectNode string(Assembly assembly, StringRun string) {
        ObjectNode node = Json.object();
        node.put("name", string.name());
        ArrayNode points = node.putArray("points");
        addPoint(points, assembly, string.a(), string.from());
        string.over().forEach(guide -> addPoint(points, assembly, guide.body(), guide.at()));
        addPoint(points, assembly, string.b(), string.to());
        return node;
    }

    private static void addPoint(ArrayNode points, Assembly assembly, int body, Point at) {
        ObjectNode point = points.addObject();
        point.put("body", assembly.body(body).name());
        point.set("at", Json.point(at));
    }

    private static ObjectNode part(Part part) {
        ObjectNode node = Json.object();
        node.put("name", part.name());
        node.put("layer", part.layer());
        node.put("ofBox", part.ofBox());
        node.put("material", part.kind().surface());
        node.put("paint", part.paint());
        ArrayNode rings = node.putArray("rings");
        var outline = part.outline();
        rings.add(Json.ring(outline.outer()));
        outline.holes().forEach(hole -> rings.add(Json.ring(hole)));
        ArrayNode engraving = node.putArray("engraving");
        part.engraving().forEach(line -> engraving.add(Json.ring(line)));
        return node;
    }

    /** A rod moves with the body that grips it, and shows where the frontmost of its parts ends. */
    private static ObjectNode pin(Assembly assembly, Body holder, Lump rod) {
        ObjectNode node = Json.object();
        node.put("name", rod.name());
        node.set("at", Json.point(rod.at()));
        Json.put(node, "radius", rod.radius(), 3);
        node.put("body", holder.name());
        node.put("layer", top(assembly, rod.at()));
        return node;
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

    private static ObjectNode lever(Assembly assembly) {
        ObjectNode node = Json.object();
        node.put("body", assembly.body(assembly.lever().body()).name());
        node.set("press", Json.point(assembly.lever().press()));
        node.set("pin", Json.point(assembly.lever().pivot()));
        Json.put(node, "throwDeg", Math.toDegrees(assembly.lever().turn()), 6);
        return node;
    }

    private static ObjectNode coinWorks(Assembly assembly) {
        CoinWorks works = assembly.coinWorks();
        ObjectNode node = Json.object();
        ObjectNode slot = node.putObject("slot");
        Json.put(slot, "length", works.slotLength(), 3);
        Json.put(slot, "width", works.slotWidth(), 3);
        node.set("lip", Json.point(works.lip()));
        node.set("heel", Json.point(works.heel()));
        node.set("toe", Json.point(works.toe()));
        node.put("body", assembly.body(works.bucket()).name());
        node.set("pin", Json.point(works.pivot()));
        Json.put(node, "tipDeg", Math.toDegrees(works.tip()), 6);
        return node;
    }
}

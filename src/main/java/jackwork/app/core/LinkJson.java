package jackwork.app.core;

import jackwork.app.wire.Json;
import jackwork.design.JointKind;
import jackwork.design.JointKinds;
import jackwork.geometry.Point;
import jackwork.parts.Assembly;
import jackwork.parts.Description;
import jackwork.parts.Link;
import jackwork.parts.LinkKind;
import jackwork.parts.StringRun;
import java.util.List;
import java.util.function.BiConsumer;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Gears, cams, strings and other links in the mechanism's JSON, as their kinds describe them. */
final class LinkJson implements Description {

    private final Assembly assembly;
    private final ObjectNode node;

    private LinkJson(Assembly assembly, ObjectNode node) {
        this.assembly = assembly;
        this.node = node;
    }

    static ObjectNode of(Assembly assembly, Link link) {
        ObjectNode node = Json.object();
        node.put("name", link.name());
        ArrayNode bodies = node.putArray("bodies");
        link.bodies().forEach(body -> bodies.add(assembly.body(body).name()));
        for (JointKind<?> kind : JointKinds.all()) {
            describe((LinkKind<?, ?>) kind, link, new LinkJson(assembly, node));
        }
        if (!(link instanceof StringRun)) {
            link.frictions()
                    .forEach(pair ->
                            Json.put(node, "friction", pair.coefficient().value(), 6));
        }
        return node;
    }

    private static <L extends Link> void describe(LinkKind<?, L> kind, Link link, LinkJson out) {
        if (kind.link().isInstance(link)) {
            out.put("kind", kind.label());
            kind.describe(kind.link().cast(link), out);
        }
    }

    @Override
    public void put(String name, String word) {
        node.put(name, word);
    }

    @Override
    public void put(String name, boolean truth) {
        node.put(name, truth);
    }

    @Override
    public void put(String name, int number) {
        node.put(name, number);
    }

    @Override
    public void put(String name, double number, int decimals) {
        Json.put(node, name, number, decimals);
    }

    @Override
    public void put(String name, Point point) {
        node.set(name, Json.point(point));
    }

    @Override
    public void put(String name, List<Point> ring) {
        node.set(name, Json.ring(ring));
    }

    @Override
    public void putBody(String name, int body) {
        node.put(name, assembly.body(body).name());
    }

    @Override
    public <T> void putList(String name, List<T> items, BiConsumer<T, Description> each) {
        ArrayNode array = node.putArray(name);
        items.forEach(item -> each.accept(item, new LinkJson(assembly, array.addObject())));
    }
}

package jackwork.app;

import jackwork.geometry.Point;
import jackwork.parts.Assembly;
import jackwork.parts.CamPair;
import jackwork.parts.DistanceLimit;
import jackwork.parts.GearMesh;
import jackwork.parts.InvoluteGear;
import jackwork.parts.Link;
import jackwork.parts.RackMesh;
import jackwork.parts.RatchetPair;
import jackwork.parts.SpringLink;
import jackwork.parts.StringRun;
import jackwork.parts.Torque;
import jackwork.parts.TouchPair;
import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Gears, cams, strings and other links in the mechanism's JSON. */
final class LinkJson {

    private static final int CAM_POINTS = 360;

    private LinkJson() {}

    static ObjectNode of(Assembly assembly, Link link) {
        ObjectNode node = Json.object();
        node.put("name", link.name());
        ArrayNode bodies = node.putArray("bodies");
        link.bodies().forEach(body -> bodies.add(assembly.body(body).name()));
        if (link instanceof GearMesh mesh) {
            node.put("kind", "mesh");
            node.put("inside", mesh.inside());
            node.set("centreA", Json.point(mesh.centreA()));
            node.set("centreB", Json.point(mesh.centreB()));
            node.put("teethA", mesh.gearA().teeth());
            node.put("teethB", mesh.gearB().teeth());
            putGear(node, mesh.gearA());
        } else if (link instanceof RackMesh rack) {
            node.put("kind", "rack");
            node.set("centre", Json.point(rack.centre()));
            node.set("pitchPoint", Json.point(rack.pitchPoint()));
            node.put("teeth", rack.gear().teeth());
            putGear(node, rack.gear());
        } else if (link instanceof CamPair cam) {
            node.put("kind", "cam");
            node.set("peg", Json.point(cam.peg()));
            Json.put(node, "radius", cam.radius(), 6);
            node.set("centre", Json.point(cam.centre()));
            node.set("pitchCurve", Json.ring(pitchCurve(cam)));
        } else if (link instanceof RatchetPair pawl) {
            node.put("kind", "pawl");
            node.set("tip", Json.point(pawl.tip()));
            Json.put(node, "radius", pawl.radius(), 6);
            node.set("wheel", Json.ring(pawl.teeth()));
        } else if (link instanceof StringRun string) {
            putString(assembly, node, string);
        } else if (link instanceof DistanceLimit limit) {
            node.put("kind", "limit");
            node.set("from", Json.point(limit.onA()));
            node.set("to", Json.point(limit.onB()));
            Json.put(node, "least", limit.least(), 6);
            Json.put(node, "most", limit.most(), 6);
        } else if (link instanceof TouchPair touch) {
            node.put("kind", "touch");
            Json.put(node, "radius", touch.radius(), 6);
            node.set("shapeA", Json.ring(touch.shapeA()));
            node.set("shapeB", Json.ring(touch.shapeB()));
        } else if (link instanceof SpringLink spring) {
            node.put("kind", "spring");
            node.set("from", Json.point(spring.onA()));
            node.set("to", Json.point(spring.onB()));
            Json.put(node, "stiffnessNPerMm", spring.stiffness(), 9);
            Json.put(node, "free", spring.free(), 6);
            node.put("pullsOnly", spring.pullsOnly());
        } else if (link instanceof Torque torque) {
            node.put("kind", "torque");
            Json.put(node, "momentNmm", torque.moment(), 9);
        } else {
            throw new IllegalArgumentException("no JSON for " + link);
        }
        if (!(link instanceof StringRun)) {
            link.frictions()
                    .forEach(pair ->
                            Json.put(node, "friction", pair.coefficient().value(), 6));
        }
        return node;
    }

    private static void putGear(ObjectNode node, InvoluteGear gear) {
        Json.put(node, "module", gear.module(), 9);
        Json.put(node, "pressureAngleDeg", Math.toDegrees(gear.pressureAngle()), 6);
    }

    private static List<Point> pitchCurve(CamPair cam) {
        double[] at = new double[6];
        return java.util.stream.IntStream.range(0, CAM_POINTS)
                .mapToObj(i -> {
                    cam.profile().evaluate(2 * Math.PI * i / CAM_POINTS, at);
                    return cam.centre().plus(new Point(at[0], at[1]));
                })
                .toList();
    }

    private static void putString(Assembly assembly, ObjectNode node, StringRun string) {
        node.put("kind", "string");
        node.set("from", Json.point(string.from()));
        node.set("to", Json.point(string.to()));
        Json.put(node, "slack", string.slack(), 6);
        ArrayNode over = node.putArray("over");
        string.over().forEach(guide -> {
            ObjectNode entry = over.addObject();
            entry.put("body", assembly.body(guide.body()).name());
            entry.set("at", Json.point(guide.at()));
            Json.put(entry, "radius", guide.radius(), 6);
            entry.put("turns", guide.radius() == 0 ? "eyelet" : guide.side() > 0 ? "left" : "right");
            Json.put(entry, "friction", guide.friction().coefficient().value(), 6);
        });
    }
}

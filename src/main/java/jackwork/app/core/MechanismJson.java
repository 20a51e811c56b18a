package jackwork.app.core;

import jackwork.app.wire.Json;
import jackwork.design.Design;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.motion.model.MechanismKind;
import jackwork.parts.Assembler;
import jackwork.parts.Assembly;
import jackwork.parts.Bearing;
import jackwork.parts.Body;
import jackwork.parts.PinJoint;
import jackwork.parts.RodRun;
import jackwork.parts.SlideJoint;
import jackwork.parts.Stop;
import jackwork.parts.Stopping;
import jackwork.parts.TurningEnd;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The compiled mechanism with its numbers and units, for anyone's own tools; described in docs/mechanism.md. */
public final class MechanismJson {

    private static final int FORMAT_VERSION = 1;

    private MechanismJson() {}

    public static String of(Design design) {
        Assembly assembly = Assembler.assemble(design);
        ObjectNode root = Json.object();
        root.put("formatVersion", FORMAT_VERSION);
        root.put("design", assembly.name());
        ObjectNode units = root.putObject("units");
        units.put("length", "mm")
                .put("mass", "g")
                .put("inertia", "g·mm²")
                .put("angle", "deg")
                .put("force", "N");
        root.putObject("gravity").put("x", 0).put("y", -9806.65).put("unit", "mm/s²");
        ArrayNode bodies = root.putArray("bodies");
        assembly.bodies().forEach(body -> bodies.add(body(body)));
        ArrayNode pins = root.putArray("pins");
        assembly.pins().forEach(pin -> pins.add(pin(assembly, pin)));
        ArrayNode slides = root.putArray("slides");
        assembly.slides().forEach(slide -> slides.add(slide(assembly, slide)));
        ArrayNode stops = root.putArray("stops");
        assembly.stops().forEach(stop -> stops.add(stop(assembly, stop)));
        ArrayNode ends = root.putArray("ends");
        assembly.ends().forEach(stopping -> ends.add(end(assembly, stopping)));
        ArrayNode links = root.putArray("links");
        assembly.links().forEach(link -> links.add(LinkJson.of(assembly, link)));
        ObjectNode lever = root.putObject("lever");
        lever.put("body", assembly.body(assembly.lever().body()).name());
        lever.put("pin", assembly.lever().pin());
        lever.set("press", Json.point(assembly.lever().pressDrawn()));
        lever.putArray("pressDirection").add(0).add(-1);
        Json.put(lever, "restDeg", Math.toDegrees(assembly.lever().rest()), 9);
        Json.put(lever, "throwDeg", Math.toDegrees(assembly.lever().turn()), 9);
        root.put("bucket", assembly.body(assembly.coinWorks().bucket()).name());
        ArrayNode passes = root.putArray("rods");
        assembly.rods().forEach(rod -> passes.add(rod(rod)));
        CoinWorksJson.put(design, assembly, root);
        return Json.pretty(root);
    }

    private static ObjectNode body(Body body) {
        ObjectNode node = Json.object();
        node.put("name", body.name());
        node.put("ground", body.isGround());
        Json.put(node, "mass", body.mass(), 9);
        ArrayNode centre = node.putArray("centre");
        Json.add(centre, body.centre().x(), 9);
        Json.add(centre, body.centre().y(), 9);
        Json.put(node, "inertia", body.inertia(), 6);
        ArrayNode parts = node.putArray("parts");
        body.parts().forEach(part -> {
            ObjectNode entry = parts.addObject();
            entry.put("name", part.name());
            entry.put("layer", part.layer());
            Json.put(entry, "thickness", part.thickness().value(), 6);
            Json.put(entry, "density", part.kind().density().value(), 6);
            Outline outline = part.outline();
            entry.set("outline", Json.ring(outline.outer()));
            ArrayNode holes = entry.putArray("holes");
            outline.holes().forEach(hole -> holes.add(Json.ring(hole)));
        });
        ArrayNode lumps = node.putArray("lumps");
        body.lumps().forEach(lump -> {
            ObjectNode entry = lumps.addObject();
            entry.put("name", lump.name());
            entry.put("kind", lump.kind());
            entry.set("at", Json.point(lump.at()));
            Json.put(entry, "mass", lump.mass(), 9);
            Json.put(entry, "radius", lump.radius(), 6);
        });
        return node;
    }

    private static ObjectNode pin(Assembly assembly, PinJoint pin) {
        ObjectNode node = Json.object();
        node.put("name", pin.name());
        node.put("holder", assembly.body(pin.holder()).name());
        node.put("runner", assembly.body(pin.runner()).name());
        node.set("at", Json.point(pin.at()));
        Json.put(node, "radius", pin.radius(), 6);
        Bearing bearing = assembly.bearing(pin);
        Json.put(node, "bearing", bearing.length(), 6);
        Json.put(node, "clearance", bearing.clearance(), 6);
        Json.put(node, "friction", pin.friction().coefficient().value(), 6);
        return node;
    }

    private static ObjectNode slide(Assembly assembly, SlideJoint slide) {
        ObjectNode node = Json.object();
        node.put("name", slide.name());
        node.put("peg", assembly.body(slide.peg()).name());
        node.put("slot", assembly.body(slide.slot()).name());
        node.set("at", Json.point(slide.at()));
        node.set("from", Json.point(slide.from()));
        Point via = slide.via();
        if (via == null) {
            node.putNull("via");
        } else {
            node.set("via", Json.point(via));
        }
        node.set("to", Json.point(slide.to()));
        Json.put(node, "friction", slide.friction().coefficient().value(), 6);
        return node;
    }

    private static ObjectNode stop(Assembly assembly, Stop stop) {
        ObjectNode node = Json.object();
        node.put("name", stop.name());
        node.put("a", assembly.body(stop.a()).name());
        node.put("b", assembly.body(stop.b()).name());
        Json.put(node, "fromDeg", Math.toDegrees(stop.from()), 9);
        Json.put(node, "toDeg", Math.toDegrees(stop.to()), 9);
        return node;
    }

    private static ObjectNode rod(RodRun rod) {
        ObjectNode node = Json.object();
        node.put("name", rod.name()).put("words", rod.words()).put("kind", Json.word(rod.kind()));
        node.set("at", Json.point(rod.at()));
        Json.put(node, "radius", rod.radius(), 6);
        node.put("fromLayer", rod.from()).put("toLayer", rod.to());
        ArrayNode parts = node.putArray("parts");
        rod.parts().forEach(parts::add);
        return node;
    }

    private static ObjectNode end(Assembly assembly, Stopping stopping) {
        TurningEnd end = stopping.end();
        ObjectNode node = Json.object();
        node.put("name", end.name());
        node.put("body", assembly.body(end.body()).name());
        node.put("against", assembly.body(end.against()).name());
        node.set("pivot", Json.point(end.pivot()));
        if (end.wished()) {
            Json.put(node, "deg", Math.toDegrees(end.at()), 9);
        } else {
            node.putNull("deg");
        }
        node.put("sense", (int) end.sense());
        node.put("provided", stopping.isProvided());
        Json.put(node, "stopsAtDeg", Math.toDegrees(stopping.angle()), 9);
        node.put("heldBy", stopping.holds() ? "edge" : "angle");
        Json.put(node, "rebound", stopping.holds() ? MechanismKind.WOOD_ON_WOOD : 0, 6);
        node.put("friction", 0);
        Stopping.Obstacle met = stopping.met();
        if (met == null) {
            node.putNull("met");
        } else {
            ObjectNode entry = node.putObject("met");
            entry.put("own", met.own()).put("by", met.by()).put("layer", met.layer());
            Json.put(entry, "deg", Math.toDegrees(met.meeting().angle()), 9);
            entry.set("at", Json.point(met.meeting().at()));
            entry.set("push", Json.point(met.meeting().out()));
            Json.put(entry, "arm", met.meeting().arm(end.pivot()), 6);
        }
        Stopping.Nearby nearest = stopping.nearest(assembly).orElse(null);
        if (nearest == null) {
            node.putNull("nearest");
        } else {
            ObjectNode entry = node.putObject("nearest");
            entry.put("own", nearest.own()).put("by", nearest.by()).put("layer", nearest.layer());
            Json.put(entry, "distance", nearest.distance(), 6);
        }
        return node;
    }
}

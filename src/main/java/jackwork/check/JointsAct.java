package jackwork.check;

import static jackwork.check.Sentence.say;

import jackwork.design.Design;
import jackwork.design.Named;
import jackwork.design.PartEntry;
import jackwork.design.PinEntry;
import jackwork.design.StopEntry;
import jackwork.design.Works;
import jackwork.parts.Assembly;
import jackwork.parts.Body;
import jackwork.parts.GearMesh;
import jackwork.parts.Link;
import jackwork.parts.RackMesh;
import jackwork.parts.RatchetPair;
import jackwork.parts.TouchPair;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Every joint is between pieces that can move against each other, what touches lies in one layer, every stop is about a pin
 * that its two parts share, and every pin goes through two parts or more.
 */
final class JointsAct implements Question {

    @Override
    public List<Finding> ask(Subject subject) {
        // What is wrong, by the joint.
        Map<String, String> idle = new LinkedHashMap<>();
        int joints = 0;
        for (Link link : subject.assembly().links()) {
            joints++;
            Set<Integer> bodies = new HashSet<>(link.bodies());
            if (link.bodies().size() > 1 && bodies.size() == 1) {
                Body body = subject.assembly().body(link.bodies().get(0));
                idle.put(link.name(), "all that it joins is one piece, that of " + first(body));
            } else if (!meets(subject.assembly(), link)) {
                idle.put(link.name(), "its two parts lie in different layers and never touch");
            }
        }
        Design design = subject.design();
        for (Works works : List.of(design.box().works(), design.figure().works())) {
            for (Map.Entry<String, PinEntry> entry : works.pins().entrySet()) {
                joints++;
                String fault = fault(subject.assembly(), entry.getValue());
                if (fault != null) {
                    idle.put(entry.getKey(), fault);
                }
            }
            for (Map.Entry<String, StopEntry> entry : works.stops().entrySet()) {
                joints++;
                String fault = fault(subject.assembly(), design, entry.getValue());
                if (fault != null) {
                    idle.put(entry.getKey(), fault);
                }
            }
        }
        return joints == 0 ? List.of() : List.of(finding(idle, joints));
    }

    private static String first(Body body) {
        return body.parts().isEmpty() ? body.name() : body.parts().get(0).name();
    }

    /** Whether two parts that push each other by their edges have a layer in common; a peg reaches any. */
    private static boolean meets(Assembly assembly, Link link) {
        if (link instanceof GearMesh mesh) {
            return share(assembly, mesh.partA(), mesh.partB());
        }
        if (link instanceof RackMesh rack) {
            return share(assembly, rack.gearPart(), rack.rackPart());
        }
        if (link instanceof TouchPair touch && touch.radius() == 0) {
            return share(assembly, touch.partA(), touch.partB());
        }
        if (link instanceof RatchetPair pawl) {
            return assembly.body(pawl.pawl()).parts().stream()
                    .anyMatch(part -> share(assembly, part.name(), pawl.wheelPart()));
        }
        return true;
    }

    private static boolean share(Assembly assembly, String a, String b) {
        Set<Integer> layers = layers(assembly, a);
        layers.retainAll(layers(assembly, b));
        return !layers.isEmpty();
    }

    /** Of a part and its plies. */
    private static Set<Integer> layers(Assembly assembly, String part) {
        Set<String> plies = new HashSet<>();
        assembly.parts().forEach(one -> plies.add(one.name()));
        Set<String> own = new HashSet<>();
        for (int ply = 1; plies.contains(PartEntry.ply(part, ply)); ply++) {
            own.add(PartEntry.ply(part, ply));
        }
        Set<Integer> layers = new HashSet<>();
        assembly.parts().stream().filter(one -> own.contains(one.name())).forEach(one -> layers.add(one.layer()));
        return layers;
    }

    private static @Nullable String fault(Assembly assembly, PinEntry pin) {
        if (new HashSet<>(pin.parts()).size() < pin.parts().size()) {
            return "it names a part twice";
        }
        Set<Integer> bodies = new HashSet<>();
        pin.parts().forEach(part -> bodies.add(body(assembly, part)));
        return pin.shoulder() != null && bodies.size() == 1 ? "nothing turns on its shoulder" : null;
    }

    private static @Nullable String fault(Assembly assembly, Design design, StopEntry stop) {
        Set<Integer> between = new HashSet<>();
        stop.between().forEach(part -> between.add(body(assembly, part)));
        if (between.size() < 2) {
            return "its two parts are one piece";
        }
        for (Works works : List.of(design.box().works(), design.figure().works())) {
            if (works.pins().containsKey(stop.pin())) {
                PinEntry pin = Named.in(works.pins(), stop.pin());
                Set<Integer> joined = new HashSet<>();
                pin.parts().forEach(part -> joined.add(body(assembly, part)));
                return joined.containsAll(between) ? null : "its two parts do not turn about " + stop.pin();
            }
        }
        return null;
    }

    private static int body(Assembly assembly, String part) {
        return part.equals(Body.GROUND) ? 0 : assembly.bodyOf(part);
    }

    private static Finding finding(Map<String, String> idle, int joints) {
        boolean act = idle.isEmpty();
        Map.Entry<String, String> first =
                act ? null : idle.entrySet().iterator().next();
        return Finding.ask(Topic.JOINTS_ACT, say("Is every joint between parts that move against each other?"))
                .answer(act ? Status.PASS : Status.FAIL, (double) idle.size(), 0.0, (double) -idle.size(), "joints")
                .at(first == null ? Where.nowhere() : new Where(first.getKey(), null, null))
                .because(
                        first == null
                                ? say("each of them joins two pieces")
                                : say("{} does not do what it says: {}", first.getKey(), first.getValue()),
                        first == null
                                ? Sentence.NOTHING
                                : say("Name the parts that {} should join, or take it out.", first.getKey()),
                        "joints that join nothing = " + idle.size() + " of " + joints);
    }
}

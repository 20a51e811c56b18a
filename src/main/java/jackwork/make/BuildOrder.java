package jackwork.make;

import jackwork.parts.Assembly;
import jackwork.parts.Body;
import jackwork.parts.Hole;
import jackwork.parts.Part;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * In which order the layers go together. A stack is what can be glued before it is put on: parts of one body with nothing
 * of another between them. Seen from the front, whatever lies behind goes on first.
 */
final class BuildOrder {

    /**
     * Parts that go on as one, hindmost first.
     *
     * @param body its name; {@code box} for what never moves
     */
    record Stack(String body, List<Part> parts) {
        int hindmost() {
            return parts.get(0).layer();
        }

        int foremost() {
            return parts.get(parts.size() - 1).layer();
        }

        /** How people call it: by its largest part. */
        String name() {
            return parts.stream()
                    .max(Comparator.comparingDouble(part -> part.section().area()))
                    .orElseThrow()
                    .name();
        }
    }

    private BuildOrder() {}

    /** Every part once, in stacks that can go on one after the other. */
    static List<Stack> of(Assembly assembly) {
        List<Stack> stacks = new ArrayList<>();
        for (int number = 0; number < assembly.bodies().size(); number++) {
            Body body = assembly.body(number);
            List<List<Part>> groups = number == 0 ? pinned(assembly, body) : List.of(body.parts());
            for (List<Part> group : groups) {
                stacks.addAll(split(assembly, number, body.name(), group));
            }
        }
        List<Stack> ordered = ordered(stacks);
        if (ordered.isEmpty()) {
            // Stacks that hold each other: part by part always works.
            List<Stack> single = new ArrayList<>();
            stacks.forEach(stack -> stack.parts().forEach(part -> single.add(new Stack(stack.body(), List.of(part)))));
            single.sort(Comparator.comparingInt(Stack::hindmost));
            return single;
        }
        return ordered;
    }

    /** Fixed parts that dowels hold together, apart from rods that something turns on and those of the mounts. */
    private static List<List<Part>> pinned(Assembly assembly, Body ground) {
        Set<String> turning = new LinkedHashSet<>();
        assembly.pins().forEach(pin -> turning.add(pin.name().replaceAll("/.*", "")));
        Map<String, Part> first = new LinkedHashMap<>();
        Map<Part, Set<Part>> groups = new LinkedHashMap<>();
        for (Part part : ground.parts()) {
            groups.put(part, new LinkedHashSet<>(List.of(part)));
        }
        for (Part part : ground.parts()) {
            for (Hole hole : part.holes()) {
                boolean dowel = hole.grips() && !turning.contains(hole.joint());
                Part other = dowel ? first.putIfAbsent(hole.joint(), part) : null;
                if (other != null && other.ofBox() == part.ofBox()) {
                    Set<Part> together = new LinkedHashSet<>(groups.getOrDefault(other, Set.of()));
                    together.addAll(groups.getOrDefault(part, Set.of()));
                    together.forEach(member -> groups.put(member, together));
                }
            }
        }
        return new LinkedHashSet<>(groups.values())
                .stream().map(group -> (List<Part>) new ArrayList<>(group)).toList();
    }

    /** Cuts a group wherever another body's part would have to go in between. */
    private static List<Stack> split(Assembly assembly, int body, String name, List<Part> group) {
        List<Part> sorted = new ArrayList<>(group);
        sorted.sort(Comparator.comparingInt(Part::layer));
        List<Stack> stacks = new ArrayList<>();
        List<Part> now = new ArrayList<>();
        for (int i = 0; i < sorted.size(); i++) {
            if (!now.isEmpty() && enclosed(assembly, body, group, now, sorted.subList(i, sorted.size()))) {
                stacks.add(new Stack(name, List.copyOf(now)));
                now.clear();
            }
            now.add(sorted.get(i));
        }
        stacks.add(new Stack(name, List.copyOf(now)));
        return stacks;
    }

    /** Whether some part lies before one of the first and behind one of the rest, and overlaps both. */
    private static boolean enclosed(
            Assembly assembly, int body, List<Part> group, List<Part> behind, List<Part> before) {
        for (Part other : assembly.parts()) {
            boolean ours = body == 0
                    ? group.contains(other)
                    : assembly.body(body).parts().contains(other);
            if (!ours
                    && behind.stream().anyMatch(part -> part.layer() < other.layer() && covers(part, other))
                    && before.stream().anyMatch(part -> part.layer() > other.layer() && covers(part, other))) {
                return true;
            }
        }
        return false;
    }

    static boolean covers(Part a, Part b) {
        return a.drawn().overlaps(b.drawn());
    }

    /** Hindmost first, each only once all that it covers is there; empty when that cannot be. */
    private static List<Stack> ordered(List<Stack> stacks) {
        List<Stack> left = new ArrayList<>(stacks);
        left.sort(Comparator.comparingInt(Stack::hindmost).thenComparingInt(Stack::foremost));
        List<Stack> done = new ArrayList<>();
        while (!left.isEmpty()) {
            Stack next = left.stream()
                    .filter(stack -> left.stream().noneMatch(other -> !other.equals(stack) && liesBehind(other, stack)))
                    .findFirst()
                    .orElse(null);
            if (next == null) {
                return List.of();
            }
            left.remove(next);
            done.add(next);
        }
        return done;
    }

    private static boolean liesBehind(Stack a, Stack b) {
        return a.parts().stream()
                .anyMatch(part ->
                        b.parts().stream().anyMatch(other -> part.layer() < other.layer() && covers(part, other)));
    }
}

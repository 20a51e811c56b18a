package jackwork.check;

import static jackwork.check.Sentence.say;

import jackwork.geometry.Outline;
import jackwork.parts.Body;
import jackwork.parts.Hole;
import jackwork.parts.Part;
import jackwork.parts.RodRun;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What is written to be one is one. Parts of a body hang together by faces that lie on each other in neighbouring layers, by
 * edges that meet in one layer, and by rods that grip them; those of a printed piece by faces and edges alone, since nothing
 * goes through it while it is printed. What is left over would lie beside the rest.
 */
final class HangsTogether implements Question {

    /** Faces that share less hold nothing, mm²: common practice, no source. */
    private static final double LEAST_FACE = 1;
    /** Edges nearer than this meet, mm: a drawing's rounding. */
    private static final double MEETS = 0.05;
    /** Edges that meet along less hold nothing, mm: common practice, no source. */
    private static final double LEAST_EDGE = 1;
    /** A rod's hole lies so near its axis, mm. */
    private static final double ONE_AXIS = 0.01;
    /** Sheets that differ by less are as thick as each other, mm. */
    private static final double AS_THICK = 0.01;

    @Override
    public boolean isQuick() {
        return false;
    }

    /** One finding for each that falls apart; one for all when none does. */
    @Override
    public List<Finding> ask(Subject subject) {
        List<Finding> findings = new ArrayList<>();
        Map<String, List<Part>> printed = new LinkedHashMap<>();
        for (Part part : subject.assembly().parts()) {
            String piece = part.printed();
            if (piece != null) {
                printed.computeIfAbsent(piece, name -> new ArrayList<>()).add(part);
            }
        }
        printed.forEach((name, parts) -> {
            List<List<Part>> groups = new Pieces(parts, List.of()).groups();
            if (groups.size() > 1) {
                findings.add(apart(
                        "printed-" + name,
                        say("Does the printed piece {} hang together?", name),
                        groups,
                        say("Put them into neighbouring layers where their faces meet, or print them apart.")));
            }
        });
        for (Body body : subject.assembly().bodies()) {
            List<List<Part>> groups = new Pieces(body.parts(), subject.rods()).groups();
            if (groups.size() > 1) {
                findings.add(apart(
                        body.name(),
                        say("Do the parts of {} hang together?", body.name()),
                        groups,
                        say("Put them into neighbouring layers where their faces meet, or a dowel through both.")));
            }
        }
        return findings.isEmpty() ? List.of(whole()) : findings;
    }

    private static Finding whole() {
        return Finding.ask(Topic.HANGS_TOGETHER, say("Does all that is fixed, glued or printed in one hang together?"))
                .answer(Status.PASS, 1.0, 1.0, 0.0, "pieces")
                .at(Where.nowhere())
                .because(
                        say("each part lies on another of its body, or is gripped by the same rod"),
                        Sentence.NOTHING,
                        "groups of parts that touch or share a gripping rod = 1 for each body");
    }

    private static Finding apart(String about, Sentence question, List<List<Part>> groups, Sentence remedy) {
        List<Part> loose = groups.get(groups.size() - 1);
        return Finding.ask(Topic.HANGS_TOGETHER, about, question)
                .answer(Status.FAIL, (double) groups.size(), 1.0, 1.0 - groups.size(), "pieces")
                .at(new Where(loose.get(0).name(), 0.0, loose.get(0).section().centroid()))
                .because(
                        say(
                                "it falls into {} pieces: nothing joins {} to the rest of it",
                                groups.size(),
                                loose.stream().map(Part::name).collect(Collectors.joining(", "))),
                        remedy,
                        "groups of parts that touch or share a gripping rod = " + groups.size());
    }

    /** Some parts that are to be one, and the rods that may grip them; none for what is printed. */
    private record Pieces(List<Part> parts, List<Outline> outlines, List<RodRun> rods) {

        Pieces(List<Part> parts, List<RodRun> rods) {
            this(parts, parts.stream().map(Part::outline).toList(), rods);
        }

        /** The parts by what they hang on, the largest group first. */
        List<List<Part>> groups() {
            int[] group = new int[parts.size()];
            for (int i = 0; i < group.length; i++) {
                group[i] = i;
                for (int j = 0; j < i; j++) {
                    if (group[i] != group[j] && hang(i, j)) {
                        int from = group[i];
                        int to = group[j];
                        for (int k = 0; k <= i; k++) {
                            group[k] = group[k] == from ? to : group[k];
                        }
                    }
                }
            }
            Map<Integer, List<Part>> groups = new LinkedHashMap<>();
            for (int i = 0; i < group.length; i++) {
                groups.computeIfAbsent(group[i], key -> new ArrayList<>()).add(parts.get(i));
            }
            List<List<Part>> sorted = new ArrayList<>(groups.values());
            sorted.sort((a, b) -> Integer.compare(b.size(), a.size()));
            return sorted;
        }

        private boolean hang(int i, int j) {
            Part a = parts.get(i);
            Part b = parts.get(j);
            if (rods.stream().anyMatch(rod -> grips(rod, a) && grips(rod, b))) {
                return true;
            }
            if (a.layer() == b.layer()) {
                return edgesMeet(outlines.get(i), outlines.get(j));
            }
            return Math.abs(a.layer() - b.layer()) == 1
                    && (!rods.isEmpty() || reaches(a.layer() < b.layer() ? a : b))
                    && outlines.get(i).sharedArea(outlines.get(j)) >= LEAST_FACE;
        }

        /** Of a printed layer the thinner parts do not come up to the next. */
        private boolean reaches(Part part) {
            return parts.stream()
                    .filter(other -> other.layer() == part.layer())
                    .allMatch(other ->
                            other.thickness().value() <= part.thickness().value() + AS_THICK);
        }
    }

    private static boolean edgesMeet(Outline a, Outline b) {
        return a.overlaps(b) || (a.distance(b) <= MEETS && a.offset(2 * MEETS).sharedArea(b) >= MEETS * LEAST_EDGE);
    }

    private static boolean grips(RodRun rod, Part part) {
        if (rod.kind() == RodRun.Kind.SCREW) {
            return rod.parts().contains(part.name());
        }
        return rod.parts().contains(part.name()) && part.holes().stream().anyMatch(hole -> isGrip(hole, rod));
    }

    private static boolean isGrip(Hole hole, RodRun rod) {
        return hole.grips() && hole.circle().centre().distance(rod.at()) <= ONE_AXIS;
    }
}

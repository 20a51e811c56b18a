package jackwork.make;

import static jackwork.check.Sentence.say;

import jackwork.check.Sentence;
import jackwork.parts.Body;
import jackwork.parts.Hole;
import jackwork.parts.Part;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What is said of the dowels and posts that nothing turns on, when a stack is put on what stands. */
final class RodsGlued {

    private RodsGlued() {}

    /**
     * @param words a line each
     * @param glued how many are glued then; of the others it is said when they will be
     */
    record Told(List<Sentence> words, int glued) {}

    /**
     * @param standing parts that are on already
     * @param order of all stacks
     * @param turning rods that something turns on, and mounts: they have words of their kind
     * @param pinned pins, dowels and posts
     */
    static Told of(
            BuildOrder.Stack stack,
            List<Part> standing,
            List<BuildOrder.Stack> order,
            Set<String> turning,
            Set<String> pinned) {
        return stack.body().equals(Body.GROUND)
                ? ofWhatStands(stack, standing, order, turning, pinned)
                : ofWhatMoves(stack, standing, turning);
    }

    /** The dowels that join it to what stands, or to what of its body is still to come. */
    private static Told ofWhatMoves(BuildOrder.Stack stack, List<Part> standing, Set<String> turning) {
        List<Sentence> words = new ArrayList<>();
        int glued = 0;
        for (Part part : stack.parts()) {
            for (Hole hole : part.holes()) {
                if (turning.contains(hole.joint()) || !hole.grips() || holders(stack, hole.joint()) > 1) {
                    continue;
                }
                boolean before = isIn(standing, hole.joint());
                glued += before ? 1 : 0;
                String how = before
                        ? "- dowel {} of {}: glue it to what stands behind it"
                        : "- dowel {} of {}: the rest of the body is glued to it when that goes on";
                words.add(say(how, hole.joint(), part.name()));
            }
        }
        return new Told(words, glued);
    }

    /** Glued in with the first that holds them, unless a glued stack brings them along. */
    private static Told ofWhatStands(
            BuildOrder.Stack stack,
            List<Part> standing,
            List<BuildOrder.Stack> order,
            Set<String> turning,
            Set<String> pinned) {
        List<Sentence> words = new ArrayList<>();
        Set<String> told = new LinkedHashSet<>();
        for (Part part : stack.parts()) {
            for (Hole hole : part.holes()) {
                String joint = hole.joint();
                if (!hole.grips() || turning.contains(joint) || !pinned.contains(joint)) {
                    continue;
                }
                boolean before = isIn(standing, joint);
                boolean brought = order.stream().anyMatch(other -> holders(other, joint) > 1);
                if (before && told.add(joint)) {
                    words.add(say("- rod {} goes through {} and what is behind: a drop of glue", joint, part.name()));
                } else if (!before && !brought) {
                    words.add(say("- rod {} of {}: glue it in, it stands out to the front", joint, part.name()));
                }
            }
        }
        return new Told(words, words.size());
    }

    /** How many parts of a stack have a joint's hole. */
    static long holders(BuildOrder.Stack stack, String joint) {
        return stack.parts().stream().filter(part -> has(part, joint)).count();
    }

    private static boolean isIn(List<Part> parts, String joint) {
        return parts.stream().anyMatch(part -> has(part, joint));
    }

    private static boolean has(Part part, String joint) {
        return part.holes().stream().anyMatch(hole -> hole.joint().equals(joint));
    }
}

package jackwork.make;

import jackwork.design.Design;
import jackwork.design.Works;
import jackwork.drawing.BookletWriter.Picture;
import jackwork.drawing.BookletWriter.Section;
import jackwork.geometry.Point;
import jackwork.parts.Assembly;
import jackwork.parts.Body;
import jackwork.parts.Hole;
import jackwork.parts.Link;
import jackwork.parts.Lump;
import jackwork.parts.Part;
import jackwork.parts.StringRun;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The glue-up, step by step, in the order that the layers allow: what goes where, with what, and how long it takes. */
public final class GlueUp {

    /** Left at either end of a string for its knot, mm. */
    static final double FOR_A_KNOT = 80;

    private final Assembly assembly;
    private final @Nullable Case housing;
    private final Minutes minutes;
    private final List<BuildOrder.Stack> order;
    private final List<Dowels.Dowel> dowels;
    private final Set<String> turning = new LinkedHashSet<>();
    /** Pins with a printed sleeve on their rod. */
    private final Set<String> sleeved;

    private final List<Step> steps = new ArrayList<>();

    /**
     * @param work what hands do in it
     * @param minutes a guess until the bench has timed it
     */
    public record Step(
            String heading,
            List<String> words,
            List<Work> work,
            double minutes,
            @Nullable Picture picture) {

        Section section(int number) {
            return new Section(
                    number + ". " + heading, String.format(Locale.ROOT, "about %.0f min", minutes), words, picture);
        }
    }

    private GlueUp(Design design, Assembly assembly, @Nullable Case housing) {
        this.assembly = assembly;
        this.housing = housing;
        this.minutes = new Minutes(design.workshop());
        this.sleeved = sleeved(design);
        this.order = BuildOrder.of(assembly);
        this.dowels = Dowels.of(assembly);
        assembly.pins().forEach(pin -> turning.add(pin.name().replaceAll("/.*", "")));
        if (!design.figure().mounts().isEmpty()) {
            turning.addAll(design.figure().mounts().keySet());
        }
    }

    static List<Step> of(Design design, Assembly assembly, @Nullable Case housing) {
        GlueUp up = new GlueUp(design, assembly, housing);
        up.prepare();
        up.glueStacks();
        up.putTogether();
        up.tieStrings();
        up.closeCase();
        up.tryIt();
        return List.copyOf(up.steps);
    }

    private Step step(String heading, List<String> words, List<Work> work, @Nullable Picture picture) {
        List<Work> some = work.stream().filter(w -> w.count() > 0).toList();
        return new Step(heading, words, some, minutes.of(some), picture);
    }

    private static Set<String> sleeved(Design design) {
        Set<String> names = new LinkedHashSet<>();
        for (Works works : List.of(design.box(), design.figure())) {
            works.pins().forEach((name, pin) -> {
                if (pin.shoulder() != null) {
                    names.add(name);
                }
            });
        }
        return names;
    }

    private void prepare() {
        int parts = assembly.parts().size();
        steps.add(step(
                "Sort and clean the parts",
                List.of(
                        "Lay the parts out by layer, back to front, and hold them against the parts list. Wipe off soot,"
                                + " ease the edges that will slide, and leave bare wood wherever something is glued.",
                        "Cut all rods to the lengths in dowels.csv and round their ends a little.",
                        "Try one rod in a hole it must grip and in one it must turn in before any glue."),
                List.of(new Work("clean-part", parts), new Work("dowel-cut", dowels.size())),
                null));
    }

    private void glueStacks() {
        for (BuildOrder.Stack stack : order) {
            if (stack.parts().size() > 1) {
                steps.add(glue(stack));
            }
        }
    }

    private Step glue(BuildOrder.Stack stack) {
        List<String> words = new ArrayList<>();
        List<Part> cut =
                stack.parts().stream().filter(part -> part.printed() == null).toList();
        boolean anyPrinted = cut.size() < stack.parts().size();
        words.add("From the back: " + joined(stack.parts()) + "."
                + (anyPrinted ? " What is printed comes as one piece; only the rest is glued to it." : ""));
        List<Dowels.Dowel> through = dowelsOf(stack);
        for (Dowels.Dowel dowel : through) {
            words.add("- " + dowel.name() + ": " + dowel.rod() + ", "
                    + String.format(Locale.ROOT, "%.1f mm", dowel.length()) + ", glued through all its layers");
        }
        weigh(stack, words);
        words.add("Put the hindmost on the sheet of jigs, its rods upright in it; spread glue thinly, keep it 2 mm from"
                + " every hole that something turns in; press flat under a weight until it has set.");
        return step(
                "Glue up " + stack.name(),
                words,
                List.of(
                        new Work("glue-stack", 1),
                        new Work("glue-layer", cut.size()),
                        new Work("dowel-glue", through.size()),
                        new Work("weight", weights(stack).size())),
                GlueUpPictures.of(stack.parts(), List.of()));
    }

    private List<Dowels.Dowel> dowelsOf(BuildOrder.Stack stack) {
        List<Dowels.Dowel> found = new ArrayList<>();
        for (Dowels.Dowel dowel : dowels) {
            long holding = stack.parts().stream()
                    .filter(part -> has(part, dowel.name()))
                    .count();
            if (holding > 1 && !turning.contains(dowel.name())) {
                found.add(dowel);
            }
        }
        return found;
    }

    private List<Lump> weights(BuildOrder.Stack stack) {
        Body body = assembly.bodies().stream()
                .filter(b -> b.name().equals(stack.body()))
                .findFirst()
                .orElseThrow();
        boolean last = order.stream()
                .filter(s -> s.body().equals(stack.body()))
                .reduce((a, b) -> b)
                .orElseThrow()
                .equals(stack);
        return last && !body.isGround()
                ? body.lumps().stream()
                        .filter(lump -> dowels.stream()
                                .noneMatch(dowel -> lump.name()
                                        .replaceAll("/.*| sleeve$", "")
                                        .equals(dowel.name())))
                        .toList()
                : List.of();
    }

    private void weigh(BuildOrder.Stack stack, List<String> words) {
        for (Lump lump : weights(stack)) {
            words.add(String.format(
                    Locale.ROOT,
                    "- weight %s: %s%.1f g, its middle %.1f mm right of and %.1f mm above the box's origin",
                    lump.name(),
                    lump.kind().equals("mass") ? "" : lump.kind() + ", together ",
                    lump.mass(),
                    lump.at().x(),
                    lump.at().y()));
        }
    }

    private void putTogether() {
        List<Part> standing = new ArrayList<>();
        Set<String> rods = new LinkedHashSet<>();
        for (BuildOrder.Stack stack : order) {
            List<String> words = new ArrayList<>();
            words.add((stack.parts().size() > 1 ? "The glued " : "The part ") + stack.name() + " goes on in "
                    + layers(stack) + ".");
            int joints = 0;
            int onSleeves = 0;
            for (Part part : stack.parts()) {
                for (Hole hole : part.holes()) {
                    if (turning.contains(hole.joint()) && rods.add(part.name() + "|" + hole.joint())) {
                        if (sleeved.contains(hole.joint().replaceAll("/.*", "")) && !hole.grips()) {
                            onSleeves++;
                        } else {
                            joints++;
                        }
                        words.add("- " + part.name() + (hole.grips() ? " grips the rod of " : " turns on the rod of ")
                                + hole.joint() + (hole.grips() ? "; a drop of glue on the rod, from behind" : ""));
                    }
                }
            }
            held(stack, standing, words);
            if (stack.parts().size() == 1) {
                weigh(stack, words);
            }
            if (!stack.body().equals(Body.GROUND) && whole(stack, standing)) {
                words.add(
                        "It must move by its own weight before you go on; if it does not, ease the hole, never oil it.");
            }
            steps.add(step(
                    standing.isEmpty() ? "Begin with " + stack.name() : "Put on " + stack.name(),
                    words,
                    List.of(
                            new Work("put-on", 1),
                            new Work("pivot", joints),
                            new Work("sleeve", onSleeves),
                            new Work(
                                    "weight",
                                    stack.parts().size() == 1 ? weights(stack).size() : 0)),
                    GlueUpPictures.of(stack.parts(), standing)));
            standing.addAll(stack.parts());
        }
    }

    /** Whether nothing of its body is still to come. */
    private boolean whole(BuildOrder.Stack stack, List<Part> standing) {
        return assembly.bodies().stream()
                .filter(body -> body.name().equals(stack.body()))
                .flatMap(body -> body.parts().stream())
                .allMatch(part -> standing.contains(part) || stack.parts().contains(part));
    }

    /** The dowels that join it to what stands, or to what of its body is still to come. */
    private void held(BuildOrder.Stack stack, List<Part> standing, List<String> words) {
        if (stack.body().equals(Body.GROUND)) {
            return;
        }
        for (Part part : stack.parts()) {
            for (Hole hole : part.holes()) {
                if (turning.contains(hole.joint()) || !hole.grips()) {
                    continue;
                }
                boolean before = standing.stream().anyMatch(other -> has(other, hole.joint()));
                boolean inside = stack.parts().stream()
                                .filter(other -> has(other, hole.joint()))
                                .count()
                        > 1;
                if (!inside) {
                    words.add("- dowel " + hole.joint() + " of " + part.name()
                            + (before
                                    ? ": glue it to what stands behind it"
                                    : ": the rest of the body is glued to it when that goes on"));
                }
            }
        }
    }

    private static boolean has(Part part, String joint) {
        return part.holes().stream().anyMatch(hole -> hole.joint().equals(joint));
    }

    private static String layers(BuildOrder.Stack stack) {
        return stack.hindmost() == stack.foremost()
                ? "layer " + stack.hindmost()
                : "layers " + stack.hindmost() + " to " + stack.foremost();
    }

    private void tieStrings() {
        for (Link link : assembly.links()) {
            if (link instanceof StringRun string) {
                steps.add(step(
                        "Tie the string " + string.name(),
                        List.of(
                                String.format(
                                        Locale.ROOT,
                                        "Cut %.0f mm of %s: %.1f mm from knot to knot, and %.0f mm at either end to tie it.",
                                        cut(string),
                                        string.cord(),
                                        length(string),
                                        FOR_A_KNOT),
                                "From " + string.fromPart() + " to " + string.toPart()
                                        + ", with the lever up. A figure-eight knot at each end, a drop of glue on it once"
                                        + " the figure has been tried."),
                        List.of(new Work("string", 1)),
                        null));
            }
        }
    }

    /** From knot to knot, taken straight from guide to guide, mm. */
    static double length(StringRun string) {
        double length = string.slack();
        Point last = string.from();
        for (StringRun.Guide guide : string.over()) {
            length += last.distance(guide.at());
            last = guide.at();
        }
        return length + last.distance(string.to());
    }

    /** To cut off the reel, mm. */
    static double cut(StringRun string) {
        return length(string) + 2 * FOR_A_KNOT;
    }

    private void closeCase() {
        if (housing == null) {
            return;
        }
        String how = housing.screwed()
                ? "Put an M3 nut into each nest and draw the panels together with M3 × 12 screws; no glue."
                : "A little glue in each slot; square it against a try square and bind it with tape until it has set.";
        List<String> panels = new ArrayList<>(List.of(
                "The panels carry their numbers inside. Floor (5) into the far wall (2); the ends (3 and 4) onto both; the near"
                        + " wall (1) last.",
                how));
        if (housing.panels().stream().anyMatch(panel -> panel.name().equals(CaseMaker.DOOR))) {
            panels.add(
                    "The door's frame (8) behind the opening of the far wall, the door (7) into it, the button (9) on an M3"
                            + " screw so that it just turns.");
        }
        steps.add(step(
                "The case",
                panels,
                List.of(new Work("case", 1), new Work("panel", housing.panels().size())),
                GlueUpPictures.panels(housing)));
        steps.add(step(
                "The works into the case",
                List.of(
                        String.format(
                                Locale.ROOT,
                                "%d screws M3 × %.0f or longer through the near wall, the front, a spacer (%.1f mm) and the"
                                        + " back of the works, a washer and a nut behind. No glue there; try dry first whether they come out"
                                        + " again.",
                                housing.spacers().size(),
                                Math.ceil(housing.screwLength()),
                                housing.spacerLength()),
                        "Pass the lever through the right end first. Then the lid (6) over the figure, with four screws"
                                + " M3 × 12 into the nuts caught in the walls."),
                List.of(
                        new Work("works-in", 1),
                        new Work("screw", housing.spacers().size() + 4)),
                null));
    }

    private void tryIt() {
        steps.add(step(
                "Try it",
                List.of(
                        "Press the lever without a coin: it must stand fast. Then each coin it takes, ten times over; then"
                                + " with the table tipped by a degree either way.",
                        "Write down every failure with its cause before you change anything."),
                List.of(new Work("try", 1)),
                null));
    }

    private static String joined(List<Part> parts) {
        return String.join(
                ", ",
                parts.stream()
                        .map(part -> part.name() + " (layer " + part.layer()
                                + (part.printed() == null ? "" : ", printed") + ")")
                        .toList());
    }
}

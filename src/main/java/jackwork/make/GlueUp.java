package jackwork.make;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.check.Measure;
import jackwork.check.Sentence;
import jackwork.design.Design;
import jackwork.design.Works;
import jackwork.drawing.BookletWriter.Picture;
import jackwork.drawing.BookletWriter.Section;
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

    /** Of glue from a hole that something turns in, mm: common practice, no source. */
    private static final double CLEAR_OF_HOLES = 2;
    /** Left at either end of a string for its knot, mm. */
    static final double FOR_A_KNOT = 80;

    private final Assembly assembly;
    private final @Nullable Case housing;
    private final Minutes minutes;
    private final List<BuildOrder.Stack> order;
    private final List<Dowels.Dowel> dowels;
    /** Names of pins, posts and dowels; mounts, pegs and screws are told elsewhere. */
    private final Set<String> pinned = new LinkedHashSet<>();

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
            List<Sentence> words,
            List<Work> work,
            double minutes,
            @Nullable Picture picture) {

        Section section(int number) {
            return new Section(
                    number + ". " + heading,
                    String.format(Locale.ROOT, "about %.0f min", minutes),
                    words.stream().map(Sentence::toString).toList(),
                    picture);
        }
    }

    private GlueUp(Design design, Assembly assembly, @Nullable Case housing) {
        this.assembly = assembly;
        this.housing = housing;
        this.minutes = new Minutes(design.workshop());
        this.sleeved = sleeved(design);
        this.order = BuildOrder.of(assembly);
        pinned.addAll(design.box().works().pins().keySet());
        pinned.addAll(design.figure().works().pins().keySet());
        this.dowels = Dowels.of(design, assembly);
        assembly.pins().forEach(pin -> turning.add(pin.name().replaceAll("/.*", "")));
        if (!design.figure().works().mounts().isEmpty()) {
            turning.addAll(design.figure().works().mounts().keySet());
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

    private Step step(String heading, List<Sentence> words, List<Work> work, @Nullable Picture picture) {
        List<Work> some = work.stream().filter(w -> w.count() > 0).toList();
        return new Step(heading, words, some, minutes.of(some), picture);
    }

    private static Set<String> sleeved(Design design) {
        Set<String> names = new LinkedHashSet<>();
        for (Works works : List.of(design.box().works(), design.figure().works())) {
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
                        say("Lay the parts out by layer, back to front, and hold them against the parts list."
                                + " Wipe off soot, ease the edges that will slide, and leave bare wood"
                                + " wherever something is glued."),
                        say("Cut all rods to the lengths in dowels.csv and round their ends a little."),
                        say("Try one rod in a hole it must grip and in one it must turn in before any glue.")),
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
        List<Sentence> words = new ArrayList<>();
        List<Part> cut =
                stack.parts().stream().filter(part -> part.printed() == null).toList();
        boolean anyPrinted = cut.size() < stack.parts().size();
        words.add(say(
                "From the back: {}.{}",
                joined(stack.parts()),
                anyPrinted ? " What is printed comes as one piece; only the rest is glued to it." : ""));
        List<Dowels.Dowel> through = dowelsOf(stack);
        for (Dowels.Dowel dowel : through) {
            words.add(say(
                    "- {}: {}, {}, glued through all its layers",
                    dowel.name(),
                    dowel.rod(),
                    mm(dowel.length()).to(1)));
        }
        weigh(stack, words);
        words.add(say(
                "Put the hindmost on the sheet of jigs, its rods upright in it; spread glue thinly, keep it {} from"
                        + " every hole that something turns in; press flat under a weight until it has set.",
                mm(CLEAR_OF_HOLES).to(0)));
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
            if (RodsGlued.holders(stack, dowel.name()) > 1 && !turning.contains(dowel.name())) {
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

    private void weigh(BuildOrder.Stack stack, List<Sentence> words) {
        for (Lump lump : weights(stack)) {
            words.add(say(
                    "- weight {}: {}{}, its middle {} right of and {} above the box's origin",
                    lump.name(),
                    lump.kind().equals("mass") ? "" : lump.kind() + ", together ",
                    Measure.of(lump.mass(), "g").to(1),
                    mm(lump.at().x()).to(1),
                    mm(lump.at().y()).to(1)));
        }
    }

    private void putTogether() {
        List<Part> standing = new ArrayList<>();
        Set<String> rods = new LinkedHashSet<>();
        for (BuildOrder.Stack stack : order) {
            List<Sentence> words = new ArrayList<>();
            String which = stack.parts().size() > 1 ? "The glued" : "The part";
            words.add(say("{} {} goes on in {}.", which, stack.name(), layers(stack)));
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
                        String how = hole.grips()
                                ? "- {} grips the rod of {}; a drop of glue on the rod, from" + " behind"
                                : "- {} turns on the rod of {}";
                        words.add(say(how, part.name(), hole.joint()));
                    }
                }
            }
            RodsGlued.Told rodsGlued = RodsGlued.of(stack, standing, order, turning, pinned);
            words.addAll(rodsGlued.words());
            if (stack.parts().size() == 1) {
                weigh(stack, words);
            }
            if (!stack.body().equals(Body.GROUND) && whole(stack, standing)) {
                words.add(say("It must move by its own weight before you go on; if it does not, ease the hole,"
                        + " never oil it."));
            }
            steps.add(step(
                    standing.isEmpty() ? "Begin with " + stack.name() : "Put on " + stack.name(),
                    words,
                    List.of(
                            new Work("put-on", 1),
                            new Work("pivot", joints),
                            new Work("sleeve", onSleeves),
                            new Work("rod-glue", rodsGlued.glued()),
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
                                say(
                                        "Cut {} of {}: {} from knot to knot, and {} at either end to tie it.",
                                        mm(cut(string)).to(0),
                                        string.cord(),
                                        mm(string.length()).to(1),
                                        mm(FOR_A_KNOT).to(0)),
                                say(
                                        "From {} to {}, with the lever up. A figure-eight knot at each end, a drop"
                                                + " of glue on it once the figure has been tried.",
                                        string.fromPart(),
                                        string.toPart())),
                        List.of(new Work("string", 1)),
                        null));
            }
        }
    }

    /** To cut off the reel, mm. */
    static double cut(StringRun string) {
        return string.length() + 2 * FOR_A_KNOT;
    }

    private void closeCase() {
        if (housing == null) {
            return;
        }
        Sentence how = housing.screwed()
                ? say("Put an M3 nut into each nest and draw the panels together with M3 × 12 screws; no glue.")
                : say("A little glue in each slot; square it against a try square and bind it with tape until it"
                        + " has set.");
        List<Sentence> panels = new ArrayList<>(List.of(
                say("The panels carry their numbers inside. Floor (5) into the far wall (2); the ends"
                        + " (3 and 4) onto both; the near wall (1) last."),
                how));
        if (housing.panels().stream().anyMatch(panel -> panel.name().equals(CaseMaker.DOOR))) {
            panels.add(say("The door's frame (8) behind the opening of the far wall, the door (7) into it, the"
                    + " button (9) on an M3 screw so that it just turns."));
        }
        steps.add(step(
                "The case",
                panels,
                List.of(new Work("case", 1), new Work("panel", housing.panels().size())),
                GlueUpPictures.panels(housing)));
        steps.add(step(
                "The works into the case",
                List.of(
                        say(
                                "{} screws M3 × {} or longer through the near wall, the front, a spacer ({}) and"
                                        + " the back of the works, a washer and a nut behind. No glue there; try dry"
                                        + " first whether they come out again.",
                                housing.spacers().size(),
                                // A screw goes by its millimetres everywhere.
                                (int) Math.ceil(housing.screwLength()),
                                mm(housing.spacerLength()).to(1)),
                        say("Pass the lever through the right end first. Then the lid (6) over the figure, with"
                                + " four screws M3 × 12 into the nuts caught in the walls.")),
                List.of(
                        new Work("works-in", 1),
                        new Work("screw", housing.spacers().size() + 4)),
                null));
    }

    private void tryIt() {
        steps.add(step(
                "Try it",
                List.of(
                        say("Press the lever without a coin: it must stand fast. Then each coin it takes, ten"
                                + " times over; then with the table tipped by a degree either way."),
                        say("Write down every failure with its cause before you change anything.")),
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

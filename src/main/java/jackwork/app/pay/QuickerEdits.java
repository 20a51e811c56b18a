package jackwork.app.pay;

import jackwork.app.core.DesignCheck;
import jackwork.check.Finding;
import jackwork.check.Status;
import jackwork.check.Subject;
import jackwork.design.Design;
import jackwork.design.DesignEdit;
import jackwork.design.DesignException;
import jackwork.design.DesignReader;
import jackwork.make.GluedStack;
import jackwork.make.MakeException;
import jackwork.make.Quantities;
import jackwork.motion.model.MechanismException;
import jackwork.parts.PartException;
import jackwork.price.Batch;
import jackwork.price.Edited;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Quicker ways of making that are edits of the design: read as edited, and asked every question again where wished. Each
 * is held against the design as it is by a batch of either, each piece of it from sheets of its own: a tight layout of each
 * would take seconds to settle cents.
 */
final class QuickerEdits {

    private static final int MOST_STACKS = 3;
    /** A sleeve's outside on a usual rod, mm. */
    private static final String SLEEVE = "6";

    private final Path path;
    private final Design design;
    private final Consumer<String> talk;
    private final int pieces;
    private final Quantities now;
    private final List<Edited> edits = new ArrayList<>();

    /** @param pieces of a batch */
    QuickerEdits(Path path, Design design, int pieces, Consumer<String> talk) {
        this.path = path;
        this.design = design;
        this.pieces = pieces;
        this.talk = talk;
        this.now = laid(design);
        now.stacks().stream()
                .sorted(Comparator.comparingInt(
                                (GluedStack stack) -> -stack.parts().size())
                        .thenComparing(GluedStack::name))
                .limit(MOST_STACKS)
                .forEach(stack -> printed(stack).ifPresent(edits::add));
        pivots(now.pivots()).ifPresent(edits::add);
    }

    /** As far as they can be made; their findings not run. */
    List<Edited> all() {
        return List.copyOf(edits);
    }

    private Optional<Edited> printed(GluedStack stack) {
        Map<String, String> change = new LinkedHashMap<>();
        String works = stack.ofBox() ? "box" : "figure";
        stack.parts().forEach(part -> change.put(works + ".parts." + part + ".printed", stack.name() + "-printed"));
        return edited(
                "printed-" + stack.name(),
                "Print " + stack.name() + " in one",
                "Its " + stack.parts().size() + " layers come from the printer as one piece: no dowels, no glue.",
                "print-hours",
                change);
    }

    /** All pivots at once where that can be made, else those that can. */
    private Optional<Edited> pivots(List<String> pivots) {
        if (pivots.isEmpty()) {
            return Optional.empty();
        }
        Optional<Edited> all = sleeved(pivots);
        if (all.isPresent()) {
            return all;
        }
        List<String> possible =
                pivots.stream().filter(pivot -> reads(sleeves(List.of(pivot)))).toList();
        return possible.isEmpty() || possible.size() == pivots.size() ? Optional.empty() : sleeved(possible);
    }

    private Optional<Edited> sleeved(List<String> pivots) {
        return edited(
                "printed-pivots",
                "Printed pivots",
                "A printed sleeve of " + SLEEVE + " mm on " + pivots.size()
                        + " pivots: parts turn without being eased one by one.",
                "sleeve-hours",
                sleeves(pivots));
    }

    private static Map<String, String> sleeves(List<String> pivots) {
        Map<String, String> change = new LinkedHashMap<>();
        pivots.forEach(pivot -> change.put(pivot + ".shoulder", SLEEVE));
        return change;
    }

    private boolean reads(Map<String, String> change) {
        try {
            Subject.of(read(change));
            return true;
        } catch (DesignException | PartException | MechanismException e) {
            return false;
        }
    }

    private Design read(Map<String, String> change) {
        return DesignReader.read(path, DesignEdit.withWords(DesignReader.text(path), change));
    }

    private Optional<Edited> edited(String id, String name, String words, String hours, Map<String, String> change) {
        try {
            Design other = read(change);
            Batch taken = batch(laid(other), other);
            return Optional.of(new Edited(id, name, words, batch(now, design), taken, hours, change, null, List.of()));
        } catch (DesignException | PartException | MechanismException | MakeException e) {
            talk.accept(name + ": cannot be made so: " + e.getMessage());
            return Optional.empty();
        }
    }

    private Quantities laid(Design of) {
        return Quantities.roughly(of, pieces);
    }

    private static Batch batch(Quantities taken, Design of) {
        return Pricing.batch(taken, of.workshop());
    }

    /**
     * The same with every question asked of them again.
     *
     * @param told what is being asked, before each
     * @throws InterruptedException when the thread is interrupted
     */
    List<Edited> again(Consumer<String> told) throws InterruptedException {
        told.accept("every question of the design as it is");
        List<Finding> before = DesignCheck.of(design).findings();
        List<Edited> asked = new ArrayList<>();
        for (Edited edit : edits) {
            if (Thread.interrupted()) {
                throw new InterruptedException();
            }
            told.accept("every question again: " + edit.name());
            DesignCheck after = DesignCheck.of(read(edit.edit()));
            asked.add(edit.asked(after.verdict(), worse(before, after.findings())));
        }
        return asked;
    }

    /** Findings that pass less well than they did, or are new and do not pass. */
    private static List<String> worse(List<Finding> before, List<Finding> after) {
        Map<String, Status> old = new LinkedHashMap<>();
        before.forEach(finding -> old.put(finding.id(), finding.status()));
        return after.stream()
                .filter(finding -> finding.status().compareTo(old.getOrDefault(finding.id(), Status.PASS)) > 0)
                .map(finding -> finding.id() + ": " + finding.status().word())
                .toList();
    }
}

package jackwork.app;

import jackwork.check.Finding;
import jackwork.check.Status;
import jackwork.design.Design;
import jackwork.design.DesignEdit;
import jackwork.design.DesignException;
import jackwork.design.DesignReader;
import jackwork.make.GluedStack;
import jackwork.make.PartTooLargeException;
import jackwork.make.Quantities;
import jackwork.motion.MechanismException;
import jackwork.parts.PartException;
import jackwork.price.Edited;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Quicker ways of making that are edits of the design: read as edited, and asked every question again where wished. */
final class QuickerEdits {

    private static final int MOST_STACKS = 3;
    /** A sleeve's outside on a usual rod, mm. */
    private static final String SLEEVE = "6";

    private final Path path;
    private final Design design;
    private final int quantity;
    private final boolean again;
    private final Consumer<String> talk;
    private @Nullable DesignCheck before;

    QuickerEdits(Path path, Design design, int quantity, boolean again, Consumer<String> talk) {
        this.path = path;
        this.design = design;
        this.quantity = quantity;
        this.again = again;
        this.talk = talk;
    }

    List<Edited> of(Quantities quantities) {
        List<Edited> edits = new ArrayList<>();
        quantities.stacks().stream()
                .sorted(Comparator.comparingInt(
                                (GluedStack stack) -> -stack.parts().size())
                        .thenComparing(GluedStack::name))
                .limit(MOST_STACKS)
                .forEach(stack -> printed(stack).ifPresent(edits::add));
        pivots(quantities).ifPresent(edits::add);
        return edits;
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
    private Optional<Edited> pivots(Quantities quantities) {
        Map<String, String> all = sleeves(quantities.pivots());
        if (all.isEmpty()) {
            return Optional.empty();
        }
        Map<String, String> possible = reads(all)
                ? all
                : sleeves(quantities.pivots().stream()
                        .filter(pivot -> reads(sleeves(List.of(pivot))))
                        .toList());
        return possible.isEmpty()
                ? Optional.empty()
                : edited(
                        "printed-pivots",
                        "Printed pivots",
                        "A printed sleeve of " + SLEEVE + " mm on " + possible.size()
                                + " pivots: parts turn without being eased one by one.",
                        "sleeve-hours",
                        possible);
    }

    private static Map<String, String> sleeves(List<String> pivots) {
        Map<String, String> change = new LinkedHashMap<>();
        pivots.forEach(pivot -> change.put(pivot + ".shoulder", SLEEVE));
        return change;
    }

    private boolean reads(Map<String, String> change) {
        try {
            Quantities.of(read(change), 1);
            return true;
        } catch (DesignException | PartException | PartTooLargeException | MechanismException e) {
            return false;
        }
    }

    private Design read(Map<String, String> change) {
        return DesignReader.read(path, DesignEdit.withWords(DesignReader.text(path), change));
    }

    private Optional<Edited> edited(String id, String name, String words, String hours, Map<String, String> change) {
        try {
            Design other = read(change);
            Quantities taken = Quantities.of(other, quantity);
            String verdict = null;
            List<String> worse = List.of();
            if (again) {
                talk.accept("every question again: " + name);
                DesignCheck after = DesignCheck.of(other);
                verdict = after.verdict();
                worse = worse(before().findings(), after.findings());
            }
            return Optional.of(
                    new Edited(id, name, words, Pricing.batch(taken, other.workshop()), hours, change, verdict, worse));
        } catch (DesignException | PartException | PartTooLargeException | MechanismException e) {
            talk.accept(name + ": cannot be made so: " + e.getMessage());
            return Optional.empty();
        }
    }

    private DesignCheck before() {
        if (before == null) {
            before = DesignCheck.of(design);
        }
        return before;
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

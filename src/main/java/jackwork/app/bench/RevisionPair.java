package jackwork.app.bench;

import jackwork.app.core.ChangedPart;
import jackwork.app.core.DesignCheck;
import jackwork.app.wire.Payload;
import jackwork.design.Design;
import jackwork.design.DesignException;
import jackwork.make.MakeException;
import jackwork.motion.model.MechanismException;
import jackwork.parts.Assembler;
import jackwork.parts.Part;
import jackwork.parts.PartException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Two states of a design beside each other.
 *
 * @param before number of its revision
 * @param after 0 for the design as it stands
 * @param verdictBefore of the two, {@code works}, {@code doubtful} or {@code fails}; empty where there is {@code trouble}
 * @param verdictAfter the same
 * @param parts that differ, by the numbers in the pictures
 * @param trouble why they cannot be checked
 */
record RevisionPair(
        String design,
        int before,
        int after,
        String verdictBefore,
        String verdictAfter,
        List<ChangedPart> parts,
        List<ChangedFile> files,
        List<MovedFinding> findings,
        String trouble)
        implements Payload {

    /** @param how {@code new}, {@code gone}, {@code changed}, {@code worded otherwise} */
    record ChangedFile(String file, String how, List<UseView.ChangedValue> values) {}

    static RevisionPair of(
            String id, int before, int after, Design then, Design now, List<RevisionDifference> differences) {
        List<ChangedFile> files = differences.stream().map(RevisionPair::file).toList();
        try {
            List<ChangedPart> parts = ChangedPart.between(parts(then), parts(now));
            DesignCheck old = DesignCheck.of(then);
            DesignCheck fresh = DesignCheck.of(now);
            List<MovedFinding> findings = MovedFinding.of(UseMeasured.moved(old, fresh));
            return new RevisionPair(id, before, after, old.verdict(), fresh.verdict(), parts, files, findings, "");
        } catch (DesignException | MechanismException | PartException | MakeException e) {
            return new RevisionPair(
                    id, before, after, "", "", List.of(), files, List.of(), String.valueOf(e.getMessage()));
        }
    }

    private static List<Part> parts(Design design) {
        return Assembler.assemble(design).parts();
    }

    private static ChangedFile file(RevisionDifference difference) {
        List<UseView.ChangedValue> values = new ArrayList<>();
        difference
                .values()
                .forEach(value -> values.add(new UseView.ChangedValue(
                        value.path(),
                        Objects.requireNonNullElse(value.before(), ""),
                        Objects.requireNonNullElse(value.after(), ""))));
        return new ChangedFile(difference.file(), difference.how(), values);
    }
}

package jackwork.make;

import jackwork.check.Finding;
import jackwork.check.Subject;
import jackwork.design.Design;
import jackwork.design.WorkshopFile;
import jackwork.drawing.CutSheet;
import jackwork.parts.Assembly;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** All that one piece of a design is made of, and how: before anything is laid out on sheets. */
public final class Makings {

    private final Design design;
    private final Subject subject;
    private final @Nullable Case housing;
    /** Made when first asked for. */
    private @Nullable List<PrintedPiece> printed;

    private @Nullable List<GlueUp.Step> steps;

    private Makings(Design design) {
        this.design = design;
        this.subject = Subject.of(design);
        this.housing = Case.of(design, subject);
    }

    /** @throws jackwork.motion.model.MechanismException when the lever does not decide where every part is */
    public static Makings of(Design design) {
        return new Makings(design);
    }

    public Design design() {
        return design;
    }

    public WorkshopFile workshop() {
        return design.workshop();
    }

    public Subject subject() {
        return subject;
    }

    public Assembly assembly() {
        return subject.assembly();
    }

    /** Null when the box has none. */
    @Nullable
    Case housing() {
        return housing;
    }

    /** Whether it can be made. */
    public List<Finding> findings() {
        return MakeQuestions.ask(design, subject);
    }

    public synchronized List<PrintedPiece> printed() {
        List<PrintedPiece> made = printed == null ? PrintedPiece.of(design, assembly(), housing) : printed;
        printed = made;
        return made;
    }

    /** The glue-up, in order. */
    public synchronized List<GlueUp.Step> steps() {
        List<GlueUp.Step> made = steps == null ? GlueUp.of(design, assembly(), housing) : steps;
        steps = made;
        return made;
    }

    /** Every rod to be cut. */
    public List<Dowels.Dowel> dowels() {
        return Dowels.of(design, assembly());
    }

    /** Everything to be cut for one piece: parts of box and figure, panels of the case, the transit lock. */
    List<FlatPiece> pieces() {
        List<FlatPiece> pieces = new ArrayList<>();
        assembly().parts().stream()
                .filter(part -> part.printed() == null)
                .forEach(part -> pieces.add(FlatPiece.of(part)));
        if (housing != null) {
            pieces.addAll(housing.pieces());
            FlatPiece lock = TransitLock.of(assembly(), housing);
            if (lock != null) {
                pieces.add(lock);
            }
        }
        return pieces;
    }

    /** Names of the sheets that its pieces are cut from. */
    public List<String> stocks() {
        return pieces().stream().map(FlatPiece::stock).distinct().toList();
    }

    /** Pieces to cut before all others, one page for each stock, their cuts in order. */
    public List<CutSheet> testPieces() {
        return TestPieces.sheets(stocks(), workshop()).stream()
                .map(piece ->
                        CutPlan.of(piece, workshop().laser().speedsOrGuess()).sheet())
                .toList();
    }
}

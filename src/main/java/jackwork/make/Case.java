package jackwork.make;

import jackwork.check.Subject;
import jackwork.design.CaseEntry;
import jackwork.design.Design;
import jackwork.geometry.Circle;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.parts.Assembly;
import jackwork.parts.Layers;
import jackwork.parts.Sleeve;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The case around the works: panels that slot together, with an opening for everything that goes through them.
 *
 * @param stock of all panels
 * @param panels where they stand
 * @param spacers columns that hold the plates of the works apart, where the screws go through; x and y
 * @param spacerLength mm
 * @param screwLength needed from the near wall's face to the nut behind the works, mm
 * @param screwed whether caught nuts hold the panels, not glue
 * @param caughtNuts how many nuts the panels catch
 * @param looseScrews how many more short screws there are, each with a nut of its own
 */
record Case(
        String stock,
        List<Panel> panels,
        List<Point> spacers,
        double spacerLength,
        double screwLength,
        boolean screwed,
        int caughtNuts,
        int looseScrews) {

    /** The screw thread used all over, and the hole it passes, mm (ISO 273, medium fit 3.4). */
    static final double SCREW = 3;

    static final double SCREW_HOLE = 3.4;
    /** Outside of the printed columns between the plates, mm. */
    static final double SPACER = 8;
    /** Bore of the columns: the screw passes with play, mm. */
    static final double SPACER_BORE = 3.4;

    /**
     * @return null when the box has none
     * @throws CaseException when its panels would fall apart
     */
    static @Nullable Case of(Design design, Subject subject) {
        CaseEntry entry = design.box().housing();
        if (entry == null) {
            return null;
        }
        return new CaseMaker(design, entry, subject).make();
    }

    /** One column. */
    Sleeve spacer() {
        return new Sleeve(SPACER, SPACER_BORE, spacerLength);
    }

    /** The panels as they lie under the beam. */
    List<FlatPiece> pieces() {
        return panels.stream().map(panel -> panel.piece(stock)).toList();
    }

    /** Where the works stand in the case: the plates that the screws go through. */
    static double[] betweenPlates(Assembly assembly, List<Point> screws) {
        Layers layers = Layers.of(assembly.parts());
        double[] room = {0, layers.total()};
        for (Point screw : screws) {
            for (var part : assembly.body(0).parts()) {
                if (part.ofBox() && Outline.of(part.drawn().outer()).contains(screw)) {
                    if (layers.front(part.layer()) < layers.total() / 2) {
                        room[0] = Math.max(room[0], layers.front(part.layer()));
                    } else {
                        room[1] = Math.min(room[1], layers.back(part.layer()));
                    }
                }
            }
        }
        return room;
    }

    static Circle screwHole(Point at) {
        return new Circle(at, SCREW_HOLE / 2);
    }
}

package jackwork.parts;

import jackwork.design.Design;
import jackwork.design.Named;
import jackwork.design.PartEntry;
import jackwork.design.Works;
import jackwork.design.WorkshopFile;
import java.util.List;

/** What the holes of a design are bored for, after the workshop's rods and fits. */
final class Bores {

    private Bores() {}

    /** In a part, for a rod. */
    static Bore on(Design design, String part, String rod, boolean grips) {
        double diameter = Named.in(design.workshop().rods(), rod).diameter().value();
        return new Bore(rod, diameter, fit(design, grips), grips, isPrinted(design, part));
    }

    /** In a part that turns on a printed shoulder. */
    static Bore onShoulder(Design design, String part, double shoulder) {
        return new Bore(null, shoulder, fit(design, false), false, isPrinted(design, part));
    }

    /** In a part that a printed eyelet is pressed into. */
    static Bore forEyelet(Design design, String part, double eyelet) {
        return new Bore(null, eyelet, fit(design, true), true, isPrinted(design, part));
    }

    private static double fit(Design design, boolean grips) {
        WorkshopFile.Fits fits = design.workshop().fits();
        return (grips ? fits.press() : fits.running()).value();
    }

    private static boolean isPrinted(Design design, String part) {
        for (Works works : List.of(design.box().works(), design.figure().works())) {
            PartEntry entry = works.parts().get(part);
            if (entry != null) {
                return entry.printed() != null;
            }
        }
        // The box itself, which nobody prints.
        return false;
    }
}

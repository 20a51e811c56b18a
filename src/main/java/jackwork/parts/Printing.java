package jackwork.parts;

import jackwork.design.WorkshopFile;
import jackwork.stock.SheetKind;
import jackwork.stock.SheetStrength;
import jackwork.stock.Uncertain;

/** Printed parts as the engine sees them: as thick as the sheet whose layer they fill, but of another density. */
final class Printing {

    /** The word that friction pairs use for it. */
    static final String SURFACE = "printed";

    private Printing() {}

    static SheetKind kind(WorkshopFile workshop) {
        return new SheetKind(
                "printed",
                "printed plastic",
                SURFACE,
                workshop.printerOrGuess().density(),
                false,
                "0.1",
                SheetStrength.printed(),
                "printed solid");
    }

    /** As drawn, give or take what both faces come out off. */
    static Uncertain thickness(WorkshopFile workshop, WorkshopFile.SheetEntry sheet) {
        double value = sheet.thickness().value();
        Uncertain off = workshop.printerOrGuess().off();
        return new Uncertain(
                value + 2 * off.value(),
                value + 2 * off.low(),
                value + 2 * off.high(),
                "mm",
                off.basis(),
                off.source());
    }
}

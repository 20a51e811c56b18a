package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.design.CaseEntry;
import jackwork.design.Named;
import jackwork.design.WorkshopFile;
import java.util.Comparator;
import java.util.List;

/** The case's walls, floor and lid can be cut in one piece from the sheets in store, on this machine's bed. */
final class CaseFitsSheet implements Question {

    /** @param over how much too long it is, mm; negative where it fits */
    private record Panel(String name, double wide, double high, double over) {}

    @Override
    public boolean appliesTo(Subject subject) {
        return subject.design().box().housing() != null;
    }

    @Override
    public List<Finding> ask(Subject subject) {
        CaseEntry housing = subject.design().box().housing();
        if (housing == null) {
            return List.of();
        }
        WorkshopFile workshop = subject.design().workshop();
        WorkshopFile.SheetEntry sheet = Named.in(workshop.sheets(), housing.stock());
        double walls = 2 * sheet.thickness().value();
        double bare = 2 * workshop.laser().margin();
        double longer = usable(workshop, sheet, true) - bare;
        double shorter = usable(workshop, sheet, false) - bare;
        return List.of(
                        panel("long wall", housing.width() + walls, housing.height() + walls, longer, shorter),
                        panel("end", housing.depth() + walls, housing.height() + walls, longer, shorter),
                        panel("lid", housing.width() + walls, housing.depth() + walls, longer, shorter))
                .stream()
                .max(Comparator.comparingDouble(Panel::over))
                .map(panel -> finding(panel, housing.stock(), longer, shorter))
                .stream()
                .toList();
    }

    private static double usable(WorkshopFile workshop, WorkshopFile.SheetEntry sheet, boolean longer) {
        List<Double> bed = workshop.laser().bed();
        List<Double> size = sheet.size();
        return longer
                ? Math.min(Math.max(bed.get(0), bed.get(1)), Math.max(size.get(0), size.get(1)))
                : Math.min(Math.min(bed.get(0), bed.get(1)), Math.min(size.get(0), size.get(1)));
    }

    private static Panel panel(String name, double wide, double high, double longer, double shorter) {
        double over = Math.max(Math.max(wide, high) - longer, Math.min(wide, high) - shorter);
        return new Panel(name, wide, high, over);
    }

    private static Finding finding(Panel panel, String stock, double longer, double shorter) {
        boolean fits = panel.over() <= 0;
        Sentence size = say("{} × {}", mm(panel.wide()).bare(), mm(panel.high()));
        return Finding.ask(Topic.CASE_FITS_SHEET, say("Can every panel of the case be cut from one sheet?"))
                .answer(fits ? Status.PASS : Status.FAIL, panel.over(), 0.0, -panel.over(), "mm")
                .at(new Where("case", null, null))
                .because(
                        say(
                                "the {} is at least {}{}{} {}{}",
                                panel.name(),
                                size,
                                (fits ? " and leaves " : " and is "),
                                mm(Math.abs(panel.over())),
                                (fits ? "of " : "larger than "),
                                stock),
                        fits
                                ? Sentence.NOTHING
                                : say("Make the case smaller, or take a larger sheet and a machine that cuts it."),
                        size + " without tabs; sheet and bed give " + Words.number(longer) + " × "
                                + Words.number(shorter) + " mm within their bare edge");
    }
}

package jackwork.design;

import jackwork.drawing.Paper;
import jackwork.drawing.Pens;
import jackwork.stock.Basis;
import jackwork.stock.Uncertain;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** {@code workshop.yaml}: machines, stock and the workshop's own numbers. */
@About("A workshop: its laser, sheets, rods, fits, friction, finger, times and money.")
public record WorkshopFile(
        int format,
        @About("What it is called.") String name,
        @About("Three letters, as EUR.") String currency,
        Laser laser,
        @About("By the names that designs use for them.") Map<String, SheetEntry> sheets,
        @About("By the names that designs use for them.") Map<String, RodEntry> rods,
        @About("By the names that designs use for them.") Map<String, CordEntry> cords,
        Fits fits,

        @About("Pairs measured here; the catalogue's values serve for the rest.")
        List<FrictionEntry> friction,

        Finger finger,
        @Nullable PrinterEntry printer,
        @Nullable HandlingEntry handling,

        @About("What is on the shelf, by the names of the shopping list, in its units.")
        Map<String, Double> have,

        @About("In the paper printer: A4, A3 or Letter.") @Nullable
        String paper,

        @About("Who makes it, for the label; a line to fill in when absent.") @Nullable
        String maker,

        @About("Where the maker is found, for the label; a line to fill in when absent.") @Nullable
        String contact,

        @About("Minutes for one of an operation; guessed where absent.") @Unit("min")
        Map<String, Uncertain> times,

        @Nullable PayEntry pay) {

    /** A sheet differs so much from place to place after it was measured, mm: a guess. */
    private static final double CALLIPER = 0.05;

    /** The machine that cuts. */
    public record Laser(
            @About("Width and height that it can cut.") @Unit("mm")
            List<Double> bed,

            @About("Width of the cut.") @Unit("mm") Uncertain kerf,

            @About("Bare edge kept on every sheet.") @Unit("mm")
            double margin,

            @About("Between parts.") @Unit("mm") double gap,
            @Nullable SpeedsEntry speeds,

            @About(
                    "How lines are drawn, by engrave, inside, outside and marks: for a machine that goes by colour or width.")
            Map<String, PenEntry> lines) {

        /** How each kind of line is drawn in the files: the workshop's choice, ours for the rest. */
        public Pens pensOrStandard() {
            Pens pens = Pens.standard();
            return new Pens(
                    pen("engrave", pens.engrave()),
                    pen("inside", pens.inside()),
                    pen("outside", pens.outside()),
                    pen("marks", pens.mark()));
        }

        private Pens.Pen pen(String kind, Pens.Pen usual) {
            PenEntry entry = lines.get(kind);
            return entry == null
                    ? usual
                    : new Pens.Pen(Integer.parseInt(entry.colour().substring(1), 16), entry.width());
        }

        /** What the workshop says, else guesses. */
        public Speeds speedsOrGuess() {
            return Speeds.of(speeds);
        }
    }

    /** How one kind of line is drawn in the files. */
    public record PenEntry(
            @About("As \"#rrggbb\".") String colour,
            @About("Of the line.") @Unit("mm") double width) {}

    /** A sheet in store. */
    public record SheetEntry(
            @About("A sheet of the catalogue.") String kind,
            @About("As measured.") @Unit("mm") Uncertain thickness,

            @About("Width and height as bought.") @Unit("mm")
            List<Double> size) {}

    /** A rod in store. */
    public record RodEntry(
            @About("A rod of the catalogue.") String kind,
            @About("As measured.") @Unit("mm") Uncertain diameter) {}

    /** A cord in store. */
    public record CordEntry(
            @About("As measured.") @Unit("mm") Uncertain diameter,

            @About("Pull at which it breaks or its knot slips.") @Unit("N")
            Uncertain holds) {}

    /** Diametral clearance of a hole on its rod, or of a slot on a tab, mm; negative grips. */
    public record Fits(
            @About("A hole in which its rod turns freely is so much wider.") @Unit("mm")
            Uncertain running,

            @About("A hole that grips its rod is so much wider; negative is narrower.") @Unit("mm")
            Uncertain press,

            @About("A slot into which a sheet's edge goes by hand, and stays, is so much wider.") @Unit("mm") @Nullable
            Uncertain push) {

        private static final Uncertain PUSH =
                new Uncertain(0.05, 0, 0.12, "mm", Basis.GUESS, "common practice, no source");

        /** What the workshop says, else a guess. */
        public Uncertain pushOrGuess() {
            return push == null ? PUSH : push;
        }
    }

    /** How two surfaces rub on each other here. */
    public record FrictionEntry(
            @About("Two materials.") List<String> between,
            @About("Of dry friction.") @Unit("1") Uncertain coefficient) {}

    /** What the workshop says, else guesses. */
    public Printer printerOrGuess() {
        return Printer.of(printer);
    }

    /** The same workshop with sheets as measured, mm, each give or take what a sheet differs from place to place. */
    WorkshopFile withMeasured(Map<String, Double> thickness) {
        Map<String, SheetEntry> measured = new LinkedHashMap<>(sheets);
        thickness.forEach((stock, value) -> measured.computeIfPresent(
                stock,
                (name, entry) -> new SheetEntry(
                        entry.kind(),
                        new Uncertain(
                                value, value - CALLIPER, value + CALLIPER, "mm", Basis.MEASURED, "the sheet in hand"),
                        entry.size())));
        return new WorkshopFile(
                format, name, currency, laser, measured, rods, cords, fits, friction, finger, printer, handling, have,
                paper, maker, contact, times, pay);
    }

    /** What the workshop says of money; nothing, when it says nothing. */
    public PayEntry payOrNothing() {
        return pay == null ? PayEntry.NOTHING : pay;
    }

    /** The same workshop with holes, glue and paint as a beginner makes them: they spread so many times as wide. */
    WorkshopFile forBeginner(double times) {
        Fits wider = new Fits(wider(fits.running(), times), wider(fits.press(), times), fits.push());
        Handling usual = handlingOrGuess();
        Uncertain paint = wider(usual.finish(), times);
        HandlingEntry other = new HandlingEntry(
                usual.pressSpeed(),
                usual.dropSpeed(),
                usual.tilt(),
                usual.rebound(),
                usual.coinMass(),
                usual.moisture(),
                new Uncertain(
                        paint.value(),
                        Math.max(0, paint.low()),
                        paint.high(),
                        paint.unit(),
                        Basis.GUESS,
                        paint.source()),
                usual.presses());
        return new WorkshopFile(
                format, name, currency, laser, sheets, rods, cords, wider, friction, finger, printer, other, have,
                paper, maker, contact, times(), pay);
    }

    private static Uncertain wider(Uncertain number, double times) {
        return new Uncertain(
                number.value(),
                number.value() - times * (number.value() - number.low()),
                number.value() + times * (number.high() - number.value()),
                number.unit(),
                Basis.GUESS,
                number.source());
    }

    /** What its printer takes. */
    public Paper paperOrUsual() {
        return paper == null ? Paper.A4 : Paper.named(paper).orElse(Paper.A4);
    }

    /** How coins are dropped and levers pressed here; what the workshop does not say is guessed. */
    public Handling handlingOrGuess() {
        return Handling.of(handling);
    }

    /** Those who press. */
    public record Finger(
            @About("Most force that a visitor should need.") @Unit("N")
            Uncertain comfortable,

            @About("Most force that a child may put on it.") @Unit("N")
            Uncertain strongest) {}
}

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
        @About("Of this file's format.") int format,
        @About("What it is called.") @Text String name,
        @About("Three letters, as EUR.") @Text String currency,
        @About("The machine that cuts.") Laser laser,
        @About("By the names that designs use for them.") Map<String, SheetEntry> sheets,
        @About("By the names that designs use for them.") Map<String, RodEntry> rods,
        @About("By the names that designs use for them.") Map<String, CordEntry> cords,

        @About("How much wider holes and slots are than what goes in.")
        Fits fits,

        @About("Pairs measured here; the catalogue's values serve for the rest.")
        List<FrictionEntry> friction,

        @About("Those who press.") Finger finger,
        @About("What prints small parts.") @Nullable PrinterEntry printer,
        @About("How pieces are used.") @Nullable HandlingEntry handling,

        @About("What is on the shelf, by the names of the shopping list, in its units.")
        @Names(NameKind.GOODS)
        @Quantity(least = 0, most = 1000000, usualTo = 100000, why = "nobody has less than nothing")
        Map<String, Double> have,

        @About("In the paper printer: A4, A3 or Letter.") @OneOf({"A4", "A3", "Letter"}) @Nullable
        String paper,

        @About("Who makes it, for the label; a line to fill in when left out.") @Text(blank = true) @Nullable
        String maker,

        @About("Where the maker is found, for the label; a line to fill in when left out.")
        @Text(blank = true)
        @Nullable
        String contact,

        @About("Minutes for one of an operation; guessed where left out.")
        @Names(NameKind.OPERATION)
        @Quantity(
                unit = "min",
                least = 0,
                most = 10000,
                usualTo = 1000,
                usualSpread = 4,
                mostSpread = 12,
                why = "a working week has some 2,400")
        Map<String, Uncertain> times,

        @About("What it costs and what it brings.") @Nullable
        PayEntry pay) {

    /** A sheet differs so much from place to place after it was measured, mm: a guess. */
    private static final double CALLIPER = 0.05;

    /** The machine that cuts. */
    public record Laser(
            @About("Width and height that it can cut.")
            @Quantity(
                    unit = "mm",
                    least = 30,
                    most = 10000,
                    usualFrom = 60,
                    usualTo = 3000,
                    why = "a laser that stands in a workshop")
            List<Double> bed,

            @About("Width of the cut.")
            @Quantity(
                    unit = "mm",
                    least = 0,
                    most = 1,
                    usualFrom = 0.02,
                    usualTo = 0.5,
                    why = "a beam removes something, and less than the wood it leaves")
            Uncertain kerf,

            @About("Bare edge kept on every sheet.")
            @Quantity(unit = "mm", least = 0, most = 200, usualTo = 30, why = "parts lie on the sheet")
            double margin,

            @About("Between parts.")
            @Quantity(
                    unit = "mm",
                    least = 0,
                    most = 100,
                    usualFrom = 0.5,
                    usualTo = 30,
                    why = "parts do not lie on each other")
            double gap,

            @About("How fast its head moves.") @Nullable SpeedsEntry speeds,

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
            @About("As \"#rrggbb\".") @Text String colour,

            @About("Of the line.")
            @Quantity(
                    unit = "mm",
                    least = 0.001,
                    most = 10,
                    usualFrom = 0.005,
                    usualTo = 1,
                    why = "a line is thin, and still seen")
            double width) {}

    /** A sheet in store. */
    public record SheetEntry(
            @About("A sheet of the catalogue.") @Names(NameKind.SHEET_KIND)
            String kind,

            @About("As measured.")
            @Quantity(
                    unit = "mm",
                    least = 0.1,
                    most = 50,
                    usualFrom = 0.8,
                    usualTo = 12,
                    usualSpread = 0.7,
                    mostSpread = 1.2,
                    why = "a laser cuts it, and a hand feels it")
            Uncertain thickness,

            @About("Width and height as bought.")
            @Quantity(
                    unit = "mm",
                    least = 20,
                    most = 10000,
                    usualFrom = 50,
                    usualTo = 3000,
                    why = "it comes through the door")
            List<Double> size) {}

    /** A rod in store. */
    public record RodEntry(
            @About("A rod of the catalogue.") @Names(NameKind.ROD_KIND)
            String kind,

            @About("As measured.")
            @Quantity(
                    unit = "mm",
                    least = 0.3,
                    most = 30,
                    usualFrom = 1,
                    usualTo = 12,
                    usualSpread = 0.4,
                    mostSpread = 1,
                    why = "it holds, and leaves wood around it")
            Uncertain diameter) {}

    /** A cord in store. */
    public record CordEntry(
            @About("As measured.")
            @Quantity(
                    unit = "mm",
                    least = 0.02,
                    most = 10,
                    usualFrom = 0.1,
                    usualTo = 3,
                    usualSpread = 0.8,
                    mostSpread = 1.6,
                    why = "thinner is no thread, thicker a rope")
            Uncertain diameter,

            @About("Pull at which it breaks or its knot slips.")
            @Quantity(
                    unit = "N",
                    least = 0.5,
                    most = 5000,
                    usualFrom = 5,
                    usualTo = 500,
                    why = "it holds at least its own figure")
            Uncertain holds) {}

    /** Diametral clearance of a hole on its rod, or of a slot on a tab, mm; negative grips. */
    public record Fits(
            @About("A hole in which its rod turns freely is so much wider.")
            @Quantity(
                    unit = "mm",
                    least = 0.01,
                    most = 1.5,
                    usualFrom = 0.05,
                    usualTo = 0.7,
                    why = "a hole that is no wider than its rod does not turn on it; write a clearance, more than 0")
            Uncertain running,

            @About("A hole that grips its rod is so much wider; negative is narrower.")
            @Quantity(
                    unit = "mm",
                    least = -0.6,
                    most = 0.3,
                    usualFrom = -0.3,
                    usualTo = 0.05,
                    why = "tighter splits the wood, wider does not grip")
            Uncertain press,

            @About("A slot into which a sheet's edge goes by hand, and stays, is so much wider.")
            @Quantity(
                    unit = "mm",
                    least = -0.5,
                    most = 1,
                    usualFrom = -0.2,
                    usualTo = 0.4,
                    why = "tighter does not go in, wider does not stay")
            @Nullable
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
            @About("Two materials.") @Text List<String> between,

            @About("Of dry friction.")
            @Quantity(
                    least = 0,
                    most = 3,
                    usualFrom = 0.02,
                    usualTo = 1.2,
                    why = "nothing pushes back less than not at all")
            Uncertain coefficient) {}

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
                notBelowZero(paint),
                usual.presses(),
                notBelowZero(wider(usual.drag(), times)));
        return new WorkshopFile(
                format, name, currency, laser, sheets, rods, cords, wider, friction, finger, printer, other, have,
                paper, maker, contact, times(), pay);
    }

    private static Uncertain notBelowZero(Uncertain number) {
        return new Uncertain(
                number.value(),
                Math.max(0, number.low()),
                number.high(),
                number.unit(),
                number.basis(),
                number.source());
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
            @About("Most force that a visitor should need.")
            @Quantity(unit = "N", least = 0.01, most = 200, usualFrom = 1, usualTo = 30, why = "a finger, not a foot")
            Uncertain comfortable,

            @About("Most force that a child may put on it.")
            @Quantity(
                    unit = "N",
                    least = 1,
                    most = 2000,
                    usualFrom = 10,
                    usualTo = 400,
                    why = "a child leaning on it with all its weight")
            Uncertain strongest) {}
}

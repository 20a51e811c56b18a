package jackwork.design;

import jackwork.drawing.Paper;
import jackwork.drawing.Pens;
import jackwork.stock.Basis;
import jackwork.stock.Uncertain;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * {@code workshop.yaml}: machines, stock and the workshop's own numbers.
 *
 * @param sheets by the names designs use for them
 * @param rods likewise
 * @param have what is on the shelf, by the names of the shopping list, in its units
 * @param friction pairs measured here; the catalogue's values serve for the rest
 * @param paper in the printer, by its name; A4 when absent
 * @param maker for the label of a box; a line to fill in when absent
 * @param contact likewise
 * @param times minutes for one of an operation; guessed where absent
 * @param pay what money depends on; guessed where absent
 */
@About("A workshop: its laser, sheets, rods, fits, friction, finger, times and money.")
public record WorkshopFile(
        int format,
        String name,
        String currency,
        Laser laser,
        Map<String, SheetEntry> sheets,
        Map<String, RodEntry> rods,
        Map<String, CordEntry> cords,
        Fits fits,
        List<FrictionEntry> friction,
        Finger finger,
        @Nullable Printer printer,
        @Nullable Handling handling,
        Map<String, Double> have,
        @Nullable String paper,
        @Nullable String maker,
        @Nullable String contact,
        @Unit("min") Map<String, Uncertain> times,
        @Nullable PayEntry pay) {

    /** A sheet differs so much from place to place after it was measured, mm: a guess. */
    private static final double CALLIPER = 0.05;

    /**
     * @param bed width and height that it can cut, mm
     * @param kerf width of the cut, mm
     * @param margin bare edge kept on every sheet, mm
     * @param gap between parts, mm
     * @param speeds of its head; guessed when absent
     * @param pens how lines are drawn, by {@code engrave}, {@code inside}, {@code outside} and {@code marks}: for a machine
     *     that goes by colour or width
     */
    public record Laser(
            @Unit("mm") List<Double> bed,
            @Unit("mm") Uncertain kerf,
            @Unit("mm") double margin,
            @Unit("mm") double gap,
            @Nullable Speeds speeds,
            Map<String, PenEntry> pens) {

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
            PenEntry entry = pens.get(kind);
            return entry == null
                    ? usual
                    : new Pens.Pen(Integer.parseInt(entry.colour().substring(1), 16), entry.width());
        }

        /** What the workshop says, else guesses. */
        public Speeds speedsOrGuess() {
            return speeds == null ? Speeds.GUESS : speeds;
        }
    }

    /**
     * @param colour as {@code "#rrggbb"}
     * @param width of the line
     */
    public record PenEntry(String colour, @Unit("mm") double width) {}

    /**
     * @param engrave along an engraved line
     * @param cut through this workshop's usual sheets
     * @param travel between lines, beam off
     */
    public record Speeds(
            @Unit("mm/s") Uncertain engrave,
            @Unit("mm/s") Uncertain cut,
            @Unit("mm/s") Uncertain travel) {

        static final Speeds GUESS = new Speeds(guess(80, 40, 160), guess(10, 5, 20), guess(200, 100, 400));

        private static Uncertain guess(double value, double low, double high) {
            return new Uncertain(value, low, high, "mm/s", Basis.GUESS, "common practice, no source");
        }
    }

    /**
     * @param kind a sheet of the catalogue
     * @param thickness as measured, mm
     * @param size width and height as bought, mm
     */
    public record SheetEntry(
            String kind,
            @Unit("mm") Uncertain thickness,
            @Unit("mm") List<Double> size) {}

    /**
     * @param kind a rod of the catalogue
     * @param diameter mm
     */
    public record RodEntry(String kind, @Unit("mm") Uncertain diameter) {}

    /**
     * @param diameter mm
     * @param holds pull at which it breaks or its knot slips, N
     */
    public record CordEntry(
            @Unit("mm") Uncertain diameter, @Unit("N") Uncertain holds) {}

    /**
     * Diametral clearance of a hole on its rod, or of a slot on a tab, mm; negative grips.
     *
     * @param running turns freely
     * @param press grips the rod
     * @param push a sheet's own edge in a slot so much wider: goes in by hand and stays; guessed when absent
     */
    public record Fits(
            @Unit("mm") Uncertain running,
            @Unit("mm") Uncertain press,
            @Unit("mm") @Nullable Uncertain push) {

        private static final Uncertain PUSH =
                new Uncertain(0.05, 0, 0.12, "mm", Basis.GUESS, "common practice, no source");

        /** What the workshop says, else a guess. */
        public Uncertain pushOrGuess() {
            return push == null ? PUSH : push;
        }
    }

    /**
     * @param between two materials
     * @param coefficient of dry friction
     */
    public record FrictionEntry(
            List<String> between, @Unit("1") Uncertain coefficient) {}

    /**
     * What prints small parts, solid throughout.
     *
     * @param bed width, depth and height that it can print
     * @param density of what it prints
     * @param off how far a printed face comes out from where it was drawn
     */
    public record Printer(
            @Unit("mm") List<Double> bed,
            @Unit("g/cm³") Uncertain density,
            @Unit("mm") Uncertain off) {

        static final Printer GUESS = new Printer(
                List.of(180.0, 180.0, 180.0),
                new Uncertain(1.24, 1.18, 1.27, "g/cm³", Basis.GUESS, "PLA printed solid, data sheets, from memory"),
                new Uncertain(0, -0.1, 0.1, "mm", Basis.GUESS, "common practice, no source"));
    }

    /** What the workshop says, else guesses. */
    public Printer printerOrGuess() {
        return printer == null ? Printer.GUESS : printer;
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
        Handling other = new Handling(
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
        return handling == null ? Handling.GUESS : handling;
    }

    /**
     * What happens to a piece in use, and what it is made of that the drawings do not say.
     *
     * @param pressSpeed of the finger on the lever, mm/s
     * @param dropSpeed of the coin when it is let go, mm/s
     * @param tilt of the table in the mechanism's plane, degrees
     * @param rebound share of a coin's approach speed that comes back from wood
     * @param coinMass of coins in circulation as a share of a new one's
     * @param moisture of the wood, percent of its dry mass
     * @param finish paint or varnish on both faces together, g/m²
     * @param presses that a piece has behind it
     */
    public record Handling(
            @Unit("mm/s") Uncertain pressSpeed,
            @Unit("mm/s") Uncertain dropSpeed,
            @Unit("deg") Uncertain tilt,
            @Unit("1") Uncertain rebound,
            @Unit("1") Uncertain coinMass,
            @Unit("%") Uncertain moisture,
            @Unit("g/m²") Uncertain finish,
            @Unit("1") Uncertain presses) {

        static final Handling GUESS = new Handling(
                guess(150, 60, 300, "mm/s"),
                guess(60, 0, 150, "mm/s"),
                guess(0, -1.5, 1.5, "deg"),
                guess(0.3, 0.2, 0.4, "1"),
                guess(0.995, 0.98, 1.005, "1"),
                guess(8, 5, 12, "%"),
                guess(60, 0, 120, "g/m²"),
                guess(1000, 0, 10000, "1"));

        private static Uncertain guess(double value, double low, double high, String unit) {
            return new Uncertain(value, low, high, unit, Basis.GUESS, "common practice, no source");
        }
    }

    /**
     * @param comfortable most force that a visitor should need, N
     * @param strongest most force that a child may put on it, N
     */
    public record Finger(
            @Unit("N") Uncertain comfortable, @Unit("N") Uncertain strongest) {}
}

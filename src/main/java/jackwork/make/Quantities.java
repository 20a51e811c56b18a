package jackwork.make;

import jackwork.check.Subject;
import jackwork.design.Design;
import jackwork.design.WorkshopFile;
import jackwork.parts.Artwork;
import jackwork.parts.Assembly;
import jackwork.parts.Part;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What a batch takes, as numbers: for whoever asks what it costs.
 *
 * @param quantity pieces in the batch; all that follows is for the whole of it, where it does not say otherwise
 * @param sheets as laid out, with the laser's time and what is left of each
 * @param items of the bill, sheets as well, each with its kind
 * @param printedGrams all printed parts
 * @param work by operation
 * @param stacks that are glued up of cut parts
 * @param pivots pins that turn without a sleeve, as {@code box.hip}
 * @param parcel one piece, ready for the post
 */
public record Quantities(
        int quantity,
        List<SheetUse> sheets,
        List<BillItem> items,
        double printedGrams,
        Map<String, Double> work,
        List<GluedStack> stacks,
        List<String> pivots,
        ParcelSize parcel) {

    /** Plates are seldom filled beyond this share. */
    private static final double PLATE_FILLED = 0.5;
    /** A page's printable width and height, mm: what fits A4 and Letter. */
    private static final double PAGE_WIDE = 190;

    private static final double PAGE_HIGH = 250;
    /** The label and the buyer's card go with every piece. */
    private static final int PAGES_BESIDES = 2;

    /** @throws PartTooLargeException when a part does not fit its sheet */
    public static Quantities of(Design design, int quantity) {
        return Pack.quantities(design, quantity);
    }

    /**
     * Soon, for comparing designs: each piece from sheets of its own, not searched for tighter ones; all else as the batch
     * takes it.
     *
     * @throws PartTooLargeException when a part does not fit its sheet
     */
    public static Quantities roughly(Design design, int quantity) {
        return Pack.roughly(design, quantity);
    }

    static Quantities of(
            Design design,
            Subject subject,
            @Nullable Case housing,
            List<PlannedSheet> planned,
            List<Needs.Need> needs,
            List<PrintedPiece> printed,
            int quantity) {
        Assembly assembly = subject.assembly();
        WorkshopFile workshop = design.workshop();
        List<SheetUse> sheets = SheetUse.of(planned, workshop);
        double grams = grams(printed, workshop, quantity);
        Map<String, Double> work = new LinkedHashMap<>();
        work.put("set-up-laser", 1.0);
        work.put("test-pieces", 1.0);
        work.put("load-sheet", (double) sheets.size());
        if (!printed.isEmpty()) {
            work.put("set-up-printer", 1.0);
            work.put("print-bed", bedfuls(printed, workshop, quantity));
            work.put(
                    "clean-print",
                    quantity * printed.stream().mapToDouble(PrintedPiece::each).sum());
        }
        int pages = pages(assembly);
        Artwork artwork = assembly.artwork();
        work.put("print-page", (double) quantity * pages);
        work.put("picture", (double) quantity * artwork.pictures().size());
        work.put("paint-part", (double) quantity * painted(assembly).size());
        work.put("cloth", (double) quantity * artwork.cloths().size());
        work.put("set-up-bench", 1.0);
        for (GlueUp.Step step : GlueUp.of(design, assembly, housing)) {
            step.work().forEach(some -> work.merge(some.operation(), quantity * some.count(), Double::sum));
        }
        work.put("pack", (double) quantity);
        work.values().removeIf(count -> count == 0);
        List<BillItem> items = BillItem.of(design, assembly, planned, needs, pages, quantity);
        Parcel parcel = Parcel.of(subject, housing);
        return new Quantities(
                quantity,
                sheets,
                items,
                grams,
                work,
                GluedStack.of(assembly),
                pivots(design, assembly),
                new ParcelSize(
                        parcel.width() + 2 * Parcel.PADDING,
                        parcel.depth() + 2 * Parcel.PADDING,
                        parcel.height() + 2 * Parcel.PADDING,
                        parcel.posted()));
    }

    /** Cut parts with a finish and no picture over it. */
    static List<Part> painted(Assembly assembly) {
        List<String> pictured = assembly.artwork().pictures().stream()
                .map(Artwork.PartPicture::part)
                .toList();
        return assembly.parts().stream()
                .filter(part -> part.paint() != null && !pictured.contains(part.name()))
                .toList();
    }

    private static int pages(Assembly assembly) {
        double pages = PAGES_BESIDES;
        for (Artwork.PartPicture picture : assembly.artwork().pictures()) {
            for (Part part : assembly.parts()) {
                if (part.name().equals(picture.part())) {
                    var size = part.drawn().bounds();
                    pages += Math.ceil((size.width() + 2 * picture.bleed()) / PAGE_WIDE)
                            * Math.ceil((size.height() + 2 * picture.bleed()) / PAGE_HIGH);
                }
            }
        }
        return (int) pages;
    }

    private static double grams(List<PrintedPiece> printed, WorkshopFile workshop, int quantity) {
        double volume = printed.stream()
                .mapToDouble(piece -> piece.each() * piece.mesh().volume())
                .sum();
        return quantity * volume * workshop.printerOrGuess().density().value() / 1000;
    }

    private static double bedfuls(List<PrintedPiece> printed, WorkshopFile workshop, int quantity) {
        List<Double> bed = workshop.printerOrGuess().bed();
        double area = 0;
        for (PrintedPiece piece : printed) {
            double[] size = piece.size();
            area += piece.each() * size[0] * size[1];
        }
        return Math.ceil(quantity * area / (PLATE_FILLED * bed.get(0) * bed.get(1)));
    }

    private static List<String> pivots(Design design, Assembly assembly) {
        List<String> pivots = new ArrayList<>();
        assembly.pins().stream()
                .map(pin -> pin.name().replaceAll("/.*", ""))
                .distinct()
                .forEach(name -> {
                    var box = design.box().works().pins().get(name);
                    var figure = design.figure().works().pins().get(name);
                    if (box != null && box.shoulder() == null) {
                        pivots.add("box.pins." + name);
                    } else if (figure != null && figure.shoulder() == null) {
                        pivots.add("figure.pins." + name);
                    }
                });
        return pivots;
    }
}

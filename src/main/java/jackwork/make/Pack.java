package jackwork.make;

import jackwork.design.Design;
import jackwork.design.WorkshopFile;
import jackwork.drawing.Paper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/**
 * What a maker takes to the laser, the printer, the bench and the post: all that one design needs to be made, for a number
 * of pieces, laid out on sheets.
 */
public final class Pack {

    /**
     * @param quantity pieces
     * @param paper in the printer
     * @param search for tight sheets
     */
    public record Wish(int quantity, Paper paper, SheetSearch search) {
        public Wish(int quantity, Paper paper) {
            this(quantity, paper, SheetSearch.usual());
        }
    }

    private final Makings makings;
    private final int quantity;
    private final List<SheetLayout> layouts;
    private final List<PlannedSheet> sheets;
    private final List<PrintedPiece> printed;

    private Pack(Makings makings, int quantity, SheetSearch search) {
        this.makings = makings;
        this.quantity = quantity;
        WorkshopFile workshop = makings.workshop();
        this.layouts = Layout.of(makings.pieces(), workshop, quantity, search);
        this.sheets = layouts.stream()
                .map(layout -> PlannedSheet.of(layout, workshop))
                .toList();
        this.printed = makings.printed();
    }

    /**
     * Lays everything out: what takes long.
     *
     * @param quantity pieces
     * @throws PartTooLargeException when a part does not fit its sheet
     */
    public static Pack of(Makings makings, int quantity, SheetSearch search) {
        return new Pack(makings, quantity, search);
    }

    static Quantities quantities(Design design, int quantity) {
        return Pack.of(Makings.of(design), quantity, SheetSearch.usual()).quantities(1);
    }

    /** As if each piece were cut from sheets of its own, on which every part lies where there was room. */
    static Quantities roughly(Design design, int quantity) {
        return Pack.of(Makings.of(design), 1, SheetSearch.none()).quantities(quantity);
    }

    /** @param times that all of it is made */
    private Quantities quantities(int times) {
        Design design = makings.design();
        int all = times * quantity;
        return Quantities.of(
                design,
                makings.subject(),
                makings.housing(),
                repeated(sheets, times),
                Needs.of(design, makings.assembly(), makings.housing(), repeated(layouts, times), printed, all),
                printed,
                all);
    }

    private static <T> List<T> repeated(List<T> some, int times) {
        return Collections.nCopies(times, some).stream().flatMap(List::stream).toList();
    }

    /**
     * Writes everything into a folder, each file whole or not at all.
     *
     * @param progress told the name of each file once it stands
     * @throws PartTooLargeException when a part does not fit its sheet
     */
    public static List<Path> write(Design design, Path folder, Wish wish, Consumer<String> progress)
            throws IOException {
        return Pack.of(Makings.of(design), wish.quantity(), wish.search()).write(folder, wish.paper(), progress);
    }

    /**
     * Likewise, with the sheets as they are laid out already.
     *
     * @param paper in the printer
     */
    public List<Path> write(Path folder, Paper paper, Consumer<String> progress) throws IOException {
        return new PackWriter(this, paper, new PackFolder(folder, progress)).write();
    }

    public Makings makings() {
        return makings;
    }

    /** Pieces. */
    public int quantity() {
        return quantity;
    }

    /** By stock, in the order in which they are cut. */
    public List<PlannedSheet> sheets() {
        return sheets;
    }

    List<SheetLayout> layouts() {
        return layouts;
    }

    List<PrintedPiece> printed() {
        return printed;
    }

    /** What the batch needs. */
    List<Needs.Need> needs() {
        return Needs.of(makings.design(), makings.assembly(), makings.housing(), layouts, printed, quantity);
    }

    /** The same with what is to be bought of it. */
    public List<Needs.Shopping> shopping() {
        return Needs.lessShelf(needs(), makings.workshop().have());
    }

    /** Whether it takes fewer sheets than another, or as many and less of the last ones. */
    public boolean isTighterThan(Pack other) {
        return sheets.size() != other.sheets.size() ? sheets.size() < other.sheets.size() : last() < other.last();
    }

    /** Used of the last sheet of every stock, mm. */
    private double last() {
        Map<String, Double> used = new LinkedHashMap<>();
        sheets.forEach(sheet -> used.put(sheet.stock(), sheet.offcutWidth()));
        return used.values().stream().mapToDouble(Double::doubleValue).sum();
    }
}

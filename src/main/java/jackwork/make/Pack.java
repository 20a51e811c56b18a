package jackwork.make;

import jackwork.check.Subject;
import jackwork.design.Design;
import jackwork.design.WorkshopFile;
import jackwork.drawing.BookletWriter;
import jackwork.drawing.CutSheet;
import jackwork.drawing.DxfWriter;
import jackwork.drawing.Paper;
import jackwork.drawing.PdfWriter;
import jackwork.drawing.Pens;
import jackwork.drawing.PrintSetup;
import jackwork.drawing.StlWriter;
import jackwork.drawing.SvgWriter;
import jackwork.drawing.ThreeMfWriter;
import jackwork.geometry.Bounds;
import jackwork.parts.Assembly;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * The folder that a maker takes to the laser, the printer, the bench and the post: all that one design needs to be made,
 * for a number of pieces, with a page of contents.
 */
public final class Pack {

    private static final String LASER = "At the laser";
    private static final String PRINTER = "At the 3D printer";
    private static final String PAPER = "On paper and cloth";
    private static final String BENCH = "At the bench";
    private static final String BUYING = "Before you begin: what to buy";
    private static final String SELLING = "With the piece, and to sell it";

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

    private final Design design;
    private final Wish wish;
    private final WorkshopFile workshop;
    private final Subject subject;
    private final Assembly assembly;
    private final @Nullable Case housing;
    private final List<SheetLayout> layouts;

    private Pack(Design design, Wish wish) {
        this.design = design;
        this.wish = wish;
        this.workshop = design.workshop();
        this.subject = Subject.of(design);
        this.assembly = subject.assembly();
        this.housing = Case.of(design, subject);
        this.layouts = Layout.of(pieces(), workshop, wish.quantity(), wish.search());
    }

    /** The sheets of a design, cut lines at this workshop's kerf. */
    public static List<CutSheet> sheets(Design design, int quantity) {
        Pack pack = new Pack(design, new Wish(quantity, Paper.A4));
        return pack.layouts.stream().map(pack::sheet).toList();
    }

    static Quantities quantities(Design design, Wish wish) {
        Pack pack = new Pack(design, wish);
        List<PrintedPiece> printed = PrintedPiece.of(design, pack.assembly, pack.housing);
        List<CutSheet> cut = pack.layouts.stream().map(pack::sheet).toList();
        List<Needs.Need> needs = Needs.of(design, pack.assembly, pack.housing, pack.layouts, printed, wish.quantity());
        return Quantities.of(design, pack.subject, pack.housing, cut, needs, printed, wish.quantity());
    }

    /**
     * Writes everything into a folder, each file whole or not at all.
     *
     * @param progress told the name of each file once it stands
     * @throws PartTooLargeException when a part does not fit its sheet
     */
    public static List<Path> write(Design design, Path folder, Wish wish, Consumer<String> progress)
            throws IOException {
        Pack pack = new Pack(design, wish);
        PackFolder to = new PackFolder(folder, progress);
        List<PrintedPiece> printed = PrintedPiece.of(design, pack.assembly, pack.housing);
        pack.buying(to, printed);
        pack.laser(to);
        pack.printer(to, printed);
        pack.paper(to);
        pack.bench(to);
        pack.selling(to);
        return to.finish(
                design.name() + ": " + (wish.quantity() == 1 ? "one piece" : wish.quantity() + " pieces"),
                Cautions.FOR_THE_WORKSHOP);
    }

    /** Everything to be cut for one piece: parts of box and figure, panels of the case, the transit lock. */
    private List<FlatPiece> pieces() {
        List<FlatPiece> pieces = new ArrayList<>();
        assembly.parts().stream()
                .filter(part -> part.printed() == null)
                .forEach(part -> pieces.add(FlatPiece.of(part)));
        if (housing != null) {
            pieces.addAll(housing.pieces());
            FlatPiece lock = TransitLock.of(assembly, housing);
            if (lock != null) {
                pieces.add(lock);
            }
        }
        return pieces;
    }

    private CutSheet sheet(SheetLayout layout) {
        return SheetDrawing.of(layout, workshop.laser().kerf().value());
    }

    private void buying(PackFolder to, List<PrintedPiece> printed) throws IOException {
        List<Needs.Need> needs = Needs.of(design, assembly, housing, layouts, printed, wish.quantity());
        to.save(BUYING, "bill-of-materials.csv", "everything that goes into the batch", Needs.bill(needs));
        to.save(BUYING, "shopping.csv", "the same less what is on the shelf", Needs.shopping(needs, workshop.have()));
    }

    private void laser(PackFolder to) throws IOException {
        Pens pens = workshop.laser().pensOrStandard();
        double margin = workshop.laser().margin();
        PrintSetup setup = new PrintSetup(Optional.empty(), Cautions.FOR_THE_WORKSHOP, pens);
        StringBuilder plans =
                new StringBuilder("sheet,used width mm,used height mm,engraved mm,cut mm,head's way mm,minutes\r\n");
        List<CutSheet> sheets = new ArrayList<>();
        for (SheetLayout layout : layouts) {
            CutPlan plan = CutPlan.of(sheet(layout), workshop.laser().speedsOrGuess());
            sheets.add(plan.sheet());
            Bounds used = layout.used();
            String what = "sheet " + layout.number() + " of " + layout.stock()
                    + String.format(
                            Locale.ROOT,
                            "; an offcut of %.0f × %.0f mm will do",
                            Math.ceil(used.maxX() + margin),
                            Math.ceil(used.maxY() + margin));
            to.save(LASER, layout.name() + ".svg", what, SvgWriter.write(plan.sheet(), pens));
            to.save(LASER, layout.name() + ".dxf", "the same as DXF", DxfWriter.write(plan.sheet()));
            plans.append(String.format(
                    Locale.ROOT,
                    "%s,%.0f,%.0f,%.0f,%.0f,%.0f,%.1f\r\n",
                    layout.name(),
                    used.maxX() + margin,
                    used.maxY() + margin,
                    plan.engrave(),
                    plan.cut(),
                    plan.travel(),
                    plan.seconds() / 60));
        }
        to.save(LASER, "cut-plan.csv", "lengths and minutes of each sheet", plans.toString());
        to.save(LASER, "sheets.pdf", "all sheets in true size, to look at", PdfWriter.write(sheets, setup));
        to.save(LASER, "parts.csv", "every part with its sheet, size and holes", PartsList.csv(assembly, layouts));
        List<String> stocks =
                layouts.stream().map(SheetLayout::stock).distinct().toList();
        List<CutSheet> tests = new ArrayList<>();
        for (CutSheet piece : TestPieces.sheets(stocks, workshop)) {
            CutSheet planned =
                    CutPlan.of(piece, workshop.laser().speedsOrGuess()).sheet();
            tests.add(planned);
            to.save(LASER, piece.title() + ".svg", "cut this first: kerf and fits", SvgWriter.write(planned, pens));
            to.save(LASER, piece.title() + ".dxf", "the same as DXF", DxfWriter.write(planned));
        }
        to.save(LASER, "test-pieces.pdf", "the test pieces, to look at", PdfWriter.write(tests, setup));
        to.save(LASER, "test-pieces.txt", "the form to fill in with them", TestPieces.form(stocks, workshop));
    }

    private void printer(PackFolder to, List<PrintedPiece> printed) throws IOException {
        for (PrintedPiece piece : printed) {
            String name = "print-" + piece.name();
            String what = piece.each() * wish.quantity() + " of it; " + piece.what();
            to.save(PRINTER, name + ".3mf", what, ThreeMfWriter.write(piece.name(), piece.mesh()));
            to.save(PRINTER, name + ".stl", "the same as STL, mm", StlWriter.write(piece.mesh()));
        }
        if (!printed.isEmpty()) {
            double density = workshop.printerOrGuess().density().value();
            String list = PrintedPiece.csv(printed, density, wish.quantity());
            to.save(PRINTER, "printed.csv", "how many of each, its size and mass, printed solid", list);
        }
    }

    private void bench(PackFolder to) throws IOException {
        List<BookletWriter.Section> sections = new ArrayList<>();
        double minutes = 0;
        for (GlueUp.Step step : GlueUp.of(design, assembly, housing)) {
            sections.add(step.section(sections.size() + 1));
            minutes += step.minutes();
        }
        String title = String.format(Locale.ROOT, "%s: the glue-up, about %.0f minutes", design.name(), minutes);
        String foot = String.join(" ", Cautions.FOR_THE_WORKSHOP);
        to.save(BENCH, "glue-up.pdf", "step by step", BookletWriter.write(wish.paper(), title, foot, sections));
        List<CutSheet> jigs = Jigs.of(assembly);
        if (jigs != null) {
            PrintSetup setup = PrintSetup.asLargeAsNeeded(Cautions.FOR_THE_WORKSHOP);
            to.save(BENCH, "jigs.pdf", "in true size: rods and weights of every stack", PdfWriter.write(jigs, setup));
        }
        String dowels = Dowels.csv(Dowels.of(assembly), wish.quantity());
        to.save(BENCH, "dowels.csv", "every rod with its cut length", dowels);
        to.save(
                BENCH,
                "service.pdf",
                "taking the works out, what wears",
                Leaflets.service(design, housing, Dowels.of(assembly), wish.paper()));
        to.save(
                BENCH,
                "box.txt",
                "travel, force and returning load for a figure on this box",
                BoxDrives.of(assembly).words(design.box().name()));
    }

    private void selling(PackFolder to) throws IOException {
        Paper paper = wish.paper();
        Parcel parcel = Parcel.of(subject, housing);
        to.save(SELLING, "buyers-card.pdf", "goes with every piece", Leaflets.forTheBuyer(design, subject, paper));
        byte[] selling = Leaflets.selling(design, subject, parcel, paper);
        to.save(SELLING, "to-sell.pdf", "parcel, photographs, a first text", selling);
        to.save(SELLING, "cautions.txt", "the words that go with it", cautions());
    }

    /** What paper printers make: pictures, cloth patterns, the label. */
    private void paper(PackFolder to) throws IOException {
        Optional<byte[]> artwork = ArtworkPages.pdf(assembly, wish.paper());
        if (artwork.isPresent()) {
            to.save(PAPER, "artwork.pdf", "the pictures of its parts, true size, to cut out", artwork.get());
        }
        Optional<byte[]> cloth = ClothPages.pdf(assembly, wish.paper());
        if (cloth.isPresent()) {
            to.save(PAPER, "cloth.pdf", "patterns to cut cloth by, with their hems", cloth.get());
        }
        byte[] label = BoxLabel.pdf(assembly, subject.coins(), wish.paper());
        to.save(PAPER, "label.pdf", "for underneath the box", label);
    }

    private static String cautions() {
        return String.join("\n", Cautions.FOR_THE_WORKSHOP) + "\n\nTo go with every piece:\n" + Cautions.FOR_THE_PIECE
                + "\nThe words \"not a toy\" do not decide the law; play value does.\n";
    }
}

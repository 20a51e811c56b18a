package jackwork.make;

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
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Writes the files of a pack, with a page of contents. */
final class PackWriter {

    private static final String LASER = "At the laser";
    private static final String PRINTER = "At the 3D printer";
    private static final String PAPER = "On paper and cloth";
    private static final String BENCH = "At the bench";
    private static final String BUYING = "Before you begin: what to buy";
    private static final String SELLING = "With the piece, and to sell it";

    private final Pack pack;
    private final Paper paper;
    private final PackFolder to;
    private final Makings makings;
    private final Design design;
    private final WorkshopFile workshop;

    PackWriter(Pack pack, Paper paper, PackFolder to) {
        this.pack = pack;
        this.paper = paper;
        this.to = to;
        this.makings = pack.makings();
        this.design = makings.design();
        this.workshop = makings.workshop();
    }

    List<Path> write() throws IOException {
        buying();
        laser();
        printer();
        papers();
        bench();
        selling();
        return to.finish(
                design.name() + ": " + (pack.quantity() == 1 ? "one piece" : pack.quantity() + " pieces"),
                Cautions.FOR_THE_WORKSHOP);
    }

    private void buying() throws IOException {
        List<Needs.Need> needs = pack.needs();
        to.save(BUYING, "bill-of-materials.csv", "everything that goes into the batch", Needs.bill(needs));
        to.save(BUYING, "shopping.csv", "the same less what is on the shelf", Needs.shopping(needs, workshop.have()));
    }

    private void laser() throws IOException {
        Pens pens = workshop.laser().pensOrStandard();
        PrintSetup setup = new PrintSetup(Optional.empty(), Cautions.FOR_THE_WORKSHOP, pens);
        StringBuilder plans =
                new StringBuilder("sheet,used width mm,used height mm,engraved mm,cut mm,travel mm,minutes\r\n");
        for (PlannedSheet planned : pack.sheets()) {
            String what = "sheet " + planned.number() + " of " + planned.stock()
                    + String.format(
                            Locale.ROOT,
                            "; an offcut of %.0f × %.0f mm will do",
                            Math.ceil(planned.offcutWidth()),
                            Math.ceil(planned.offcutHeight()));
            to.save(LASER, planned.name() + ".svg", what, SvgWriter.write(planned.sheet(), pens));
            to.save(LASER, planned.name() + ".dxf", "the same as DXF", DxfWriter.write(planned.sheet()));
            plans.append(String.format(
                    Locale.ROOT,
                    "%s,%.0f,%.0f,%.0f,%.0f,%.0f,%.1f\r\n",
                    planned.name(),
                    planned.offcutWidth(),
                    planned.offcutHeight(),
                    planned.engrave(),
                    planned.cut(),
                    planned.travel(),
                    planned.seconds() / 60));
        }
        List<CutSheet> sheets = pack.sheets().stream().map(PlannedSheet::sheet).toList();
        to.save(LASER, "cut-plan.csv", "lengths and minutes of each sheet", plans.toString());
        to.save(LASER, "sheets.pdf", "all sheets in true size, to look at", PdfWriter.write(sheets, setup));
        String parts = PartsList.csv(makings.assembly(), pack.layouts());
        to.save(LASER, "parts.csv", "every part with its sheet, size and holes", parts);
        List<CutSheet> tests = makings.testPieces();
        for (CutSheet piece : tests) {
            to.save(LASER, piece.title() + ".svg", "cut this first: kerf and fits", SvgWriter.write(piece, pens));
            to.save(LASER, piece.title() + ".dxf", "the same as DXF", DxfWriter.write(piece));
        }
        to.save(LASER, "test-pieces.pdf", "the test pieces, to look at", PdfWriter.write(tests, setup));
        String form = TestPieces.form(makings.stocks(), workshop);
        to.save(LASER, "test-pieces.txt", "the form to fill in with them", form);
    }

    private void printer() throws IOException {
        List<PrintedPiece> printed = pack.printed();
        for (PrintedPiece piece : printed) {
            String name = "print-" + piece.name();
            String what = piece.each() * pack.quantity() + " of it; " + piece.what();
            to.save(PRINTER, name + ".3mf", what, ThreeMfWriter.write(piece.name(), piece.mesh()));
            to.save(PRINTER, name + ".stl", "the same as STL, mm", StlWriter.write(piece.mesh()));
        }
        if (!printed.isEmpty()) {
            double density = workshop.printerOrGuess().density().value();
            String list = PrintedPiece.csv(printed, density, pack.quantity());
            to.save(PRINTER, "printed.csv", "how many of each, its size and mass, printed solid", list);
        }
    }

    /** What paper printers make: pictures, cloth patterns, the label. */
    private void papers() throws IOException {
        save(PAPER, PaperFile.ARTWORK);
        save(PAPER, PaperFile.CLOTH);
        save(PAPER, PaperFile.LABEL);
    }

    private void save(String where, PaperFile file) throws IOException {
        Optional<byte[]> pdf = file.pdf(makings, paper);
        if (pdf.isPresent()) {
            to.save(where, file.file(), file.what(), pdf.get());
        }
    }

    private void bench() throws IOException {
        List<BookletWriter.Section> sections = new ArrayList<>();
        double minutes = 0;
        for (GlueUp.Step step : makings.steps()) {
            sections.add(step.section(sections.size() + 1));
            minutes += step.minutes();
        }
        String title = String.format(Locale.ROOT, "%s: the glue-up, about %.0f minutes", design.name(), minutes);
        String foot = String.join(" ", Cautions.FOR_THE_WORKSHOP);
        to.save(BENCH, "glue-up.pdf", "step by step", BookletWriter.write(paper, title, foot, sections));
        save(BENCH, PaperFile.JIGS);
        List<Dowels.Dowel> dowels = makings.dowels();
        to.save(BENCH, "dowels.csv", "every rod with its cut length", Dowels.csv(dowels, pack.quantity()));
        to.save(
                BENCH,
                "service.pdf",
                "taking the works out, what wears",
                Leaflets.service(design, makings.subject(), makings.housing(), dowels, paper));
        to.save(
                BENCH,
                "box.txt",
                "travel, force and returning load for a figure on this box",
                BoxDrives.of(makings.assembly()).words(design.box().works().name()));
    }

    private void selling() throws IOException {
        Parcel parcel = Parcel.of(makings.subject(), makings.housing());
        byte[] card = Leaflets.forTheBuyer(design, makings.subject(), paper);
        to.save(SELLING, "buyers-card.pdf", "goes with every piece", card);
        byte[] selling = Leaflets.selling(design, makings.subject(), parcel, paper);
        to.save(SELLING, "to-sell.pdf", "parcel, photographs, a first text", selling);
        to.save(SELLING, "cautions.txt", "the words that go with it", cautions());
    }

    private static String cautions() {
        return String.join("\n", Cautions.FOR_THE_WORKSHOP) + "\n\nTo go with every piece:\n" + Cautions.FOR_THE_PIECE
                + "\nThe words \"not a toy\" do not decide the law; play value does.\n";
    }
}

package jackwork.make;

import jackwork.check.Subject;
import jackwork.design.Design;
import jackwork.design.WorkshopFile;
import jackwork.drawing.CutKind;
import jackwork.drawing.CutPath;
import jackwork.drawing.CutSheet;
import jackwork.drawing.DxfWriter;
import jackwork.drawing.Label;
import jackwork.drawing.PdfWriter;
import jackwork.drawing.PrintSetup;
import jackwork.drawing.StlWriter;
import jackwork.drawing.SvgWriter;
import jackwork.drawing.ThreeMfWriter;
import jackwork.geometry.Point;
import jackwork.parts.Assembly;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** The folder that a maker takes to the laser: sheets as SVG, DXF and PDF in the order of cutting, test pieces with
 * their form, the parts list, the cautions. */
public final class Pack {

    private Pack() {}

    /** The sheets of a design, cut lines at this workshop's kerf. */
    public static List<CutSheet> sheets(Design design, int quantity) {
        Subject subject = Subject.of(design);
        List<CutSheet> sheets = new ArrayList<>();
        for (SheetLayout layout : Layout.of(pieces(subject, Case.of(design, subject)), design.workshop(), quantity)) {
            sheets.add(sheet(design.workshop(), layout));
        }
        return sheets;
    }

    /** Everything to be cut for one piece: parts of box and figure, panels of the case. */
    private static List<FlatPiece> pieces(Subject subject, @Nullable Case housing) {
        List<FlatPiece> pieces = new ArrayList<>();
        subject.assembly().parts().stream()
                .filter(part -> part.printed() == null)
                .forEach(part -> pieces.add(FlatPiece.of(part)));
        if (housing != null) {
            pieces.addAll(housing.pieces());
        }
        return pieces;
    }

    private static CutSheet sheet(WorkshopFile workshop, SheetLayout layout) {
        double kerf = workshop.laser().kerf().value();
        List<CutPath> paths = new ArrayList<>();
        for (Placement placement : layout.placements()) {
            paths.addAll(KerfCut.paths(placement.piece(), kerf, placement.pose(), placement.name()));
        }
        List<Label> labels = new ArrayList<>();
        for (Placement placement : layout.placements()) {
            var bounds = placement.piece().drawn().moved(placement.pose()).bounds();
            Point at = new Point(bounds.minX(), bounds.minY());
            labels.add(new Label(CutKind.MARK, at.plus(new Point(0, -2.2)), 1.6, placement.name()));
        }
        return new CutSheet(layout.name(), layout.width(), layout.height(), paths, labels);
    }

    /**
     * Writes everything into a folder, each file whole or not at all.
     *
     * @param progress told the name of each file once it stands
     * @throws PartTooLargeException when a part does not fit its sheet
     */
    public static List<Path> write(Design design, Path folder, int quantity, Consumer<String> progress)
            throws IOException {
        Subject subject = Subject.of(design);
        Assembly assembly = subject.assembly();
        Case housing = Case.of(design, subject);
        List<SheetLayout> layouts = Layout.of(pieces(subject, housing), assembly.workshop(), quantity);
        Files.createDirectories(folder);
        List<Path> written = new ArrayList<>();
        List<CutSheet> sheets = new ArrayList<>();
        WorkshopFile workshop = assembly.workshop();
        StringBuilder plans = new StringBuilder("sheet,engraved mm,cut mm,head's way mm,minutes\r\n");
        for (SheetLayout layout : layouts) {
            CutPlan plan = CutPlan.of(sheet(workshop, layout), workshop.laser().speedsOrGuess());
            sheets.add(plan.sheet());
            written.add(save(folder.resolve(layout.name() + ".svg"), SvgWriter.write(plan.sheet()), progress));
            written.add(save(folder.resolve(layout.name() + ".dxf"), DxfWriter.write(plan.sheet()), progress));
            plans.append(String.format(
                    Locale.ROOT,
                    "%s,%.0f,%.0f,%.0f,%.1f\r\n",
                    layout.name(),
                    plan.engrave(),
                    plan.cut(),
                    plan.travel(),
                    plan.seconds() / 60));
        }
        written.add(save(folder.resolve("cut-plan.csv"), utf8(plans.toString()), progress));
        List<String> stocks =
                layouts.stream().map(SheetLayout::stock).distinct().toList();
        List<CutSheet> pieces = new ArrayList<>();
        for (CutSheet piece : TestPieces.sheets(stocks, workshop)) {
            CutSheet planned =
                    CutPlan.of(piece, workshop.laser().speedsOrGuess()).sheet();
            pieces.add(planned);
            written.add(save(folder.resolve(piece.title() + ".svg"), SvgWriter.write(planned), progress));
            written.add(save(folder.resolve(piece.title() + ".dxf"), DxfWriter.write(planned), progress));
        }
        byte[] testPdf = PdfWriter.write(pieces, PrintSetup.asLargeAsNeeded(Cautions.FOR_THE_WORKSHOP));
        written.add(save(folder.resolve("test-pieces.pdf"), testPdf, progress));
        written.add(save(folder.resolve("test-pieces.txt"), utf8(TestPieces.form(stocks, workshop)), progress));
        byte[] pdf = PdfWriter.write(sheets, PrintSetup.asLargeAsNeeded(Cautions.FOR_THE_WORKSHOP));
        written.add(save(folder.resolve("sheets.pdf"), pdf, progress));
        List<PrintedPiece> printed = PrintedPiece.of(design, assembly, housing);
        for (PrintedPiece piece : printed) {
            String name = "print-" + piece.name();
            written.add(save(folder.resolve(name + ".3mf"), ThreeMfWriter.write(piece.name(), piece.mesh()), progress));
            written.add(save(folder.resolve(name + ".stl"), StlWriter.write(piece.mesh()), progress));
        }
        if (!printed.isEmpty()) {
            double density = workshop.printerOrGuess().density().value();
            String list = PrintedPiece.csv(printed, density, quantity);
            written.add(save(folder.resolve("printed.csv"), utf8(list), progress));
        }
        written.add(save(folder.resolve("dowels.csv"), utf8(Dowels.csv(Dowels.of(assembly), quantity)), progress));
        written.add(save(folder.resolve("parts.csv"), utf8(PartsList.csv(assembly, layouts)), progress));
        written.add(save(folder.resolve("cautions.txt"), utf8(cautions()), progress));
        return written;
    }

    private static String cautions() {
        return String.join("\n", Cautions.FOR_THE_WORKSHOP) + "\n\nTo go with every piece:\n" + Cautions.FOR_THE_PIECE
                + "\nThe words \"not a toy\" do not decide the law; play value does.\n";
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** Atomic: a crash leaves the old file or the new one. */
    private static Path save(Path file, byte[] bytes, Consumer<String> progress) throws IOException {
        Path part = file.resolveSibling("." + file.getFileName() + ".part");
        try {
            Files.write(part, bytes);
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(part);
        }
        progress.accept(file.getFileName().toString());
        return file;
    }
}

package jackwork.make;

import jackwork.design.WorkshopFile;
import jackwork.drawing.CutKind;
import jackwork.drawing.CutPath;
import jackwork.drawing.CutSheet;
import jackwork.drawing.DxfWriter;
import jackwork.drawing.Label;
import jackwork.drawing.PdfWriter;
import jackwork.drawing.PrintSetup;
import jackwork.drawing.SvgWriter;
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
import java.util.Optional;
import java.util.function.Consumer;

/** The folder that a maker takes to the laser: sheets as SVG, DXF and PDF in the order of cutting, test pieces with
 * their form, the parts list, the cautions. */
public final class Pack {

    private Pack() {}

    /** The sheets of a design, cut lines at this workshop's kerf. */
    public static List<CutSheet> sheets(Assembly assembly, int quantity) {
        List<CutSheet> sheets = new ArrayList<>();
        for (SheetLayout layout : Layout.of(assembly.parts(), assembly.workshop(), quantity)) {
            sheets.add(sheet(assembly, layout));
        }
        return sheets;
    }

    private static CutSheet sheet(Assembly assembly, SheetLayout layout) {
        double kerf = assembly.workshop().laser().kerf().value();
        List<CutPath> paths = new ArrayList<>();
        for (Placement placement : layout.placements()) {
            paths.addAll(KerfCut.paths(placement.part(), kerf, placement.shift(), placement.name()));
        }
        List<Label> labels = new ArrayList<>();
        for (Placement placement : layout.placements()) {
            var bounds = placement.part().drawn().bounds();
            Point at = new Point(bounds.minX(), bounds.minY()).plus(placement.shift());
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
    public static List<Path> write(Assembly assembly, Path folder, int quantity, Consumer<String> progress)
            throws IOException {
        List<SheetLayout> layouts = Layout.of(assembly.parts(), assembly.workshop(), quantity);
        Files.createDirectories(folder);
        List<Path> written = new ArrayList<>();
        List<CutSheet> sheets = new ArrayList<>();
        WorkshopFile workshop = assembly.workshop();
        StringBuilder plans = new StringBuilder("sheet,engraved mm,cut mm,head's way mm,minutes\r\n");
        for (SheetLayout layout : layouts) {
            CutPlan plan = CutPlan.of(sheet(assembly, layout), workshop.laser().speedsOrGuess());
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
        written.add(save(folder.resolve("dowels.csv"), utf8(Dowels.csv(Dowels.of(assembly), quantity)), progress));
        written.add(save(folder.resolve("parts.csv"), utf8(PartsList.csv(assembly.bodies(), layouts)), progress));
        written.addAll(printed(assembly, folder, progress));
        written.add(save(folder.resolve("cautions.txt"), utf8(cautions()), progress));
        return written;
    }

    /** What a printer makes of it: pictures, cloth patterns, the label. */
    private static List<Path> printed(Assembly assembly, Path folder, Consumer<String> progress) throws IOException {
        List<Path> written = new ArrayList<>();
        Optional<byte[]> artwork = ArtworkPages.pdf(assembly);
        if (artwork.isPresent()) {
            written.add(save(folder.resolve("artwork.pdf"), artwork.get(), progress));
        }
        Optional<byte[]> cloth = ClothPages.pdf(assembly);
        if (cloth.isPresent()) {
            written.add(save(folder.resolve("cloth.pdf"), cloth.get(), progress));
        }
        written.add(save(folder.resolve("label.pdf"), BoxLabel.pdf(assembly), progress));
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

package jackwork.make;

import jackwork.drawing.CutKind;
import jackwork.drawing.CutPath;
import jackwork.drawing.CutSheet;
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
import java.util.function.Consumer;

/** The folder that a maker takes to the laser: sheets as SVG and PDF, the parts list, the cautions. */
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
        for (SheetLayout layout : layouts) {
            CutSheet sheet = sheet(assembly, layout);
            sheets.add(sheet);
            written.add(save(folder.resolve(layout.name() + ".svg"), SvgWriter.write(sheet), progress));
        }
        byte[] pdf = PdfWriter.write(sheets, PrintSetup.asLargeAsNeeded(Cautions.FOR_THE_WORKSHOP));
        written.add(save(folder.resolve("sheets.pdf"), pdf, progress));
        written.add(save(folder.resolve("parts.csv"), utf8(PartsList.csv(assembly.bodies(), layouts)), progress));
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

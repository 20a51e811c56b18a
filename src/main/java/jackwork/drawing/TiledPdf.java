package jackwork.drawing;

import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/** Figures in true size as PDF pages, laid together by crosses in the pages' corners. Same figures, same bytes. */
final class TiledPdf {

    private static final double CROSS_ARM = 4;

    private record Page(TiledFigure figure, Tile tile, PageLayout layout, boolean tiled) {}

    private final PdfFile file;

    private TiledPdf(PdfFile file) {
        this.file = file;
    }

    /** @param design its name, before each page's title */
    static byte[] write(String design, List<? extends TiledFigure> figures, Paper paper, List<String> cautions) {
        if (figures.isEmpty()) {
            throw new IllegalArgumentException("nothing to print; a PDF needs at least one page");
        }
        try (PdfFile file = new PdfFile()) {
            TiledPdf pdf = new TiledPdf(file);
            List<Page> pages = new ArrayList<>();
            figures.forEach(figure -> pages.addAll(pdf.pages(design, figure, paper, cautions)));
            for (int i = 0; i < pages.size(); i++) {
                pdf.draw(pages.get(i), "sheet " + (i + 1) + " of " + pages.size());
            }
            return file.bytes();
        } catch (IOException e) {
            throw new UncheckedIOException("writing a PDF to memory failed", e);
        }
    }

    /** Upright or turned, whichever takes fewer pages. */
    private List<Page> pages(String design, TiledFigure figure, Paper paper, List<String> cautions) {
        List<String> words = new ArrayList<>(figure.notes());
        words.addAll(cautions);
        String name = design + ": " + figure.name();
        Outline shown = figure.shown();
        List<Page> best = List.of();
        for (Paper way : List.of(paper, paper.turned())) {
            // As long as any of these pages' titles, so that it leaves as much room as any.
            PageLayout room = PageLayout.on(way, name + ", page 99 of 99", words, file.text());
            List<Tile> tiles = Tile.of(shown, room.roomWidth(), room.roomHeight());
            if (best.isEmpty() || tiles.size() < best.size()) {
                best = new ArrayList<>();
                for (int i = 0; i < tiles.size(); i++) {
                    String title = name + ", page " + (i + 1) + " of " + tiles.size();
                    PageLayout layout = PageLayout.on(way, title, words, file.text());
                    best.add(new Page(figure, tiles.get(i), layout, tiles.size() > 1));
                }
            }
        }
        return best;
    }

    private void draw(Page page, String number) throws IOException {
        PageLayout layout = page.layout();
        Tile tile = page.tile();
        try (PdfCanvas canvas = file.page(layout, number)) {
            double y = layout.legendBottom();
            double x = page.figure().legend(file, canvas, y);
            if (page.tiled()) {
                canvas.pen(PdfFile.INK);
                canvas.cross(new Point(x + 3, y + 0.9), 1.6);
                file.legendWords(canvas, x, y, "cut from cross to cross, lay cross on cross");
            }
            canvas.origin(new Point(PageLayout.MARGIN, layout.partsBottom()).minus(tile.corner()));
            canvas.clip(tile.outline());
            page.figure().draw(file, canvas);
            canvas.unclip();
            if (page.tiled()) {
                for (Point cross : tile.crosses()) {
                    canvas.pen(PicturedPart.HALO);
                    canvas.cross(cross, CROSS_ARM);
                    canvas.pen(PdfFile.INK);
                    canvas.cross(cross, CROSS_ARM);
                }
            }
        }
    }
}

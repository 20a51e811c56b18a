package jackwork.drawing;

import jackwork.geometry.Circle;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;

/**
 * Pictures for parts as PDF pages in true size, each with the part's edge and its holes to lay it on the wood by; on
 * several pages where one is too small. The same figures give the same bytes.
 */
public final class ArtworkPdf {

    private static final Pens.Pen EDGE = new Pens.Pen(0x0b4f54, 0.15);
    private static final Pens.Pen HOLE = new Pens.Pen(0x7d2e68, 0.2);
    private static final Pens.Pen BARE = new Pens.Pen(0xb9770e, 0.3);

    /** Under thin lines on a picture, light or dark. */
    private static final Pens.Pen HALO = new Pens.Pen(0xffffff, 0.8);

    /** A cross reaches so far beyond its circle, mm. */
    private static final double ARM = 1.5;

    private static final double CORNER_ARM = 4;

    private record Page(ArtworkFigure figure, Tile tile, PageLayout layout, boolean tiled) {}

    private final PdfFile file;

    private ArtworkPdf(PdfFile file) {
        this.file = file;
    }

    /** @param design its name, before each page's title */
    public static byte[] write(String design, List<ArtworkFigure> figures, Paper paper, List<String> cautions) {
        if (figures.isEmpty()) {
            throw new IllegalArgumentException("no picture to print; a PDF needs at least one page");
        }
        try (PdfFile file = new PdfFile()) {
            ArtworkPdf pdf = new ArtworkPdf(file);
            List<Page> pages = new ArrayList<>();
            figures.forEach(figure -> pages.addAll(pdf.pages(design, figure, paper, cautions)));
            Map<Picture, PDImageXObject> images = new HashMap<>();
            for (int i = 0; i < pages.size(); i++) {
                Page page = pages.get(i);
                Picture picture = page.figure().picture();
                if (!images.containsKey(picture)) {
                    images.put(picture, file.image(picture));
                }
                pdf.draw(page, images.get(picture), "sheet " + (i + 1) + " of " + pages.size());
            }
            return file.bytes();
        } catch (IOException e) {
            throw new UncheckedIOException("writing a PDF to memory failed", e);
        }
    }

    /** Upright or turned, whichever takes fewer pages. */
    private List<Page> pages(String design, ArtworkFigure figure, Paper paper, List<String> cautions) {
        List<String> words = new ArrayList<>(cautions);
        if (!figure.covered()) {
            words.add(0, "This picture ends before the part's edge and its bleed do: draw it larger or move it.");
        }
        String name = design + ": " + figure.name();
        List<Page> best = List.of();
        for (Paper way : List.of(paper, paper.turned())) {
            // A title as long as any of these pages has says how much room there is.
            PageLayout room = PageLayout.on(way, name + ", page 99 of 99", words, file.text());
            Outline shown = figure.shown();
            boolean one =
                    shown.bounds().width() <= room.roomWidth() && shown.bounds().height() <= room.roomHeight();
            List<Tile> tiles = Tile.of(shown, room.roomWidth(), room.roomHeight());
            if (best.isEmpty() || tiles.size() < best.size()) {
                best = new ArrayList<>();
                for (int i = 0; i < tiles.size(); i++) {
                    String title = name + ", page " + (i + 1) + " of " + tiles.size();
                    PageLayout layout = PageLayout.on(way, title, words, file.text());
                    best.add(new Page(figure, tiles.get(i), layout, !one));
                }
            }
        }
        return best;
    }

    private void draw(Page page, PDImageXObject image, String number) throws IOException {
        PageLayout layout = page.layout();
        ArtworkFigure figure = page.figure();
        Tile tile = page.tile();
        try (PdfCanvas canvas = file.page(layout, number)) {
            legend(canvas, page);
            canvas.origin(new Point(PageLayout.MARGIN, layout.partsBottom()).minus(tile.corner()));
            canvas.clip(tile.outline());
            canvas.clip(figure.shown());
            canvas.image(image, figure.at(), figure.width(), figure.height());
            canvas.unclip();
            canvas.pen(EDGE);
            region(canvas, figure.edge());
            for (Outline bare : figure.bare()) {
                canvas.pen(HALO);
                region(canvas, bare);
                canvas.pen(BARE);
                canvas.dashes(2, 1.5);
                region(canvas, bare);
                canvas.dashes();
            }
            for (Circle hole : figure.holes()) {
                canvas.pen(HALO);
                mark(canvas, hole);
                canvas.pen(HOLE);
                mark(canvas, hole);
            }
            canvas.unclip();
            if (page.tiled()) {
                for (Point cross : tile.crosses()) {
                    canvas.pen(HALO);
                    cross(canvas, cross, CORNER_ARM);
                    canvas.pen(PdfFile.INK);
                    cross(canvas, cross, CORNER_ARM);
                }
            }
        }
    }

    private static void region(PdfCanvas canvas, Outline outline) throws IOException {
        canvas.draw(new CutShape.Ring(outline.outer()));
        for (List<Point> hole : outline.holes()) {
            canvas.draw(new CutShape.Ring(hole));
        }
    }

    private static void mark(PdfCanvas canvas, Circle hole) throws IOException {
        canvas.draw(new CutShape.Round(hole));
        cross(canvas, hole.centre(), hole.radius() + ARM);
    }

    private static void cross(PdfCanvas canvas, Point at, double arm) throws IOException {
        Point across = new Point(arm, 0);
        Point up = new Point(0, arm);
        canvas.draw(new CutShape.Line(List.of(at.minus(across), at.plus(across))));
        canvas.draw(new CutShape.Line(List.of(at.minus(up), at.plus(up))));
    }

    private void legend(PdfCanvas canvas, Page page) throws IOException {
        double y = page.layout().legendBottom();
        double x = file.legend(canvas, PageLayout.MARGIN, y, EDGE, "edge of the part");
        if (!page.figure().holes().isEmpty()) {
            canvas.pen(HOLE);
            mark(canvas, new Circle(new Point(x + 3, y + 0.9), 0.8));
            x = file.legendWords(canvas, x, y, "middle of a hole");
        }
        if (!page.figure().bare().isEmpty()) {
            canvas.dashes(2, 1.5);
            x = file.legend(canvas, x, y, BARE, "glued here: keep bare of paint and paper");
            canvas.dashes();
        }
        if (page.tiled()) {
            canvas.pen(PdfFile.INK);
            cross(canvas, new Point(x + 3, y + 0.9), 1.6);
            file.legendWords(canvas, x, y, "cut from cross to cross, lay cross on cross");
        }
    }
}

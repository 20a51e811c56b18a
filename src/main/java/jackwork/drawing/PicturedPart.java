package jackwork.drawing;

import jackwork.geometry.Circle;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.io.IOException;
import java.util.List;

/** A part's picture on its pages, with the part's edge and its holes to lay it on the wood by. */
record PicturedPart(ArtworkFigure figure) implements TiledFigure {

    /** Under thin lines on a picture, light or dark. */
    static final Pens.Pen HALO = new Pens.Pen(0xffffff, 0.8);

    private static final Pens.Pen FINE_HALO = new Pens.Pen(0xffffff, 0.45);
    private static final Pens.Pen EDGE = new Pens.Pen(0x0b4f54, 0.15);
    private static final Pens.Pen HOLE = new Pens.Pen(0x7d2e68, 0.2);
    private static final Pens.Pen BARE = new Pens.Pen(0xb9770e, 0.3);

    /** A cross reaches so far beyond its circle, mm. */
    private static final double ARM = 1.5;

    @Override
    public String name() {
        return figure.name();
    }

    @Override
    public Outline shown() {
        return figure.shown();
    }

    @Override
    public List<String> notes() {
        return figure.covered()
                ? List.of()
                : List.of("This picture ends before the part's edge and its bleed do: draw it larger or move it.");
    }

    @Override
    public void draw(PdfFile file, PdfCanvas canvas) throws IOException {
        canvas.clip(figure.shown());
        canvas.image(file.image(figure.picture()), figure.at(), figure.width(), figure.height());
        canvas.unclip();
        canvas.pen(FINE_HALO);
        canvas.region(figure.edge());
        canvas.pen(EDGE);
        canvas.region(figure.edge());
        for (Outline bare : figure.bare()) {
            canvas.pen(HALO);
            canvas.region(bare);
            canvas.pen(BARE);
            canvas.dashes(2, 1.5);
            canvas.region(bare);
            canvas.dashes();
        }
        for (Circle hole : figure.holes()) {
            canvas.pen(HALO);
            mark(canvas, hole);
            canvas.pen(HOLE);
            mark(canvas, hole);
        }
    }

    private static void mark(PdfCanvas canvas, Circle hole) throws IOException {
        canvas.draw(new CutShape.Round(hole));
        canvas.cross(hole.centre(), hole.radius() + ARM);
    }

    @Override
    public double legend(PdfFile file, PdfCanvas canvas, double y) throws IOException {
        double x = file.legend(canvas, PageLayout.MARGIN, y, EDGE, "edge of the part");
        if (!figure.holes().isEmpty()) {
            canvas.pen(HOLE);
            mark(canvas, new Circle(new Point(x + 3, y + 0.9), 0.8));
            x = file.legendWords(canvas, x, y, "middle of a hole");
        }
        if (!figure.bare().isEmpty()) {
            canvas.dashes(2, 1.5);
            x = file.legend(canvas, x, y, BARE, "glued here: keep bare of paint and paper");
            canvas.dashes();
        }
        return x;
    }
}
